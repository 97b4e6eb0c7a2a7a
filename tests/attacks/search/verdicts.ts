/** Verdicts in their order: what a builder could wish to gain. */
import { reckon } from "../../../src/evidence/evidence.ts";
import type { BatchVerdict, CoatVerdict, HoldState, JointState } from "../../../src/evidence/types.ts";
import type { Record } from "../../../src/facts/types.ts";

/**
 * `rank`: from the worst. `claim`: 0 where nothing is claimed of it, 1 where it waits, above that where it is said to be good. Without an adverse
 * fact nobody can say more than that nothing is shown, so a record may claim no more where a fact is gone; what is amended or reordered is there still,
 * and may not even rank better.
 */
interface Place {
  readonly rank: number;
  readonly claim: number;
}

const BATCH: { readonly [verdict in BatchVerdict]: Place } = {
  rejected: { rank: 0, claim: 0 },
  "not shown": { rank: 1, claim: 0 },
  pending: { rank: 2, claim: 1 },
  "in no joint": { rank: 2, claim: 0 },
  "thrown away": { rank: 2, claim: 0 },
  shown: { rank: 3, claim: 2 },
};
const JOINT: { readonly [state in JointState]: Place } = {
  quarantined: { rank: 0, claim: 0 },
  "not shown": { rank: 1, claim: 0 },
  opened: { rank: 2, claim: 0 },
  "not glued": { rank: 2, claim: 0 },
  pending: { rank: 3, claim: 1 },
  shown: { rank: 4, claim: 2 },
};
const COAT: { readonly [verdict in CoatVerdict]: Place } = {
  rejected: { rank: 0, claim: 0 },
  "not shown": { rank: 1, claim: 0 },
  pending: { rank: 2, claim: 1 },
  shown: { rank: 3, claim: 2 },
};
/** A signature that does not stand is no better than none: blocked, reopened and signed with things open all say that something is wrong. */
const HOLD: { readonly [state in HoldState]: Place } = {
  blocked: { rank: 0, claim: 0 },
  "signed with things open": { rank: 0, claim: 0 },
  reopened: { rank: 0, claim: 0 },
  ahead: { rank: 1, claim: 1 },
  ready: { rank: 2, claim: 2 },
  passed: { rank: 3, claim: 3 },
};

/** `batch B-001` and the like, each with its state and its places. */
export type Verdicts = ReadonlyMap<string, Place & { readonly state: string }>;

export function verdictsOf(record: Record): Verdicts {
  const { batches, joints, holdPoints, coats } = reckon(record);
  const found = new Map<string, Place & { readonly state: string }>();
  for (const [id, { verdict }] of batches) found.set(`batch ${id}`, { state: verdict, ...BATCH[verdict] });
  for (const [id, { state }] of joints) found.set(`joint ${id}`, { state, ...JOINT[state] });
  for (const [id, { state }] of holdPoints) found.set(`hold point ${id}`, { state, ...HOLD[state] });
  for (const { coat, verdict, off } of coats)
    if (off === undefined)
      found.set(`coat ${coat.coat} of ${coat.finish} on ${coat.assembly}: ${coat.where}`, {
        state: verdict,
        ...COAT[verdict],
      });
  return found;
}

/** `batch B-001: rejected → shown`, of each that is in both and better in the second. */
export function bettered(before: Verdicts, after: Verdicts, by: keyof Place): string[] {
  return [...before].flatMap(([thing, was]) => {
    const is = after.get(thing);
    return is !== undefined && is[by] > was[by] ? [`${thing}: ${was.state} → ${is.state}`] : [];
  });
}
