/** One leg of a test piece whose legs are of several lots. */
import type * as z from "zod";
import { type Decisions, orWithheld, show } from "../decisions.ts";
import { block, quantity } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, maybe } from "../typing.ts";
import type { Quantity } from "../values.ts";

export const legSchema = block({
  lot: idOf("lot", "The timber or plywood lot that this leg was made from.", "S-2"),
  thickness: quantity(
    { dimension: "length" },
    "Thickness of this leg, where it is another than the piece's.",
  ).optional(),
});

export interface Leg {
  readonly lot: string;
  readonly thickness?: Quantity;
}

export const legOf = ({ lot, thickness }: z.output<typeof legSchema>): Leg =>
  factOf<Leg>({ lot, thickness: maybe(thickness) });

export const legShown: Decisions<Leg> = { lot: orWithheld("lots"), thickness: show };
