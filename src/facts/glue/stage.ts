/** What of a joint that is glued over several sessions was glued. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, onlyShown, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, choice, field, list, note } from "../field.ts";
import { idOf } from "../id.ts";
import { onlyYouKnow, type Reading, shown } from "../reading.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";
import type { batchSchema } from "./batch.ts";

/** Which stage, and of how many where that is said. */
interface Numbered {
  readonly number: number;
  readonly of?: number | undefined;
}

const STAGE = /^([1-9]\d?)(?:\s*(?:of|\/)\s*([1-9]\d?))?$/;

/** `2 of 3`, `2/3`, or `2` where nobody knows yet how many there will be. */
function readStage(typed: string): Reading<Numbered> {
  const [, first, last] = STAGE.exec(typed.trim()) ?? [];
  const number = Number(first);
  const of = last === undefined ? undefined : Number(last);
  if (first !== undefined && (of === undefined || number <= of)) return { value: { number, of } };
  return {
    fault: {
      code: "no-stage",
      message: "this is not a stage of a joint",
      expected: "which stage it is, and of how many where that is known, such as 2 of 3",
      found: shown(typed),
      ...onlyYouKnow("give the number of the stage, as in 2 of 3"),
    },
  };
}

/** A stage by its number alone. */
export const stageNumber = () =>
  field(
    (typed) => {
      const reading = readStage(typed);
      return "fault" in reading ? reading : { value: reading.value.number };
    },
    "a whole number",
    "The number of a stage.",
    ["2"],
  );

export const stageSchema = block({
  joint: idOf("joint", "A joint that is glued in stages.", "WG-J12"),
  stage: field(readStage, "a number, and of how many", "Which stage was glued, and of how many where that is known.", [
    "1 of 3",
    "2",
  ]),
  batches: list(
    idOf("batch", "A batch that is in this joint.", "B-031"),
    "The batches that glued it; without it all those of this entry that went into the joint.",
  ).optional(),
  complete: choice(["yes"], "The joint is glued all along: no stage is to come.").optional(),
  note: note(),
});

/** One stage of a joint, and the batches that glued it. */
export interface Stage {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly joint: string;
  readonly stage: number;
  /** How many there are to be, where that is said. */
  readonly of?: number;
  readonly batches: readonly string[];
  /** Whether the joint is said to be glued all along with it. */
  readonly complete?: boolean;
  readonly note?: string;
}

type Glued = Pick<z.output<typeof batchSchema>, "id" | "joints">;

/** Those that a stage names, else those of its entry that went into its joint. */
export function batchesOfStage(
  { joint, batches }: Pick<z.output<typeof stageSchema>, "joint" | "batches">,
  ofEntry: readonly Glued[],
): readonly string[] {
  return batches ?? ofEntry.filter(({ joints = [] }) => joints.includes(joint)).map(({ id }) => id);
}

export const stageOf =
  (ofEntry: readonly Glued[]) =>
  (spec: z.output<typeof stageSchema>, path: Path, of: InEntry): Stage =>
    factOf<Stage>({
      place: of.at(path),
      entry: of.entry,
      day: of.day,
      joint: spec.joint,
      stage: spec.stage.number,
      of: spec.stage.of,
      batches: batchesOfStage(spec, ofEntry),
      complete: spec.complete && true,
      note: spec.note,
    });

export const stageShown: Decisions<Stage> = {
  place: show,
  entry: show,
  day: show,
  joint: show,
  stage: show,
  of: show,
  batches: onlyShown("batches"),
  complete: show,
  note: show,
};

/** What an amendment of them is called, by which it is found again. */
export const STAGES = "Stages of joints";

export const stageAmended = anew(STAGES, "All stages of joints glued that day, as they should read.");
