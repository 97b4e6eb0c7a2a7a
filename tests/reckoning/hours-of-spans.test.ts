/** Hours of which only the span is known: under which month they stand, and when they are none. */
import { describe, expect, it } from "vitest";
import { byMonth, isOfDay } from "../../src/reckoning/hours/hours.ts";

const span = (day: string, through: string, minutes: number) => ({ day, through, minutes });

describe("Hours of a span", () => {
  it("are of no day, those of a day are", () => {
    expect([isOfDay({ day: "2021-03-14", minutes: 1 }), isOfDay(span("2021-03-01", "2021-03-31", 1))]).toEqual([
      true,
      false,
    ]);
  });

  it("stand under their month where they are within one, else under their year, before its months", () => {
    const months = byMonth([
      { day: "2021-03-14", minutes: 1 },
      span("2021-03-01", "2021-03-31", 2),
      span("2021-01-01", "2021-12-31", 4),
      { day: "2021-01-02", minutes: 8 },
    ]);
    expect([...months]).toEqual([
      ["2021", 4],
      ["2021-01", 8],
      ["2021-03", 3],
    ]);
  });
});
