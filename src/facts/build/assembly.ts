/** A part of the aircraft, with its joints, hold points and tasks. */
import type * as z from "zod";
import { type Decisions, each, prose, show } from "../decisions.ts";
import { block, day, list, words, worked } from "../field.ts";
import { file, idOf } from "../id.ts";
import { factOf, type SoundFile } from "../typing.ts";
import type { Day, FilePath, Passage, Placed } from "../values.ts";
import { type BuildTask, buildTaskOf, buildTaskSchema, buildTaskShown } from "./build-task.ts";
import { type HoldPoint, holdPointOf, holdPointSchema, holdPointShown } from "./hold-point.ts";
import { type PlannedCoat, plannedCoatOf, plannedCoatSchema, plannedCoatShown } from "./planned-coat.ts";
import { type JointSpec, jointOf, jointSchema, jointShown } from "./joint.ts";

export const assemblySchema = block({
  title: words("What the part is called.", "Tailplane"),
  parent: idOf("assembly", "The assembly that this one is a part of.", "tail").optional(),
  planned: worked("Hours planned for it, without those of the assemblies within it.", "120 h").optional(),
  finished: day("The day it was finished.", "2025-06-30").optional(),
  drawing: block({
    file: file("A drawing or picture of the assembly, relative to this file.", "tailplane.svg"),
    alt: words("What is to be seen.", "The tailplane from above, with its joints numbered"),
  })
    .meta({ description: "A drawing or picture of it, on which its joints are marked." })
    .optional(),
  joints: list(jointSchema, "The glued joints of the assembly.").optional(),
  hold_points: list(holdPointSchema, "Where work stops until someone has looked.").optional(),
  coats: list(plannedCoatSchema, "What is to be put on it: what no entry notes is missed by hold points.").optional(),
  tasks: list(
    buildTaskSchema,
    "Tasks of building it, each one point, with who did how many tenths; the four add up to 1.",
  ).optional(),
});

export interface Assembly extends Placed {
  readonly title: string;
  readonly parent?: string;
  readonly planned?: number;
  readonly finished?: Day;
  readonly drawing?: { readonly file: FilePath; readonly alt: string };
  readonly joints: readonly JointSpec[];
  readonly holdPoints: readonly HoldPoint[];
  readonly coats: readonly PlannedCoat[];
  readonly tasks: readonly BuildTask[];
  readonly body: readonly Passage[];
}

export function assemblyOf(filed: SoundFile<z.output<typeof assemblySchema>>): Assembly {
  const { spec, file, id: own, path } = filed;
  return factOf<Assembly>({
    id: own,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    parent: spec.parent,
    planned: spec.planned?.minutes,
    finished: spec.finished,
    drawing: spec.drawing && { file: path(spec.drawing.file), alt: spec.drawing.alt },
    joints: (spec.joints ?? []).map((joint, at) => jointOf(joint, ["joints", at], filed)),
    holdPoints: (spec.hold_points ?? []).map((point, at) => holdPointOf(point, ["hold_points", at], filed)),
    coats: (spec.coats ?? []).map(plannedCoatOf),
    tasks: (spec.tasks ?? []).map((task, at) => buildTaskOf(task, ["tasks", at], filed)),
    body: filed.body,
  });
}

export const assemblyShown: Decisions<Assembly> = {
  id: show,
  place: show,
  title: show,
  parent: show,
  planned: show,
  finished: show,
  drawing: show,
  joints: each(jointShown),
  holdPoints: each(holdPointShown),
  coats: each(plannedCoatShown),
  tasks: each(buildTaskShown),
  body: prose("assemblies"),
};
