/** Glue taken out of joints. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, id, list, words } from "../field.ts";
import type { InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";

export const reworkSchema = block({
  joints: list(id("A joint.", "TP-J03"), "Which joints were opened."),
  why: words("Why.", "Batch B-014 rejected"),
});

/** Glue taken out of joints. Only batches of the same or a later entry count for them from then on. */
export interface Rework {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly joints: readonly string[];
  readonly why: string;
}

export function reworkOf({ joints, why }: z.output<typeof reworkSchema>, path: Path, of: InEntry): Rework {
  return { place: of.at(path), entry: of.entry, day: of.day, joints, why };
}

export const reworkShown: Decisions<Rework> = { place: show, entry: show, day: show, joints: show, why: show };

export const reworkAmended = anew("Joints opened", "All reworks of that day, as they should read.");
