/**
 * Break-even overlap of a three-leg piece: the L/t at which crushing of the centre leg and shear of the wood beside
 * the glue come at
 * the same load.
 *
 *   2·w·L·τw = σc·w·t  ⇒  L/t = σc/(2·τw)
 *
 * σc crushing strength along the grain, τw shear strength along the grain, in one unit. Statics; the figures for
 * clear Sitka spruce at
 * 12 % (σc 5,610 psi, τw 1,150 psi: 2.44) are those of the Wood Handbook, FPL-GTR-190, Table 5-3b, memory.
 * Domain: both positive, else undefined.
 */
import { positive } from "../domain.ts";
import { PSI } from "../../facts/quantity/conversions.ts";

export function breakEvenOverlap(crushing: number, shear: number): number | undefined {
  return positive(crushing, shear) ? crushing / (2 * shear) : undefined;
}

/** Clear Sitka spruce at 12 % moisture, Pa: Wood Handbook, FPL-GTR-190, Table 5-3b; memory. */
export const SITKA_SPRUCE = { crushing: 5610 * PSI, shear: 1150 * PSI } as const;
