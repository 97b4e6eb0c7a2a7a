/** The strengths of the wood that a piece is reckoned with, and what its shape could show. */
import { SITKA_SPRUCE } from "../../reckoning/pieces/break-even-overlap.ts";
import { revealingPower } from "../../reckoning/pieces/revealing-power.ts";
import { atMost } from "../../reckoning/compare.ts";
import type { Lot, Procedure } from "../../facts/types.ts";
import { procedureOf } from "../sources.ts";
import type { Source } from "../types/source.ts";
import { isSpruce } from "./lots.ts";

/** Pa. */
export interface Strengths {
  readonly crushing: number;
  readonly shear: number;
  readonly from: Source;
}

/** Those of the procedure; else this program's of clear Sitka spruce, where every leg is said to be of spruce. */
export function strengthsOf(procedure: Procedure, lots: readonly Lot[]): Strengths | undefined {
  if (procedure.wood)
    return { crushing: procedure.wood.crushing.value, shear: procedure.wood.shear.value, from: procedureOf(procedure) };
  if (lots.length === 0 || !lots.every(isSpruce)) return undefined;
  return { ...SITKA_SPRUCE, from: { code: "source/sitka-spruce", values: {}, known: "memory" } };
}

/** What three thicknesses give, whatever a procedure allows: the usual greatest overlap of the three-leg piece. */
const FLOOR_RATIO = 3;

/** A block has no leg to be crushed; a longer one is a lap by another name: this program's own measure, no source. */
export const isBlock = (form: Procedure["form"], ratio: number | undefined): boolean =>
  form === "block-shear" && (ratio === undefined || atMost(ratio, FLOOR_RATIO));

/** Of a shape with so many thicknesses of overlap; a lap of one face carries half of what two do. */
export function shapeShows(form: Procedure["form"], ratio: number, { crushing, shear }: Strengths): number | undefined {
  if (form === "glue-up") return undefined;
  if (isBlock(form, ratio)) return 1;
  return revealingPower(form === "three-leg" ? ratio : ratio / 2, crushing, shear);
}

export const floorOf = ({ crushing, shear }: Strengths): number => revealingPower(FLOOR_RATIO, crushing, shear) ?? 1;
