/** The numbers of a chart, from which its drawing, its table and its data for the browser are all made. */
import { addDays, dayNumber, monday } from "../../reckoning/time/calendar.ts";
import { groupBy } from "../../reckoning/hours/hours.ts";
import type { Worked } from "../../reckoning/hours/hours.ts";
import type { Day } from "../../facts/types.ts";

export interface Chart {
  /** A name for anchors. */
  readonly id: string;
  readonly title: string;
  /** What it shows, in a sentence. */
  readonly says: string;
  readonly form: "lines" | "bars";
  /** Days counted from 1970-01-01: ends of weeks for lines, Mondays for bars. */
  readonly days: readonly number[];
  /** Hours, one a day of `days`. */
  readonly series: readonly { readonly name: string; readonly values: readonly number[] }[];
  /** What the series are held against. */
  readonly against?: { readonly name: string; readonly values: readonly number[] };
  readonly filled?: boolean;
  /**
   * Where hours are known by their month or year alone, and are drawn as if alike on all its days; first and last day
   * of each stretch.
   */
  readonly spans?: readonly (readonly [from: number, to: number])[];
}

/** The weeks of a record: Mondays from its start to its day. */
export interface Weeks {
  readonly mondays: readonly Day[];
}

export const dayAt = (day: Day): number => dayNumber(day) ?? 0;

export function weeksOf(lines: readonly Worked[], start: Day, end: Day): Weeks {
  const days = lines.flatMap(({ day, through }) => [day, ...(through === undefined || through > end ? [] : [through])]);
  const first = monday(days.reduce((least, day) => (day < least ? day : least), start)) ?? start;
  const last = monday(days.reduce((most, day) => (day > most ? day : most), end)) ?? end;
  const mondays: Day[] = [];
  for (let day: Day | undefined = first; day !== undefined && day <= last; day = addDays(day, 7)) mondays.push(day);
  return { mondays };
}

/** Stretches of time in which lines are known by no day, those that touch as one. */
export function spansOf(lines: readonly Worked[]): Chart["spans"] {
  const all = lines.flatMap(({ day, through }) =>
    through === undefined ? [] : [[dayAt(day), dayAt(through)] as const],
  );
  const joined: [number, number][] = [];
  for (const [from, to] of all.sort(([a], [b]) => a - b)) {
    const last = joined.at(-1);
    if (last !== undefined && from <= last[1] + 1) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined.length === 0 ? undefined : joined;
}

/**
 * Minutes in each week; those of a span alike on all its days that lie within the weeks: how it is drawn, never how it
 * was. Minutes are no integers then.
 */
export function weekly(lines: readonly Worked[], weeks: Weeks): number[] {
  const sums = new Array<number>(weeks.mondays.length).fill(0);
  const start = dayAt(weeks.mondays[0] ?? "");
  const last = start + sums.length * 7 - 1;
  for (const { day, through = day, minutes } of lines) {
    const [from, to] = [Math.max(start, dayAt(day)), Math.min(last, dayAt(through))];
    for (let at = Math.floor((from - start) / 7); start + at * 7 <= to; at += 1) {
      const days = Math.min(to, start + at * 7 + 6) - Math.max(from, start + at * 7) + 1;
      sums[at] = (sums[at] ?? 0) + (minutes * days) / (to - from + 1);
    }
  }
  return sums;
}

export function running(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => (sum += value));
}

/** Minutes to hours with two decimals: enough for a chart. */
export const inHours = (minutes: number): number => Math.round((minutes / 60) * 100) / 100;

export interface Named<L> {
  readonly name: string;
  readonly lines: readonly L[];
}

/** Lines by a key, the greatest sums first; beyond `most` the rest as one. */
export function greatest<L extends Worked>(
  lines: readonly L[],
  keyOf: (line: L) => string,
  nameOf: (key: string) => string,
  most: number,
): Named<L>[] {
  const sumOf = (group: readonly L[]): number => group.reduce((sum, { minutes }) => sum + minutes, 0);
  const groups = [...groupBy(lines, keyOf)].map(([key, group]) => ({
    name: nameOf(key),
    lines: group,
    sum: sumOf(group),
  }));
  groups.sort((a, b) => b.sum - a.sum || (a.name < b.name ? -1 : 1));
  if (groups.length <= most) return groups;
  const rest = groups.slice(most - 1).flatMap((group) => group.lines);
  return [...groups.slice(0, most - 1), { name: "All others", lines: rest }];
}
