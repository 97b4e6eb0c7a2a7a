/**
 * Strength of clear wood at another moisture content: P = P12·(P12/Pg)^((12 − M)/(Mp − 12)).
 *
 * P12 strength at 12 %, Pg strength when green (one unit); M and Mp in percent, Mp the moisture at which drying
 * begins to tell, 27 for
 * Sitka spruce (Table 5-13). Source: Wood Handbook, FPL-GTR-190, eq. 5-3 and Table 5-13; memory.
 * Domain: strengths positive, 0 ≤ M, Mp > 12; from Mp upwards the strength is Pg. Else undefined.
 */
import { notNegative, positive } from "../domain.ts";

const SITKA_SPRUCE_MP = 27;

export function strengthAtMoisture(
  dry: number,
  green: number,
  moisture: number,
  mp: number = SITKA_SPRUCE_MP,
): number | undefined {
  if (!positive(dry, green) || !notNegative(moisture) || !(mp > 12)) return undefined;
  return moisture >= mp ? green : dry * (dry / green) ** ((12 - moisture) / (mp - 12));
}
