/** A day, a month or a year, as the time that something is known to have happened in. */
import { LIMITS } from "../limits.ts";
import { onlyYouKnow, type Reading, shown } from "../reading.ts";
import type { Day } from "../values.ts";
import { readDay } from "./day.ts";

/** From its first day to its last, both within it. */
export interface Span {
  /** `2021-03-14`, `2021-03` or `2021`. */
  readonly typed: string;
  readonly from: Day;
  readonly to: Day;
}

export function readSpan(typed: string): Reading<Span> {
  const text = typed.trim();
  const [, year, month] = /^(\d{4})(?:-(\d{2}))?$/.exec(text) ?? [];
  if (year === undefined) return ofDay(text);
  const isReal = month === undefined || (Number(month) >= 1 && Number(month) <= 12);
  const isOurs = Number(year) >= LIMITS.years.first && Number(year) <= LIMITS.years.last;
  if (!isReal || !isOurs) return wrong(typed, "there is no such month or year");
  const to = month === undefined ? `${year}-12-31` : lastOf(Number(year), Number(month));
  return { value: { typed: text, from: `${year}-${month ?? "01"}-01`, to } };
}

function ofDay(text: string): Reading<Span> {
  const day = readDay(text);
  if ("value" in day) return { value: { typed: text, from: day.value, to: day.value } };
  return day.fault.instead === undefined && day.fault.code === "no-date"
    ? wrong(text, "this is not a day, a month or a year", day.fault.mend)
    : { fault: { ...day.fault, expected: EXPECTED } };
}

/** Day 0 of a month is the last of the month before it. */
const lastOf = (year: number, month: number): Day => new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10);

const EXPECTED = "a day, a month or a year, such as 2021-03-14, 2021-03 or 2021";

const wrong = (
  typed: string,
  message: string,
  mend = "give the year first, then month and day with hyphens",
): Reading<Span> => ({
  fault: { code: "no-date", message, expected: EXPECTED, found: shown(typed), ...onlyYouKnow(mend) },
});
