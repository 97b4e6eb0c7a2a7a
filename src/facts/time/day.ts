/** Days of the calendar. */
import { DAY_MS } from "../quantity/conversions.ts";
import { beyond, LIMITS } from "../limits.ts";
import { type Fault, type Mending, onlyYouKnow, type Reading, shown, writes } from "../reading.ts";
import type { Day } from "../values.ts";

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

export function readDay(typed: string): Reading<Day> {
  const match = DAY.exec(typed);
  const [year, month, day] = [Number(match?.[1]), Number(match?.[2]), Number(match?.[3])];
  if (match && isRead(year, month, day)) return { value: typed };
  if (match && isReal(year, month, day)) return { fault: anotherAge(typed) };
  if (match) {
    return wrong(typed, "there is no such day", onlyYouKnow("give a day that the calendar has"));
  }
  return wrong(typed, "this is not a date", mendFor(typed.trim()));
}

function isReal(year: number, month: number, day: number): boolean {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  return date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

function isRead(year: number, month: number, day: number): boolean {
  return year >= LIMITS.years.first && year <= LIMITS.years.last && isReal(year, month, day);
}

function anotherAge(typed: string): Fault {
  const { first, last } = LIMITS.years;
  const years = `a day of the years ${first} to ${last}`;
  return { ...beyond("this day is of another age", "", "look at the year", typed), expected: years };
}

/** The day after. */
export function nextDay(day: Day): Day {
  return new Date(Date.parse(`${day}T00:00:00Z`) + DAY_MS).toISOString().slice(0, 10);
}

function iso(year: number, month: number, day: number): string | undefined {
  return isRead(year, month, day)
    ? `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`
    : undefined;
}

function mendFor(typed: string): Mending {
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(typed);
  const yearLast = /^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4})$/.exec(typed);
  const meant = yearFirst
    ? [iso(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]))]
    : yearLast
      ? [
          iso(Number(yearLast[3]), Number(yearLast[2]), Number(yearLast[1])),
          iso(Number(yearLast[3]), Number(yearLast[1]), Number(yearLast[2])),
        ]
      : [];
  const ways = [...new Set(meant.filter((way) => way !== undefined))];
  const [only] = ways;
  if (only === undefined) return onlyYouKnow("give year, month and day with hyphens");
  return ways.length === 1 ? writes(only) : onlyYouKnow(`write ${ways.join(" or ")}, as it was meant`);
}

function wrong(typed: string, message: string, mending: Mending): Reading<Day> {
  return {
    fault: { code: "no-date", message, expected: "a date, such as 2025-03-08", found: shown(typed), ...mending },
  };
}
