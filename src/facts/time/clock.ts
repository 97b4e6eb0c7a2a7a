/** Times of day, `14:20`; `24:20` is twenty past midnight of the same session. */
import { type Mending, onlyYouKnow, type Reading, shown, writesQuoted } from "../reading.ts";

export interface Clock {
  readonly typed: string;
  /** From the start of the entry's day. */
  readonly minutes: number;
}

/** The first hour that may not be written where a session may run past midnight. */
export const PAST_MIDNIGHT = 36;

/** `latest` is the first hour that may not be written. */
export function readClock(typed: string, latest = 24): Reading<Clock> {
  const match = /^(\d{1,2}):(\d{2})$/.exec(typed.trim());
  const hours = Number(match?.[1]);
  const minutes = Number(match?.[2]);
  if (match && hours < latest && minutes < 60) return { value: { typed, minutes: hours * 60 + minutes } };
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
