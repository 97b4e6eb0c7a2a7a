/** Arithmetic mean, in the unit of the values. Domain: one finite value or more, else undefined. */
export function mean(values: readonly number[]): number | undefined {
  if (values.length === 0 || !values.every(Number.isFinite)) return undefined;
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
