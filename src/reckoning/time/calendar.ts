/** Days as text (`YYYY-MM-DD`, Gregorian) and as numbers. A text that is no real day gives undefined. */
import { DAY_MS } from "../../facts/quantity/conversions.ts";

/** Days that were reckoned before: a record asks for the same ones again and again. */
const numbers = new Map<string, number>();

/** Days since 1970-01-01. */
export function dayNumber(day: string): number | undefined {
  const known = numbers.get(day);
  if (known !== undefined) return known;
  const ms = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(ms) || dayText(ms / DAY_MS) !== day) return undefined;
  numbers.set(day, ms / DAY_MS);
  return ms / DAY_MS;
}

/** The day as text; `n` whole, counted from 1970-01-01. */
export const dayText = (n: number): string => new Date(n * DAY_MS).toISOString().slice(0, 10);

/** The day that many whole days later. */
export function addDays(day: string, days: number): string | undefined {
  const n = dayNumber(day);
  return n === undefined ? undefined : dayText(n + days);
}

/** The Monday on or before the day: weeks as in ISO 8601. 1970-01-01 was a Thursday. */
export function monday(day: string): string | undefined {
  const n = dayNumber(day);
  return n === undefined ? undefined : dayText(n - ((((n + 3) % 7) + 7) % 7));
}
