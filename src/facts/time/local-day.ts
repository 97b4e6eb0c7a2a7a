import type { Day } from "../values.ts";

/** The day on the calendar of this machine. */
export function localDay(time: Date): Day {
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
}
