/** The builder's own decision that a batch is not to be trusted. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, words, note } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const rejectionSchema = block({
  batch: idOf("batch", "Which batch.", "B-014"),
  why: words("Why.", "It never set hard"),
  note: note(),
});

/** The builder's own decision that a batch is not to be trusted, whatever its pieces show. */
export interface Rejection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly batch: string;
  readonly why: string;
  readonly note?: string;
}

export function rejectionOf(
  { batch, why, note: said }: z.output<typeof rejectionSchema>,
  path: Path,
  of: InEntry,
): Rejection {
  return factOf<Rejection>({ place: of.at(path), entry: of.entry, day: of.day, batch, why, note: said });
}

export const rejectionShown: Decisions<Rejection> = {
  place: show,
  entry: show,
  day: show,
  batch: show,
  why: show,
  note: show,
};

/** Goes with its batch. */
export const isRejectionShown = ({ batch }: Rejection, seer: Visibility): boolean => seer.batches.has(batch);

export const rejectionAmended = foundBy({
  keys: ["batch"],
  kind: "batch",
  named: false,
  word: "Rejection of",
  several: "Rejections",
});
