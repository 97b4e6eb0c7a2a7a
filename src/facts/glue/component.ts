/** One component of a mix. */
import type * as z from "zod";
import { type Decisions, ifShown, show } from "../decisions.ts";
import { block, quantity } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, maybe } from "../typing.ts";
import type { Quantity } from "../values.ts";

export const componentSchema = (name: string) =>
  block({
    lot: idOf("lot", `The lot of the ${name}.`, "R-3").optional(),
    mass: quantity({ dimension: "mass" }, "How much, weighed.").optional(),
    volume: quantity({ dimension: "volume" }, "How much, by the measure.").optional(),
  });

/** What one component of a mix was: from which lot and how much, by mass or by volume. */
export interface Component {
  readonly lot?: string;
  readonly mass?: Quantity;
  readonly volume?: Quantity;
}

export function componentOf(spec: z.output<ReturnType<typeof componentSchema>> | undefined): Component | undefined {
  return spec && factOf<Component>({ lot: spec.lot, mass: maybe(spec.mass), volume: maybe(spec.volume) });
}

export const componentShown: Decisions<Component> = { lot: ifShown("lots"), mass: show, volume: show };
