/** The ledgers of parts weighed, of the aircraft on its scales, and of tasks. */
import { creditOf } from "../../evidence/credit.ts";
import { weightOf, type WeightFile } from "../../evidence/measures/weight.ts";
import type { BuildTask } from "../../facts/types.ts";
import { WHOLE_TASK, type Tenths } from "../../reckoning/hours/credit.ts";
import { type Column, figure, type Ledger, ledger, quantity, told, typed } from "./column.ts";

type Weighed = WeightFile["parts"][number];

export const WEIGHTS: Ledger = ledger<Weighed>(
  "weights",
  "One part that was weighed on the way.",
  ({ record }) => weightOf(record).parts,
  [
    told("entry", "Id of the entry that notes it.", ({ weighing }) => weighing.entry),
    told("day", "The day it was weighed.", ({ weighing }) => weighing.day, "day"),
    typed("part", "entry: weighed[].part", ({ weighing }) => weighing.part),
    typed("assembly", "entry: weighed[].assembly", ({ weighing }) => weighing.assembly),
    ...quantity<Weighed>("mass", "kg", "entry: weighed[].mass", ({ weighing }) => weighing.mass),
    ...quantity<Weighed>("arm", "m", "entry: weighed[].arm", ({ weighing }) => weighing.arm),
    figure("moment_kg_m", "Mass times arm.", ({ moment }) => moment),
    told(
      "counts",
      "Whether it counts in the sum: a later weighing may take its place.",
      ({ replacedBy }) => (replacedBy === undefined ? "yes" : "no"),
      "yes or no",
    ),
    told("replaced_by", "What was weighed in its place.", ({ replacedBy }) => replacedBy?.part),
    told("replaced_by_entry", "Id of the entry of that.", ({ replacedBy }) => replacedBy?.entry),
  ],
);

type Scales = WeightFile["scales"][number];

export const SCALES: Ledger = ledger<Scales>(
  "scales",
  "The aircraft on its scales, once.",
  ({ record }) => weightOf(record).scales,
  [
    told("entry", "Id of the entry that notes it.", ({ on }) => on.entry),
    told("day", "The day it stood on them.", ({ on }) => on.day, "day"),
    typed("what", "entry: scales.what", ({ on }) => on.what),
    ...quantity<Scales>("left", "kg", "entry: scales.left", ({ on }) => on.left),
    ...quantity<Scales>("right", "kg", "entry: scales.right", ({ on }) => on.right),
    told("third_wheel", "Whether the third wheel is at the nose or the tail.", ({ on }) => on.at),
    ...quantity<Scales>("third", "kg", "entry: scales.nose", ({ on }) => on.third),
    ...quantity<Scales>("mains", "m", "entry: scales.mains", ({ on }) => on.mains),
    ...quantity<Scales>("wheelbase", "m", "entry: scales.wheelbase", ({ on }) => on.wheelbase),
    figure("mass_kg", "All that the scales show.", ({ balance }) => balance?.mass),
    figure("moment_kg_m", "Its moment about the datum.", ({ balance }) => balance?.moment),
    figure("centre_m", "Its centre of gravity, behind the datum positive.", ({ balance }) => balance?.arm),
  ],
);

/** Parts are points of one. */
function point(name: string, part: keyof Tenths): Column<BuildTask> {
  return {
    ...typed<BuildTask>(
      name,
      `assembly: tasks[].credit.${part}`,
      ({ credit }) => (credit?.[part] === undefined ? undefined : credit[part] / WHOLE_TASK),
      "number",
    ),
    unit: "1",
  };
}

export const TASKS: Ledger = ledger<BuildTask>(
  "tasks",
  "One task of building: those that apply, then those that do not.",
  ({ record }) => {
    const { tasks, notApplicable } = creditOf(record);
    return [...tasks, ...notApplicable];
  },
  [
    typed("task", "assembly: tasks[].id", ({ id }) => id),
    typed("title", "assembly: tasks[].title", ({ title }) => title),
    told("assembly", "Id of the assembly it belongs to.", ({ assembly }) => assembly),
    typed(
      "applicable",
      "assembly: tasks[].applicable",
      ({ credit }) => (credit === undefined ? "no" : "yes"),
      "yes or no",
    ),
    point("maker", "maker"),
    point("paid", "paid"),
    point("amateur_assembly", "assembly"),
    point("amateur_fabrication", "fabrication"),
  ],
  "task",
);
