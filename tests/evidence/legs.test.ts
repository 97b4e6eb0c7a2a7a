import { describe, expect, it } from "vitest";
import { legsThick } from "../../src/evidence/piece/legs.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Piece } from "../../src/facts/types.ts";
import { lot, piece, record } from "./make.ts";
import { mm } from "./quantities.ts";

const index = recordIndexOf(
  record({ lots: [lot("S-1", { material: "timber" }), lot("P-1", { material: "plywood" })] }),
);
const legs = (...of: readonly (readonly [lot: string, thickness?: string])[]): NonNullable<Piece["legs"]> =>
  of.map(([id, thickness]) => ({ lot: id, ...(thickness !== undefined && { thickness: mm(thickness) }) }));
const typed = (form: "three-leg" | "single-lap", of: Piece["legs"], whole?: string): (string | undefined)[] => {
  const { thickness, outer } = legsThick(
    index,
    piece("B-1", 1, { thickness: whole === undefined ? undefined : mm(whole), ...(of && { legs: of }) }),
    form,
  );
  return [thickness?.typed, outer?.typed];
};

describe("How thick the legs of a piece are", () => {
  it("is its own thickness where no leg has one of its own", () => {
    expect(typed("three-leg", undefined, "6.0")).toEqual(["6.0 mm", undefined]);
    expect(typed("three-leg", legs(["S-1"], ["S-1"], ["S-1"]), "6.0")).toEqual(["6.0 mm", "6.0 mm"]);
    expect(typed("single-lap", legs(["S-1"], ["S-1"]), "6.0")).toEqual(["6.0 mm", undefined]);
  });

  it("is of three the pressed one, and beside it the thinner outer one", () => {
    expect(typed("three-leg", legs(["S-1", "6.0"], ["S-1", "5.0"], ["S-1", "4.0"]))).toEqual(["6.0 mm", "4.0 mm"]);
    expect(typed("three-leg", legs(["S-1", "6.0"], ["S-1", "4.0"], ["S-1", "5.0"]))).toEqual(["6.0 mm", "4.0 mm"]);
    expect(typed("three-leg", legs(["S-1", "4.0"], ["S-1", "6.0"], ["S-1", "5.0"]))).toEqual(["4.0 mm", "5.0 mm"]);
  });

  it("is nothing where an outer one, or either of a lap, is not noted", () => {
    expect(typed("three-leg", legs(["S-1", "6.0"], ["S-1"], ["S-1", "5.0"]))).toEqual([undefined, undefined]);
    expect(typed("three-leg", legs(["S-1", "6.0"], ["S-1", "5.0"], ["S-1"]))).toEqual([undefined, undefined]);
    expect(typed("single-lap", legs(["S-1", "6.0"], ["S-1"]))).toEqual([undefined, undefined]);
    expect(typed("single-lap", legs(["S-1", "6.0"], ["S-1", "4.0"]))).toEqual(["4.0 mm", undefined]);
  });

  it("passes over a strip of plywood between two of timber, but for one that is the last", () => {
    expect(typed("three-leg", legs(["S-1", "6.0"], ["P-1", "1.0"], ["S-1", "5.0"]))).toEqual(["6.0 mm", "5.0 mm"]);
    expect(typed("three-leg", legs(["S-1", "6.0"], ["S-1", "5.0"], ["P-1", "1.0"]))).toEqual(["6.0 mm", "1.0 mm"]);
    expect(typed("three-leg", legs(["S-1", "6.0"]))).toEqual(["6.0 mm", undefined]);
  });
});
