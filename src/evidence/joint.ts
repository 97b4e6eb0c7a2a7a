/** The state of a joint: what glue is in it now, and what is known of it. */
import type { Batch, JointSpec, Recall, Rework } from "../facts/types.ts";
import { lotsOf } from "./batch/lots.ts";
import { lookUp, orderOf, type RecordIndex } from "./record-index.ts";
import { finder, type Finder } from "./finding.ts";
import type { BatchFile, BatchVerdict, Finding, JointFile, JointState, Severity } from "./types.ts";

interface JointCase {
  readonly now: readonly BatchFile[];
  readonly superseded: readonly Batch[];
  readonly reworks: readonly Rework[];
  readonly lots: readonly string[];
  readonly recalls: readonly Recall[];
}

export function jointFile(index: RecordIndex, joint: JointSpec, files: ReadonlyMap<string, BatchFile>): JointFile {
  const { batches, superseded, reworks } = glueIn(index, joint);
  const now = batches.map((batch) => lookUp(files, batch.id, "batch"));
  const lots = [...new Set(batches.flatMap((batch) => lotsOf({ batch })))];
  const c: JointCase = { now, superseded, reworks, lots, recalls: lots.flatMap((lot) => index.recalls.get(lot) ?? []) };
  const find = finder({ kind: "joint", id: joint.id }, []);
  const ids = (some: readonly Batch[]): string[] => some.map((batch) => batch.id);
  return {
    joint,
    state: stateOf(c),
    findings: findingsOf(c, find),
    batches: ids(batches),
    superseded: ids(superseded),
    reworks,
    lots,
  };
}

/** Batches of the entry of the last rework, or of a later one, are in the joint now; a rework comes before the batches of its own entry. */
function glueIn(index: RecordIndex, joint: JointSpec) {
  const all = index.batchesOfJoint.get(joint.id) ?? [];
  const reworks = index.reworks.get(joint.id) ?? [];
  const opened = Math.max(-1, ...reworks.map((rework) => orderOf(index, rework.entry)));
  const isIn = (batch: Batch): boolean => orderOf(index, batch.entry) >= opened;
  return { batches: all.filter(isIn), superseded: all.filter((batch) => !isIn(batch)), reworks };
}

function stateOf({ now, superseded, recalls }: JointCase): JointState {
  if (now.length === 0) return superseded.length === 0 ? "not glued" : "opened";
  const verdicts = new Set(now.map((file) => file.verdict));
  if (verdicts.has("rejected") || recalls.length > 0) return "quarantined";
  if (verdicts.has("not shown") || verdicts.has("in no joint")) return "not shown";
  return verdicts.has("pending") ? "pending" : "shown";
}

const SEVERITY: { readonly [verdict in BatchVerdict]: Severity } = {
  shown: "meets",
  pending: "waits",
  "not shown": "unproven",
  "in no joint": "unproven",
  rejected: "rejects",
};

function findingsOf(c: JointCase, find: Finder): Finding[] {
  return [...reworked(c, find), ...glued(c, find), ...recalled(c, find)];
}

function reworked({ reworks }: JointCase, find: Finder): Finding[] {
  return reworks.map(({ day, why, entry }) =>
    find("joint-glued/reworked", "caution", { day, why }, { alsoOn: [{ kind: "entry", id: entry }] }),
  );
}

function glued({ now, superseded }: JointCase, find: Finder): Finding[] {
  if (now.length === 0)
    return [
      superseded.length === 0 ? find("joint-glued/never", "waits", {}) : find("joint-glued/not-again", "waits", {}),
    ];
  return now.map(({ batch, verdict }) => {
    const code = verdict === "rejected" ? "joint-quarantine/batch" : "joint-glued/batch";
    const alsoOn = [
      { kind: "batch", id: batch.id },
      { kind: "entry", id: batch.entry },
    ] as const;
    return find(code, SEVERITY[verdict], { batch: batch.id, day: batch.day, verdict }, { alsoOn });
  });
}

function recalled({ now, recalls }: JointCase, find: Finder): Finding[] {
  return recalls.map((recall) => {
    const holding = now.filter(({ batch }) => lotsOf({ batch }).includes(recall.lot)).map(({ batch }) => batch);
    const { lot, day, why } = recall;
    const batches = holding.map((batch) => batch.id);
    return find(
      "joint-quarantine/recalled",
      "rejects",
      { lot, batches, day, why },
      {
        alsoOn: [
          { kind: "lot", id: recall.lot },
          { kind: "entry", id: recall.entry },
          ...holding.flatMap((batch) => [
            { kind: "batch", id: batch.id } as const,
            { kind: "entry", id: batch.entry } as const,
          ]),
        ],
      },
    );
  });
}
