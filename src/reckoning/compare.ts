/**
 * Comparisons of reckoned figures with a limit, where equal counts as held.
 *
 * A limit typed in one unit and a figure typed in another meet only to the last bits of binary arithmetic (3/4 in
 * over 1/4 in
 * is not quite 3). The slack, a part in 10⁹ of the smaller and 10⁻¹² about zero, is far below any digit a builder can
 * read; it forgives
 * nothing else, so that what is without end is at most nothing but itself.
 */
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
