/**
 * Exact two-sided interval of Clopper and Pearson for a share, of which `held` of `tried` were seen.
 *
 *   lower = the α/2 quantile of Beta(held, tried − held + 1), 0 where none held
 *   upper = the 1 − α/2 quantile of Beta(held + 1, tried − held), 1 where all held
 *
 * Shares of one; α = 1 − level. Each end leaves out at most α/2, so that the interval holds the true share at least
 * as often as its level says.
 * Source: Clopper and Pearson, Biometrika 26 (1934) 404; the beta form as in R's binom.test, whose example (682 of
 * 925) is seen; memory for the paper.
 * Domain: whole numbers, 0 ≤ held ≤ tried, tried ≥ 1, 0 < level < 1, else undefined.
 */
import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import { isCount, isLevel } from "../domain.ts";

export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

export function exactInterval(held: number, tried: number, level = 0.95): Interval | undefined {
  if (!(isCount(held) && isCount(tried) && tried >= 1 && held <= tried && isLevel(level))) return undefined;
  const tail = (1 - level) / 2;
  return {
    lower: held === 0 ? 0 : betaQuantile(tail, held, tried - held + 1),
    upper: held === tried ? 1 : betaQuantile(1 - tail, held + 1, tried - held),
  };
}
