/**
 * Hardener for a given amount of resin, in steps of the scale, with the band that the data sheet's tolerance allows.
 *
 *   nominal = resin·r;  band = resin·r·(1 ± tolerance), its ends rounded inwards to whole steps
 *
 * Units: resin, step and the result in any one unit; r is hardener over resin in the same measure (mass or volume).
 * `band` is undefined where no whole step lies within the tolerance: the scale is too coarse for so little.
 * Domain: resin, r, step positive, 0 ≤ tolerance < 1, else undefined. From the definition of the ratio.
 */
import { notNegative, positive } from "../domain.ts";

export interface Hardener {
  readonly exact: number;
  readonly reading: number;
  readonly band?: { readonly least: number; readonly most: number };
}

// Lets 34.86 g / 0.01 g count as 3,486 whole steps.
const SLACK = 1e-9;

export function hardenerFor(resin: number, ratio: number, tolerance: number, step: number): Hardener | undefined {
  if (!positive(resin, ratio, step) || !notNegative(tolerance) || tolerance >= 1) return undefined;
  const exact = resin * ratio;
  const least = Math.ceil((exact * (1 - tolerance)) / step - SLACK);
  const most = Math.floor((exact * (1 + tolerance)) / step + SLACK);
  const reading = Math.round(exact / step + SLACK) * step;
  return least > most ? { exact, reading } : { exact, reading, band: { least: least * step, most: most * step } };
}
