/**
 * Weeks until a sum of minutes has been worked, by the pace so far and the spread of earlier forecasts (foretold.ts).
 *
 * For each share: the least number of weeks by which `left` is worked with that chance; undefined where that takes
 * more than `most` weeks. 0 left takes 0 weeks. Domain: one week or more of minutes ≥ 0, left ≥ 0 and finite, shares
 * between 0 and 1, most whole from 1, else undefined.
 */
import { notNegative } from "../domain.ts";
import { workAhead } from "./work-ahead.ts";

/** Twenty years: beyond it no forecast says anything. */
export const MOST_WEEKS = 1040;

export function finishWeeks(
  past: readonly number[],
  left: number,
  shares: readonly number[],
  most = MOST_WEEKS,
): (number | undefined)[] | undefined {
  if (!notNegative(left)) return undefined;
  const sums = workAhead(
    past,
    most,
    shares.map((share) => 1 - share),
  );
  return sums && shares.map((_, i) => (left === 0 ? 0 : weekOf(sums, i, left)));
}

function weekOf(sums: readonly (readonly number[])[], i: number, left: number): number | undefined {
  const at = sums.findIndex((week) => (week[i] ?? 0) >= left);
  return at < 0 ? undefined : at + 1;
}
