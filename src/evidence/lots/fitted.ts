/** Parts bought in, by where they stand: each is in the aircraft until a later line says what took its place. */
import type { Entry, Fitting, Recall } from "../../facts/types.ts";
import { indexBy, orderOf, type RecordIndex } from "../record-index.ts";

/** What one line fitted. */
export interface Stood {
  readonly fitting: Fitting;
  /** How many of them nothing took the place of. */
  readonly left: number;
  /** Later lines that took the place of some of them. */
  readonly replacedBy: readonly Fitting[];
  /** The one of these by which the last was taken out. */
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

/** A line takes out no more than it fits, the oldest first. */
function stood(fittings: readonly Fitting[]): Stood[] {
  const all = fittings.map((fitting) => ({ fitting, left: fitting.count, replacedBy: [] as Fitting[] }));
  fittings.forEach((later, at) => {
    let more = later.count;
    for (const one of all.slice(0, at)) {
      const out = isReplacedBy(one.fitting, later) ? Math.min(one.left, more) : 0;
      if (out === 0) continue;
      one.left -= out;
      more -= out;
      one.replacedBy.push(later);
    }
  });
  return all.map((one) => {
    const last = one.left === 0 ? one.replacedBy.at(-1) : undefined;
    return last === undefined ? one : { ...one, out: last };
  });
}

const isReplacedBy = ({ where, lot, entry }: Fitting, later: Fitting): boolean =>
  later.where === where && later.entry !== entry && later.replaces === lot;

/** Recalls of what stood there by an entry of the record, said by then. */
export function recalledBy(index: RecordIndex, one: Stood, until = Number.POSITIVE_INFINITY): readonly Recall[] {
  const isSeen = ({ entry }: { readonly entry: string }): boolean => orderOf(index, entry) <= until;
  if (!isSeen(one.fitting) || (one.out && isSeen(one.out))) return [];
  return (index.recalls.get(one.fitting.lot) ?? []).filter(isSeen);
}
