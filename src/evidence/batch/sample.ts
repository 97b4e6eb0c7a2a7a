/**
 * Whether the pieces are samples of the joint: of the same batch, of the wood that was glued, and heated as it was.
 * Another species or kind shows nothing; another lot of the same is a caution; where nothing says of what wood, nothing
 * is shown.
 */
import type { Lot, Ref } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import { kindOf, lotsOfPiece } from "../piece/lots.ts";
import type { BatchFile, Finding, PieceFile, PieceVerdict } from "../types.ts";
import { type BatchCase, type GlueCase, lotRef } from "./case.ts";
import { isHeatedAsJoints } from "./post-cure.ts";

const gluedLots = ({ index, batch }: GlueCase): Lot[] => batch.timber.map((id) => lookUp(index.record.lots, id));

/** Of wood that was glued, and heated as the joints were. */
export const isSample = (c: GlueCase, file: PieceFile): boolean => isOfWood(c, file) && isHeatedAsJoints(c, file);

/** Whether every leg of a piece is of a kind that was glued; two lots of which no species is noted are alike only where they are one. */
function isOfWood(c: GlueCase, file: PieceFile): boolean {
  if (isOfScraps(file)) return true;
  const lots = lotsOfPiece(c.index, file.piece, c.batch);
  const glued = gluedLots(c);
  return lots.length > 0 && lots.every((lot) => glued.some((one) => isAlike(lot, one)));
}

/** Of whatever was glued, where no lot of its own says of what. */
const isOfScraps = ({ piece }: PieceFile): boolean =>
  piece.scraps === true && piece.lot === undefined && piece.legs === undefined;

const isAlike = (a: Lot, b: Lot): boolean => a.id === b.id || (kindOf(a) !== undefined && kindOf(a) === kindOf(b));

export function sampleWood(c: BatchCase): Finding[] {
  const counting = c.pieces.filter(({ piece }) => piece.trial === undefined);
  if (c.batch.joints.length === 0 || counting.length === 0) return [];
  const scraps = counting.every(({ piece }) => piece.scraps === true);
  if (c.batch.timber.length === 0 && !scraps) return [c.find("sample-wood/nothing-noted", "unproven", {})];
  const samples = counting.filter((file) => isSample(c, file));
  return [...strangers(c, counting), ...lacking(c, samples), ...otherLots(c, samples)];
}

const refs = (files: readonly PieceFile[]): Ref[] => files.map(({ piece }) => ({ kind: "piece", id: piece.id }));
const pieceIds = (files: readonly PieceFile[]): string[] => files.map(({ piece }) => piece.id);
const ids = (lots: readonly Lot[]): string[] => lots.map(({ id }) => id);

/** Pieces that are no samples count for nothing; that they are there is said. */
function strangers(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const nameless = counting.filter(
    ({ piece }) => piece.scraps !== true && lotsOfPiece(c.index, piece, c.batch).length === 0,
  );
  const other = counting.filter((file) => !nameless.includes(file) && !isOfWood(c, file));
  const say = (code: "sample-wood/no-lot" | "sample-wood/other-wood", files: readonly PieceFile[]): Finding[] =>
    files.length === 0 ? [] : [c.find(code, "caution", { pieces: pieceIds(files) }, { alsoOn: refs(files) })];
  return [...say("sample-wood/no-lot", nameless), ...say("sample-wood/other-wood", other)];
}

/** How a kind of wood was tried in a batch, by its samples. */
const isTried = (c: GlueCase, samples: readonly PieceFile[], lot: Lot, verdict: PieceVerdict): boolean =>
  samples.some(
    (file) => file.verdict === verdict && lotsOfPiece(c.index, file.piece, c.batch).some((own) => isAlike(own, lot)),
  );

/**
 * Wood that a joint holds and none of its batches names: what earlier glue brought in and stayed, or what a rework put
 * in. Each kind needs a sample that passed, of a batch that is in the joint.
 */
export function untried(index: RecordIndex, now: readonly BatchFile[], held: readonly string[]) {
  const named = new Set(now.flatMap(({ batch }) => batch.timber));
  const wood = held
    .filter((id) => !named.has(id))
    .map((id) => lookUp(index.record.lots, id))
    .filter(({ material }) => WOODS.includes(material));
  // Most joints hold no wood but what their batches name, and ask nothing of their pieces here.
  if (wood.length === 0) return { lots: [], waits: true };
  const cases = now.map(({ batch, pieces }) => {
    const c: GlueCase = { index, batch, adhesive: lookUp(index.record.adhesives, batch.adhesive) };
    return { c, samples: pieces.filter((file) => file.piece.trial === undefined && isSample(c, file)) };
  });
  const has = (lot: Lot, verdict: PieceVerdict): boolean =>
    cases.some(({ c, samples }) => isTried(c, samples, lot, verdict) || isTriedByScraps(c, samples, verdict));
  const without = wood.filter((lot) => !has(lot, "pass"));
  return { lots: ids(without), waits: without.every((lot) => has(lot, "not broken")) };
}

/** Of a batch that names no wood the joint's scraps are of whatever the joint holds. */
const isTriedByScraps = ({ batch }: GlueCase, samples: readonly PieceFile[], verdict: PieceVerdict): boolean =>
  batch.timber.length === 0 && samples.some((file) => isOfScraps(file) && file.verdict === verdict);

const WOODS: readonly Lot["material"][] = ["timber", "plywood"];

/** Each kind that was glued needs a piece that passed with a leg of it: both together in one, or one of each. */
function lacking(c: BatchCase, samples: readonly PieceFile[]): Finding[] {
  const has = (lot: Lot, verdict: PieceVerdict): boolean => isTried(c, samples, lot, verdict);
  const glued = gluedLots(c);
  const without = glued.filter((lot) => !has(lot, "pass"));
  if (without.length === 0)
    return samples.length === 0
      ? []
      : [c.find("sample-wood/covered", "meets", { lots: ids(glued) }, { alsoOn: ids(glued).map(lotRef) })];
  const waits = without.every((lot) => has(lot, "not broken"));
  const alsoOn = ids(without).map(lotRef);
  return [c.find("sample-wood/lacking", waits ? "waits" : "unproven", { lots: ids(without) }, { alsoOn })];
}

function otherLots(c: BatchCase, samples: readonly PieceFile[]): Finding[] {
  const own = new Set(samples.flatMap(({ piece }) => lotsOfPiece(c.index, piece, c.batch)).map(({ id }) => id));
  const missed = c.batch.timber.filter((id) => !own.has(id));
  if (missed.length === 0 || samples.length === 0) return [];
  return [c.find("sample-wood/other-lot", "caution", { lots: missed }, { alsoOn: missed.map(lotRef) })];
}
