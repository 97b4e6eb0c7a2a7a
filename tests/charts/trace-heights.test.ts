import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heightsOf } from "../../src/charts/trace-heights.ts";

const STEP = 52;

type Line = readonly [from: number, to: number];

/** Boxes in up to five columns, in any order, and lines from any column to a later one. */
const anyTrace = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 24 }).chain((columnOf) => {
  const pairs = columnOf.flatMap((column, from) =>
    columnOf.flatMap((other, to) => (column < other ? [[from, to] as const] : [])),
  );
  return fc.record({
    columnOf: fc.constant(columnOf),
    lines: fc.subarray(pairs, { maxLength: Math.min(40, pairs.length) }),
  });
});

/** Crossings of lines between the same columns, where boxes stand at these heights. */
function crossed(columnOf: readonly number[], lines: readonly Line[], heights: readonly number[]): number {
  const at = (box: number): number => heights[box] ?? Number.NaN;
  return lines.reduce(
    (sum, [from, to], n) =>
      sum +
      lines
        .slice(n + 1)
        .filter(
          ([a, b]) =>
            columnOf[a] === columnOf[from] && columnOf[b] === columnOf[to] && (at(from) - at(a)) * (at(to) - at(b)) < 0,
        ).length,
    0,
  );
}

describe("the heights of a trace's boxes", () => {
  test("begin at nothing and leave a step between any two of a column, and no column is without a box's height", () => {
    fc.assert(
      fc.property(anyTrace, ({ columnOf, lines }) => {
        const heights = heightsOf(columnOf, lines, STEP);
        expect(heights).toHaveLength(columnOf.length);
        expect(Math.min(...heights)).toBe(0);
        heights.forEach((height, one) =>
          heights.slice(one + 1).forEach((other, n) => {
            if (columnOf[one] === columnOf[one + 1 + n])
              expect(Math.abs(height - other)).toBeGreaterThanOrEqual(STEP - 1e-6);
          }),
        );
      }),
      { numRuns: 300 },
    );
  });

  test("never cross more lines than the boxes in the order that they were given, and cross fewer in most that cross", () => {
    let [better, all] = [0, 0];
    fc.assert(
      fc.property(anyTrace, ({ columnOf, lines }) => {
        const asGiven = crossed(columnOf, lines, [...columnOf.keys()]);
        const drawn = crossed(columnOf, lines, heightsOf(columnOf, lines, STEP));
        expect(drawn).toBeLessThanOrEqual(asGiven);
        if (asGiven > 0) all += 1;
        if (drawn < asGiven) better += 1;
      }),
      { numRuns: 300 },
    );
    expect(better).toBeGreaterThan(all / 2);
  });

  test("make lines straight where each box has one of its own, in whatever order they are given", () => {
    const columnOf = [0, 0, 0, 1, 1, 1];
    const lines: Line[] = [
      [0, 5],
      [1, 3],
      [2, 4],
    ];
    const heights = heightsOf(columnOf, lines, STEP);
    expect(crossed(columnOf, lines, heights)).toBe(0);
    for (const [from, to] of lines) expect(heights[from]).toBe(heights[to]);
    expect([...heights].sort((a, b) => a - b)).toEqual([0, 0, STEP, STEP, 2 * STEP, 2 * STEP]);
  });

  test("put a box at the middle of those that it is joined to on both sides, and one that no line asks for below the one above it", () => {
    // One lot in two batches, each in two joints, all of one assembly; and a batch that went nowhere.
    const columnOf = [0, 1, 1, 1, 2, 2, 2, 2, 3];
    const lines: Line[] = [
      [0, 1],
      [0, 2],
      [1, 4],
      [1, 5],
      [2, 6],
      [2, 7],
      [4, 8],
      [5, 8],
      [6, 8],
      [7, 8],
    ];
    const heights = heightsOf(columnOf, lines, STEP);
    expect(heights.slice(4, 8)).toEqual([0, STEP, 2 * STEP, 3 * STEP]);
    expect(heights.slice(1, 4)).toEqual([0.5 * STEP, 2.5 * STEP, 3.5 * STEP]);
    expect([heights[0], heights[8]]).toEqual([1.5 * STEP, 1.5 * STEP]);
  });

  test("of nothing are none", () => {
    expect(heightsOf([], [], STEP)).toEqual([]);
  });
});
