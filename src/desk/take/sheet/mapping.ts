/** What was answered of a spreadsheet, as the file that is kept beside it says it. */
import { defined } from "../../../defined.ts";
import { folded, partsOf } from "../../../record/earlier/cells.ts";
import type { Facts } from "../../front-matter.ts";
import type { Answers } from "../../question.ts";
import { COLUMNS, type ColumnKey, formsOf, NO, NO_ASSEMBLY, NONE, YES } from "./questions.ts";
import { type Sheet, wordsUnder } from "./sheet.ts";

type Mapping = Answers;

const KEYS = Object.keys(COLUMNS) as ColumnKey[];

/** The columns that were named, without those that the table has not. */
export const columnsIn = (answers: Mapping): Answers<ColumnKey> =>
  Object.fromEntries(
    KEYS.flatMap((key) => (answers[key] === undefined || answers[key] === NONE ? [] : [[key, answers[key]]])),
  );

export interface Aside {
  readonly line: number;
  readonly typed: string;
  readonly why: string;
}

export function mappingFacts(title: string, sheet: Sheet, answers: Mapping, aside: readonly Aside[]): Facts {
  const columns = columnsIn(answers);
  const named = new Set(Object.values(columns));
  const unread = [...new Set(sheet.header.filter((cell) => cell !== "" && !named.has(cell)))];
  const below = KEYS.filter((key) => answers[`below ${key}`] === YES);
  return defined({
    title,
    source: answers["everySource"],
    header_line: sheet.headerLine > 1 ? String(sheet.headerLine) : undefined,
    columns: columns as Facts,
    unread: filled(unread),
    days: answers["days"] === undefined ? undefined : formsOf(answers["days"]),
    decimal: answers["decimal"],
    numbers: answers["numbers"] === "minutes" ? "minutes" : undefined,
    rounding: (answers["rounding"] ?? NO) === YES ? "nearest minute" : undefined,
    several: answers["several"] === "divided" ? "divided" : undefined,
    below: filled(below),
    every_line: everyLine(answers),
    people: filled(wordsMeant(sheet, columns.who, "person", answers, (is) => partsOf(is))),
    tasks: filled(wordsMeant(sheet, columns.task, "task", answers)),
    assemblies: filled(wordsMeant(sheet, columns.assembly, "assembly", answers)),
    no_assembly: filled(
      meantWords(sheet, columns.assembly, "assembly", answers).flatMap(({ word, is }) =>
        is === NO_ASSEMBLY ? [word] : [],
      ),
    ),
    set_aside: filled(aside.map(({ line, typed, why }) => ({ line: String(line), typed, why }))),
  }) as Facts;
}

const filled = <T>(list: readonly T[]): readonly T[] | undefined => (list.length === 0 ? undefined : list);

function everyLine(answers: Mapping): Facts | undefined {
  const { everyWho: who, everyTask: task } = answers;
  return who === undefined && task === undefined ? undefined : (defined({ who, task }) as Facts);
}

/** Words of a column, of people those within one cell too, with what was said of them. */
function meantWords(sheet: Sheet, column: string | undefined, kind: string, answers: Mapping) {
  const all = wordsUnder(sheet, column).flatMap((cell) => (kind === "person" ? partsOf(cell) : [cell]));
  const byFolded = new Map([...all].reverse().map((word) => [folded(word), word]));
  return [...byFolded].reverse().flatMap(([key, word]) => {
    const is = answers[`${kind} ${key}`];
    return is === undefined || is === NONE ? [] : [{ word, is }];
  });
}

const wordsMeant = (
  sheet: Sheet,
  column: string | undefined,
  kind: string,
  answers: Mapping,
  value: (is: string) => string | string[] = (is) => is,
): Facts[] =>
  meantWords(sheet, column, kind, answers)
    .filter(({ is }) => is !== NO_ASSEMBLY)
    .map(({ word, is }) => ({ typed: word, is: value(is) }));
