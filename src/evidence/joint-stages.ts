/**
 * A joint that is glued over several sessions. It is whole once each of its stages holds a batch, each batch in it is of a stage, and it was said
 * to be complete when the last of them was glued or later.
 */
import type { Batch, JointSpec, Ref, Stage } from "../facts/types.ts";
import { changesOf, type Changed, refsIn } from "./amended.ts";
import type { Finder } from "./finding.ts";
import { heldBy } from "./held.ts";
import { orderOf, type RecordIndex } from "./record-index.ts";
import type { Finding } from "./types.ts";
import { STAGES } from "../facts/glue/stage.ts";

type Held = ReturnType<typeof heldBy>;

interface Staged {
  /** As many as the plan, or any line, says that there are. */
  readonly of: number;
  readonly missing: readonly number[];
  /** Batches in it that are of no stage. */
  readonly unsaid: readonly Batch[];
  readonly complete?: Stage;
}

/** Undefined where the joint is not said to be glued in stages, or holds no glue. */
function stagedBy(index: RecordIndex, joint: JointSpec, held: Held): Staged | undefined {
  const { batches, stages, reworks, inStages } = held;
  if (!inStages || batches.length === 0) return undefined;
  const isOf = ({ id }: Batch, stage: Stage): boolean => stage.batches.includes(id);
  const of = Math.max(joint.stages ?? 1, ...stages.map((one) => Math.max(one.of ?? 1, one.stage)));
  const glued = new Set(
    stages.filter((stage) => batches.some((batch) => isOf(batch, stage))).map(({ stage }) => stage),
  );
  const last = Math.max(...[...batches, ...reworks].map(({ entry }) => orderOf(index, entry)));
  const complete = stages.findLast((stage) => stage.complete === true && orderOf(index, stage.entry) >= last);
  return {
    of,
    missing: Array.from({ length: of }, (_, at) => at + 1).filter((number) => !glued.has(number)),
    unsaid: batches.filter((batch) => !stages.some((stage) => isOf(batch, stage))),
    ...(complete === undefined ? {} : { complete }),
  };
}

/** Whether all of it was glued, by all entries up to a place in the order of the record. */
export function isWhole(index: RecordIndex, joint: JointSpec, until: number): boolean {
  const staged = stagedBy(index, joint, heldBy(index, joint, until));
  if (staged === undefined) return true;
  return staged.missing.length === 0 && staged.unsaid.length === 0 && staged.complete !== undefined;
}

export function stageFindings(index: RecordIndex, joint: JointSpec, held: Held, find: Finder): Finding[] {
  const staged = stagedBy(index, joint, held);
  if (staged === undefined) return [];
  const { of, missing: stages, unsaid, complete } = staged;
  const said = index.stages.get(joint.id) ?? [];
  const alsoOn = [
    ...[...held.batches, ...said].map(({ entry }): Ref => ({ kind: "entry", id: entry })),
    ...held.batches.map(({ id }): Ref => ({ kind: "batch", id })),
  ];
  const found =
    unsaid.length === 0
      ? []
      : [find("joint-stages/unsaid", "unproven", { batches: unsaid.map(({ id }) => id) }, { alsoOn })];
  if (complete === undefined)
    return [
      ...found,
      stages.length > 0
        ? find("joint-stages/to-come", "waits", { stages, of }, { alsoOn })
        : find("joint-stages/not-said-complete", "waits", { of }, { alsoOn }),
    ];
  const { day } = complete;
  if (stages.length > 0) return [...found, find("joint-stages/left-out", "unproven", { stages, of, day }, { alsoOn })];
  return found.length > 0 ? found : [find("joint-stages/complete", "meets", { of, day }, { alsoOn })];
}

/** Batches in it that cure together: of each stage those that are of it, then those of none. */
export function sessionsOf({ batches, stages, inStages }: Held): (readonly Batch[])[] {
  if (!inStages) return [batches];
  const numbers = [...new Set(stages.map(({ stage }) => stage))].sort((a, b) => a - b);
  const ofStage = numbers.map((number) => stages.filter(({ stage }) => stage === number).flatMap((one) => one.batches));
  const rest = batches.filter(({ id }) => !ofStage.some((ids) => ids.includes(id)));
  return [...ofStage.map((ids) => batches.filter(({ id }) => ids.includes(id))), rest].filter(
    (some) => some.length > 0,
  );
}

/** What was amended of the stages of a joint. */
export const amendedStages = (index: RecordIndex, joint: JointSpec): readonly Changed[] =>
  index.memo.within(index, joint, stagesChanged);

function stagesChanged(index: RecordIndex, { id }: JointSpec): readonly Changed[] {
  const entries = [...(index.stages.get(id) ?? []), ...(index.batchesOfJoint.get(id) ?? [])].map(({ entry }) => entry);
  const names = ({ change: { was, is } }: Changed): boolean =>
    [...refsIn(was), ...refsIn(is)].some((ref) => ref.kind === "joint" && ref.id === id);
  return [...new Set(entries)].flatMap((entry) =>
    changesOf(index, { kind: "entry", id: entry }).filter((one) => one.change.fact === STAGES && names(one)),
  );
}
