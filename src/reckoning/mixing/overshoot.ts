/**
 * What to add to a mix that went over on one side, so that the ratio is nominal again:
 *
 *   too much hardener: resin to add = hardener/r − resin;  too much resin: hardener to add = resin·r − hardener
 *
 * Units: amounts in any one unit; r hardener over resin in the same measure. Domain: all positive, else undefined.
 * From the definition of the ratio. It says nothing of how long the mix has stood.
 */
import { positive } from "../domain.ts";

export interface Correction {
  readonly add: "resin" | "hardener" | "nothing";
  readonly amount: number;
}

export function correction(resin: number, hardener: number, ratio: number): Correction | undefined {
  if (!positive(resin, hardener, ratio)) return undefined;
  const surplus = hardener / ratio - resin;
  if (surplus > 0) return { add: "resin", amount: surplus };
  if (surplus < 0) return { add: "hardener", amount: resin * ratio - hardener };
  return { add: "nothing", amount: 0 };
}
