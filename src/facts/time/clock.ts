/** Times of day, `14:20` or `14:20:30`; `24:20` is twenty past midnight of the same session, `01:05+00:00` the second five past one of the night on which clocks are put back. */
import { HOUR_SECONDS } from "../quantity/conversions.ts";
import { type Mending, onlyYouKnow, type Reading, shown, writesQuoted } from "../reading.ts";

export interface Clock {
  readonly typed: string;
  /** From the start of the entry's day; with seconds no integer. */
  readonly minutes: number;
  /** Seconds east of Greenwich, where that is said. */
  readonly offset?: number;
}

const CLOCK = /^(\d{1,2}):(\d{2})(?::(\d{2}))?(?:\s*(?:(Z)|([+-])(\d{2}):(\d{2})))?$/;

/** The first hour that may not be written where a session may run past midnight. */
export const PAST_MIDNIGHT = 36;

/** `latest` is the first hour that may not be written. */
export function readClock(typed: string, latest = 24): Reading<Clock> {
  const match = CLOCK.exec(typed.trim());
  const [hours, minutes, seconds] = [1, 2, 3].map((at) => Number(match?.[at] ?? 0));
  const offset = match ? offsetIn(match) : undefined;
  if (
    match &&
    hours !== undefined &&
    hours < latest &&
    minutes !== undefined &&
    minutes < 60 &&
    seconds !== undefined &&
    seconds < 60 &&
    !Number.isNaN(offset)
  ) {
    const clock = { typed, minutes: hours * 60 + minutes + seconds / 60 };
    return { value: offset === undefined ? clock : { ...clock, offset } };
  }
  const message = match ? "there is no such time of day" : "this is not a time of day";
  return {
    fault: {
      code: "no-time",
      message,
      expected: 'a time of day, such as "14:20"',
      found: shown(typed),
      ...mendFor(typed.trim()),
    },
  };
}

/** Without seconds. */
export function wholeMinutes(typed: string, reading: Reading<Clock>): Reading<Clock> {
  if ("fault" in reading || Number.isInteger(reading.value.minutes)) return reading;
  return {
    fault: {
      code: "no-time",
      message: "hours are kept in whole minutes",
      expected: 'a time of day, such as "14:20"',
      found: shown(typed),
      ...onlyYouKnow("leave the seconds out"),
    },
  };
}

/** NaN where it is further than any zone is. */
function offsetIn([, , , , zulu, sign, hours, minutes]: readonly (string | undefined)[]): number | undefined {
  if (zulu !== undefined) return 0;
  if (sign === undefined) return undefined;
  if (Number(hours) > 14 || Number(minutes) > 59) return Number.NaN;
  return (sign === "-" ? -1 : 1) * (Number(hours) * HOUR_SECONDS + Number(minutes) * 60);
}

/** Minutes from the start of a day as a clock shows them, on into the next: `24:10`, `24:10:30`. */
export function clockText(minutes: number): string {
  const seconds = Math.round(minutes * 60);
  const parts = [Math.floor(seconds / HOUR_SECONDS), Math.floor(seconds / 60) % 60, seconds % 60];
  return parts
    .slice(0, seconds % 60 === 0 ? 2 : 3)
    .map((part, at) => (at === 0 ? String(part) : String(part).padStart(2, "0")))
    .join(":");
}

function mendFor(typed: string): Mending {
  const half = /^(\d{1,2})(?:[:.](\d{2}))?\s*([ap])\.?m\.?$/i.exec(typed);
  if (half && Number(half[1]) >= 1 && Number(half[1]) <= 12) {
    const hours = (Number(half[1]) % 12) + (half[3]?.toLowerCase() === "p" ? 12 : 0);
    return writesQuoted(`${String(hours).padStart(2, "0")}:${half[2] ?? "00"}`);
  }
  const other = /^(\d{1,2})[.h]?(\d{2})h?$/i.exec(typed);
  if (other && Number(other[1]) < 24 && Number(other[2]) < 60) return writesQuoted(`${other[1]}:${other[2]}`);
  return onlyYouKnow("give hours and minutes of the 24-hour clock, in quotation marks");
}
