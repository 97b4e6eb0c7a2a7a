/**
 * The quotient of two whole numbers, neither negative, as the nearest-below double to at least 64 bits: no overflow,
 * whatever their size.
 *
 * Domain: whole > 0, 0 ≤ part, else undefined.
 */
export function exactShare(part: bigint, whole: bigint): number | undefined {
  if (whole <= 0n || part < 0n) return undefined;
  const shift = Math.max(0, bits(whole) - bits(part) + 64);
  return Number((part << BigInt(shift)) / whole) * 2 ** -shift;
}

const bits = (n: bigint): number => n.toString(2).length;
