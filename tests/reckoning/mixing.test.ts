import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { massRatioOfVolumes, mixRatio, ratioError, volumeRatioOfMasses } from "../../src/reckoning/mixing/mix-ratio.ts";
import { ratioDoubt } from "../../src/reckoning/mixing/ratio-doubt.ts";
import { sessionAmount } from "../../src/reckoning/mixing/session-amount.ts";

const amount = fc.double({ min: 0.001, max: 1000, noNaN: true });
const NOT_POSITIVE = [0, -1, Number.NaN, Number.POSITIVE_INFINITY];

describe("Mix ratio", () => {
  it("is hardener over resin", () => {
    expect(mixRatio(42, 35.1)).toBeCloseTo(0.835714, 6);
    for (const bad of NOT_POSITIVE) expect([mixRatio(bad, 1), mixRatio(1, bad)]).toEqual([undefined, undefined]);
  });

  it("by mass from volume is mB/mA = (VB/VA)·(ρB/ρA), by hand: equal volumes of 1.16 and 0.97 g/cm³ are 100 : 83.6", () => {
    expect(massRatioOfVolumes(1, 1160, 970)).toBeCloseTo(0.836207, 6);
    expect(volumeRatioOfMasses(0.836207, 1160, 970)).toBeCloseTo(1, 6);
    for (const bad of NOT_POSITIVE) {
      expect([massRatioOfVolumes(bad, 1, 1), massRatioOfVolumes(1, bad, 1), massRatioOfVolumes(1, 1, bad)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
      expect([volumeRatioOfMasses(bad, 1, 1), volumeRatioOfMasses(1, bad, 1), volumeRatioOfMasses(1, 1, bad)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
    }
  });

  it("comes back from volume to mass to volume", () => {
    fc.assert(
      fc.property(amount, amount, amount, (ratio, resin, hardener) => {
        expect(volumeRatioOfMasses(massRatioOfVolumes(ratio, resin, hardener) ?? 0, resin, hardener)).toBeCloseTo(
          ratio,
          6,
        );
      }),
    );
  });

  it("has an error of found / nominal − 1, positive for too much hardener", () => {
    expect(ratioError(0.84, 0.8)).toBeCloseTo(0.05, 12);
    expect(ratioError(0.76, 0.8)).toBeCloseTo(-0.05, 12);
    for (const bad of NOT_POSITIVE) expect([ratioError(bad, 1), ratioError(1, bad)]).toEqual([undefined, undefined]);
  });
});

describe("Doubt of the scale", () => {
  it("of one reading is 0.29 of its step (JCGM 100:2008, F.2.2.1; memory), here doubled", () => {
    // With the other component so large that its own doubt vanishes, what is left is that of one reading.
    expect((ratioDoubt(1e9, 1, 1) ?? 0) / 2).toBeCloseTo(0.29, 2);
    expect((ratioDoubt(1, 1e9, 1) ?? 0) / 2).toBeCloseTo(0.288675, 6);
  });

  it("adds two readings as the root of the sum of squares", () => {
    expect(ratioDoubt(42, 35.1, 0.1)).toBeCloseTo(0.0021436535, 9);
    expect(ratioDoubt(10, 10, 1)).toBeCloseTo((2 / Math.sqrt(12) / 10) * Math.SQRT2, 12);
  });

  it("is not known without a step", () => {
    for (const bad of NOT_POSITIVE)
      expect([ratioDoubt(1, 1, bad), ratioDoubt(bad, 1, 1), ratioDoubt(1, bad, 1)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
  });
});

describe("The amount for a session", () => {
  it("needs area × spread × (1 + loss): 0.32 m² at 250 g/m² and a fifth lost is 96 g", () => {
    expect(sessionAmount(0.32, 0.25, 0.2)).toBeCloseTo(0.096, 12);
    expect(sessionAmount(1, 1, 0)).toBe(1);
    for (const bad of NOT_POSITIVE)
      expect([sessionAmount(bad, 1, 0), sessionAmount(1, bad, 0)]).toEqual([undefined, undefined]);
    expect(sessionAmount(1, 1, -0.1)).toBeUndefined();
  });
});
