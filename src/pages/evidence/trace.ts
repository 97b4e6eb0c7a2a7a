/**
 * The way from lots over batches, joints and assemblies to hold points, asked from either end, as boxes and lines to
 * be drawn.
 */
import { defined } from "../../defined.ts";
import { lotsOf } from "../../evidence/batch/lots.ts";
import type { BatchFile, HoldPointFile, JointFile, LotFile } from "../../evidence/types.ts";
import type { Ref } from "../../facts/types.ts";
import type { Marked } from "./marked.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { BATCH_VERDICTS, batchMark, JOINT_STATES } from "./verdict-words.ts";
import { counted, listed } from "../../words/lists.ts";

export const COLUMNS = ["lot", "batch", "joint", "assembly", "hold point"] as const;
export type Column = (typeof COLUMNS)[number];

export interface TraceNode {
  readonly key: string;
  readonly ref: Ref;
  readonly column: number;
  readonly label: string;
  /** What stands below the label; an assembly has its title for a label and nothing below. */
  readonly word: string;
  readonly mark?: Marked;
}

interface TraceEdge {
  readonly from: string;
  readonly to: string;
  /** Glue that rework has taken out. */
  readonly gone: boolean;
}

export interface Trace {
  readonly title: string;
  readonly says: string;
  readonly nodes: readonly TraceNode[];
  readonly edges: readonly TraceEdge[];
  /** What is not drawn for want of room, in words; the lists on the page have all. */
  readonly undrawn?: string;
}

/** Most boxes of a column. */
export const MOST: { readonly [column in Column]: number } = {
  lot: 14,
  batch: 10,
  joint: 16,
  assembly: 8,
  "hold point": 8,
};

const MANY: { readonly [column in Column]: string } = {
  lot: "lots",
  batch: "batches",
  joint: "joints",
  assembly: "assemblies",
  "hold point": "hold points",
};

interface Found {
  readonly lots: readonly LotFile[];
  readonly batches: readonly BatchFile[];
  readonly joints: readonly JointFile[];
  /** Whether the way goes on from a joint: not where the glue was taken out of it. */
  readonly goesOn: (joint: JointFile) => boolean;
  /** By batch, of a joint that is glued in stages. */
  readonly stages?: ReadonlyMap<string, readonly number[]>;
}

/** Where a lot was used, down to the hold points. */
export function whereUsed(shown: Shown, file: LotFile): Trace {
  const { evidence } = shown;
  const batches = file.batches.flatMap((id) => evidence.batches.get(id) ?? []);
  const joints = [...file.joints, ...file.formerJoints].flatMap((id) => evidence.joints.get(id) ?? []);
  const reach = [
    count("batch", file.batches.length),
    count("joint", file.joints.length),
    count("assembly", file.assemblies.length),
    count("hold point", file.holdPoints.length),
  ];
  const out =
    file.formerJoints.length === 0 ? "" : ` It was taken out of ${counted(file.formerJoints.length, "joint")}.`;
  const now = new Set(file.joints);
  return drawn(
    shown,
    { lots: [file], batches, joints, goesOn: ({ joint }) => now.has(joint.id) },
    {
      title: `Where lot ${file.lot.id} was used`,
      says: `It went into ${reach[0]}; it is in ${reach[1]} of ${reach[2]} now and reaches ${reach[3]}.${out}`,
    },
  );
}

/** What a joint is made of, up to the lots, and the hold points that ask for it. */
export function madeOf(shown: Shown, file: JointFile): Trace {
  const { evidence } = shown;
  const batches = [...file.batches, ...file.superseded].flatMap((id) => evidence.batches.get(id) ?? []);
  const lots = [...new Set(batches.flatMap(lotsOf))].flatMap((id) => evidence.lots.get(id) ?? []);
  const out = file.superseded.length === 0 ? "" : ` Taken out again: ${count("batch", file.superseded.length)}.`;
  const points = traceIndex(shown).holdPointsOf.get(file.joint.id)?.length ?? 0;
  const stages = stagesOf(shown, file);
  const held = new Set(file.batches.flatMap((batch) => stages.get(batch) ?? [])).size;
  const inStages = held === 0 ? "" : ` in ${counted(held, "stage")}`;
  return drawn(
    shown,
    { lots, batches, joints: [file], goesOn: () => true, stages },
    {
      title: `What joint ${file.joint.id} is made of`,
      says: `It holds ${count("batch", file.batches.length)}${inStages} of ${count("lot", file.lots.length)}, and ${count("hold point", points)} ask${points === 1 ? "s" : ""} for it.${out}`,
    },
  );
}

/** Which stages of a joint each batch glued. */
function stagesOf(shown: Shown, { joint }: JointFile): ReadonlyMap<string, readonly number[]> {
  const made = new Map<string, number[]>();
  for (const { stage, batches } of traceIndex(shown).stagesOf.get(joint.id) ?? [])
    for (const batch of batches) made.set(batch, [...new Set([...(made.get(batch) ?? []), stage])]);
  return made;
}

function drawn(shown: Shown, all: Found, said: Pick<Trace, "title" | "says">): Trace {
  const lots = most("lot", all.lots, ({ recalls }) => (recalls.length > 0 ? 0 : 1));
  const batches = most("batch", all.batches, ({ verdict }) => BATCH_VERDICTS.indexOf(verdict));
  const joints = most("joint", all.joints, ({ state }) => JOINT_STATES.indexOf(state));
  const reached = joints.filter(all.goesOn);
  const homes = [...new Set(all.joints.map(({ joint }) => joint.assembly))];
  const assemblies = most("assembly", homes, (id) => (joints.some(({ joint }) => joint.assembly === id) ? 0 : 1));
  const points = pointsOf(shown, all);
  const holdPoints = most("hold point", points, ({ joints: asked }) =>
    reached.some(({ joint }) => asked.includes(joint.id)) ? 0 : 1,
  );
  const nodes = [
    ...lots.map(lotNode),
    ...batches.map((batch) => batchNode(batch, all.stages?.get(batch.batch.id))),
    ...joints.map((joint) => jointNode(joint, all.goesOn(joint))),
    ...assemblies.map((id) => node("assembly", id, shown.record.assemblies.get(id)?.title ?? id, "")),
    ...holdPoints.map(pointNode),
  ];
  const edges = [
    ...lots.flatMap(({ lot }) =>
      batches
        .filter((batch) => lotsOf(batch).includes(lot.id))
        .map(({ batch }) => edge(["lot", lot.id], ["batch", batch.id])),
    ),
    ...batches.flatMap(({ batch }) =>
      joints
        .filter(({ joint }) => batch.joints.includes(joint.id))
        .map((joint) => edge(["batch", batch.id], ["joint", joint.joint.id], !joint.batches.includes(batch.id))),
    ),
    ...joints
      .filter(({ joint }) => assemblies.includes(joint.assembly))
      .map((joint) => edge(["joint", joint.joint.id], ["assembly", joint.joint.assembly], !reached.includes(joint))),
    ...assemblies.flatMap((id) =>
      holdPoints
        .filter(({ joints: asked }) => reached.some(({ joint }) => joint.assembly === id && asked.includes(joint.id)))
        .map(({ holdPoint }) => edge(["assembly", id], ["hold point", holdPoint.id])),
    ),
  ];
  const left = [
    ["lot", all.lots, lots],
    ["batch", all.batches, batches],
    ["joint", all.joints, joints],
    ["assembly", homes, assemblies],
    ["hold point", points, holdPoints],
  ] as const;
  const undrawn = left
    .filter(([, whole, some]) => whole.length > some.length)
    .map(([column, whole, some]) => count(column, whole.length - some.length));
  return { ...said, nodes, edges, ...(undrawn.length === 0 ? {} : { undrawn: listed(undrawn) }) };
}

/** Hold points that ask for a joint from which the way goes on. */
function pointsOf(shown: Shown, { joints, goesOn }: Found): HoldPointFile[] {
  const ids = new Set(joints.filter(goesOn).flatMap(({ joint }) => traceIndex(shown).holdPointsOf.get(joint.id) ?? []));
  return [...ids].flatMap((id) => shown.evidence.holdPoints.get(id) ?? []);
}

/** As many as there is room for, the gravest of them, in the order they came in. */
function most<T>(column: Column, all: readonly T[], weight: (thing: T) => number): readonly T[] {
  if (all.length <= MOST[column]) return all;
  const kept = new Set(
    all
      .map((thing, at) => ({ thing, at }))
      .sort((a, b) => weight(a.thing) - weight(b.thing) || a.at - b.at)
      .slice(0, MOST[column])
      .map(({ thing }) => thing),
  );
  return all.filter((thing) => kept.has(thing));
}

function node(column: Column, id: string, label: string, word: string, mark?: Marked): TraceNode {
  return defined({
    key: `${column} ${id}`,
    ref: { kind: column, id },
    column: COLUMNS.indexOf(column),
    label,
    word,
    mark,
  });
}

function lotNode({ lot, recalls }: LotFile): TraceNode {
  return recalls.length > 0
    ? node("lot", lot.id, lot.id, "recalled", "recall")
    : node("lot", lot.id, lot.id, lot.material);
}

function batchNode(file: BatchFile, stages: readonly number[] = []): TraceNode {
  const { id } = file.batch;
  const word = file.recalls.length > 0 ? `${file.verdict}, recalled` : file.verdict;
  const label =
    stages.length === 0 ? id : `${id}, ${stages.length === 1 ? "stage" : "stages"} ${listed(stages.map(String))}`;
  return node("batch", id, label, word, batchMark(file).mark);
}
const pointNode = ({ holdPoint, state }: HoldPointFile): TraceNode =>
  node("hold point", holdPoint.id, holdPoint.id, state, state);

function jointNode({ joint, state }: JointFile, holds: boolean): TraceNode {
  return node("joint", joint.id, joint.id, holds ? state : `not in it, ${state}`, state);
}

function edge(from: readonly [Column, string], to: readonly [Column, string], gone = false): TraceEdge {
  return { from: from.join(" "), to: to.join(" "), gone };
}

function count(column: Column, number: number): string {
  return counted(number, column, MANY[column]);
}
