/** One component of a mix. */
import type * as z from "zod";
import { type Decisions, ifShown, show } from "../decisions.ts";
import { block, noted } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, maybeNoted } from "../typing.ts";
import type { Noted } from "../values.ts";

const AMOUNT = {
  mass: noted({ dimension: "mass" }, "How much, weighed.").optional(),
  volume: noted({ dimension: "volume" }, "How much, by the measure.").optional(),
};

export const componentSchema = (name: string, example: string) =>
  block({ lot: idOf("lot", `The lot of the ${name}.`, example).optional(), ...AMOUNT }).meta({
    description: `The ${name} that went in.`,
  });

/** Water comes in no lot. */
export const waterSchema = () => block(AMOUNT).meta({ description: "The water that went in." });

/** What one component of a mix was: from which lot and how much, by mass or by volume. */
export interface Component {
  readonly lot?: string;
  readonly mass?: Noted;
  readonly volume?: Noted;
}

type Spec = z.output<ReturnType<typeof componentSchema>>;

/** How much water; it comes in no lot. */
export type Water = Pick<Component, "mass" | "volume">;

export function waterOf(spec: z.output<ReturnType<typeof waterSchema>> | undefined): Water | undefined {
  return spec && factOf<Water>({ mass: maybeNoted(spec.mass), volume: maybeNoted(spec.volume) });
}

export const waterShown: Decisions<Water> = { mass: show, volume: show };

export function componentOf(spec: Spec | undefined): Component | undefined {
  return spec && factOf<Component>({ lot: spec.lot, mass: maybeNoted(spec.mass), volume: maybeNoted(spec.volume) });
}

export const componentShown: Decisions<Component> = { lot: ifShown("lots"), mass: show, volume: show };
