/** A cure with only what an edition shows of it. */
import type { Cure } from "../evidence/types/cure.ts";
import type { Ref } from "../facts/types.ts";

/** When a hidden test broke the piece goes with the test; what a hidden log tells of warmth goes with the log. */
export function redactedCure(cure: Cure, testIsShown: boolean, tells: (ref: Ref) => boolean): Cure {
  const { from, least, reference, referenceFrom, law } = cure;
  if (!cure.logs.every(tells)) return { from, least, reference, referenceFrom, law, readyBy: "withheld", logs: [] };
  if (testIsShown) return cure;
  const { age: _age, warmth: _warmth, ...rest } = cure;
  return rest;
}
