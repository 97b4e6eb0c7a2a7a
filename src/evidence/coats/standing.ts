/** Coats by where they are: one is there until a later entry says how all of that place was taken off. */
import type { Coat } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";

/** One that was put on, and the line by which it was taken off. */
export interface CoatStood {
  readonly coat: Coat;
  readonly off?: Coat;
}

/** Those of one assembly, in the order of the record. */
export function coatsStood(index: RecordIndex, assembly: string): readonly CoatStood[] {
  const coats = index.coatsOn.get(assembly);
  return coats === undefined ? [] : index.memo.once(coats, stood);
}

/** From the last to the first, with the next line of each place by which all was taken off, and the next that is of another entry than that. */
function stood(coats: readonly Coat[]): readonly CoatStood[] {
  const next = new Map<string, { readonly off: Coat; readonly other?: Coat | undefined }>();
  return [...coats]
    .reverse()
    .map((coat): CoatStood => {
      const later = next.get(coat.where);
      const off = later?.off.entry === coat.entry ? later.other : later?.off;
      if (coat.stripped !== undefined) next.set(coat.where, { off: coat, other: off });
      return off === undefined ? { coat } : { coat, off };
    })
    .reverse();
}

/** For each the one before it, of the same product at the same place since that was last taken off. */
export function coatsBefore(all: readonly CoatStood[]): ReadonlyMap<CoatStood, Coat> {
  const places = new Map(all.map(({ coat }, at) => [coat, at]));
  const keyOf = ({ coat, off }: CoatStood, number: number): string =>
    JSON.stringify([coat.where, coat.finish, number, off && places.get(off)]);
  const first = new Map<string, Coat>();
  for (const one of [...all].reverse()) first.set(keyOf(one, one.coat.coat), one.coat);
  return new Map(
    all.flatMap((one) => {
      const before = first.get(keyOf(one, one.coat.coat - 1));
      return before === undefined ? [] : [[one, before] as const];
    }),
  );
}
