/**
 * Minutes of each whole week, Monday to Sunday, that lies between two days (both included), weeks without work as 0.
 * Weeks cut short by either
 * day are left out, since they would look idle.
 *
 * Domain: two real days; lines with real days; else undefined.
 */
import { addDays, monday } from "../time/calendar.ts";
import { byWeek, type Worked } from "./hours.ts";

export function wholeWeeks(lines: readonly Worked[], first: string, last: string): Worked[] | undefined {
  const weeks = byWeek(lines, first, last);
  const start = monday(addDays(first, 6) ?? "");
  return start === undefined ? undefined : weeks?.filter(({ day }) => day >= start && (addDays(day, 6) ?? "") <= last);
}
