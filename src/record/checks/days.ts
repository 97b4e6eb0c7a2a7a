/** Days against the start of the build and today, and times of a day as clocks showed them. */
import { DAY_MINUTES, DAY_MS } from "../../facts/quantity/conversions.ts";
import { type Fault, isFault, shown } from "../../facts/reading.ts";
import { type Clock, clockText, PAST_MIDNIGHT } from "../../facts/time/clock.ts";
import { readDay } from "../../facts/time/day.ts";
import type { Zone } from "../../facts/time/zone.ts";
import type { Path } from "../text/yaml.ts";
import type { Day } from "../../facts/types.ts";
import type { Filed } from "../filed.ts";
import { type CheckContext, type EntryFile, report, soundOf } from "./context.ts";

export function checkDays(context: CheckContext): void {
  const start = soundOf(context, "aircraft")[0]?.spec.start;
  for (const filed of soundOf(context, "aircraft")) {
    notAfterToday(context, filed, ["start"], filed.spec.start);
    const { first_flight } = filed.spec;
    if (first_flight === undefined) continue;
    notBeforeStart(context, filed, ["first_flight"], first_flight, start);
    notAfterToday(context, filed, ["first_flight"], first_flight);
  }
  for (const filed of soundOf(context, "lot")) notAfterToday(context, filed, ["received"], filed.spec.received);
  for (const filed of soundOf(context, "trial")) notAfterToday(context, filed, ["stated"], filed.spec.stated);
  for (const filed of soundOf(context, "assembly")) {
    if (filed.spec.finished === undefined) continue;
    notBeforeStart(context, filed, ["finished"], filed.spec.finished, start);
    notAfterToday(context, filed, ["finished"], filed.spec.finished);
  }
  for (const filed of soundOf(context, "entry")) {
    const named = filed.id.slice(0, 10);
    const isAsWritten = filed.at(["date"]).file === filed.file;
    if (isAsWritten && !isFault(readDay(named)) && named !== filed.spec.date)
      report(context, filed, ["date"], otherDay(named, filed.spec.date));
    notBeforeStart(context, filed, ["date"], filed.spec.date, start);
    notAfterToday(context, filed, ["date"], filed.spec.date);
  }
}

function otherDay(named: string, typed: string): Fault {
  return {
    code: "other-day",
    message: "the date is not that of the file's name",
    expected: named,
    found: shown(typed),
    mend: `if the file is right, date: ${named}; else let its name begin with ${typed}`,
  };
}

function notBeforeStart(
  context: CheckContext,
  filed: Filed<unknown>,
  path: Path,
  day: Day,
  start: Day | undefined,
): void {
  if (start !== undefined && day < start) report(context, filed, path, beforeStart(day, start));
}

export const beforeStart = (found: string, start: Day): Fault => ({
  code: "before-start",
  message: "this is before the build began",
  expected: `a day from ${start} on, the start in aircraft.md`,
  found,
  mend: "correct this date, or the start in aircraft.md",
});

function notAfterToday(context: CheckContext, filed: Filed<unknown>, path: Path, day: Day): void {
  if (context.today !== undefined && day > context.today) report(context, filed, path, notYet(day, context.today));
}

export const notYet = (found: string, today: Day): Fault => ({
  code: "after-today",
  message: "this day has not come yet",
  expected: `a day up to today, ${today}`,
  found,
  mend: "write the day on which it happened",
});

/** Reports a time of day that clocks, put forward for summer, passed over. */
export function checkClock(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  clock: Clock | undefined,
  zone: Zone | undefined,
  day: Day = filed.spec.date,
): void {
  if (!clock || !zone || zone.moment(day, clock, "earlier")) return;
  if (clock.offset !== undefined) {
    report(context, filed, path, {
      code: "other-offset",
      message: "clocks of the workshop never showed this time so far from UTC",
      expected: "the offset that held at that time, or none",
      found: clock.typed,
      mend: "correct the offset, or take it away",
    });
    return;
  }
  report(context, filed, path, {
    code: "skipped-hour",
    message: "clocks were put forward over this time",
    expected: "a time that clocks showed that day",
    found: clock.typed,
    mend: "write the time that the clock showed",
  });
}

/** A time of day, and the day it is counted from. */
export interface When {
  readonly day: Day;
  readonly clock: Clock;
}

/** Whether one was surely before the other: by clocks; where an offset is said, by moments, of a time that came twice by the one that would be in order. */
export function isBefore(one: When, other: When, zone: Zone | undefined): boolean {
  const byClock = ({ day, clock }: When): number => (Date.parse(day) / DAY_MS) * DAY_MINUTES + clock.minutes;
  if (one.clock.offset === undefined && other.clock.offset === undefined) return byClock(one) < byClock(other);
  const [first, second] = [zone?.moment(one.day, one.clock, "later"), zone?.moment(other.day, other.clock, "earlier")];
  return first !== undefined && second !== undefined && first.epoch < second.epoch;
}

/** What to write where a time of day, too early as it stands, is one of the next day. */
export function pastMidnight(from: Clock, to: Clock): string {
  const past = to.minutes + DAY_MINUTES;
  return past < PAST_MIDNIGHT * 60 && to.minutes < from.minutes
    ? `if midnight had passed, write "${clockText(past)}"`
    : "correct one of the two times";
}
