/** What the overview of the evidence says: where things stand, and what stands in the way of each hold point. */
import type { BatchFile, BatchVerdict, HoldPointFile, JointState, LotFile } from "../../evidence/types.ts";
import { toldNeed, type ToldNeed } from "../../words/findings/told.ts";
import type { Trial } from "../../facts/types.ts";
import { holdPoints } from "./evidence-lists.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { BATCH_VERDICTS, deciding, JOINT_STATES } from "./verdict-words.ts";

export interface BatchRow {
  readonly file: BatchFile;
  /** Of the pieces that count for the batch. */
  readonly passed: number;
  readonly counting: number;
  /** What decided its verdict, a sentence each. */
  readonly reasons: readonly string[];
}

export interface Overview {
  readonly joints: readonly (readonly [JointState, number])[];
  readonly batchVerdicts: readonly (readonly [BatchVerdict, number])[];
  readonly holdPoints: readonly {
    readonly file: HoldPointFile;
    readonly blocking: readonly ToldNeed[];
    readonly toDo: number;
  }[];
  readonly batches: readonly BatchRow[];
  readonly lots: readonly LotFile[];
  readonly trials: readonly Trial[];
}

export function overview(shown: Shown): Overview {
  const { evidence, record } = shown;
  const joints = [...evidence.joints.values()];
  const batches = traceIndex(shown)
    .batches.flatMap(({ id }) => evidence.batches.get(id) ?? [])
    .map((file) => batchRow(shown, file));
  return {
    joints: JOINT_STATES.map((state) => [state, joints.filter((file) => file.state === state).length] as const),
    batchVerdicts: BATCH_VERDICTS.map(
      (verdict) => [verdict, batches.filter(({ file }) => file.verdict === verdict).length] as const,
    ),
    holdPoints: holdPoints(shown).map((file) => ({
      file,
      blocking: file.needs.filter(({ blocks }) => blocks).map((need) => toldNeed(shown.say, need)),
      toDo: file.needs.filter(({ blocks }) => !blocks).length,
    })),
    batches: [...batches].reverse(),
    lots: [...evidence.lots.values()],
    trials: [...record.trials.values()],
  };
}

function batchRow({ say }: Shown, file: BatchFile): BatchRow {
  const counting = file.pieces.filter(({ piece }) => piece.trial === undefined);
  return {
    file,
    counting: counting.length,
    passed: counting.filter(({ verdict }) => verdict === "pass").length,
    reasons: deciding(file.findings).map(say),
  };
}
