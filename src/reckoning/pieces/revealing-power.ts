/**
 * Revealing power of a three-leg piece: the weakest glue line, as a share of the wood's own shear strength, that the
 * piece would still
 * have let pass. 1 is the best there is; 0.5 lets a glue line half as strong as the wood pass.
 *
 *   min(τw, σc·t/(2L)) / τw = min(1, (L/t)break-even / (L/t))
 *
 * σc crushing and τw shear strength of the wood (one unit), L/t overlap over thickness. Statics: the centre leg
 * crushes at P = σc·w·t,
 * when each face carries σc·t/(2L). Domain: all positive, else undefined.
 */
import { breakEvenOverlap } from "./break-even-overlap.ts";
import { positive } from "../domain.ts";

export function revealingPower(ratio: number, crushing: number, shear: number): number | undefined {
  const even = breakEvenOverlap(crushing, shear);
  return even === undefined || !positive(ratio) ? undefined : Math.min(1, even / ratio);
}
