/** A spreadsheet of hours: kept as it is under `hours/`, with what it does not say itself asked once and kept beside it. */
import { idFrom } from "../../id-from.ts";
import type { EarlierHours } from "../../../facts/build/earlier-hours.ts";
import { counted } from "../../../words/lists.ts";
import { hoursWords } from "../../../words/durations.ts";
import { problemText, type Problem } from "../../../problem.ts";
import { fileText } from "../../front-matter.ts";
import { keep, type NewFiles, readWith } from "../../keep.ts";
import type { Answers, Question } from "../../question.ts";
import * as z from "zod";
import { type Desk, left, type Outcome } from "../outcome.ts";
import type { Given } from "../given.ts";
import { type Again, againIn } from "./again.ts";
import { type Aside, columnsIn, mappingFacts } from "./mapping.ts";
import { columnQuestions, hasSeveral, readingQuestions, SEVERAL, wordQuestions } from "./questions.ts";
import { type Sheet, sheetIn } from "./sheet.ts";

export const ASIDE = "set them aside";
export const AGAIN = "take them again";
const NOTHING = "take nothing";

export async function takeSheet(given: Given, text: string, said: Answers, desk: Desk): Promise<Outcome> {
  const sheet = sheetIn(text);
  if (sheet === undefined)
    return left(given.path, [
      "No line within the first 30 is a header of three words or more. Put one there in a copy of it.",
    ]);
  const stem = given.name.replace(/\.[^.]+$/u, "");
  const id = idFrom(stem, "hours");
  const paths = { csv: `hours/${id}.csv`, md: `hours/${id}.md` };
  const taken = [paths.csv, paths.md].find((path) => desk.files.includes(path));
  if (taken !== undefined)
    return left(given.path, [
      `${taken} is there already and tells of something else. Give the file a name of its own.`,
    ]);
  const answers = await answersOf(sheet, said, desk);
  const filesWith = (aside: readonly Aside[]): NewFiles =>
    new Map([
      [paths.csv, given.bytes],
      [paths.md, Buffer.from(fileText(mappingFacts(stem, sheet, answers, aside), REMARKS))],
    ]);
  const sorted = await sortedOut(text, sheet, filesWith, paths.csv, desk);
  if ("problems" in sorted)
    return left(given.path, ["It cannot be read as hours by what was said of it."], sorted.problems);
  const { aside, told } = sorted;
  if (aside.length > 0) {
    const asked = await desk.ask([asideQuestion(aside.length, told)], { aside: said["aside"] ?? undefined } as Answers);
    if (asked["aside"] !== ASIDE) return left(given.path, ["It was left, as was said."]);
  }
  const files = filesWith(aside);
  const table = await tableIn(files, id, desk);
  const again = againIn(table, desk.record.earlier);
  if (again.length > 0) {
    const asked = await desk.ask([againQuestion(again)], { again: said["again"] ?? undefined } as Answers);
    if (asked["again"] !== AGAIN) return left(given.path, [againWords(again), "It was left, as was said."]);
  }
  await keep(desk.content, files);
  return { from: given.path, became: "taken", says: [...files.keys(), sumsOf(table), ...told] };
}

const REMARKS = ["How the table beside this file is read: scarfline fields hours"];

async function answersOf(sheet: Sheet, said: Answers, desk: Desk): Promise<Answers> {
  const ofColumns = await desk.ask(columnQuestions(sheet, desk.record), said);
  const columns = columnsIn(ofColumns);
  const reading = await desk.ask(readingQuestions(sheet, columns), said);
  const words = await desk.ask(wordQuestions(sheet, columns, desk.record), said);
  const several = hasSeveral(sheet, columns, words) ? await desk.ask([SEVERAL], said) : {};
  return { ...ofColumns, ...reading, ...words, ...several };
}

interface Sorted {
  readonly aside: readonly Aside[];
  /** Each line that cannot be read, with all that is wrong with it. */
  readonly told: readonly string[];
}

/** The record's own check says which lines cannot be read; it tells so many at once, and is asked until none is left. */
async function sortedOut(
  text: string,
  { headerLine }: Sheet,
  filesWith: (aside: readonly Aside[]) => NewFiles,
  csv: string,
  { content, today }: Desk,
): Promise<Sorted | { readonly problems: readonly Problem[] }> {
  const lines = text.split("\n");
  const byLine = new Map<number, Problem[]>();
  for (;;) {
    const aside = [...byLine].sort(([a], [b]) => a - b).map(([line, problems]) => asideOf(line, lines, problems));
    const read = await readWith(content, filesWith(aside), today);
    if ("record" in read)
      return {
        aside,
        told: [...byLine.values()]
          .flat()
          .sort((a, b) => a.line - b.line)
          .map(problemText),
      };
    const others = read.problems.filter(({ file, line }) => file !== csv || line <= headerLine || byLine.has(line));
    if (others.length > 0) return { problems: others };
    const single = read.problems.filter(({ more }) => more === undefined);
    for (const problem of single) byLine.set(problem.line, [...(byLine.get(problem.line) ?? []), problem]);
  }
}

const LONGEST = 200;

const asideOf = (line: number, lines: readonly string[], problems: readonly Problem[]): Aside => ({
  line,
  typed: (lines[line - 1] ?? "").trim().slice(0, LONGEST).trim(),
  why: problems.map(({ message }) => message).join("; "),
});

const asideQuestion = (count: number, told: readonly string[]): Question => ({
  key: "aside",
  flag: "--set-aside",
  asks: `${told.join("\n")}\n\n${count === 1 ? "One line" : `${count} lines`} of it cannot be read. Set aside, they stay in the file, are named beside it with the reason, and are in no sum`,
  form: z.string(),
  example: ASIDE,
  choices: [ASIDE, NOTHING],
});

const againWords = (again: readonly Again[]): string =>
  `${again.map(({ lines, file }) => `${counted(lines, "line")} of it ${lines === 1 ? "says" : "say"} what ${file} says`).join("; ")}: the same day, person, task, time and assembly.`;

const againQuestion = (again: readonly Again[]): Question => ({
  key: "again",
  flag: "--again",
  asks: `${againWords(again)} Taken again they count twice`,
  form: z.string(),
  example: NOTHING,
  choices: [NOTHING, AGAIN],
});

/** The table as the record would have it. */
async function tableIn(files: NewFiles, id: string, { content, today }: Desk): Promise<EarlierHours> {
  const read = await readWith(content, files, today);
  const table = "record" in read ? read.record.earlier.find((one) => one.id === id) : undefined;
  if (table === undefined) throw new Error(`hours/${id}.csv was read and is gone`);
  return table;
}

function sumsOf({ lines, setAside }: EarlierHours): string {
  const people = new Map<string, number>();
  for (const { who, minutes } of lines) people.set(who, (people.get(who) ?? 0) + minutes);
  const places = new Set(lines.map(({ place }) => place.line));
  return `${places.size} lines read${setAside === 0 ? "" : `, ${setAside} set aside`}: ${[...people]
    .map(([who, minutes]) => `${who} ${hoursWords(minutes)}`)
    .join(", ")}`;
}
