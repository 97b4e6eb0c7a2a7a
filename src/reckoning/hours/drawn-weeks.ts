/**
 * Draws past weeks with replacement. The generator is xoroshiro128+, seeded, so that nothing is left to chance
 * between two runs.
 */
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Each call gives the minutes of one week of `past`, each as likely as any other. `past` holds one week or more. */
export function drawer(past: readonly number[], seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => past[uniformInt(generator, 0, past.length - 1)] ?? 0;
}
