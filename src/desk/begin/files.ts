/**
 * The files of a record that begins: what was answered and nothing else. What only a data sheet, a drawing or a day can
 * say is told in comments.
 */
import type { Day } from "../../facts/types.ts";
import { type Facts, fileText } from "../front-matter.ts";
import { idFrom } from "../id-from.ts";
import { optionalKeys } from "../remarks.ts";
import { type BeginAnswers, PIECES } from "./questions.ts";

/** Paths in the record to texts. */
export type Files = ReadonlyMap<string, string>;

/** Answers of which none is missing that must be there. */
export type WholeAnswers = BeginAnswers &
  Required<Pick<BeginAnswers, "name" | "type" | "builder" | "publicName" | "units" | "timeZone" | "start">>;

const TASKS = ["gluing", "shaping", "fitting", "jigging", "testing", "finishing", "housekeeping"];

export function filesOf(answers: WholeAnswers): Files {
  const { assembly, adhesive, pieces, first, start } = answers;
  const files = new Map([["aircraft.md", aircraftText(answers)]]);
  const free = freeIds("builder");
  if (assembly !== undefined)
    files.set(`assemblies/${free(idFrom(assembly, "assembly-1"), "part")}.md`, assemblyText(assembly));
  if (adhesive !== undefined)
    files.set(
      `adhesives/${free(idFrom(adhesive, "adhesive-1"), "adhesive")}.md`,
      adhesiveText({ ...answers, adhesive }),
    );
  if (pieces !== undefined) files.set(`procedures/${free(pieces, "pieces")}.md`, procedureText(pieces));
  if (first !== undefined) files.set(`entries/${start}-${idFrom(first, "first")}.md`, entryText(start, first));
  return files;
}

/** No two things of a record have one id, whatever their kinds. */
function freeIds(...ids: readonly string[]): (id: string, kind: string) => string {
  const taken = new Set(ids);
  return (id, kind) => {
    let free = id;
    while (taken.has(free)) free += `-${kind}`;
    taken.add(free);
    return free;
  };
}

const MAY_STAND = "What may still stand here; how it is written:";

function remarks(kind: "aircraft" | "assembly" | "procedure" | "entry", before: readonly string[]): string[] {
  return [...before, `${MAY_STAND} scarfline fields ${kind}`, ...optionalKeys(kind).map((line) => `  ${line}`)];
}

function aircraftText({ name, type, builder, publicName, units, timeZone, start }: WholeAnswers): string {
  const facts: Facts = {
    name,
    type,
    units,
    time_zone: timeZone,
    start,
    people: [{ id: "builder", name: builder, public: publicName, role: "builder" }],
    tasks: TASKS,
  };
  return fileText(
    facts,
    remarks("aircraft", [
      "Whoever else works on it, visits or inspects is one more of the people.",
      "The tasks are words for hours, and yours to change.",
      "Below the line of three hyphens: what you are building, and why. Visitors read it first.",
    ]),
  );
}

const assemblyText = (title: string): string => fileText({ title }, remarks("assembly", []));

function adhesiveText({ adhesive: title, adhesiveKind: kind, sheet }: BeginAnswers & { adhesive: string }): string {
  const facts: Facts = { title, ...(kind !== undefined && { kind }), ...(sheet !== undefined && { sheet }) };
  const unasked = kind === "one-part" ? ["kind", "by_mass", "by_volume"] : ["kind"];
  return fileText(facts, [
    "Only the data sheet says what comes here. Copy each figure from it, in its own units; what it does not say",
    "stays out, and a limit that is not here is never held to be met. How each is written: scarfline fields adhesive",
    ...optionalKeys("adhesive", unasked).map((line) => `  ${line}`),
  ]);
}

function procedureText(form: string): string {
  const title = Object.entries(PIECES).find(([key]) => key === form)?.[1] ?? form;
  return fileText(
    { title, form },
    remarks("procedure", ["What it asks comes from your plans, your authority or the document that you work by."]),
  );
}

const entryText = (date: Day, title: string): string =>
  fileText({ date, title }, remarks("entry", ["Below the line of three hyphens: the day in your own words."]));
