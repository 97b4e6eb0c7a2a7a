import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakEvenOverlap, SITKA_SPRUCE } from "../../src/reckoning/pieces/break-even-overlap.ts";
import { cureTime, USUAL_CURE } from "../../src/reckoning/cure/cure-time.ts";
import { PSI } from "../../src/facts/quantity/conversions.ts";
import { legCompression } from "../../src/reckoning/pieces/leg-compression.ts";
import { overlapRatio, USUAL_OVERLAP } from "../../src/reckoning/pieces/overlap.ts";
import { revealingPower } from "../../src/reckoning/pieces/revealing-power.ts";
import { shearStress } from "../../src/reckoning/pieces/shear-stress.ts";
import { lifeRow, workingLife } from "../../src/reckoning/mixing/working-life.ts";

const INCH = 0.0254;
const NOT_POSITIVE = [0, -1, Number.NaN, Number.POSITIVE_INFINITY];
const size = fc.double({ min: 0.001, max: 0.1, noNaN: true });

describe("The three-leg piece", () => {
  it("by statics has τ = P/(2wL) and σ = P/(wt): 400 lbf on 1/4 in square legs overlapping 5/8 in is 1,280 psi and 6,400 psi", () => {
    const load = 400 * PSI * INCH ** 2;
    expect((shearStress(load, INCH / 4, (5 / 8) * INCH, 2) ?? 0) / PSI).toBeCloseTo(1280, 6);
    expect((shearStress(load, INCH / 4, (5 / 8) * INCH, 1) ?? 0) / PSI).toBeCloseTo(2560, 6);
    expect((legCompression(load, INCH / 4, INCH / 4) ?? 0) / PSI).toBeCloseTo(6400, 6);
  });

  it("of clear Sitka spruce at 12 % breaks even at 2.44 thicknesses (σc 5,610 psi, τw 1,150 psi: Wood Handbook, FPL-GTR-190; memory)", () => {
    expect(breakEvenOverlap(5610, 1150)).toBeCloseTo(2.44, 2);
    expect(breakEvenOverlap(SITKA_SPRUCE.crushing, SITKA_SPRUCE.shear)).toBeCloseTo(2.43913, 6);
    expect(SITKA_SPRUCE.crushing / PSI).toBeCloseTo(5610, 6);
  });

  it("of quarter-inch stock wants more than half an inch and less than three quarters (common practice)", () => {
    const even = (breakEvenOverlap(5610, 1150) ?? 0) * 0.25;
    expect(even).toBeGreaterThan(0.5);
    expect(even).toBeLessThan(0.75);
    expect(USUAL_OVERLAP).toEqual({ least: 2, most: 3 });
  });

  it("at the break-even overlap crushes its leg just as the wood beside the glue shears", () => {
    fc.assert(
      fc.property(size, size, (t, w) => {
        const overlap = (breakEvenOverlap(5610, 1150) ?? 0) * t;
        const load = 1150 * 2 * w * overlap;
        expect((legCompression(load, w, t) ?? 0) / 5610).toBeCloseTo(1, 9);
      }),
    );
  });

  it("has an overlap of so many thicknesses", () => {
    expect(overlapRatio(15, 6)).toBe(2.5);
    for (const bad of NOT_POSITIVE)
      expect([overlapRatio(bad, 1), overlapRatio(1, bad)]).toEqual([undefined, undefined]);
  });

  it("reveals min(τw, σc·t/(2L))/τw: everything up to the break-even overlap, half of it at twice that", () => {
    expect(revealingPower(2, 5610, 1150)).toBe(1);
    expect(revealingPower(2 * 2.4391304347826086, 5610, 1150)).toBeCloseTo(0.5, 12);
    expect(revealingPower(6, 5610, 1150)).toBeCloseTo(5610 / (2 * 6) / 1150, 12);
    for (const bad of NOT_POSITIVE)
      expect([revealingPower(bad, 1, 1), revealingPower(1, bad, 1), revealingPower(1, 1, bad)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
  });

  it("has no stress without its sizes", () => {
    for (const bad of NOT_POSITIVE) {
      expect([shearStress(bad, 1, 1, 2), shearStress(1, bad, 1, 2), shearStress(1, 1, bad, 2)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
      expect([legCompression(bad, 1, 1), legCompression(1, bad, 1), legCompression(1, 1, bad)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
      expect([breakEvenOverlap(bad, 1), breakEvenOverlap(1, bad)]).toEqual([undefined, undefined]);
    }
  });
});

describe("Working life", () => {
  const rows = [
    { temperature: 20, mass: 0.1, time: 2700 },
    { temperature: 30, mass: 0.1, time: 1200 },
    { temperature: 20, mass: 0.5, time: 1500 },
    { temperature: 30, mass: 0.5, time: 600 },
  ];

  it("is the longest of the rows that are at least as warm and as much", () => {
    expect(workingLife(rows, 19.5, 0.077)).toBe(2700);
    expect(workingLife(rows, 20, 0.1)).toBe(2700);
    expect(workingLife(rows, 20.1, 0.1)).toBe(1200);
    expect(workingLife(rows, 20, 0.101)).toBe(1500);
    expect(workingLife(rows, 25, 0.3)).toBe(600);
  });

  it("is the longest whatever the order of the rows, and of rows alike the first", () => {
    expect(workingLife([...rows].reverse(), 19.5, 0.077)).toBe(2700);
    expect(workingLife([...rows].reverse(), 25, 0.05)).toBe(1200);
    const alike = [
      { temperature: 25, mass: 1, time: 60 },
      { temperature: 30, mass: 1, time: 60 },
    ];
    expect(lifeRow(alike, 20, 0.5)).toBe(alike[0]);
  });

  it("is none where the sheet gives none for so warm or so much", () => {
    expect(workingLife(rows, 30.1, 0.1)).toBeUndefined();
    expect(workingLife(rows, 20, 0.501)).toBeUndefined();
    expect(workingLife([], 20, 0.1)).toBeUndefined();
    expect(workingLife(rows, Number.NaN, 0.1)).toBeUndefined();
  });

  it("never grows with warmth or mass", () => {
    const t = fc.double({ min: 0, max: 40, noNaN: true });
    const m = fc.double({ min: 0, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(t, t, m, m, (t1, t2, m1, m2) => {
        const worse = workingLife(rows, Math.max(t1, t2), Math.max(m1, m2)) ?? 0;
        expect(worse).toBeLessThanOrEqual(workingLife(rows, t1, m1) ?? 0);
      }),
    );
  });
});

describe("Time of cure", () => {
  it("is what passed, and never less than nothing; three days are common practice", () => {
    expect(cureTime(1000, 1000 + 86_400)).toBe(86_400);
    expect(cureTime(2000, 1000)).toBe(0);
    expect(USUAL_CURE).toBe(259_200);
  });
});
