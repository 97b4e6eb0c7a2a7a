/**
 * The verdict of a test piece for every shape, cure, way of breaking and load, each stated by hand: nothing here is reckoned.
 *
 * Held against a procedure that asks 2 to 3 thicknesses, 3 d of cure, 75 % wood failure and 6 MPa. Within a cell stand the verdicts
 * for no load read, a load above the stress asked, and a load below it.
 */
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { PieceVerdict } from "../../src/evidence/types.ts";
import type { Piece, PieceTest } from "../../src/facts/types.ts";
import { batch, DAY, glued, piece, test } from "./make.ts";
import { mm, moment, newton, pc } from "./quantities.ts";

const SHAPES: { readonly [shape: string]: Partial<Piece> } = {
  "in limits": { overlap: mm("15.0") },
  "too long": { overlap: mm("19.0") },
  "too short": { overlap: mm("11.0") },
  "no sizes": { overlap: undefined, thickness: undefined },
};

const CURES: { readonly [cure: string]: Partial<PieceTest> } = {
  full: { day: "2025-03-20", at: moment("2025-03-20", "19:00") },
  short: { day: "2025-03-12", at: moment("2025-03-12", "19:00") },
  "same day": { day: DAY, at: moment(DAY, "19:00") },
};

const MODES: { readonly [mode: string]: Partial<PieceTest> } = {
  "wood 100 %": { failure: "wood", woodFailure: pc("100") },
  "wood, no %": { failure: "wood", woodFailure: undefined },
  "wood 50 %": { failure: "wood", woodFailure: pc("50") },
  "mixed 80 %": { failure: "mixed", woodFailure: pc("80") },
  "mixed 50 %": { failure: "mixed", woodFailure: pc("50") },
  "mixed, no %": { failure: "mixed", woodFailure: undefined },
  "glue line": { failure: "glue line", woodFailure: undefined },
  "glue line 90 %": { failure: "glue line", woodFailure: pc("90") },
};

// 2 faces of 6 × 15 mm: 1,500 N is 8.3 MPa, 900 N is 5.0 MPa. At 19 mm 6.6 and 3.9, at 11 mm 11.4 and 6.8: there 700 N is below.
const LOADS: { readonly [load: string]: Partial<PieceTest> } = {
  none: {},
  above: { load: newton("1500") },
  below: { load: newton("700") },
};

const P = "pass";
const F = "fail";
const I = "inconclusive";
const E = "too early";

type Cell = readonly [none: PieceVerdict, above: PieceVerdict, below: PieceVerdict];

//  shape         cure          wood 100 %  wood, no %  wood 50 %  mixed 80 %  mixed 50 %  mixed, no %  glue line  glue line 90 %
const TABLE: readonly (readonly [shape: string, cure: string, ...cells: readonly Cell[]])[] = [
  ["in limits", "full", [P, P, I], [I, I, I], [F, F, F], [P, P, I], [F, F, F], [I, I, I], [F, F, F], [F, F, F]],
  ["in limits", "short", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["in limits", "same day", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["too long", "full", [I, I, I], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [F, F, F]],
  ["too long", "short", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["too long", "same day", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["too short", "full", [I, I, I], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [F, F, F]],
  ["too short", "short", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["too short", "same day", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["no sizes", "full", [I, I, I], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [I, I, I], [F, F, F], [F, F, F]],
  ["no sizes", "short", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
  ["no sizes", "same day", [E, E, E], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [E, E, E], [F, F, F], [F, F, F]],
];

function verdictOf(shape: Partial<Piece>, ...tests: readonly Partial<PieceTest>[]): PieceVerdict | undefined {
  const made = glued(
    [batch("B-1", { pieces: [piece("B-1", 1, shape)] })],
    [test("B-1/1", Object.assign({}, ...tests) as Partial<PieceTest>)],
  );
  return reckon(made).pieces.get("B-1/1")?.verdict;
}

describe("The verdict of a test piece", () => {
  it("is stated for every shape and cure", () => {
    expect(TABLE).toHaveLength(Object.keys(SHAPES).length * Object.keys(CURES).length);
    for (const [, , ...cells] of TABLE) expect(cells).toHaveLength(Object.keys(MODES).length);
  });

  for (const [shape, cure, ...cells] of TABLE) {
    it(`of a shape ${shape} and a ${cure} cure is as stated, however it broke`, () => {
      const found = Object.keys(MODES).map((mode) =>
        Object.keys(LOADS).map((load) =>
          verdictOf(SHAPES[shape] ?? {}, CURES[cure] ?? {}, MODES[mode] ?? {}, LOADS[load] ?? {}),
        ),
      );
      expect(found).toEqual(cells);
    });
  }

  it.each(Object.keys(SHAPES))("of a shape %s is 'not broken' without a test", (shape) => {
    const file = reckon(glued([batch("B-1", { pieces: [piece("B-1", 1, SHAPES[shape])] })], [])).pieces.get("B-1/1");
    expect(file?.verdict).toBe("not broken");
  });
});
