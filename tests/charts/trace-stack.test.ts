import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { TraceBox, TraceLine } from "../../src/charts/trace.ts";
import { stackedTrace } from "../../src/charts/trace-stack.ts";

const box = (key: string, column: number): TraceBox => ({ key, column, label: key, word: "shown" });

/** Boxes in five columns, lines from each column to the next. */
const anyTrace = fc
  .tuple(
    fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 5, maxLength: 5 }),
    fc.infiniteStream(fc.boolean()),
    fc.infiniteStream(fc.nat(900)),
  )
  .map(([counts, coins, downs]) => {
    const boxes = counts.flatMap((count, column) =>
      Array.from({ length: count }, (_, at) => box(`${column}-${at}`, column)),
    );
    const flips = coins[Symbol.iterator]();
    const lines: TraceLine[] = boxes.flatMap((from) =>
      boxes
        .filter((to) => to.column === from.column + 1 && flips.next().value === true)
        .map((to) => ({ from: from.key, to: to.key })),
    );
    return { boxes, lines, order: boxes.map(() => Number(downs.next().value)) };
  });

const numbersIn = (path: string): number[] => (path.match(/-?[\d.]+/g) ?? []).map(Number);

describe("a trace from top to bottom", () => {
  test("has every box on the drawing, a column below the one before, and none over another", () => {
    fc.assert(
      fc.property(anyTrace, ({ boxes, lines, order }) => {
        const { boxes: placed, width, height } = stackedTrace(boxes, lines, order);
        expect(placed.map(({ key }) => key)).toEqual(boxes.map(({ key }) => key));
        const down = placed
          .map((one, at) => ({ ...one, column: boxes[at]?.column ?? 0 }))
          .sort((a, b) => a.top - b.top);
        down.forEach((one, at) => {
          expect(one.width).toBeGreaterThan(200);
          expect(one.left + one.width).toBeLessThan(width);
          expect(one.top + one.height).toBeLessThanOrEqual(height);
          const next = down[at + 1];
          if (next === undefined) return;
          expect(next.top).toBeGreaterThanOrEqual(one.top + one.height);
          expect(next.column).toBeGreaterThanOrEqual(one.column);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("leads each line from its box out beside the stack and back to its other box, within the drawing", () => {
    fc.assert(
      fc.property(anyTrace, ({ boxes, lines, order }) => {
        const { boxes: placed, paths, width } = stackedTrace(boxes, lines, order);
        const at = new Map(placed.map((one) => [one.key, one]));
        lines.forEach(({ from, to }, n) => {
          const [a, b] = [at.get(from), at.get(to)];
          if (!a || !b) throw new Error("no box");
          const numbers = numbersIn(paths[n] ?? "");
          expect(numbers.slice(0, 2)).toEqual([a.left + a.width, a.top + a.height / 2 + 7]);
          expect(numbers.at(-2)).toBe(b.top + b.height / 2 - 7);
          expect(numbers.at(-1)).toBe(b.left + b.width);
          expect(Math.max(...numbers.filter((_, place) => place === 3 || place === 5))).toBeLessThanOrEqual(width);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("lets no two lines lie on each other but those that lead to the same box", () => {
    fc.assert(
      fc.property(anyTrace, ({ boxes, lines, order }) => {
        const { paths } = stackedTrace(boxes, lines, order);
        const runs = lines.map(({ to }, n) => {
          const [, from = 0, , lane = 0] = numbersIn(paths[n] ?? "");
          const end = numbersIn(paths[n] ?? "").at(-2) ?? 0;
          return { to, lane, from, end };
        });
        const together = runs.flatMap((one, at) =>
          runs
            .slice(at + 1)
            .filter(
              (other) =>
                other.to !== one.to && other.lane === one.lane && one.from <= other.end && other.from <= one.end,
            ),
        );
        expect(together).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test("names each column once, above its boxes", () => {
    const { heads, boxes } = stackedTrace(
      [box("R-1", 0), box("B-1", 1), box("B-2", 1)],
      [{ from: "R-1", to: "B-1" }],
      [0, 50, 10],
    );
    expect([...heads.keys()]).toEqual([0, 1]);
    expect(boxes.map(({ key }) => key)).toEqual(["R-1", "B-1", "B-2"]);
    expect(heads.get(1)).toBeLessThan(boxes[2]?.top ?? 0);
    expect(boxes[2]?.top).toBeLessThan(boxes[1]?.top ?? 0);
  });

  test("refuses a line to a box that is not there", () => {
    expect(() => stackedTrace([box("R-1", 0)], [{ from: "R-1", to: "B-1" }], [0])).toThrow("a box that is not in it");
  });
});
