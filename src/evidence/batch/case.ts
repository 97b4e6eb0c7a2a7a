/** What one batch is judged by. */
import { isLotPart, type LotPart, MADE } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, Lot, Ref } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import { finder, type Finder } from "../finding.ts";
import type { Finding, PieceFile } from "../types.ts";
import { factsOf, type BatchFacts } from "./facts.ts";
import { loggedMoisture } from "./logged-moisture.ts";
import { type Read, readAt, warmestOf } from "./witnesses.ts";

export interface BatchCase {
  readonly index: RecordIndex;
  readonly batch: Batch;
  readonly adhesive: Adhesive;
  readonly read: Read;
  readonly facts: BatchFacts;
  /** Mean of what wood would have settled at over the two weeks before, share of dry mass, where the logger has them whole. */
  readonly loggedMoisture?: number;
  readonly pieces: readonly PieceFile[];
  readonly find: Finder;
}

/** The glue itself, whatever is known of its session. */
export type GlueCase = Pick<BatchCase, "index" | "batch" | "adhesive">;

export type BatchRule = (c: BatchCase) => readonly Finding[];

export function batchCase(index: RecordIndex, batch: Batch, pieces: readonly PieceFile[]): BatchCase {
  const adhesive = lookUp(index.record.adhesives, batch.adhesive);
  const read = readAt(index.shop, batch);
  const find = finder({ kind: "batch", id: batch.id }, [{ kind: "entry", id: batch.entry }]);
  return {
    index,
    batch,
    adhesive,
    pieces,
    find,
    read,
    facts: factsOf(batch, adhesive, warmestOf(read, batch)),
    loggedMoisture: loggedMoisture(index, batch),
  };
}

/** The lots noted for each part of its adhesive that comes in lots, in the order of the parts. */
export function componentLots({
  index,
  batch,
  adhesive,
}: BatchCase): { readonly material: LotPart; readonly lot?: Lot }[] {
  return MADE[adhesive.kind].parts.filter(isLotPart).map((material) => {
    const id = batch[material]?.lot;
    return { material, lot: id === undefined ? undefined : lookUp(index.record.lots, id) };
  });
}

export const lotRef = (id: string): Ref => ({ kind: "lot", id });
export const entryRef = (id: string): Ref => ({ kind: "entry", id });
