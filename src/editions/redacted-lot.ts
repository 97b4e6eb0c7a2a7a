import type { LotFile } from "../evidence/types.ts";
import { lotShown } from "../facts/build/lot.ts";
import { type Decisions, each, onlyShown, part, same } from "../facts/decisions.ts";
import { recallShown } from "../facts/glue/recall.ts";
import { type Ground, isTold } from "./ground.ts";
import { findings } from "./redacted-findings.ts";

/** Where a lot was used, through shown batches alone. */
export const lotFileShown: Decisions<LotFile, Ground> = {
  lot: part(lotShown),
  recalls: each(recallShown, isTold),
  findings,
  batches: onlyShown("batches"),
  pieces: onlyShown("pieces"),
  joints: (_, ground, file) => jointsOf(file, ground),
  formerJoints: (ids, ground, file) => through(ids, file, ground),
  assemblies: (ids, ground, file) => reached(ids, ground.whole.assemblies, file, ground),
  holdPoints: (ids, ground, file) => reached(ids, ground.whole.holdPoints, file, ground),
};

function jointsOf(file: LotFile, ground: Ground): readonly string[] {
  return through(file.joints, file, ground);
}

/** Joints that a shown batch, in them now or before, or a shown rework leads to. */
function through(ids: readonly string[], { batches, lot }: LotFile, ground: Ground): readonly string[] {
  const among = new Set(batches.filter((id) => ground.batches.has(id)));
  const isReached = (id: string): boolean => {
    const { batches: now = [], superseded = [], reworks = [] } = ground.whole.joints.get(id) ?? {};
    const isPutIn = reworks.some(
      (rework) => isTold(rework, ground) && (rework.replaced ?? []).some((one) => one.with === lot.id),
    );
    return isPutIn || [...now, ...superseded].some((batch) => among.has(batch));
  };
  return same(ids, ids.filter(isReached));
}

function reached(
  ids: readonly string[],
  holding: ReadonlyMap<string, { readonly joints: readonly string[] }>,
  file: LotFile,
  ground: Ground,
): readonly string[] {
  const joints = new Set(jointsOf(file, ground));
  return same(
    ids,
    ids.filter((id) => holding.get(id)?.joints.some((joint) => joints.has(joint)) ?? false),
  );
}
