/** Parts bought in, by where they stand: one is in the aircraft until a later line says what took its place. */
import type { Entry, Fitting, Recall } from "../../facts/types.ts";
import { indexBy, orderOf, type RecordIndex } from "../record-index.ts";

/** One that was fitted, and the line by which it was taken out again. */
export interface Stood {
  readonly fitting: Fitting;
  readonly out?: Fitting;
}

/** In the order of the record. Only a line that names the lot of what stood there takes it out. */
export function stoodIn(index: RecordIndex, assembly: string): Stood[] {
  return stood(index.fittedIn.get(assembly) ?? []);
}

/** Those of several entries in their order, assembly by assembly. */
export function allStood(entries: readonly Entry[]): Stood[] {
  const fitted = entries.flatMap((entry) => entry.fitted);
  return [...indexBy(fitted, ({ assembly }) => assembly).values()].flatMap(stood);
}

function stood(fittings: readonly Fitting[]): Stood[] {
  return fittings.map((fitting, at) => {
    const out = fittings
      .slice(at + 1)
      .find(
        (later) => later.where === fitting.where && later.entry !== fitting.entry && later.replaces === fitting.lot,
      );
    return out === undefined ? { fitting } : { fitting, out };
  });
}

/** Recalls of what stood there by an entry of the record, said by then. */
export function recalledBy(index: RecordIndex, one: Stood, until = Number.POSITIVE_INFINITY): readonly Recall[] {
  const isSeen = ({ entry }: { readonly entry: string }): boolean => orderOf(index, entry) <= until;
  if (!isSeen(one.fitting) || (one.out && isSeen(one.out))) return [];
  return (index.recalls.get(one.fitting.lot) ?? []).filter(isSeen);
}
