/**
 * Sample standard deviation, in the unit of the values: √(∑(x − mean)² / (n − 1)).
 *
 * Domain: two finite values or more, else undefined. By definition.
 */
import { mean } from "./mean.ts";

export function sampleDeviation(values: readonly number[]): number | undefined {
  const centre = mean(values);
  if (centre === undefined || values.length < 2) return undefined;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1));
}
