/**
 * Comparisons of reckoned figures with a limit, where equal counts as held.
 *
 * A limit typed in one unit and a figure typed in another meet only to the last bits of binary arithmetic (3/4 in
 * over 1/4 in
 * is not quite 3). The slack, a part in 10⁹ of the smaller and 10⁻¹² about zero, is far below any digit a builder can
 * read; it forgives
 * nothing else, so that what is without end is at most nothing but itself.
 */
import { isEstimate, saidEnds } from "../facts/quantity/ends.ts";
import type { Ends, Noted } from "../facts/types.ts";

const slack = (a: number, b: number): number => 1e-12 + 1e-9 * Math.min(Math.abs(a), Math.abs(b));

/** a ≤ b; false where either is not a number. */
export const atMost = (a: number, b: number): boolean => a <= b + slack(a, b);

/** a ≥ b; false where either is not a number. */
export const atLeast = (a: number, b: number): boolean => atMost(b, a);

/** Where a value stands to a closed range whose ends may be open. */
export function against(
  value: number,
  range: { readonly least?: number; readonly most?: number },
): "below" | "within" | "above" {
  if (range.least !== undefined && !atLeast(value, range.least)) return "below";
  if (range.most !== undefined && !atMost(value, range.most)) return "above";
  return "within";
}

/** Both ends within, and each where it lies if not. */
function endsAgainst({ least, most }: Ends, limits: Parameters<typeof against>[1]): "below" | "within" | "above" {
  const low = against(least, limits);
  return low === "within" ? against(most, limits) : low;
}

/** The same of what was noted: an estimate within the limits is only that. */
export function standing(
  noted: Noted,
  limits: Parameters<typeof against>[1],
): "below" | "within" | "above" | "estimate" {
  const where = endsAgainst(saidEnds(noted), limits);
  return where === "within" && isEstimate(noted) ? "estimate" : where;
}
