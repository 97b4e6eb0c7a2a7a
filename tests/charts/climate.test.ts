import { describe, expect, it } from "vitest";
import { bucketed, climateDrawing, type ClimateInput } from "../../src/charts/climate.ts";
import { NARROW, WIDE } from "../../src/charts/frame.ts";

const days = (...at: readonly number[]) => at.map((day) => ({ day, least: 10 + (day % 3), greatest: 20 + (day % 5) }));
const input = (change: Partial<ClimateInput> = {}): ClimateInput => ({
  days: days(100, 101, 102),
  gaps: [],
  marks: [],
  from: 100,
  to: 103,
  unit: "°C",
  ...change,
});
const numbers = (path: string): number[] => (path.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);

describe("The climate chart", () => {
  it("draws one band for each stretch of days, from the least to the greatest", () => {
    const { band, frame } = climateDrawing(input(), WIDE);
    expect(band.match(/M/g)).toHaveLength(1);
    expect(band.startsWith(`M${frame.left} `)).toBe(true);
    expect(Math.max(...numbers(band))).toBe(frame.right);
    expect(climateDrawing(input({ days: days(100, 102) }), WIDE).band.match(/M/g)).toHaveLength(2);
  });

  it("goes up the greatest and back along the least in steps", () => {
    const { band } = climateDrawing(
      {
        ...input({
          days: [
            { day: 100, least: 10, greatest: 20 },
            { day: 101, least: 12, greatest: 18 },
          ],
          to: 102,
        }),
      },
      { width: 270, height: 140, names: 0 },
    );
    // 62 to 262 across two days; 10 at the bottom (114) and 20 at the top (14).
    expect(band).toBe("M62 114V14H162V34H262V94H162V114H62z");
  });

  it("puts days together where they would be too thin, and breaks only where a whole column is without readings", () => {
    expect(bucketed(days(100, 101, 107, 115), 100, 7)).toEqual([
      { day: 100, least: 11, greatest: 21 },
      { day: 107, least: 12, greatest: 22 },
      { day: 114, least: 11, greatest: 20 },
    ]);
    const long = days(...Array.from({ length: 900 }, (_, i) => 1000 + i));
    const { band } = climateDrawing(input({ days: long, from: 1000, to: 1900 }), NARROW);
    expect(band.match(/M/g)).toHaveLength(1);
    expect(band.match(/V/g)?.length).toBe(2 * Math.ceil(900 / 7));
  });

  it("shows a gap however short, and marks at what was noted or else on the axis", () => {
    const { gaps, marks, frame } = climateDrawing(
      input({
        gaps: [
          { from: 101, to: 101.0001 },
          { from: 101, to: 102 },
        ],
        marks: [
          { day: 101.5, value: 15, words: "B-1" },
          { day: 102.5, words: "B-2" },
        ],
      }),
      WIDE,
    );
    expect(gaps[0]?.width).toBe(1.5);
    expect(gaps[1]?.width).toBeCloseTo((frame.right - frame.left) / 3, 0);
    expect(marks[0]).toMatchObject({ noted: true, words: "B-1" });
    expect(marks[0]?.y).toBeLessThan(frame.bottom);
    expect(marks[1]).toMatchObject({ noted: false, y: frame.bottom });
  });

  it("reaches to what was noted beyond all readings, and stands up where all readings are the same", () => {
    const { marks, frame } = climateDrawing(input({ marks: [{ day: 101, value: 40, words: "" }] }), WIDE);
    expect(marks[0]?.y).toBeGreaterThanOrEqual(frame.top);
    const flat = climateDrawing(input({ days: [{ day: 100, least: 5, greatest: 5 }] }), WIDE);
    expect(numbers(flat.band).every((value) => Number.isFinite(value))).toBe(true);
    expect(flat.frame.yTicks.length).toBeGreaterThan(1);
  });
});
