/** The ledgers of joints, of findings and of hold points. */
import type { HoldPointFile, JointFile } from "../../evidence/types.ts";
import type { Stage } from "../../facts/types.ts";
import { toldFinding } from "../../words/findings/told.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { type Ledger, ledger, quantity, told, typed } from "./column.ts";

interface Joint {
  readonly file: JointFile;
  readonly stages: readonly Stage[];
}

/** `1 of 2: B-031 B-032`, after its day. */
const stageWords = ({ day, stage, of, batches }: Stage): string =>
  `${day} ${stage}${of === undefined ? "" : ` of ${of}`}: ${batches.join(" ")}`;

export const JOINTS: Ledger = ledger<Joint>(
  "joints",
  "One glued joint, assembly by assembly.",
  (shown) => {
    const { stagesOf } = traceIndex(shown);
    return [...shown.evidence.joints.values()].map((file) => ({ file, stages: stagesOf.get(file.joint.id) ?? [] }));
  },
  [
    typed("joint", "assembly: joints[].id", ({ file }) => file.joint.id),
    typed("title", "assembly: joints[].title", ({ file }) => file.joint.title),
    told("assembly", "Id of the assembly it is in.", ({ file }) => file.joint.assembly),
    told("state", "What the record shows of it.", ({ file }) => file.state),
    told("batches", "Batches that are in it now, the oldest first.", ({ file }) => file.batches, "ids"),
    told("superseded_batches", "Batches that rework took out of it.", ({ file }) => file.superseded, "ids"),
    told(
      "rework_entries",
      "Entries that note its rework.",
      ({ file }) => file.reworks.map(({ entry }) => entry),
      "ids",
    ),
    typed("stages", "assembly: joints[].stages", ({ file }) => file.joint.stages, "integer"),
    told(
      "stages_glued",
      "Each stage that was noted: its day, its number, its batches.",
      ({ stages }) => stages.map(stageWords),
      "ids",
    ),
    told(
      "complete_entries",
      "Entries that say that it is complete.",
      ({ stages }) => stages.flatMap(({ complete, entry }) => (complete === true ? [entry] : [])),
      "ids",
    ),
    told("lots", "Lots that are in it now.", ({ file }) => file.lots, "ids"),
    told(
      "hold_points",
      "Hold points that ask for it.",
      ({ file }, shown) => traceIndex(shown).holdPointsOf.get(file.joint.id) ?? [],
      "ids",
    ),
    ...quantity<Joint>("area", "m2", "assembly: joints[].area", ({ file }) => file.joint.area),
    typed("drawing", "assembly: joints[].drawing", ({ file }) => file.joint.drawing),
    typed("structure", "assembly: joints[].structure", ({ file }) => file.joint.structure),
  ],
  "joint",
);

export const FINDINGS: Ledger = ledger<ReturnType<typeof toldFinding>>(
  "findings",
  "One reason for a verdict: what a rule found of a thing.",
  ({ evidence, say }) => evidence.findings.map((finding) => toldFinding(say, finding)),
  [
    told("rule", "Id of the rule; what it asks stands in rules.json and on the page about.html.", ({ rule }) => rule),
    told(
      "severity",
      "meets: the limit held; caution: changes no verdict; waits, unproven, rejects: makes it pending, not shown, rejected.",
      ({ severity }) => severity,
    ),
    told("about_kind", "The kind of thing it is about.", ({ about }) => about.kind),
    told("about", "The id of that thing.", ({ about }) => about.id),
    told("sentence", "What was found.", ({ sentence }) => sentence),
    told("limit", "The limit it was held against.", ({ limit }) => limit?.text),
    told("limit_source", "Where that limit comes from.", ({ limit }) => limit?.from.text),
    told(
      "limit_source_known",
      "How that source was known to whoever wrote the rule.",
      ({ limit }) => limit?.from.known,
    ),
    told(
      "rests_on",
      "What it rests on, each as kind:id.",
      ({ restsOn }) => restsOn.map(({ kind, id }) => `${kind.replaceAll(" ", "-")}:${id}`),
      "ids",
    ),
  ],
);

export const HOLD_POINTS: Ledger = ledger<HoldPointFile>(
  "hold-points",
  "One hold point, at which work stops until someone has looked.",
  ({ evidence }) => [...evidence.holdPoints.values()],
  [
    typed("hold_point", "assembly: hold_points[].id", ({ holdPoint }) => holdPoint.id),
    typed("title", "assembly: hold_points[].title", ({ holdPoint }) => holdPoint.title),
    typed("kind", "assembly: hold_points[].kind", ({ holdPoint }) => holdPoint.kind),
    told("assembly", "Id of the assembly it stands in.", ({ holdPoint }) => holdPoint.assembly),
    typed("joints_named", "assembly: hold_points[].joints", ({ holdPoint }) => holdPoint.joints ?? [], "ids"),
    told("state", "What the record shows of it.", ({ state }) => state),
    told("joints", "Joints that it asks for.", ({ joints }) => joints, "ids"),
    told("blocked_by", "What is wrong and must be put right first.", ({ needs }, { say }) =>
      needs
        .filter(({ blocks }) => blocks)
        .map(say)
        .join(" "),
    ),
    told("to_do", "What is only not done yet.", ({ needs }, { say }) =>
      needs
        .filter(({ blocks }) => !blocks)
        .map(say)
        .join(" "),
    ),
    told("signed_entry", "Id of the entry with the signature that counts.", ({ signed }) => signed?.entry),
    told("signed_day", "The day of that signature.", ({ signed }) => signed?.day, "day"),
    typed("signed_by", "entry: inspections[].by", ({ signed }, { nameOf }) =>
      signed === undefined ? undefined : nameOf(signed.by),
    ),
    typed("signed_reference", "entry: inspections[].reference", ({ signed }) => signed?.reference),
    told("changed_since", "What changed after it was signed.", ({ changes }, { say }) => changes.map(say).join(" ")),
    told("remarks", "What else is told of the looks at it.", ({ remarks }, { say }) => remarks.map(say).join(" ")),
  ],
  "hold_point",
);
