/**
 * The least effect that so few pieces could have shown.
 *
 * Suppose that the bonds of every preparation but one always held, the case in which a difference shows best. How
 * much more often must the bonds of
 * that one fail before Fisher's exact test, two-sided at `alpha`, tells them apart in the share `power` of such
 * trials? The greatest such shortfall
 * over the preparations, as a share of one: whichever of them were the weak one, an effect of this size would have
 * shown.
 *
 *   c = the most bonds of the weak preparation that may hold for p ≤ alpha, at that number and at all below it
 *   P(Bin(n, q) ≤ c) = power  ⇒  q = the (1 − power) quantile of Beta(c + 1, n − c);  effect = 1 − q
 *
 * `clearest`: p of the clearest outcome, in which every bond of one fails and every other holds; the greatest over
 * the preparations.
 * `effect` is undefined where even the clearest outcome has p > alpha: then no effect at all could have been shown.
 * The definition is this program's own; the beta form of the binomial sum as in the exact interval.
 * Domain: two or more whole numbers from 1 of pieces that show something, together at most 120; 0 < alpha, power < 1;
 * else undefined.
 */
import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import { isCount, isLevel } from "../domain.ts";
import { fisherTable } from "./fisher-table.ts";

export interface LeastShown {
  readonly clearest: number;
  readonly effect?: number;
}

// Beyond it the tables take seconds to go through.
const MOST_PIECES = 120;

export function leastShownEffect(pieces: readonly number[], alpha = 0.05, power = 0.8): LeastShown | undefined {
  const all = pieces.reduce((sum, n) => sum + n, 0);
  if (
    !(
      pieces.length >= 2 &&
      all <= MOST_PIECES &&
      pieces.every((n) => isCount(n) && n >= 1) &&
      isLevel(alpha) &&
      isLevel(power)
    )
  )
    return undefined;
  const shown = pieces.map((_, weak) => ofOne(pieces, weak, alpha, power));
  if (!shown.every((one) => one !== undefined)) return undefined;
  const clearest = Math.max(...shown.map((one) => one.clearest));
  const effects = shown.flatMap(({ effect }) => (effect === undefined ? [] : [effect]));
  return effects.length < pieces.length ? { clearest } : { clearest, effect: Math.max(...effects) };
}

function ofOne(pieces: readonly number[], weak: number, alpha: number, power: number): LeastShown | undefined {
  const pOf = (held: number): number | undefined =>
    fisherTable(pieces.map((n, i) => (i === weak ? [held, n - held] : [n, 0])));
  const clearest = pOf(0);
  if (clearest === undefined) return undefined;
  if (clearest > alpha) return { clearest };
  let most = 0;
  while ((pOf(most + 1) ?? 1) <= alpha) most += 1;
  return { clearest, effect: 1 - betaQuantile(1 - power, most + 1, (pieces[weak] ?? 0) - most) };
}
