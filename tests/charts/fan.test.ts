import { describe, expect, it } from "vitest";
import { fanDrawing, type FanInput } from "../../src/charts/fan.ts";

const ROOM = { width: 600, height: 300, names: 8 };
const FAN: FanInput = {
  past: [
    [20_000, 0],
    [20_100, 50],
    [20_200, 100],
  ],
  ahead: [
    {
      day: 20_300,
      bands: [
        [120, 180],
        [140, 160],
      ],
      middle: 150,
    },
    {
      day: 20_400,
      bands: [
        [150, 200],
        [180, 200],
      ],
      middle: 200,
    },
  ],
  goal: 200,
  marks: [20_400, 20_450],
};
const numbers = (path: string): number[] => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

describe("The drawing of a forecast", () => {
  it("lets every band and the middle start where the past ends", () => {
    const { past, bands, middle, now } = fanDrawing(FAN, ROOM);
    const end = numbers(past).slice(-2);
    expect(end[0]).toBe(now);
    expect(numbers(middle).slice(0, 2)).toEqual(end);
    for (const band of bands) expect(numbers(band).slice(0, 2)).toEqual(end);
  });

  it("keeps the narrow band within the wide one", () => {
    const [wide = [], narrow = []] = fanDrawing(FAN, ROOM).bands.map((band) =>
      numbers(band).filter((_, at) => at % 2 === 1),
    );
    expect(Math.min(...wide.slice(1, 2))).toBeLessThanOrEqual(Math.min(...narrow.slice(1, 2)));
    expect(wide).toHaveLength(6);
  });

  it("has the goal as a level that the past has not reached, and ticks on days ahead", () => {
    const { goal, frame, now, marks, past } = fanDrawing(FAN, ROOM);
    expect(goal).toBeGreaterThanOrEqual(frame.top);
    expect(goal).toBeLessThan(numbers(past).at(-1) ?? 0);
    expect(goal).toBeLessThan(frame.bottom);
    expect(marks[0]).toBeGreaterThan(now);
    expect(marks[1]).toBeCloseTo(frame.right, 0);
  });

  it("draws with no future at all", () => {
    const { bands, middle } = fanDrawing({ ...FAN, ahead: [], marks: [] }, ROOM);
    expect(bands).toEqual([]);
    expect(middle).not.toContain("NaN");
  });
});
