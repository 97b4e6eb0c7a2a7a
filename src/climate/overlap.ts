/** Files that tell of the same time must say the same: all of them are of one workshop. */
import type { Problem } from "../problem.ts";
import type { Log } from "./log.ts";
import { Report } from "../record/table/report.ts";

export interface FiledLog extends Log {
  readonly file: string;
}

/**
 * One problem for each two files that disagree where both have readings, at the first reading of the later file that
 * the earlier one lacks.
 */
export function overlapProblems(logs: readonly FiledLog[]): Problem[] {
  const byStart = [...logs].sort((a, b) => (a.times[0] ?? 0) - (b.times[0] ?? 0) || (a.file < b.file ? -1 : 1));
  const problems: Problem[] = [];
  let open: FiledLog[] = [];
  for (const log of byStart) {
    open = open.filter((other) => (other.times.at(-1) ?? 0) >= (log.times[0] ?? 0));
    problems.push(...open.flatMap((other) => disagreement(other, log)));
    open.push(log);
  }
  return problems;
}

function disagreement(one: FiledLog, other: FiledLog): Problem[] {
  const end = Math.min(one.times.at(-1) ?? 0, other.times.at(-1) ?? 0);
  const within = (log: FiledLog, at: number): boolean => (log.times[at] ?? Number.POSITIVE_INFINITY) <= end;
  for (
    let i = firstAtLeast(one.times, other.times[0] ?? 0), j = 0;
    within(one, i) || within(other, j);
    i += 1, j += 1
  ) {
    if (!alike(one, i, other, j)) return problemsAt(one, other, Math.min(j, other.times.length - 1));
  }
  return [];
}

function alike(one: Log, i: number, other: Log, j: number): boolean {
  return (
    one.times[i] === other.times[j] &&
    Object.is(one.temperatures[i], other.temperatures[j]) &&
    Object.is(one.humidities[i], other.humidities[j])
  );
}

function problemsAt(one: FiledLog, other: FiledLog, at: number): Problem[] {
  const report = new Report();
  report.say(other.rows[at] ?? 0, 0, {
    code: "climate-overlap",
    message: `${one.file} tells of the same time and says something else`,
    expected: "files of one workshop that agree where they overlap",
    mend: "keep in one of them only what the other lacks; a logger of another room does not belong here",
  });
  return report.problems(other.file, other.text, other.layout);
}

function firstAtLeast(times: Float64Array, time: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times[middle] ?? 0) < time) low = middle + 1;
    else high = middle;
  }
  return low;
}
