/** Earlier hours held against the record: people, tasks, assemblies, the start of the build, and how many hours there are. */
import type { Spec } from "../../facts/kinds.ts";
import type { Fault } from "../../facts/reading.ts";
import type { Kind } from "../../facts/types.ts";
import { placed } from "../../problem.ts";
import { type CheckContext, expectId, idFaultOf, report, soundOf } from "../checks/context.ts";
import { beforeStart, notYet } from "../checks/days.ts";
import type { Sound } from "../filed.ts";
import type { Path } from "../text/yaml.ts";
import type { EarlierSpec, Key } from "./columns.ts";
import type { EarlierRow } from "./read.ts";
import { taskFault, type Worked } from "./worked.ts";

/** `worked` holds what entries say. */
export function checkEarlier(context: CheckContext, worked: Worked): void {
  const aircraft = soundOf(context, "aircraft")[0]?.spec;
  for (const table of context.earlier) {
    const beside = table.beside?.spec === undefined ? undefined : (table.beside as Sound<EarlierSpec>);
    const named = beside === undefined ? NOTHING : checkBeside(context, beside, aircraft);
    for (const row of table.rows) checkRow(context, row, aircraft, named);
  }
  const rows = context.earlier.flatMap((table) => table.rows);
  const ofDays = (one: EarlierRow): boolean => one.span?.from === one.span?.to;
  for (const one of [...rows.filter(ofDays), ...rows.filter((one) => !ofDays(one))]) addUp(context, one, worked);
}

/** Ids and words that a file beside a table names, and that are looked at there. */
interface Named {
  readonly ids: ReadonlySet<string>;
  readonly tasks: ReadonlySet<string>;
}

const NOTHING: Named = { ids: new Set(), tasks: new Set() };

function checkBeside(context: CheckContext, beside: Sound<EarlierSpec>, aircraft: Spec<"aircraft"> | undefined): Named {
  const { every_line: each, people = [], tasks = [], assemblies = [] } = beside.spec;
  const ids = new Set<string>();
  const words = new Set<string>();
  const expect = (path: Path, kind: Kind, id: string): void => {
    ids.add(id);
    expectId(context, beside, path, [kind], id);
  };
  const task = (path: Path, word: string): void => {
    words.add(word);
    const fault = taskFault(word, aircraft?.tasks);
    if (fault) report(context, beside, path, fault);
  };
  for (const [at, { is }] of people.entries()) for (const id of is) expect(["people", at, "is"], "person", id);
  for (const id of each?.who ?? []) expect(["every_line", "who"], "person", id);
  for (const [at, { is }] of tasks.entries()) task(["tasks", at, "is"], is);
  if (each?.task !== undefined) task(["every_line", "task"], each.task);
  for (const [at, { is }] of assemblies.entries()) expect(["assemblies", at, "is"], "assembly", is);
  if (each?.assembly !== undefined) expect(["every_line", "assembly"], "assembly", each.assembly);
  return { ids, tasks: words };
}

function checkRow(
  context: CheckContext,
  one: EarlierRow,
  aircraft: Spec<"aircraft"> | undefined,
  { ids, tasks }: Named,
): void {
  const { span, who, task, assembly } = one;
  const tell = (key: Key, fault: Fault | undefined): void => told(context, one, key, fault);
  for (const person of new Set(who)) if (!ids.has(person)) tell("who", idFaultOf(context, ["person"], person));
  const twice = who.find((person, at) => who.indexOf(person) !== at);
  if (twice !== undefined) tell("who", TWICE);
  const visitor = who.find((person) => aircraft?.people.some(({ id, role }) => id === person && role === "visitor"));
  if (visitor !== undefined) tell("who", noWork(visitor));
  if (task !== undefined && !tasks.has(task)) tell("task", taskFault(task, aircraft?.tasks));
  if (assembly !== undefined && !ids.has(assembly)) tell("assembly", idFaultOf(context, ["assembly"], assembly));
  if (span === undefined) return;
  if (aircraft?.start !== undefined && span.to < aircraft.start) tell("span", beforeStart(span.typed, aircraft.start));
  if (context.today !== undefined && span.from > context.today) tell("span", notYet(span.typed, context.today));
}

function addUp(context: CheckContext, one: EarlierRow, worked: Worked): void {
  const { span, who, minutes, row } = one;
  if (span === undefined) return;
  const { file, line } = row.place("time");
  const tell = (fault: Fault): void => told(context, one, "time", fault);
  for (const [at, part] of minutes.entries()) {
    const person = who[at] ?? "";
    if (who.indexOf(person) !== at) continue;
    if (span.from === span.to) worked.on(span.from, person, part, `${file}:${line}`, tell);
    else worked.within(span, person, part, `${file}:${line}`, tell);
  }
}

function told(context: CheckContext, { row }: EarlierRow, key: Key, fault: Fault | undefined): void {
  if (fault) context.problems.push(placed(row.place(key), fault, row.cell(key) ?? ""));
}

const TWICE: Fault = {
  code: "same-person-twice",
  message: "this person stands twice in one line",
  expected: "each person once",
  mend: "take one of the two away, or name the person who was meant",
};

const noWork = (who: string): Fault => ({
  code: "visitor-worked",
  message: `${who} is a visitor, whose time is not counted as work`,
  expected: "people who worked",
  found: who,
  mend: "take the row out, or give that person another role in aircraft.md",
});
