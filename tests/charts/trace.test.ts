import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shortened, traceDrawing, widthOf, type TraceBox, type TraceLine } from "../../src/charts/trace.ts";

const box = (key: string, column: number, label = key, word = "shown"): TraceBox => ({ key, column, label, word });

/** Boxes in five columns, and lines from each column to the next. */
const anyTrace = fc
  .tuple(...[0, 1, 2, 3, 4].map(() => fc.integer({ min: 0, max: 6 })), fc.infiniteStream(fc.boolean()))
  .map(([a, b, c, d, e, coins]) => {
    const counts = [a, b, c, d, e] as number[];
    const boxes = counts.flatMap((count, column) =>
      Array.from({ length: count }, (_, at) => box(`${column}-${at}`, column, "x".repeat(1 + ((at * 7) % 30)))),
    );
    const flips = (coins as fc.Stream<boolean>)[Symbol.iterator]();
    const lines: TraceLine[] = boxes.flatMap((from) =>
      boxes
        .filter((to) => to.column === from.column + 1 && flips.next().value === true)
        .map((to) => ({ from: from.key, to: to.key })),
    );
    return { boxes, lines };
  });

describe("the drawing of a trace", () => {
  test("puts every box in its column, on the drawing, and none over another", () => {
    fc.assert(
      fc.property(anyTrace, ({ boxes, lines }) => {
        const { boxes: placed, width, height, columns } = traceDrawing(boxes, lines);
        expect(placed.map(({ key }) => key)).toEqual(boxes.map(({ key }) => key));
        placed.forEach((one, at) => {
          expect(one.left).toBe(columns.get(boxes[at]?.column ?? -1));
          expect(one.top).toBeGreaterThanOrEqual(24);
          expect(one.left + one.width).toBeLessThanOrEqual(width);
          expect(one.top + one.height).toBeLessThanOrEqual(height);
          for (const other of placed.slice(at + 1))
            expect(other.left !== one.left || Math.abs(other.top - one.top) >= one.height).toBe(true);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("leads every line from the right edge of one box to the left edge of another, and says the same each time", () => {
    fc.assert(
      fc.property(anyTrace, ({ boxes, lines }) => {
        const drawing = traceDrawing(boxes, lines);
        const at = new Map(drawing.boxes.map((one) => [one.key, one]));
        lines.forEach(({ from, to }, n) => {
          const [a, b] = [at.get(from), at.get(to)];
          if (!a || !b) throw new Error("no box");
          const numbers = (drawing.paths[n] ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
          expect(numbers.slice(0, 2)).toEqual([a.left + a.width, a.top + a.height / 2]);
          expect(numbers.slice(-2)).toEqual([b.left, b.top + b.height / 2]);
          expect(b.left).toBeGreaterThan(a.left + a.width);
        });
        expect(traceDrawing(boxes, lines)).toEqual(drawing);
      }),
      { numRuns: 80 },
    );
  });

  test("makes columns as wide as their words, within limits, and leaves no room for empty ones", () => {
    const { boxes, columns } = traceDrawing(
      [box("a", 0, "R", ""), box("b", 1, "Batch with a name of length", ""), box("c", 3, "x".repeat(99), "")],
      [{ from: "a", to: "b" }],
    );
    expect(boxes.map(({ width }) => width)).toEqual([84, 176, 176]);
    expect([...columns.keys()]).toEqual([0, 1, 3]);
    const [, second, third] = [...columns.values()];
    expect(third).toBe((second ?? 0) + 176 + 56);
  });

  test("shortens words that are too long for the widest box, and no others", () => {
    expect(shortened("Wing", 14)).toBe("Wing");
    expect(shortened("x".repeat(16), 14)).toBe("x".repeat(16));
    expect(shortened("x".repeat(17), 14)).toBe(`${"x".repeat(15)}…`);
    expect(widthOf(shortened("w".repeat(60), 14), 14)).toBeLessThanOrEqual(176 - 46);
  });

  test("of nothing is nothing, and a line to nowhere is a mistake", () => {
    expect(traceDrawing([], [])).toMatchObject({ boxes: [], paths: [] });
    expect(() => traceDrawing([box("a", 0)], [{ from: "a", to: "b" }])).toThrow("a box that is not in it");
  });
});
