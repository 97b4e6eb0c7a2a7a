/**
 * Individuals and moving-range chart of values in the order in which they came.
 *
 *   centre = mean of x;  moving range MRᵢ = |xᵢ − xᵢ₋₁|;  limits of x = centre ± 3·mean MR/1.128;  upper limit of MR
 * = 3.267·mean MR
 *
 * In the unit of the values. 1.128 is d₂ for two values (NIST/SEMATECH handbook 6.3.2.2, seen second-hand); 3.267 is
 * D₄ for two (memory).
 * `outside` and `rangeOutside` are the places of values beyond the limits: something in particular may have caused
 * them and is worth looking for.
 * Below 8 values there are no limits, since so few would set them by chance (this program's own bound).
 * Domain: one finite value or more, else undefined.
 */
import { atLeast, atMost } from "../compare.ts";
import { mean } from "./mean.ts";

export interface IndividualsChart {
  readonly centre: number;
  readonly ranges: readonly number[];
  readonly limits?: Limits;
}

interface Limits {
  readonly lower: number;
  readonly upper: number;
  readonly meanRange: number;
  readonly rangeUpper: number;
  readonly outside: readonly number[];
  readonly rangeOutside: readonly number[];
}

export const LEAST_POINTS = 8;

export function individualsChart(values: readonly number[]): IndividualsChart | undefined {
  const centre = mean(values);
  if (centre === undefined) return undefined;
  const ranges = values.slice(1).map((value, i) => Math.abs(value - (values[i] ?? value)));
  const meanRange = mean(ranges);
  if (values.length < LEAST_POINTS || meanRange === undefined) return { centre, ranges };
  const lower = centre - (3 * meanRange) / 1.128;
  const upper = centre + (3 * meanRange) / 1.128;
  const rangeUpper = 3.267 * meanRange;
  const places = (list: readonly number[], out: (value: number) => boolean): number[] =>
    list.flatMap((value, i) => (out(value) ? [i] : []));
  const outside = places(values, (value) => !atLeast(value, lower) || !atMost(value, upper));
  // A range belongs to the later of its two values.
  const rangeOutside = places(ranges, (range) => !atMost(range, rangeUpper)).map((i) => i + 1);
  return { centre, ranges, limits: { lower, upper, meanRange, rangeUpper, outside, rangeOutside } };
}
