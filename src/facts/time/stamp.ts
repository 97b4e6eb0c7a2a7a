import { HOUR_SECONDS } from "../quantity/conversions.ts";
import { LIMITS } from "../limits.ts";

/**
 * What a stamp such as `08.03.2025 14:20` says: the wall time as if it were UTC, s, and the seconds east of Greenwich
 * where it names them.
 */
interface Stamp {
  readonly wall: number;
  readonly offset?: number;
}

export type StampReader = (typed: string) => Stamp | undefined;

/** Hour of the day from one with `a` or `p` beside it; NaN for what no clock shows. */
export function hourOf(hour: number, half: string | undefined): number {
  if (half === undefined) return hour;
  if (hour < 1 || hour > 12) return Number.NaN;
  return (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
}

/**
 * Seconds of a wall time as if it were UTC; undefined for what no calendar and no clock shows, for years before 1970
 * and after the last that is read.
 */
export function wallOf(
  year: number,
  month: number,
  day: number,
  hour: number,
  minute: number,
  second: number,
): number | undefined {
  if (
    !(
      year >= 1970 &&
      year <= LIMITS.years.last &&
      month >= 1 &&
      month <= 12 &&
      day >= 1 &&
      hour >= 0 &&
      hour <= 23 &&
      minute <= 59 &&
      second < 60
    )
  )
    return undefined;
  const midnight = Date.UTC(year, month - 1, day);
  return new Date(midnight).getUTCDate() === day
    ? midnight / 1000 + hour * HOUR_SECONDS + minute * 60 + second
    : undefined;
}
