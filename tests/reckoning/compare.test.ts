import { describe, expect, it } from "vitest";
import { against, atLeast, atMost } from "../../src/reckoning/compare.ts";

describe("Comparisons with a limit", () => {
  it("holds a limit that is met exactly, whatever the units did to the last bits", () => {
    expect(atMost(0.1 + 0.2, 0.3)).toBe(true);
    expect(atLeast(0.3, 0.1 + 0.2)).toBe(true);
    expect(atMost(5e-15, 0)).toBe(true);
  });

  it("forgives nothing that can be read", () => {
    expect(atMost(3.000_001, 3)).toBe(false);
    expect(atLeast(2.999_999, 3)).toBe(false);
    expect(atMost(0.000_001, 0)).toBe(false);
    expect(atMost(-2, -2.000_01)).toBe(false);
    expect(atMost(1e-6, -1e-6)).toBe(false);
  });

  it("holds what is without end against itself", () => {
    expect([atMost(Infinity, Infinity), atLeast(Infinity, Infinity), atMost(1, Infinity), atMost(Infinity, 1)]).toEqual(
      [true, true, true, false],
    );
  });

  it("holds nothing against what is no number", () => {
    expect(atMost(Number.NaN, 1)).toBe(false);
    expect(atLeast(Number.NaN, 1)).toBe(false);
    expect(against(Number.NaN, { least: 1 })).toBe("below");
    expect(against(Number.NaN, { most: 1 })).toBe("above");
  });

  it("knows below, within and above a range, its ends included, and open ends", () => {
    expect(["below", "within", "within", "within", "above"]).toEqual(
      [1.9, 2, 2.5, 3, 3.1].map((v) => against(v, { least: 2, most: 3 })),
    );
    expect(against(-1e9, { most: 3 })).toBe("within");
    expect(against(1e9, { least: 3 })).toBe("within");
  });
});
