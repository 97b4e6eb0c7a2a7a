/** Evidence of pieces, batches and joints with only what an edition shows in it. */
import { lotsOf } from "../evidence/batch/lots.ts";
import type { BatchFile, JointFile, PieceFile } from "../evidence/types.ts";
import { jointShown } from "../facts/build/joint.ts";
import { type Decisions, each, onlyShown, part, redacted, same, show } from "../facts/decisions.ts";
import { batchShown } from "../facts/glue/batch.ts";
import { pieceShown } from "../facts/glue/piece.ts";
import { isRecallShown, type Recall, recallShown } from "../facts/glue/recall.ts";
import { rejectionShown } from "../facts/glue/rejection.ts";
import { reworkShown } from "../facts/glue/rework.ts";
import { testShown } from "../facts/glue/test.ts";
import { type Ground, type GroundWithPieces, isTold, ofEntry } from "./ground.ts";
import { cureShown } from "./redacted-cure.ts";
import { findings } from "./redacted-findings.ts";

export const pieceFileShown: Decisions<PieceFile, Ground> = {
  piece: part(pieceShown),
  test: ofEntry(testShown),
  verdict: show,
  findings,
  overlapRatio: show,
  revealing: show,
  curedFor: withTest,
  cure: (cure, { tells }, { test }) =>
    redacted(cure, cureShown, { test: test === undefined || tells({ kind: "entry", id: test.entry }), tells }),
  stress: withTest,
  // Of a piece that was broken it may be what the load shows.
  atMost: (value, ground, { test }) => (test === undefined || isTold(test, ground) ? value : undefined),
};

/** What was reckoned from a hidden test goes with it; the verdict, as of the whole record, stays. */
function withTest(value: number, ground: Ground, { test }: PieceFile): number | undefined {
  return test !== undefined && isTold(test, ground) ? value : undefined;
}

export const batchFileShown: Decisions<BatchFile, GroundWithPieces> = {
  batch: part(batchShown),
  verdict: show,
  findings,
  pieces: (all, ground) =>
    same(
      all,
      all.flatMap(({ piece }) => ground.pieceFiles.get(piece.id) ?? []),
    ),
  recalls: each(recallShown, (recall: Recall, ground) => isTold(recall, ground) && isRecallShown(recall, ground)),
  rejection: ofEntry(rejectionShown),
  ratio: show,
  moistureEstimate: (estimate, ground, file) =>
    findings(file.findings, ground).every(({ rule, code }) => rule !== "wood-moisture" || code !== "withheld")
      ? estimate
      : undefined,
  dewPoint: show,
  openFor: show,
  workingLife: show,
};

export const jointFileShown: Decisions<JointFile, Ground> = {
  joint: part(jointShown),
  state: show,
  findings,
  batches: onlyShown("batches"),
  superseded: onlyShown("batches"),
  reworks: each(reworkShown, isTold),
  lots: (ids, ground, { batches, superseded, reworks }) => {
    const putIn = reworks
      .filter((rework) => isTold(rework, ground))
      .flatMap(({ replaced = [] }) => replaced.map((one) => one.with))
      .filter((id) => ground.lots.has(id));
    const glue = [...batches, ...superseded].flatMap((id) => {
      const batch = ground.shownBatches.get(id);
      return batch ? lotsOf({ batch }) : [];
    });
    const used = new Set([...glue, ...putIn]);
    return same(
      ids,
      ids.filter((id) => used.has(id)),
    );
  },
};
