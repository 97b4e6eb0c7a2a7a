/** The state of a joint: what glue is in it now, and what is known of it. */
import { defined } from "../defined.ts";
import type { Batch, JointSpec, Recall, Ref, Rework } from "../facts/types.ts";
import { amendedFinding, changesOfGlue } from "./amended.ts";
import { lotsOf } from "./batch/lots.ts";
import { untried } from "./batch/sample.ts";
import { coatedFaces } from "./coats/faces.ts";
import { gradeOf } from "./lots/grade.ts";
import { measuredAt } from "./measures/at-joint.ts";
import { inService } from "./readiness/in-service.ts";
import { cureFindings } from "./readiness/joint-cure.ts";
import { heldBy } from "./held.ts";
import { amendedStages, sessionsOf, stageFindings } from "./joint-stages.ts";
import { lookUp, type RecordIndex } from "./record-index.ts";
import { finder, type Finder } from "./finding.ts";
import type { BatchFile, BatchVerdict, Finding, JointFile, JointState, Severity } from "./types.ts";

interface JointCase {
  readonly now: readonly BatchFile[];
  readonly superseded: readonly Batch[];
  readonly reworks: readonly Rework[];
  readonly recalls: readonly Recall[];
}

export function jointFile(index: RecordIndex, joint: JointSpec, files: ReadonlyMap<string, BatchFile>): JointFile {
  const held = heldBy(index, joint);
  const { batches, superseded, reworks, lots } = held;
  const now = batches.map((batch) => lookUp(files, batch.id));
  const c: JointCase = { now, superseded, reworks, recalls: lots.flatMap((lot) => index.recalls.get(lot) ?? []) };
  const find = finder({ kind: "joint", id: joint.id }, []);
  const stages = stageFindings(index, joint, held, find);
  const cures = cureFindings(index, joint, sessionsOf(held), find);
  const wood = woodLacking(index, now, lots, find);
  const steep = graded(index, lots, find);
  const measured = measuredAt(index, joint, find);
  const service = inService(index, joint, held, find);
  const glue = [...batches, ...superseded].flatMap((batch) => changesOfGlue(index, batch));
  const touched = [...glue, ...amendedStages(index, joint)].map((changed) => amendedFinding(changed, find));
  const ids = (some: readonly Batch[]): string[] => some.map((batch) => batch.id);
  return {
    joint,
    state: stateOf(c, [...stages, ...wood, ...cures, ...steep, ...measured]),
    findings: [
      ...reworked(c, find),
      ...glued(c, find),
      ...wood,
      ...stages,
      ...cures,
      ...recalled(c, find),
      ...steep,
      ...measured,
      ...service,
      ...coatedFaces(index, joint, batches, find),
      ...touched,
    ],
    batches: ids(batches),
    superseded: ids(superseded),
    reworks,
    lots,
  };
}

/** A sample of the joint is of all wood that is in it now. */
function woodLacking(index: RecordIndex, now: readonly BatchFile[], held: readonly string[], find: Finder): Finding[] {
  const { lots, waits } = untried(index, now, held);
  if (now.length === 0 || lots.length === 0) return [];
  const alsoOn = lots.map((id): Ref => ({ kind: "lot", id }));
  return [find("joint-glued/wood-lacking", waits ? "waits" : "unproven", { lots }, { alsoOn })];
}

/** Timber in it, also what a rework put in, that is not as it should be. */
function graded({ record }: RecordIndex, lots: readonly string[], find: Finder): Finding[] {
  const timber = lots.map((id) => lookUp(record.lots, id));
  return timber.flatMap((lot) => gradeOf(lot, find)).filter(({ severity }) => severity === "unproven");
}

/** A joint holds no cup that was in none or thrown away, unless someone alone amended it so. */
const UNPROVEN: readonly BatchVerdict[] = ["not shown", "in no joint", "thrown away"];

function stateOf({ now, superseded, recalls }: JointCase, own: readonly Finding[]): JointState {
  const cured = new Set(own.map(({ severity }) => severity));
  const verdicts = new Set(now.map((file) => file.verdict));
  if (verdicts.has("rejected") || recalls.length > 0) return "quarantined";
  if (now.length === 0) return superseded.length === 0 ? "not glued" : "opened";
  if (UNPROVEN.some((verdict) => verdicts.has(verdict)) || cured.has("unproven")) return "not shown";
  return verdicts.has("pending") || cured.has("waits") ? "pending" : "shown";
}

const SEVERITY: { readonly [verdict in BatchVerdict]: Severity } = {
  shown: "meets",
  pending: "waits",
  "not shown": "unproven",
  "in no joint": "unproven",
  "thrown away": "unproven",
  rejected: "rejects",
};

function reworked({ reworks }: JointCase, find: Finder): Finding[] {
  return reworks.map(({ day, why, stages, entry }) =>
    find("joint-glued/reworked", "caution", defined({ day, why, stages }), { alsoOn: [{ kind: "entry", id: entry }] }),
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

function recalled({ now, superseded, reworks, recalls }: JointCase, find: Finder): Finding[] {
  return recalls.map(({ lot, day, why, entry }) => {
    const rests = (batches: readonly Batch[]): { readonly alsoOn: Ref[] } => ({
      alsoOn: [
        { kind: "lot", id: lot },
        { kind: "entry", id: entry },
        ...batches.flatMap((batch): Ref[] => [
          { kind: "batch", id: batch.id },
          { kind: "entry", id: batch.entry },
        ]),
      ],
    });
    const holding = now.map(({ batch }) => batch).filter((batch) => lotsOf({ batch }).includes(lot));
    const values = { lot, batches: holding.map(({ id }) => id), day, why };
    if (holding.length > 0) return find("joint-quarantine/recalled", "rejects", values, rests(holding));
    const put = reworks.findLast(({ replaced = [] }) => replaced.some((one) => one.with === lot));
    if (put !== undefined)
      return find(
        "joint-quarantine/put-in",
        "rejects",
        { lot, put: put.day, day, why },
        { alsoOn: [...rests([]).alsoOn, { kind: "entry", id: put.entry }] },
      );
    const left = superseded.filter(({ timber }) => timber.includes(lot));
    return find("joint-quarantine/left-in", "rejects", { ...values, batches: left.map(({ id }) => id) }, rests(left));
  });
}
