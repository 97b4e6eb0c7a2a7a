/** Days and months in fixed English, so that the same record gives the same bytes anywhere. */
import type { Day } from "../facts/types.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

function monthName(day: Day): string {
  return MONTHS[Number(day.slice(5, 7)) - 1] ?? "";
}

/** `2025-03-08` → `8 March 2025` */
export function dateWords(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day)} ${day.slice(0, 4)}`;
}

/** `2025-03-08 05:00` → `8 March 2025, 05:00` */
export function hourWords(stamp: string): string {
  const [day, hour] = [stamp.slice(0, 10), stamp.slice(11)];
  return hour === "" ? dateWords(day) : `${dateWords(day)}, ${hour}`;
}

/** `2025-03-08` → `8 Mar 2025` */
export function dateShort(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day).slice(0, 3)} ${day.slice(0, 4)}`;
}

/** `2025-03-08` → `8 Mar`, where the year stands near by. */
export function dayAndMonth(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day).slice(0, 3)}`;
}

/** `2025-03` or a day in it → `March 2025` */
export function monthWords(month: string): string {
  return `${monthName(month)} ${month.slice(0, 4)}`;
}

/** A day, a month or a year as typed → `8 March 2025`, `March 2025`, `2025` */
export function spanWords(typed: string): string {
  return typed.length === 10 ? dateWords(typed) : typed.length === 7 ? monthWords(typed) : typed;
}

/** `2025-03` or a day in it → `Mar` */
export function monthShort(month: string): string {
  return monthName(month).slice(0, 3);
}
