/** Sums of minutes worked. Minutes are integers, so every cut of the same lines agrees to the minute. */
import { addDays, monday } from "../time/calendar.ts";

/** On a day; or, where no more is known, somewhere from that day `through` another. */
export interface Worked {
  readonly day: string;
  readonly through?: string;
  readonly minutes: number;
}

/** Whether it is known on which day it was. */
export const isOfDay = ({ through }: Worked): boolean => through === undefined;

/** A day on which something was worked, that day's minutes, and the sum up to its end. */
export interface Step {
  readonly day: string;
  readonly minutes: number;
  readonly sum: number;
}

export const total = (lines: readonly Worked[]): number => lines.reduce((sum, line) => sum + line.minutes, 0);

/** Minutes by a key of the line, in the order in which the keys first come. */
export function sumBy<L extends Pick<Worked, "minutes">>(
  lines: readonly L[],
  keyOf: (line: L) => string,
): Map<string, number> {
  const sums = new Map<string, number>();
  for (const line of lines) {
    const key = keyOf(line);
    sums.set(key, (sums.get(key) ?? 0) + line.minutes);
  }
  return sums;
}

/** Lines by a key, in the order in which the keys first come. */
export function groupBy<L>(lines: readonly L[], keyOf: (line: L) => string): Map<string, [L, ...L[]]> {
  const groups = new Map<string, [L, ...L[]]>();
  for (const line of lines) {
    const group = groups.get(keyOf(line));
    if (group === undefined) groups.set(keyOf(line), [line]);
    else group.push(line);
  }
  return groups;
}

/** For sorting what a map holds: each key is there once. */
export const byKey = ([a]: readonly [string, ...unknown[]], [b]: readonly [string, ...unknown[]]): number =>
  a < b ? -1 : 1;

/** One step a day that was worked, by date. */
export function cumulative(lines: readonly Worked[]): Step[] {
  const days = [...sumBy(lines, (line) => line.day)].sort(byKey);
  let sum = 0;
  return days.map(([day, minutes]) => ({ day, minutes, sum: (sum += minutes) }));
}

/** Minutes by month (`YYYY-MM`), by date; months without work are left out. What is known by its year alone stands under that (`YYYY`), before its months. */
export function byMonth(lines: readonly Worked[]): Map<string, number> {
  const keyOf = ({ day, through }: Worked): string =>
    day.slice(0, (through ?? day).startsWith(day.slice(0, 7)) ? 7 : 4);
  return new Map([...sumBy(lines, keyOf)].sort(byKey));
}

/**
 * Minutes by week from the week of `first` to that of `last`, weeks without work included. `day` is the week's Monday.
 * Lines outside those weeks widen them: no minute is lost. undefined where a day is not real.
 */
export function byWeek(lines: readonly Worked[], first: string, last: string): Worked[] | undefined {
  const sums = new Map<string, number>();
  let from = monday(first);
  let to = monday(last);
  if (from === undefined || to === undefined) return undefined;
  for (const line of lines) {
    const week = monday(line.day);
    if (week === undefined) return undefined;
    sums.set(week, (sums.get(week) ?? 0) + line.minutes);
    if (week < from) from = week;
    if (week > to) to = week;
  }
  const weeks: Worked[] = [];
  for (let week: string | undefined = from; week !== undefined && week <= to; week = addDays(week, 7)) {
    weeks.push({ day: week, minutes: sums.get(week) ?? 0 });
  }
  return weeks;
}
