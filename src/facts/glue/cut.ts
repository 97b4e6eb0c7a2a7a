/** What was sawn from a lot of timber or plywood. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, either, note } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, type InEntry, quantityOf } from "../typing.ts";
import type { Day, Path, Quantity } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const cutSchema = block({
  lot: idOf("lot", "The timber or plywood lot it was sawn from; once a day.", "S-2"),
  amount: either(
    ["length", "area", "mass", "volume"],
    "How much that took, in a unit of the same kind as the lot's own amount; offcuts with it, if you reckon so.",
    ["1.2 m", "0.4 m²"],
  ),
  note: note(),
});

/** What was sawn from a lot of timber or plywood: m, m², m³ or kg, as the lot's own amount. */
export interface Cut {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly amount: Quantity;
  readonly note?: string;
}

export function cutOf(spec: z.output<typeof cutSchema>, path: Path, of: InEntry): Cut {
  return factOf<Cut>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    lot: spec.lot,
    amount: quantityOf(spec.amount),
    note: spec.note,
  });
}

export const cutShown: Decisions<Cut> = { place: show, entry: show, day: show, lot: show, amount: show, note: show };

/** Goes with its lot. */
export const isCutShown = ({ lot }: Cut, seer: Visibility): boolean => seer.lots.has(lot);

export const cutAmended = foundBy({ keys: ["lot"], kind: "lot", named: false, word: "Cut from lot", several: "Cuts" });
