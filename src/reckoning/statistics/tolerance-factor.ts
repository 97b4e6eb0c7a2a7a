/**
 * One-sided tolerance factor k for a normal distribution: with the confidence given, at least the share `coverage` of
 * all values lies above mean − k·s, where mean and s (n − 1) are those of n values.
 *
 *   k = t(confidence; ν = n − 1, δ = z·√n)/√n, t the quantile of the noncentral t distribution, z the normal quantile of `coverage`;
 *   so k solves E[Φ(√n·(k·S − z))] = confidence, with ν·S² distributed as χ² of ν degrees of freedom
 *
 * The mean is taken over y = ln S by the trapezoid rule, which for so smooth a function that dies away at both ends
 * is exact but for rounding. Source: CMH-17-1G, table for n = 2 to 137, 95/90 and 95/99, second-hand (tests of an R
 * package); its values lie up to 0.002 from the exact ones. Domain: n whole, 2 to 10,000; coverage and confidence
 * from 0.5 to below 1 and not both 0.5; else undefined.
 */
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { isCount } from "../domain.ts";

const NODES = 1000;
/** Where the weights end, below e^−46 even with one degree of freedom. */
const TOP = 2.3;

export function toleranceFactor(n: number, coverage: number, confidence: number): number | undefined {
  const usable = (p: number): boolean => p >= 0.5 && p < 1;
  if (!(isCount(n) && n >= 2 && n <= 10_000 && usable(coverage) && usable(confidence) && coverage + confidence > 1))
    return undefined;
  const z = normalQuantile(coverage, 0, 1);
  const nodes = nodesOf(n - 1);
  const reached = (k: number): number =>
    nodes.reduce((sum, { s, weight }) => sum + weight * normalCdf(Math.sqrt(n) * (k * s - z), 0, 1), 0);
  return rootOf((k) => reached(k) - confidence);
}

/** Values of S, even in its logarithm, with weights of its distribution that add up to one. */
function nodesOf(freedom: number): { readonly s: number; readonly weight: number }[] {
  const from = -(40 / freedom + 10 / Math.sqrt(2 * freedom));
  const step = (TOP - from) / NODES;
  const raw = Array.from({ length: NODES + 1 }, (_, i) => {
    const y = from + i * step;
    return { s: Math.exp(y), weight: Math.exp(freedom * (y - Math.expm1(2 * y) / 2)) };
  });
  const whole = raw.reduce((sum, { weight }) => sum + weight, 0);
  return raw.map(({ s, weight }) => ({ s, weight: weight / whole }));
}

/** Where a function that rises from below 0 crosses it, above 0. */
function rootOf(rising: (k: number) => number): number {
  let low = 0;
  let high = 1;
  while (rising(high) < 0) high *= 2;
  while (high - low > 1e-13 * high) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
