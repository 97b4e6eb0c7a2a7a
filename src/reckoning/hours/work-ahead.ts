/**
 * Minutes that may be worked in the weeks ahead: the mean of all weeks so far, as often as weeks are asked, with the
 * spread that earlier forecasts of the same record had (foretold.ts).
 *
 * The result holds for each of `weeks` weeks the given quantiles of the sum worked by its end; sums never fall from
 * one week to the next. Domain: one week or more of minutes ≥ 0, weeks whole from 1, quantiles between 0 and 1, else
 * undefined.
 */
import { isCount, notNegative } from "../domain.ts";
import { foretold, ratioAt, sumsOf } from "./foretold.ts";

export function workAhead(
  past: readonly number[],
  weeks: number,
  quantiles: readonly number[],
): number[][] | undefined {
  if (!isDomain(past, weeks, quantiles)) return undefined;
  const sums = sumsOf(past);
  let before: readonly number[] = [];
  return Array.from({ length: weeks }, (_, at) => {
    const reached = sumsBy(past, sums, at + 1, quantiles).map((sum, i) => Math.max(sum, before[i] ?? 0));
    before = reached;
    return reached;
  });
}

/** The sum of `weeks` weeks alone, as foretold for so many, whatever was foretold for fewer. */
export function workBy(past: readonly number[], weeks: number, quantiles: readonly number[]): number[] | undefined {
  return isDomain(past, weeks, quantiles) ? sumsBy(past, sumsOf(past), weeks, quantiles) : undefined;
}

function isDomain(past: readonly number[], weeks: number, quantiles: readonly number[]): boolean {
  const shares = quantiles.every((q) => q > 0 && q < 1);
  return past.length > 0 && notNegative(...past) && isCount(weeks) && weeks >= 1 && shares;
}

function sumsBy(
  past: readonly number[],
  sums: readonly number[],
  weeks: number,
  quantiles: readonly number[],
): number[] {
  const pace = (sums.at(-1) ?? 0) / past.length;
  const spread = foretold(past, sums, weeks);
  return quantiles.map((q) => pace * weeks * ratioAt(spread, q));
}
