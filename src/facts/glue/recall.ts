/** A notice that a lot must not be trusted any more. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, words, note } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const recallSchema = block({
  lot: idOf("lot", "Which lot.", "H-2"),
  why: words("What the notice says.", "Maker's notice: hardener off specification"),
  reference: words("Number or date of the notice.", "notice 7 of 2 May").optional(),
  note: note(),
});

/** A notice that a lot must not be trusted any more. */
export interface Recall {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly why: string;
  readonly reference?: string;
  readonly note?: string;
}

export function recallOf(spec: z.output<typeof recallSchema>, path: Path, of: InEntry): Recall {
  const { lot, why, reference, note: said } = spec;
  return factOf<Recall>({ place: of.at(path), entry: of.entry, day: of.day, lot, why, reference, note: said });
}

export const recallShown: Decisions<Recall> = {
  place: show,
  entry: show,
  day: show,
  lot: show,
  why: show,
  reference: show,
  note: show,
};

/** Goes with its lot. */
export const isRecallShown = ({ lot }: Recall, seer: Visibility): boolean => seer.lots.has(lot);

export const recallAmended = foundBy({
  keys: ["lot"],
  kind: "lot",
  named: false,
  word: "Recall of lot",
  several: "Recalls",
});
