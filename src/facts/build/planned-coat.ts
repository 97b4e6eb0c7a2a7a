/** Coats that are planned on an assembly: what nobody wrote down is missed by them. */
import type * as z from "zod";
import { type Decisions, show } from "../decisions.ts";
import { block, choice, count, words } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf } from "../typing.ts";
import { HOLD_KINDS, type HoldKind } from "./hold-point.ts";

export const plannedCoatSchema = block({
  where: words("Where it is to be put on, in the words of its coats.", "Inside of the left box"),
  finish: idOf("finish", "Which product.", "varnish-1"),
  coats: count("How many coats, where that is more than the sheet asks.", "2", "coats").optional(),
  before: choice(
    HOLD_KINDS,
    "Which hold points ask for it, and all that come after; without it before covering.",
  ).optional(),
});

export interface PlannedCoat {
  readonly where: string;
  readonly finish: string;
  readonly coats?: number;
  readonly before: HoldKind;
}

export function plannedCoatOf(spec: z.output<typeof plannedCoatSchema>): PlannedCoat {
  const { where, finish, coats, before } = spec;
  return factOf<PlannedCoat>({ where, finish, coats, before: before ?? "covering" });
}

export const plannedCoatShown: Decisions<PlannedCoat> = { where: show, finish: show, coats: show, before: show };
