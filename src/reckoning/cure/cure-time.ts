/**
 * Cure that the record proves between closing a joint and breaking its test piece, s.
 *
 * From the latest the joint can have been closed to the earliest the piece can have been broken: where no time of day
 * is noted the
 * first is the end of its day and the second the start of its day. Never below 0. Units: seconds since
 * 1970-01-01T00:00Z.
 */
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";

export function cureTime(closedAtLatest: number, brokenAtEarliest: number): number {
  return Math.max(0, brokenAtEarliest - closedAtLatest);
}

/** Three full days at room temperature, s: common practice, no source. */
export const USUAL_CURE = 3 * DAY_SECONDS;
