/**
 * Doubt of a mix ratio from the reading step of the scale or measure alone, as a share of the ratio itself:
 *
 *   U(r)/r = 2·√((d/√12 / mA)² + (d/√12 / mB)²)
 *
 * Each reading of resolution d is taken as uniform over ±d/2, standard uncertainty d/√12, and the two as independent;
 * doubled for
 * about 95 %. Source: JCGM 100:2008 (GUM) 4.3.7, F.2.2.1 and 5.1.6; memory. It leaves out what sticks to the cup and
 * how true the
 * scale is: the true doubt is larger.
 * Units: d, mA, mB in any one unit. Domain: all positive, else undefined; a step of 0 says nothing of the scale.
 */
import { positive } from "../domain.ts";

export function ratioDoubt(resin: number, hardener: number, step: number): number | undefined {
  if (!positive(resin, hardener, step)) return undefined;
  const u = step / Math.sqrt(12);
  return 2 * Math.hypot(u / resin, u / hardener);
}
