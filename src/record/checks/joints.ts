/** Joints through time: glued, opened, glued again. */
import { batchesOfStage } from "../../facts/glue/stage.ts";
import type { Path } from "../text/yaml.ts";
import { type CheckContext, doubtful, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

/** Where a joint was last glued, and where it was said to be complete since; undefined once it has been opened. */
type Last = Map<string, Glued | undefined>;

interface Glued {
  readonly filed: EntryFile;
  readonly path: Path;
  readonly batch: string;
  readonly complete?: string;
}

interface Known {
  readonly last: Last;
  /** The first entry that holds a batch, and the joints it went into. */
  readonly batches: ReadonlyMap<string, { readonly filed: EntryFile; readonly joints: readonly string[] }>;
  /** By joint, the stages that any entry says of it, each with its batches. */
  readonly stages: ReadonlyMap<string, readonly SaidStage[]>;
  /** Of two entries. */
  readonly isLater: (one: EntryFile, other: EntryFile) => boolean;
}

interface SaidStage {
  readonly number: number;
  readonly batches: readonly string[];
  readonly filed: EntryFile;
}

export function checkJoints(context: CheckContext): void {
  const entries = soundOf(context, "entry");
  const order = new Map(entries.map((filed, at) => [filed, at]));
  const known: Known = {
    last: new Map(),
    batches: batchesIn(entries),
    stages: stagesIn(entries),
    isLater: (one, other) => (order.get(one) ?? 0) > (order.get(other) ?? 0),
  };
  for (const filed of entries) {
    (filed.spec.reworks ?? []).forEach(({ joints, stages }, at) =>
      joints.forEach((joint, index) => opened(context, filed, ["reworks", at], { joint, index, stages }, known)),
    );
    (filed.spec.batches ?? []).forEach(({ id, joints }, at) => {
      const here = new Set<string>();
      (joints ?? []).forEach((joint, index) => {
        const path = ["batches", at, "joints", index];
        if (here.has(joint))
          report(context, filed, path, {
            code: "joint-twice",
            message: `${joint} stands in this list twice`,
            found: joint,
            mend: "take one away",
          });
        else glued(context, filed, path, joint, id, known);
        here.add(joint);
      });
    });
    (filed.spec.stages ?? []).forEach((stage, at) => checkStage(context, filed, ["stages", at], stage, known));
    (filed.spec.rejects ?? []).forEach(({ batch }, index) =>
      checkRejected(context, filed, ["rejects", index, "batch"], batch, known.batches),
    );
  }
}

function batchesIn(entries: readonly EntryFile[]): Known["batches"] {
  const found = new Map<string, { readonly filed: EntryFile; readonly joints: readonly string[] }>();
  for (const filed of entries)
    for (const { id, joints = [] } of filed.spec.batches ?? []) if (!found.has(id)) found.set(id, { filed, joints });
  return found;
}

function stagesIn(entries: readonly EntryFile[]): Known["stages"] {
  const found = new Map<string, SaidStage[]>();
  for (const filed of entries)
    for (const spec of filed.spec.stages ?? []) {
      const batches = batchesOfStage(spec, filed.spec.batches ?? []);
      found.set(spec.joint, [...(found.get(spec.joint) ?? []), { number: spec.stage.number, batches, filed }]);
    }
  return found;
}

interface Opened {
  readonly joint: string;
  readonly index: number;
  readonly stages: readonly number[] | undefined;
}

function opened(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  { joint, index, stages }: Opened,
  { last, stages: said, isLater }: Known,
): void {
  if (!expectId(context, filed, [...path, "joints", index], ["joint"], joint)) return;
  if (!last.has(joint) && !doubtful(context, joint)) {
    report(context, filed, [...path, "joints", index], {
      code: "not-glued",
      message: `${joint} was never glued before`,
      expected: "a joint that an earlier entry glued",
      found: joint,
      mend: "write the joint that was opened, or add it to the batch that glued it",
    });
  }
  const before = last.get(joint);
  if (stages === undefined || before === undefined) return void last.set(joint, undefined);
  const { complete: _, ...rest } = before;
  last.set(joint, rest);
  const earlier = new Set(
    (said.get(joint) ?? []).filter((one) => isLater(filed, one.filed)).map(({ number }) => number),
  );
  stages.forEach((number, at) => {
    if (earlier.has(number)) return;
    report(context, filed, [...path, "stages", at], {
      code: "stage-never-glued",
      message: `no earlier entry says that stage ${number} of ${joint} was glued`,
      expected: earlier.size === 0 ? "a joint that is glued in stages" : `one of ${[...earlier].join(", ")}`,
      found: String(number),
      mend: "write the stage that was opened, or take `stages` away if all of the joint was",
    });
  });
}

const IF_AGAIN =
  "if it was opened and cleaned, say so under `reworks`; if it is glued in stages, say under `stages` which each batch in it glued; " +
  "else write the joint that was glued";
const IF_COMPLETE =
  "if it was opened and cleaned, say so under `reworks`; if it was not complete then, amend that; else write the joint that was glued";

function glued(context: CheckContext, filed: EntryFile, path: Path, joint: string, batch: string, known: Known): void {
  if (!expectId(context, filed, path, ["joint"], joint)) return;
  const { last, stages } = known;
  const before = last.get(joint);
  last.set(joint, { filed, path, batch });
  if (before === undefined || before.filed === filed || doubtful(context, joint)) return;
  const isStage = (id: string): boolean => (stages.get(joint) ?? []).some(({ batches }) => batches.includes(id));
  const { complete } = before;
  if (complete === undefined && isStage(batch) && isStage(before.batch)) return;
  const said = complete === undefined ? "" : `, and said to be complete at ${complete}`;
  report(context, filed, path, {
    code: "glued-twice",
    message: `${joint} is already glued`,
    expected: `\`reworks:\` before a joint is glued again${complete === undefined ? ", or `stages:` of one that is glued over several days" : ""}`,
    found: `${joint}, glued with ${before.batch} at ${whereIs(before.filed, before.path)}${said}`,
    mend: complete === undefined ? IF_AGAIN : IF_COMPLETE,
  });
}

type StageSpec = NonNullable<EntryFile["spec"]["stages"]>[number];

function checkStage(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  spec: StageSpec,
  { last, batches: mixed, isLater }: Known,
): void {
  const { joint } = spec;
  if (!expectId(context, filed, [...path, "joint"], ["joint"], joint)) return;
  const before = last.get(joint);
  if (spec.complete !== undefined && before !== undefined)
    last.set(joint, { ...before, complete: whereIs(filed, path) });
  if (batchesOfStage(spec, filed.spec.batches ?? []).length === 0 && !doubtful(context, joint)) {
    report(context, filed, [...path, "joint"], {
      code: "stage-without-glue",
      message: `no batch of this entry went into ${joint}`,
      expected: "a batch that glued this stage",
      found: joint,
      mend: "name the batch under `batches`, or the joint in the batch's own list; or take the stage away",
    });
  }
  (spec.batches ?? []).forEach((batch, at) => {
    if (!expectId(context, filed, [...path, "batches", at], ["batch"], batch)) return;
    const known = mixed.get(batch);
    if (known === undefined || (known.joints.includes(joint) && !isLater(known.filed, filed))) return;
    report(context, filed, [...path, "batches", at], {
      code: "stage-of-other-glue",
      message: isLater(known.filed, filed) ? `${batch} was mixed only later` : `${batch} did not go into ${joint}`,
      expected: `a batch with ${joint} among its joints, mixed by ${filed.spec.date}`,
      found: `${batch}, in ${whereIs(known.filed, [])}`,
      mend: `write the batch that glued the stage, or correct the joints of ${batch}`,
    });
  });
}

function checkRejected(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: string,
  batches: Known["batches"],
): void {
  if (!expectId(context, filed, path, ["batch"], batch)) return;
  const mixedIn = batches.get(batch)?.filed;
  if (mixedIn && mixedIn.spec.date > filed.spec.date) {
    report(context, filed, path, {
      code: "rejected-before-mixed",
      message: `${batch} was rejected before it was mixed`,
      expected: `a batch mixed by ${filed.spec.date}`,
      found: `${batch}, mixed ${mixedIn.spec.date}`,
      mend: `correct this entry or ${mixedIn.file}`,
    });
  }
}
