/** What the overview of the evidence says: where things stand, and what stands in the way of each hold point. */
import type { BatchFile, BatchVerdict, HoldPointFile, JointFile, JointState, LotFile } from "../../evidence/types.ts";
import { toldNeed, type ToldNeed } from "../../words/findings/told.ts";
import type { Trial } from "../../facts/types.ts";
import { holdPoints } from "./evidence-lists.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { type Marked, severityRank } from "./marked.ts";
import { batchMark, BATCH_VERDICTS, deciding, JOINT_STATES } from "./verdict-words.ts";

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
  /** Every joint by its assembly, for those who look for one. */
  readonly jointsOf: readonly { readonly assembly: string; readonly joints: readonly JointFile[] }[];
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
    batches: worstFirst([...batches].reverse(), ({ file }) => batchMark(file).mark),
    jointsOf: traceIndex(shown).assemblies.flatMap((assembly) => {
      const of = (record.assemblies.get(assembly)?.joints ?? []).flatMap(({ id }) => evidence.joints.get(id) ?? []);
      return of.length === 0 ? [] : [{ assembly, joints: of }];
    }),
    lots: [...evidence.lots.values()],
    trials: [...record.trials.values()],
  };
}

export interface JointRow {
  readonly file: JointFile;
  /** What decided its state, a sentence each; nothing where every limit held. */
  readonly reasons: readonly string[];
}

/** Every joint, the worst first. */
export function jointRows({ evidence, say }: Shown): JointRow[] {
  return worstFirst([...evidence.joints.values()], ({ state }) => state).map((file) => ({
    file,
    reasons: jointReasons(say, file),
  }));
}

/** What decided a joint's state, a sentence each. */
export const jointReasons = (say: Shown["say"], { findings }: JointFile): string[] => deciding(findings).map(say);

function worstFirst<T>(all: readonly T[], markOf: (one: T) => Marked): T[] {
  return [...all].sort((a, b) => severityRank(markOf(a)) - severityRank(markOf(b)));
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
