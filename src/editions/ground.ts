/** What decides what evidence an edition shows. */
import type { Evidence, PieceFile } from "../evidence/types.ts";
import { type Decisions, redacted } from "../facts/decisions.ts";
import type { Batch, Record, Ref } from "../facts/types.ts";
import type { Visibility } from "../facts/visibility.ts";

/** What an edition sees of a record, with what of the whole its evidence is decided by. */
export interface Ground extends Visibility {
  readonly whole: Evidence;
  /** Whether all that is told of a thing comes from what the edition shows. */
  readonly tells: (ref: Ref) => boolean;
  /** The record as the edition shows it, and its batches by id. */
  readonly record: Record;
  readonly shownBatches: ReadonlyMap<string, Batch>;
  /** Minutes that it shows of each assembly's own work. */
  readonly minutes: ReadonlyMap<string, number>;
}

export interface GroundWithPieces extends Ground {
  readonly pieceFiles: ReadonlyMap<string, PieceFile>;
}

/** A fact of an entry goes with its entry. */
export const isTold = ({ entry }: { readonly entry: string }, { entries }: Visibility): boolean => entries.has(entry);
export const ofEntry =
  <F extends { readonly entry: string }>(decisions: Decisions<F>) =>
  (fact: F, ground: Ground): F | undefined =>
    isTold(fact, ground) ? redacted(fact, decisions, ground) : undefined;
