/** Where a lot was used: batches, pieces, joints now and formerly, their assemblies and the hold points that wait for them. */
import type { Batch, Lot, Piece, Remainder, Rework } from "../../facts/types.ts";
import { lotsOf } from "../batch/lots.ts";
import { remainsOf } from "./remains.ts";
import { indexBy, lookUp, type RecordIndex } from "../record-index.ts";
import type { HoldPointFile, JointFile, LotFile } from "../types.ts";

export interface Uses {
  readonly batches: ReadonlyMap<string, readonly Batch[]>;
  readonly pieces: ReadonlyMap<string, readonly Piece[]>;
  readonly remains: ReadonlyMap<string, readonly Remainder[]>;
  /** Joints that a rework put it into, with all that was reworked of each. */
  readonly putInto: ReadonlyMap<string, readonly (readonly [joint: string, reworks: readonly Rework[]])[]>;
  readonly holdPointsOfJoint: ReadonlyMap<string, readonly HoldPointFile[]>;
}

export function usesOf(index: RecordIndex, holdPoints: Iterable<HoldPointFile>): Uses {
  return {
    batches: indexBy([...index.batches.values()], (batch) => lotsOf({ batch })),
    pieces: indexBy([...index.pieces.values()], (piece) => [
      ...new Set(piece.legs?.map(({ lot }) => lot) ?? [piece.lot]),
    ]),
    remains: indexBy(
      index.record.entries.flatMap(({ remains }) => remains),
      ({ lot }) => lot,
    ),
    putInto: indexBy([...index.reworks], ([, reworks]) =>
      reworks.flatMap(({ replaced = [] }) => replaced.map((one) => one.with)),
    ),
    holdPointsOfJoint: indexBy([...holdPoints], (file) => file.joints),
  };
}

export function lotFiles(index: RecordIndex, uses: Uses, joints: ReadonlyMap<string, JointFile>): Map<string, LotFile> {
  return new Map([...index.record.lots].map(([id, lot]) => [id, lotFile(index, uses, joints, lot)]));
}

function lotFile(index: RecordIndex, uses: Uses, files: ReadonlyMap<string, JointFile>, lot: Lot): LotFile {
  const { id } = lot;
  const batches = uses.batches.get(id) ?? [];
  const putInto = (uses.putInto.get(id) ?? []).map(([joint]) => joint);
  const touched = [...new Set([...batches.flatMap((batch) => batch.joints), ...putInto])].map((joint) =>
    lookUp(files, joint),
  );
  const isHolding = (file: JointFile): boolean => file.lots.includes(id);
  const holding = touched.filter(isHolding);
  const joints = holding.map((file) => file.joint.id);
  return {
    lot,
    recalls: index.recalls.get(id) ?? [],
    findings: remainsOf(index.record, lot, uses.remains.get(id) ?? [], batches),
    batches: batches.map((batch) => batch.id),
    pieces: (uses.pieces.get(id) ?? []).map((piece) => piece.id),
    joints,
    formerJoints: touched.filter((file) => !isHolding(file)).map((file) => file.joint.id),
    assemblies: [...new Set(holding.map((file) => file.joint.assembly))],
    holdPoints: [
      ...new Set(joints.flatMap((joint) => (uses.holdPointsOfJoint.get(joint) ?? []).map((file) => file.holdPoint.id))),
    ],
  };
}
