import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cross, CLEAR, placedMarks, type Spot } from "../../src/charts/plate.ts";

const SIZE = { width: 680, height: 420 };
const HEIGHT = 28;

/** Marks in the drawing's units, as boxes with the joints they are of. */
function placed(spots: readonly Spot[]) {
  return placedMarks(spots, SIZE, HEIGHT).map(({ left, top, of }, at) => ({
    x: left * 6.8,
    y: top * 4.2,
    width: spots[at]?.width ?? 0,
    joint: { x: of.left * 6.8, y: of.top * 4.2 },
  }));
}

/** Percentages are written to a tenth. */
const ROUNDED = 0.8;

function faults(spots: readonly Spot[]): string[] {
  const marks = placed(spots);
  return marks.flatMap((one, n) => [
    ...(one.x - one.width / 2 < -ROUNDED || one.x + one.width / 2 > SIZE.width + ROUNDED
      ? [`${n} leaves the drawing`]
      : []),
    ...(one.y - HEIGHT / 2 < -ROUNDED || one.y + HEIGHT / 2 > SIZE.height + ROUNDED ? [`${n} leaves the drawing`] : []),
    ...marks.flatMap(({ joint }, m) =>
      Math.abs(joint.x - one.x) < one.width / 2 + CLEAR.joint - ROUNDED &&
      Math.abs(joint.y - one.y) < HEIGHT / 2 + CLEAR.joint - ROUNDED
        ? [`${n} covers the joint of ${m}`]
        : [],
    ),
    ...marks
      .slice(n + 1)
      .flatMap((other, m) =>
        Math.abs(other.x - one.x) < (other.width + one.width) / 2 - ROUNDED &&
        Math.abs(other.y - one.y) < HEIGHT - ROUNDED
          ? [`${n} covers ${n + 1 + m}`]
          : [],
      ),
  ]);
}

const share = fc.integer({ min: 2, max: 98 }).map((percent) => percent / 100);
const spotsOf = (most: number) =>
  fc
    .array(fc.record({ x: share, y: share, width: fc.constantFrom(64, 64, 64, 110) }), {
      minLength: 1,
      maxLength: most,
    })
    .map((all): Spot[] => all.map((spot, at) => ({ id: `J${at}`, ...spot })));

describe("Marks on a drawing", () => {
  it("cover neither any joint nor each other, and stay on the drawing, wherever joints are", () => {
    fc.assert(
      fc.property(spotsOf(24), (spots) => {
        expect(faults(spots)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it("find places for a dozen joints in a row at the edge, and for several at one place", () => {
    const row = Array.from({ length: 12 }, (_, n) => ({ id: `J${n}`, x: 0.02 + 0.03 * n, y: 0.98, width: 64 }));
    expect(faults(row)).toEqual([]);
    expect(faults(Array.from({ length: 5 }, (_, n) => ({ id: `J${n}`, x: 0.5, y: 0.5, width: 64 })))).toEqual([]);
  });

  it("have lines that cross neither each other nor a mark, for joints as far apart as drawings have them", () => {
    const spread = Array.from({ length: 12 }, (_, n) => ({
      id: `J${n}`,
      x: 0.12 + 0.25 * (n % 4),
      y: 0.2 + 0.3 * Math.floor(n / 4),
      width: 64,
    }));
    const marks = placed(spread);
    const crossing = marks.flatMap((one, n) =>
      marks
        .slice(n + 1)
        .flatMap((other, m) => (cross(one, one.joint, other, other.joint) ? [`${n} and ${n + 1 + m}`] : [])),
    );
    expect(crossing).toEqual([]);
    for (const { x, y, joint } of marks) expect(Math.hypot(joint.x - x, joint.y - y)).toBeLessThan(90);
  });
});
