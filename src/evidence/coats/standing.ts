/** Coats by where they are: one is there until a later entry says how all of that place was taken off. */
import type { Coat } from "../../facts/types.ts";

/** One that was put on, and the line by which it was taken off. */
export interface CoatStood {
  readonly coat: Coat;
  readonly off?: Coat;
}

/** Of one assembly, in the order of the record. */
export function coatsStood(coats: readonly Coat[]): CoatStood[] {
  return coats.map((coat, at) => {
    const off = coats
      .slice(at + 1)
      .find((later) => later.stripped !== undefined && later.where === coat.where && later.entry !== coat.entry);
    return off === undefined ? { coat } : { coat, off };
  });
}

/** The one before it, of the same product at the same place since that was last taken off. */
export function coatBefore(all: readonly CoatStood[], { coat, off }: CoatStood): Coat | undefined {
  return all.find(
    (one) =>
      one.off === off &&
      one.coat.where === coat.where &&
      one.coat.finish === coat.finish &&
      one.coat.coat === coat.coat - 1,
  )?.coat;
}
