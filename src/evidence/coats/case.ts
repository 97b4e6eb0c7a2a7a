/** What the rules of one coat look at. */
import type { Coat, Finish } from "../../facts/types.ts";
import { type Finder, finder } from "../finding.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";

export interface CoatCase {
  readonly index: RecordIndex;
  readonly coat: Coat;
  readonly finish: Finish;
  /** The one before it there, where that is noted. */
  readonly before?: Coat | undefined;
  readonly find: Finder;
}

export function coatCase(index: RecordIndex, coat: Coat, before: Coat | undefined): CoatCase {
  const find = finder({ kind: "entry", id: coat.entry }, []);
  return { index, coat, before, find, finish: lookUp(index.record.finishes, coat.finish) };
}

/** Between which instants it was put on: at the time that is noted, else at some time of its day, s. */
export function putOn(index: RecordIndex, { at, latest, entry }: Coat): { readonly from: number; readonly to: number } {
  if (at !== undefined) return { from: at.epoch, to: latest ?? at.epoch };
  const { dayStart, dayEnd } = lookUp(index.entries, entry);
  return { from: dayStart, to: dayEnd };
}
