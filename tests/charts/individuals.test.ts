import { describe, expect, it } from "vitest";
import { individualsDrawing, type IndividualsInput } from "../../src/charts/individuals.ts";

const ROOM = { width: 600, height: 300, names: 100 };
const input = (
  values: readonly number[],
  marked: readonly number[] = [],
  levels: IndividualsInput["levels"] = [],
): IndividualsInput => ({
  unit: "%",
  levels,
  points: values.map((value, at) => ({ label: `B-${at + 1}`, value, marked: marked.includes(at) })),
});

describe("The drawing of an individuals chart", () => {
  it("spaces points evenly, whatever their days, and places them by value between bottom and top", () => {
    const { points, frame } = individualsDrawing(input([1, 3, 2]), ROOM);
    const [a, b, c] = points;
    expect((b?.x ?? 0) - (a?.x ?? 0)).toBeCloseTo((c?.x ?? 0) - (b?.x ?? 0), 0);
    expect(b?.y).toBeLessThan(c?.y ?? 0);
    expect(c?.y).toBeLessThan(a?.y ?? 0);
    expect(((a?.y ?? 0) + (b?.y ?? 0)) / 2).toBeCloseTo(c?.y ?? 0, 0);
    for (const { x, y } of points)
      expect(x > frame.left && x < frame.right && y > frame.top && y < frame.bottom).toBe(true);
  });

  it("leaves room for levels beyond the points, and keeps their names apart", () => {
    const levels = [
      { name: "Mean", value: 1.01, form: "centre" as const },
      { name: "Upper", value: 9, form: "limit" as const },
      { name: "Lower", value: 1, form: "limit" as const },
    ];
    const { levels: drawn, frame } = individualsDrawing(input([1, 1.02], [], levels), ROOM);
    expect(drawn.every(({ y }) => y > frame.top && y < frame.bottom)).toBe(true);
    const names = drawn.map(({ nameY }) => nameY).sort((a, b) => a - b);
    expect(names.every((y, at) => at === 0 || y - (names[at - 1] ?? 0) >= 16.9)).toBe(true);
    expect(drawn.map(({ name, form }) => [name, form])).toEqual([
      ["Mean", "centre"],
      ["Upper", "limit"],
      ["Lower", "limit"],
    ]);
  });

  it("names marked points alone, and not so close together that their names would lie on each other", () => {
    const { points } = individualsDrawing(input(new Array<number>(60).fill(1), [3, 4, 40]), ROOM);
    expect(points.flatMap(({ label }) => label ?? [])).toEqual(["B-5", "B-41"]);
    expect(points.filter(({ marked }) => marked)).toHaveLength(3);
  });

  it("writes figures on its axis with as many decimals as tell them apart, and no more labels below than fit", () => {
    const { frame } = individualsDrawing(input([6.9, 6.93, 6.95]), ROOM);
    const labels = frame.yTicks.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels.every((label) => label.endsWith(" %"))).toBe(true);
    const many = individualsDrawing(input(new Array<number>(100).fill(0).map((_, at) => at)), ROOM).frame.xTicks;
    expect(many.length).toBeLessThanOrEqual(8);
    expect(many[0]?.label).toBe("B-1");
  });

  it("draws where all values are the same", () => {
    for (const value of [0, 5]) {
      const { points, path } = individualsDrawing(input([value, value]), ROOM);
      expect(points.every(({ y }) => Number.isFinite(y))).toBe(true);
      expect(path).not.toContain("NaN");
    }
  });
});
