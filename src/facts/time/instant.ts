/** A day with a time of day, `2025-03-08 15:00`. */
import { isFault, type Reading, shown } from "../reading.ts";
import type { Day } from "../values.ts";
import { type Clock, readClock } from "./clock.ts";
import { readDay } from "./day.ts";

export interface Instant {
  readonly typed: string;
  readonly day: Day;
  readonly clock: Clock;
}

export function readInstant(typed: string): Reading<Instant> {
  const [, day = "", clock = ""] = /^(\S+)[ T]+(\S+)$/.exec(typed.trim()) ?? [];
  const [readOf, at] = [readDay(day), readClock(clock)];
  if (!isFault(readOf) && !isFault(at)) return { value: { typed, day: readOf.value, clock: at.value } };
  return {
    fault: {
      code: "no-instant",
      message: "this is not a day with a time of day",
      expected: 'a day and a time, such as "2025-03-08 15:00"',
      found: shown(typed),
      mend: "give year, month and day with hyphens, a blank, and hours and minutes of the 24-hour clock, in quotation marks",
    },
  };
}
