/**
 * Minutes that may be worked in the weeks ahead, by bootstrap: each future is made of weeks drawn, each as likely as
 * any other and ever anew, from
 * the weeks that were worked so far, those without work among them.
 *
 * The result holds for each of `weeks` weeks the given quantiles of the sum worked by its end. The same weeks, seed
 * and counts give the same result.
 * Method: Efron's bootstrap (1979; memory) of weeks taken as independent of each other, which they may not be.
 * Domain: one week or more of minutes ≥ 0, weeks and futures whole from 1, else undefined.
 */
import { isCount, notNegative } from "../domain.ts";
import { drawer } from "./drawn-weeks.ts";
import { quantile } from "../statistics/quantile.ts";

export function workAhead(
  past: readonly number[],
  weeks: number,
  quantiles: readonly number[],
  seed: number,
  futures = 2000,
): number[][] | undefined {
  if (!isDomain(past, weeks, futures)) return undefined;
  const sums = Array.from({ length: weeks }, () => new Float64Array(futures));
  const draw = drawer(past, seed);
  for (let future = 0; future < futures; future += 1) {
    let sum = 0;
    for (const week of sums) week[future] = sum += draw();
  }
  return sums.map((week) => quantilesOf(week, quantiles));
}

/** The last week of `workAhead` alone, of the same draws. */
export function workBy(
  past: readonly number[],
  weeks: number,
  quantiles: readonly number[],
  seed: number,
  futures = 2000,
): number[] | undefined {
  if (!isDomain(past, weeks, futures)) return undefined;
  const sums = new Float64Array(futures);
  const draw = drawer(past, seed);
  for (let future = 0; future < futures; future += 1) {
    let sum = 0;
    for (let week = 0; week < weeks; week += 1) sum += draw();
    sums[future] = sum;
  }
  return quantilesOf(sums, quantiles);
}

function isDomain(past: readonly number[], weeks: number, futures: number): boolean {
  return past.length > 0 && notNegative(...past) && isCount(weeks) && weeks >= 1 && isCount(futures) && futures >= 1;
}

function quantilesOf(sums: Float64Array, quantiles: readonly number[]): number[] {
  sums.sort();
  return quantiles.map((q) => quantile(sums, q) ?? 0);
}
