/** Hours in the weeks of a chart. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weekly, weeksOf } from "../../src/pages/forecast/chart.ts";

const [START, END] = ["2021-01-01", "2023-12-31"] as const;
const span = (day: string, through: string, minutes: number) => ({ day, through, minutes });
const sums = (lines: Parameters<typeof weekly>[0]): number[] => weekly(lines, weeksOf(lines, START, END));

describe("Minutes of a span, in the weeks of a chart", () => {
  it("are alike on each of its days, both ends included", () => {
    const [first = 0, second = 0, ...rest] = sums([span("2021-01-02", "2021-01-05", 100)]).filter((sum) => sum > 0);
    expect([first, second, rest]).toEqual([50, 50, []]);
    expect(sums([span("2021-03-14", "2021-03-14", 90)])).toEqual(sums([{ day: "2021-03-14", minutes: 90 }]));
  });

  it("that goes on after the last week are drawn within the weeks", () => {
    const lines = [span("2023-12-30", "2024-12-31", 300)];
    expect(weekly(lines, weeksOf(lines, START, END)).at(-1)).toBe(300);
  });

  it("are never lost, wherever it lies", () => {
    const day = fc
      .integer({ min: 0, max: 1094 })
      .map((n) => new Date(Date.UTC(2021, 0, 1 + n)).toISOString().slice(0, 10));
    const line = fc
      .tuple(day, day, fc.integer({ min: 1, max: 10_000 }), fc.boolean())
      .map(([a, b, minutes, isSpan]) => (isSpan ? span(a < b ? a : b, a < b ? b : a, minutes) : { day: a, minutes }));
    fc.assert(
      fc.property(fc.array(line), (lines) => {
        const worked = lines.reduce((sum, { minutes }) => sum + minutes, 0);
        expect(sums(lines).reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(worked, 4);
      }),
    );
  });

  it("are reckoned week by week, so that thousands of long spans take no time to speak of", () => {
    const years = Array.from({ length: 20_000 }, () => span("2021-01-01", "2021-12-31", 365));
    expect(sums(years).reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(20_000 * 365, 2);
  });
});
