/**
 * How far the work of the weeks ahead may lie from what is foretold of it, by how earlier forecasts of the same
 * record did.
 *
 * The work of h weeks is foretold as h times the mean of all weeks known. At each week of the past at which as much
 * was known, the ratio of what was then worked in the next h weeks to what would have been foretold is taken. The
 * chance that the next ratio is at most x is
 *
 *   F(x) = (n·share of the ratios at most x + 10·Φ(ln x/s)) / (n + 10),   s² = 0.65² + cv²/h
 *
 * n is the number of windows of h weeks that do not overlap, cv the coefficient of variation of a week. The second
 * term is a doubt that is there from the beginning, log-normal about 1 and worth ten windows, which fades as the
 * record grows. 0.65 and ten are this program's own, chosen on synthetic builders (tests/forecast): no source.
 */
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import { mean } from "../statistics/mean.ts";

/** Fewer weeks of record give no forecast. */
export const LEAST_WEEKS = 8;
const LEAST_WINDOWS = 4;
const DOUBT = 0.65;
const WORTH = 10;

/** Ratios of worked to foretold, ascending, and how many windows that do not overlap they are worth. `spread` is s. */
export interface Foretold {
  readonly ratios: readonly number[];
  readonly windows: number;
  readonly spread: number;
}

/** Sums of the first weeks: the first is 0. */
export function sumsOf(weekly: readonly number[]): number[] {
  const sums = [0];
  for (const minutes of weekly) sums.push((sums.at(-1) ?? 0) + minutes);
  return sums;
}

/**
 * Of forecasts `ahead` weeks ahead; where the record is too short for those, of the longest that it has been long
 * enough for.
 */
export function foretold(weekly: readonly number[], sums: readonly number[], ahead: number): Foretold {
  const length = Math.min(ahead, weekly.length - LEAST_WEEKS - LEAST_WINDOWS + 1);
  const ratios: number[] = [];
  for (let known = LEAST_WEEKS; length >= 1 && known + length <= weekly.length; known += 1) {
    const before = sums[known] ?? 0;
    if (before > 0) ratios.push((((sums[known + length] ?? 0) - before) * known) / (before * length));
  }
  ratios.sort((a, b) => a - b);
  return {
    ratios,
    windows: length >= 1 ? ratios.length / length : 0,
    spread: Math.sqrt(DOUBT ** 2 + variation(weekly) / ahead),
  };
}

/** cv² of a week: variance over mean squared; 0 where nothing was worked. */
function variation(weekly: readonly number[]): number {
  const middle = mean(weekly) ?? 0;
  return middle === 0 ? 0 : (mean(weekly.map((week) => (week - middle) ** 2)) ?? 0) / middle ** 2;
}

/** The ratio that is not exceeded with the chance `share`, 0 < share < 1, to a millionth of itself or better. */
export function ratioAt({ ratios, windows, spread }: Foretold, share: number): number {
  const chance = (x: number): number => {
    const held = ratios.length === 0 ? 0 : atMost(ratios, x) / ratios.length;
    return (windows * held + WORTH * normalCdf(Math.log(x) / spread, 0, 1)) / (windows + WORTH);
  };
  let [low, high] = [1e-9, 1];
  while (chance(high) < share) high *= 2;
  while (high > low * (1 + 1e-7)) {
    const middle = Math.sqrt(low * high);
    if (chance(middle) < share) low = middle;
    else high = middle;
  }
  return high;
}

/** How many of the ascending values are at most x. */
function atMost(values: readonly number[], x: number): number {
  let [from, to] = [0, values.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((values[middle] ?? Number.POSITIVE_INFINITY) <= x) from = middle + 1;
    else to = middle;
  }
  return from;
}
