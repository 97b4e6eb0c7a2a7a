/**
 * Against which the least effect that a trial could have shown is held: the page tells that, and not the power itself.
 *
 * Power of a trial of two preparations: how often Fisher's exact test, two-sided at `alpha`, would tell them apart.
 *
 *   power = ∑ over x, y of Bin(x; n₁, p₁)·Bin(y; n₂, p₂), where the table [[x, n₁ − x], [y, n₂ − y]] has p ≤ alpha
 *
 * n pieces and true share p of each preparation. By going through every outcome; from the definition of power.
 * Domain: n₁, n₂ whole, 1 to 60; p₁, p₂ from 0 to 1; 0 < alpha < 1; else undefined.
 */
import { choose } from "../../src/reckoning/statistics/binomial-coefficient.ts";
import { isCount, isLevel } from "../../src/reckoning/domain.ts";
import { fisherExact } from "../../src/reckoning/statistics/fisher-exact.ts";

export interface Preparation {
  readonly pieces: number;
  readonly share: number;
}

const MOST_PIECES = 60;

export function trialPower(one: Preparation, other: Preparation, alpha = 0.05): number | undefined {
  const usable = ({ pieces, share }: Preparation): boolean =>
    isCount(pieces) && pieces >= 1 && pieces <= MOST_PIECES && share >= 0 && share <= 1;
  if (!(usable(one) && usable(other) && isLevel(alpha))) return undefined;
  let power = 0;
  for (let x = 0; x <= one.pieces; x += 1) {
    for (let y = 0; y <= other.pieces; y += 1) {
      const p =
        fisherExact([
          [x, one.pieces - x],
          [y, other.pieces - y],
        ])?.twoSided ?? 1;
      if (p <= alpha) power += chance(x, one) * chance(y, other);
    }
  }
  return power;
}

const chance = (x: number, { pieces, share }: Preparation): number =>
  Number(choose(pieces, x)) * share ** x * (1 - share) ** (pieces - x);
