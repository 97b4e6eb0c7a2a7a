/** What was weighed or measured as left in a lot of adhesive. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, either, note } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, type InEntry, quantityOf } from "../typing.ts";
import type { Day, Path, Quantity } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const remainderSchema = block({
  lot: idOf("lot", "The lot of resin, hardener, glue or powder that was weighed; once a day.", "R-2"),
  amount: either(
    ["mass", "volume"],
    "What was left in it, without its tin, in a unit of the same kind as the lot's own amount.",
    ["640 g", "0.4 l"],
  ),
  note: note(),
});

/** What was left in a lot of adhesive: kg or m³, as the lot's own amount. */
export interface Remainder {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly amount: Quantity;
  readonly note?: string;
}

export function remainderOf(spec: z.output<typeof remainderSchema>, path: Path, of: InEntry): Remainder {
  return factOf<Remainder>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    lot: spec.lot,
    amount: quantityOf(spec.amount),
    note: spec.note,
  });
}

export const remainderShown: Decisions<Remainder> = {
  place: show,
  entry: show,
  day: show,
  lot: show,
  amount: show,
  note: show,
};

/** Goes with its lot. */
export const isRemainderShown = ({ lot }: Remainder, seer: Visibility): boolean => seer.lots.has(lot);

export const remainderAmended = foundBy({
  keys: ["lot"],
  kind: "lot",
  named: false,
  word: "What was left in lot",
  several: "Weighings of lots",
});
