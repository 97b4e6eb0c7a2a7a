/** Where a lot was used: batches, pieces, joints now and formerly, their assemblies and the hold points that wait for them. */
import type { Batch, Lot, Piece } from "../record/types.ts";
import { lotsOf } from "./batch/lots.ts";
import { index, must, type Book } from "./book.ts";
import type { HoldPointFile, JointFile, LotFile } from "./types.ts";

export interface Uses {
  readonly batches: ReadonlyMap<string, readonly Batch[]>;
  readonly pieces: ReadonlyMap<string, readonly Piece[]>;
  readonly holdPointsOfJoint: ReadonlyMap<string, readonly HoldPointFile[]>;
}

export function usesOf(book: Book, holdPoints: Iterable<HoldPointFile>): Uses {
  return {
    batches: index([...book.batches.values()], (batch) => lotsOf({ batch })),
    pieces: index([...book.pieces.values()], (piece) => [piece.lot]),
    holdPointsOfJoint: index([...holdPoints], (file) => file.joints),
  };
}

export function lotFiles(book: Book, uses: Uses, joints: ReadonlyMap<string, JointFile>): Map<string, LotFile> {
  return new Map([...book.record.lots].map(([id, lot]) => [id, lotFile(book, uses, joints, lot)]));
}

function lotFile(book: Book, uses: Uses, files: ReadonlyMap<string, JointFile>, lot: Lot): LotFile {
  const { id } = lot;
  const batches = uses.batches.get(id) ?? [];
  const touched = [...new Set(batches.flatMap((batch) => batch.joints))].map((joint) => must(files, joint, "joint"));
  const holding = new Set(touched.filter((file) => file.lots.includes(id)));
  const joints = [...holding].map((file) => file.joint.id);
  return {
    lot,
    recalls: book.recalls.get(id) ?? [],
    batches: batches.map((batch) => batch.id),
    pieces: (uses.pieces.get(id) ?? []).map((piece) => piece.id),
    joints,
    formerJoints: touched.filter((file) => !holding.has(file)).map((file) => file.joint.id),
    assemblies: [...new Set([...holding].map((file) => file.joint.assembly))],
    holdPoints: [
      ...new Set(joints.flatMap((joint) => (uses.holdPointsOfJoint.get(joint) ?? []).map((file) => file.holdPoint.id))),
    ],
  };
}
