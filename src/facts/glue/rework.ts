/** Glue taken out of joints. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, each, orWithheld, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, list, words, note } from "../field.ts";
import { idOf, plain } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";
import { stageNumber } from "./stage.ts";

export const reworkSchema = block({
  joints: plain(list(idOf("joint", "A joint.", "TP-J03"), "Which joints were opened.")),
  stages: list(stageNumber(), "Which of their stages were opened, where not all; glue of the others stays.").optional(),
  why: words("Why.", "Batch B-014 rejected"),
  replaced: list(
    block({
      lot: idOf("lot", "The lot that was taken out.", "S-1"),
      with: idOf("lot", "The lot of the new part.", "S-4"),
    }),
    "Timber that was taken out of these joints, and the lot of the part that was put in.",
  ).optional(),
  note: note(),
});

/** Glue taken out of joints. Only batches of the same or a later entry count for them from then on. */
export interface Rework {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly joints: readonly string[];
  /** Which of their stages were opened, where not all. */
  readonly stages?: readonly number[];
  readonly why: string;
  /** Timber that was taken out of these joints, and what was put in. */
  readonly replaced?: readonly Replacement[];
  readonly note?: string;
}

interface Replacement {
  readonly lot: string;
  readonly with: string;
}

export function reworkOf(spec: z.output<typeof reworkSchema>, path: Path, of: InEntry): Rework {
  const { joints, stages, why, replaced, note: said } = spec;
  return factOf<Rework>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    joints,
    stages,
    why,
    replaced,
    note: said,
  });
}

const replacementShown: Decisions<Replacement> = { lot: orWithheld("lots"), with: orWithheld("lots") };

export const reworkShown: Decisions<Rework> = {
  place: show,
  entry: show,
  day: show,
  joints: show,
  stages: show,
  why: show,
  replaced: each(replacementShown),
  note: show,
};

export const reworkAmended = anew("Joints opened", "All reworks of that day, as they should read.");
