/**
 * Weeks until a sum of minutes has been worked, by bootstrap of the weeks worked so far (as for the work ahead).
 *
 * For each quantile q: the least number of weeks within which at least the share q of the futures have reached
 * `left`; undefined where fewer have
 * within `most` weeks. 0 left takes 0 weeks.
 * Domain: one week or more of minutes ≥ 0, left ≥ 0 and finite, futures and most whole from 1, else undefined.
 */
import { isCount, notNegative } from "../domain.ts";
import { drawer } from "./drawn-weeks.ts";
import { quantile } from "../statistics/quantile.ts";

/** Twenty years: beyond it no forecast says anything. */
export const MOST_WEEKS = 1040;

export function finishWeeks(
  past: readonly number[],
  left: number,
  quantiles: readonly number[],
  seed: number,
  futures = 2000,
  most = MOST_WEEKS,
): (number | undefined)[] | undefined {
  if (
    !(past.length > 0 && notNegative(...past, left) && isCount(futures) && futures >= 1 && isCount(most) && most >= 1)
  )
    return undefined;
  const draw = drawer(past, seed);
  const weeks = Float64Array.from({ length: futures }, () => weeksOf(draw, left, most));
  weeks.sort();
  return quantiles.map((q) => {
    const week = quantile(weeks, q);
    return week !== undefined && week <= most ? week : undefined;
  });
}

function weeksOf(draw: () => number, left: number, most: number): number {
  let sum = 0;
  let weeks = 0;
  while (sum < left && weeks <= most) {
    sum += draw();
    weeks += 1;
  }
  return weeks;
}
