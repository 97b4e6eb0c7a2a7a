/** What a spreadsheet of hours does not say by itself: its columns, how it writes days and times, and what its words mean. */
import * as z from "zod";
import { earlierHoursSchema } from "../../../facts/build/earlier-hours.ts";
import { readSpan } from "../../../facts/time/span.ts";
import type { Record } from "../../../facts/types.ts";
import { folded, partsOf } from "../../../record/earlier/cells.ts";
import type { Answers, Question } from "../../question.ts";
import { formsIn } from "./forms.ts";
import { cellsUnder, type Sheet, wordsUnder } from "./sheet.ts";

export const YES = "yes";
export const NO = "no";
export const NONE = "none of these";
export const NO_ASSEMBLY = "no assembly";
/** Columns by the key that they are answered under, with the words for them. */
export const COLUMNS = {
  span: "the day, month or year",
  who: "the people",
  task: "the task",
  time: "how long it took",
  assembly: "the assembly",
  source: "where the line comes from",
} as const;
export type ColumnKey = keyof typeof COLUMNS;
const KEYS = Object.keys(COLUMNS) as ColumnKey[];

const WORDS = z.string();
const FORM = { form: WORDS, example: "" } as const;

export function columnQuestions(sheet: Sheet, { aircraft }: Record): readonly Question[] {
  const headers = [...new Set(sheet.header.filter((cell) => cell !== ""))];
  const needed = new Set<ColumnKey>(["span", "time"]);
  const ofColumns = KEYS.map((key): Question => {
    return {
      ...FORM,
      key,
      flag: `--column "${key}=<header>"`,
      asks: `The column with ${COLUMNS[key]}`,
      choices: needed.has(key) ? likeliest(key, headers, sheet) : [...likeliest(key, headers, sheet), NONE],
    };
  });
  const isNone = (key: ColumnKey) => (before: Answers) => before[key] === NONE;
  return [
    ...ofColumns,
    {
      ...FORM,
      key: "everyWho",
      flag: "--every-who <id>",
      asks: "Who worked, in every line",
      choices: [...aircraft.people.keys()],
      asked: isNone("who"),
    },
    {
      ...FORM,
      key: "everyTask",
      flag: "--every-task <task>",
      asks: "The task, in every line",
      choices: aircraft.tasks,
      asked: isNone("task"),
    },
    {
      key: "everySource",
      flag: "--source <words>",
      asks: "Where its lines come from",
      form: earlierHoursSchema.shape.source.unwrap(),
      example: "Spreadsheet of the hangar",
      asked: isNone("source"),
    },
  ];
}

/** Those in which the cells look most like it come first. */
function likeliest(key: ColumnKey, headers: readonly string[], sheet: Sheet): string[] {
  const looks = { span: /\d[./ -]\d/u, time: /^\d*[.,:]?\d+\s*(?:h|std|min)?\.?$/iu } as const;
  const look = key === "span" || key === "time" ? looks[key] : undefined;
  const share = (header: string): number => {
    const cells = cellsUnder(sheet, header).filter((cell) => cell !== "");
    return look === undefined ? 0 : cells.filter((cell) => look.test(cell)).length / Math.max(1, cells.length);
  };
  return [...headers].sort((a, b) => share(b) - share(a));
}

const BARE = /^\d+$/u;

export function readingQuestions(sheet: Sheet, columns: Answers<ColumnKey>): readonly Question[] {
  const times = wordsUnder(sheet, columns.time);
  const decimals = times.flatMap((one) => /^(\d*)[.,](\d+)/u.exec(one)?.[0] ?? []);
  const spans = wordsUnder(sheet, columns.span).filter((cell) => "fault" in readSpan(cell));
  const asked: (Question | false)[] = [
    spans.length > 0 && {
      key: "days",
      flag: "--days <forms>",
      asks: `The forms of its days, such as ${spans[0]}, parted by commas`,
      form: WORDS.superRefine((typed, context) => {
        const wrong = formsOf(typed).find((form) => !daysForm.safeParse(form).success);
        if (wrong !== undefined)
          context.addIssue({
            code: "custom",
            message: `${wrong} is no form of a day: use YYYY or YY, MM or M, DD or D`,
          });
      }),
      example: "D.M.YYYY, D/M/YY",
      suggestion: formsIn(spans).join(", ") || "D.M.YYYY",
    },
    decimals.some((one) => one.includes(",")) && {
      ...FORM,
      key: "decimal",
      flag: "--decimal <mark>",
      asks: `The decimal mark of its hours, such as ${decimals.find((one) => one.includes(","))}`,
      choices: [",", "."],
    },
    times.some((one) => BARE.test(one)) && {
      ...FORM,
      key: "numbers",
      flag: "--numbers <unit>",
      asks: `What a number alone is, such as ${times.find((one) => BARE.test(one))}`,
      choices: ["hours", "minutes"],
    },
    decimals.some((one) => !isWhole(one)) && {
      ...FORM,
      key: "rounding",
      flag: "--nearest-minute <yes or no>",
      asks: `Whether hours such as ${decimals.find((one) => !isWhole(one))} stand for the nearest whole minute`,
      choices: [YES, NO],
    },
  ];
  return [...asked.filter((one) => one !== false), ...belowQuestions(sheet, columns)];
}

const daysForm = earlierHoursSchema.shape.days.unwrap().element;
export const formsOf = (typed: string): string[] =>
  typed
    .split(",")
    .map((form) => form.trim())
    .filter((form) => form !== "");

const isWhole = (decimal: string): boolean =>
  Number.isInteger(Number((Number(decimal.replace(",", ".")) * 60).toFixed(6)));

/** Cells that were merged leave all but the first of them empty when they are exported. */
const belowQuestions = (sheet: Sheet, columns: Answers<ColumnKey>): Question[] =>
  (["span", "who", "task", "assembly"] as const)
    .filter((key) => columns[key] !== undefined && cellsUnder(sheet, columns[key]).includes(""))
    .map((key) => ({
      ...FORM,
      key: `below ${key}`,
      flag: `--merged "${key}=<yes or no>"`,
      asks: `Whether an empty cell under ${columns[key]} says what the one above it says`,
      choices: [YES, NO],
    }));

export function wordQuestions(sheet: Sheet, columns: Answers<ColumnKey>, record: Record): readonly Question[] {
  const { aircraft, assemblies } = record;
  const tasks = new Set(aircraft.tasks);
  const each = (key: ColumnKey, known: (word: string) => boolean) =>
    wordsUnder(sheet, columns[key])
      .filter((word) => !known(word))
      .filter((word, at, all) => all.findIndex((one) => folded(one) === folded(word)) === at);
  return [
    ...peopleIn(sheet, columns, record).map((word) => personQuestion(word, record)),
    ...each("task", (word) => tasks.has(word)).map(
      (word): Question => ({
        ...FORM,
        key: `task ${folded(word)}`,
        flag: `--task-is "${word}=<task>"`,
        asks: `The task that "${word}" is`,
        choices: [...aircraft.tasks, NONE],
      }),
    ),
    ...each("assembly", (word) => assemblies.has(word)).map(
      (word): Question => ({
        ...FORM,
        key: `assembly ${folded(word)}`,
        flag: `--assembly-is "${word}=<id>"`,
        asks: `The assembly that "${word}" is`,
        choices: [...assemblies.keys(), NO_ASSEMBLY],
      }),
    ),
  ];
}

/** Names that nobody has here: of a cell with several people those of each of them. */
function peopleIn(sheet: Sheet, columns: Answers<ColumnKey>, { aircraft }: Record): string[] {
  const seen = new Map<string, string>();
  for (const cell of wordsUnder(sheet, columns.who))
    for (const part of partsOf(cell))
      if (!aircraft.people.has(part) && !seen.has(folded(part))) seen.set(folded(part), part);
  return [...seen.values()];
}

function personQuestion(word: string, { aircraft }: Record): Question {
  const people = [...aircraft.people.values()].filter(({ role }) => role !== "visitor");
  const meant = people.find(({ name, publicName }) =>
    [name, publicName].some((one) => folded(one ?? "") === folded(word)),
  );
  return {
    key: `person ${folded(word)}`,
    flag: `--person-is "${word}=<id>"`,
    asks: `Who "${word}" is: ${people.map(({ id }) => id).join(", ")}; several with + between them, or ${NONE}`,
    form: WORDS.superRefine((typed, context) => {
      const unknown = typed === NONE ? [] : partsOf(typed).filter((id) => !aircraft.people.has(id));
      if (unknown.length > 0) context.addIssue({ code: "custom", message: `there is no person ${unknown.join(", ")}` });
    }),
    example: people
      .slice(0, 2)
      .map(({ id }) => id)
      .join(" + "),
    ...(meant !== undefined && { suggestion: meant.id }),
  };
}

/** Whether any cell names several people. */
export const hasSeveral = (sheet: Sheet, columns: Answers<ColumnKey>, words: Answers): boolean =>
  wordsUnder(sheet, columns.who).some(
    (cell) => partsOf(cell).flatMap((part) => partsOf(words[`person ${folded(part)}`] ?? part)).length > 1,
  );

export const SEVERAL: Question = {
  ...FORM,
  key: "several",
  flag: "--several <each or divided>",
  asks: "Where a line names several people its time is each one's, or is what they worked together and to be divided equally",
  choices: ["each", "divided"],
};
