/**
 * Exact one-sided lower bound for a share, of which `held` of `tried` were seen: the α quantile of Beta(held, tried −
 * held + 1), 0 where none held.
 *
 * With all held it is α^(1/tried): three of three show no more than 0.05^(1/3) = 37 % at 95 % confidence.
 * Shares of one; α = 1 − level. Source as for the two-sided interval of Clopper and Pearson.
 * Domain: whole numbers, 0 ≤ held ≤ tried, tried ≥ 1, 0 < level < 1, else undefined.
 */
import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import { isCount, isLevel } from "../domain.ts";

export function exactLowerBound(held: number, tried: number, level = 0.95): number | undefined {
  if (!(isCount(held) && isCount(tried) && tried >= 1 && held <= tried && isLevel(level))) return undefined;
  return held === 0 ? 0 : betaQuantile(1 - level, held, tried - held + 1);
}
