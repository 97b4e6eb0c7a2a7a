/** What is bonded in joints now: batches, lots, what was seen of them, and what must not be trusted among it. */
import type { BatchFile, JointFile } from "../../../evidence/types.ts";
import type { Lot, Rework } from "../../../facts/types.ts";
import type { Shown } from "../../../editions/shown.ts";
import { traceIndex } from "../trace-index.ts";

export interface Bonded {
  /** In the order in which they were mixed. */
  readonly batches: readonly BatchFile[];
  /** Timber and plywood, with the joints that hold it. */
  readonly timber: readonly { readonly lot: Lot; readonly joints: readonly string[] }[];
  readonly recalled: readonly { readonly lot: Lot; readonly joints: readonly string[] }[];
  /** Batches that used a lot after its last day, with the sentences that say so. */
  readonly expired: readonly { readonly file: BatchFile; readonly sentences: readonly string[] }[];
  readonly rejected: readonly BatchFile[];
  readonly reworks: readonly { readonly joint: string; readonly rework: Rework }[];
}

export function bondedIn(shown: Shown, joints: readonly JointFile[]): Bonded {
  const { record, evidence } = shown;
  const held = new Set(joints.flatMap((file) => file.batches));
  const batches = traceIndex(shown).batches.flatMap(({ id }) => (held.has(id) ? (evidence.batches.get(id) ?? []) : []));
  const lots = [...new Set(joints.flatMap((file) => file.lots))].flatMap((id) => {
    const lot = record.lots.get(id);
    const holding = joints.filter((file) => file.lots.includes(id)).map(({ joint }) => joint.id);
    return lot === undefined ? [] : [{ lot, joints: holding }];
  });
  return {
    batches,
    timber: lots.filter(({ lot }) => lot.material === "timber" || lot.material === "plywood"),
    recalled: lots.filter(({ lot }) => (evidence.lots.get(lot.id)?.recalls.length ?? 0) > 0),
    expired: batches.flatMap((file) => {
      const sentences = pastDate(file).map(shown.say);
      return sentences.length === 0 ? [] : [{ file, sentences }];
    }),
    rejected: batches.filter(({ verdict }) => verdict === "rejected"),
    reworks: joints.flatMap((file) => file.reworks.map((rework) => ({ joint: file.joint.id, rework }))),
  };
}

const pastDate = ({ findings }: BatchFile): BatchFile["findings"] =>
  findings.filter(({ rule, severity }) => rule === "lot-in-date" && severity !== "meets");
