/** Earlier hours held against the record: people, tasks, assemblies, the start of the build, and how many hours there are. */
import type { Spec } from "../../facts/kinds.ts";
import type { Fault } from "../../facts/reading.ts";
import type { Kind } from "../../facts/types.ts";
import { placed } from "../../problem.ts";
import { type CheckContext, idFaultOf, soundOf } from "../checks/context.ts";
import { beforeStart, notYet } from "../checks/days.ts";
import type { Key } from "./columns.ts";
import type { EarlierRow } from "./read.ts";
import { taskFault, type Worked } from "./worked.ts";

/** `worked` holds what entries say. */
export function checkEarlier(context: CheckContext, worked: Worked): void {
  const aircraft = soundOf(context, "aircraft")[0]?.spec;
  const rows = context.earlier.flatMap((table) => table.rows);
  for (const row of rows) checkRow(context, row, aircraft);
  const ofDays = (one: EarlierRow): boolean => one.span?.from === one.span?.to;
  for (const one of [...rows.filter(ofDays), ...rows.filter((one) => !ofDays(one))]) addUp(context, one, worked);
}

function checkRow(context: CheckContext, one: EarlierRow, aircraft: Spec<"aircraft"> | undefined): void {
  const { span, who, task, assembly } = one;
  const tell = (key: Key, fault: Fault | undefined): void => report(context, one, key, fault);
  for (const person of new Set(who)) tell("who", idFaultOf(context, ["person"] satisfies Kind[], person));
  const twice = who.find((person, at) => who.indexOf(person) !== at);
  if (twice !== undefined) tell("who", TWICE);
  const visitor = who.find((person) => aircraft?.people.some(({ id, role }) => id === person && role === "visitor"));
  if (visitor !== undefined) tell("who", noWork(visitor));
  if (task !== undefined) tell("task", taskFault(task, aircraft?.tasks));
  if (assembly !== undefined) tell("assembly", idFaultOf(context, ["assembly"], assembly));
  if (span === undefined) return;
  if (aircraft?.start !== undefined && span.to < aircraft.start) tell("span", beforeStart(span.typed, aircraft.start));
  if (context.today !== undefined && span.from > context.today) tell("span", notYet(span.typed, context.today));
}

function addUp(context: CheckContext, one: EarlierRow, worked: Worked): void {
  const { span, who, time, row } = one;
  if (span === undefined || time === undefined) return;
  const { file, line } = row.place("time");
  const tell = (fault: Fault): void => report(context, one, "time", fault);
  for (const person of new Set(who)) {
    if (span.from === span.to) worked.on(span.from, person, time.minutes, `${file}:${line}`, tell);
    else worked.within(span, person, time.minutes, `${file}:${line}`, tell);
  }
}

function report(context: CheckContext, { row }: EarlierRow, key: Key, fault: Fault | undefined): void {
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
