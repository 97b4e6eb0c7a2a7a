import { expect, it } from "vitest";
import { demo, entries } from "./told.ts";

/** Two months before the last entry, by the day of the month. */
function twoMonthsBefore(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCMonth(date.getUTCMonth() - 2);
  return date.toISOString().slice(0, 10);
}

it("Every entry of the last two months has a picture", () => {
  const last = entries.filter(({ day }) => day >= twoMonthsBefore(demo.day));
  expect(last.length).toBeGreaterThan(9);
  expect(last.filter(({ photos }) => photos.length === 0).map(({ id }) => id)).toEqual([]);
});
