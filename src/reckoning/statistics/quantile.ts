/**
 * Quantile of values sorted from least to greatest, as one of the values: the least that at least the share q of them
 * do not exceed.
 *
 * Domain: one value or more, 0 < q ≤ 1, else undefined. The inverse of the empirical distribution (type 1 of Hyndman
 * and Fan 1996; memory).
 */
export function quantile(sorted: ArrayLike<number>, q: number): number | undefined {
  // The slack keeps q·n from lying above a whole number by rounding alone.
  return q > 0 && q <= 1 ? sorted[Math.max(0, Math.ceil(q * sorted.length - 1e-9) - 1)] : undefined;
}
