/** What the cells of a table of earlier hours say, by the words, forms and marks that its builder states beside it. */
import { type Fault, isFault, onlyYouKnow, type Reading, shown } from "../../facts/reading.ts";
import { spanBy } from "../../facts/time/day-form.ts";
import { readHours, withOurHours, type Worked } from "../../facts/time/hours.ts";
import type { Span } from "../../facts/time/span.ts";
import type { EarlierSpec } from "./columns.ts";

export interface Cells {
  readonly span: (typed: string) => Reading<Span>;
  readonly time: (typed: string) => Reading<Worked>;
  readonly people: (typed: string) => readonly string[];
  readonly task: (typed: string) => string;
  /** Undefined where the words name none. */
  readonly assembly: (typed: string) => string | undefined;
}

export function cellsBy(spec: EarlierSpec | undefined): Cells {
  const people = wordsOf(spec?.people);
  const tasks = wordsOf(spec?.tasks);
  const assemblies = wordsOf(spec?.assemblies);
  const none = new Set(spec?.no_assembly?.map(folded));
  return {
    span: (typed) => spanBy(spec?.days ?? [], typed),
    time: (typed) => timeIn(typed, spec),
    people: (typed) => people.get(folded(typed)) ?? partsOf(typed).flatMap((one) => people.get(folded(one)) ?? [one]),
    task: (typed) => tasks.get(folded(typed)) ?? typed,
    assembly: (typed) => (none.has(folded(typed)) ? undefined : (assemblies.get(folded(typed)) ?? typed)),
  };
}

/** Words are the same whatever their capitals and blanks. */
export const folded = (typed: string): string => typed.normalize("NFC").trim().replaceAll(/\s+/gu, " ").toLowerCase();

const wordsOf = <T>(list: readonly { readonly typed: string; readonly is: T }[] = []): ReadonlyMap<string, T> =>
  new Map(list.map(({ typed, is }) => [folded(typed), is]));

/** `builder + karl`, or with a comma, a stroke or an ampersand between them. */
export const partsOf = (typed: string): string[] =>
  typed
    .split(/[+,;/&\n]/u)
    .map((one) => one.trim())
    .filter((one) => one !== "");

function timeIn(typed: string, spec: EarlierSpec | undefined): Reading<Worked> {
  const text = withOurHours(typed.trim());
  const isOther = spec?.decimal === "," && /^\d*\.\d+(?:\s*h)?$/iu.test(text);
  if (isOther) return { fault: otherMark(typed) };
  const ours = spec?.decimal === "," && /^\d*,\d+(?:\s*h)?$/iu.test(text) ? text.replace(",", ".") : text;
  const inMinutes = spec?.numbers === "minutes" && /^\d+(?:\.\d+)?$/u.test(ours) ? minutesOf(ours) : ours;
  const read = readHours(spec?.rounding === undefined ? inMinutes : rounded(inMinutes));
  return isFault(read) ? { fault: { ...read.fault, found: shown(typed) } } : { value: { ...read.value, typed } };
}

const minutesOf = (typed: string): string => (typed.includes(".") ? `${Number(typed) / 60}` : `${typed} min`);

/** Hours in decimals as whole minutes; half a minute is one. */
function rounded(typed: string): string {
  const [, hours] = /^(\d+\.\d+|\.\d+)(?:\s*h)?$/iu.exec(typed) ?? [];
  if (hours === undefined) return typed;
  const minutes = Math.round(Number((Number(hours) * 60).toFixed(6)));
  return minutes > 0 ? `${minutes} min` : typed;
}

const otherMark = (typed: string): Fault => ({
  code: "no-hours",
  message: "this has a point, and the table's decimal mark is said to be a comma",
  expected: "hours, such as 2,75 or 2:45",
  found: shown(typed),
  ...onlyYouKnow("2.45 may be 2:45 or 2,45: only you know which"),
});

/** Minutes of each of several people: all of it, or its equal part, in whole minutes that add up to it. */
export function partsOfTime({ minutes }: Worked, people: number, spec: EarlierSpec | undefined): Reading<number[]> {
  if (spec?.several !== "divided" || people < 2) return { value: Array.from({ length: people }, () => minutes) };
  const rest = minutes % people;
  if (rest > 0 && spec.rounding === undefined)
    return {
      fault: {
        code: "no-hours",
        message: `${minutes} minutes do not divide into whole minutes among ${people} people`,
        expected: "a time that does, or `rounding: nearest minute` beside the table",
        found: `${minutes} min`,
        ...onlyYouKnow("say how long each of them worked"),
      },
    };
  const part = (minutes - rest) / people;
  return { value: Array.from({ length: people }, (_, at) => part + (at < rest ? 1 : 0)) };
}
