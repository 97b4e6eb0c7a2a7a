/**
 * How the forecast would have done: at each origin, a number of past weeks is taken as all that is known, the work of
 * the next `ahead` weeks is forecast as `workBy` does, and the band from its 10 % to its 90 % quantile is held
 * against what was then worked.
 *
 * `origins` are numbers of weeks known; those with fewer than `LEAST_WEEKS` before them or fewer than `ahead` after
 * them are not tried. Windows that overlap are not independent of each other, so that the share held is a look back
 * and no proof. Domain: minutes ≥ 0, ahead whole from 1, else undefined.
 */
import { isCount, notNegative } from "../domain.ts";
import { LEAST_WEEKS } from "./foretold.ts";
import { workBy } from "./work-ahead.ts";

export interface LookBack {
  /** Weeks known. */
  readonly origin: number;
  readonly low: number;
  readonly high: number;
  readonly worked: number;
  readonly held: boolean;
}

export function forecastBacktest(
  weekly: readonly number[],
  origins: readonly number[],
  ahead: number,
): LookBack[] | undefined {
  if (!(notNegative(...weekly) && isCount(ahead) && ahead >= 1)) return undefined;
  return origins
    .filter((origin) => isCount(origin) && origin >= LEAST_WEEKS && origin + ahead <= weekly.length)
    .map((origin) => {
      const [low = 0, high = 0] = workBy(weekly.slice(0, origin), ahead, [0.1, 0.9]) ?? [];
      const worked = weekly.slice(origin, origin + ahead).reduce((sum, minutes) => sum + minutes, 0);
      return { origin, low, high, worked, held: low <= worked && worked <= high };
    });
}
