import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reached, span } from "../../src/words/durations.ts";
import { counted, ended, listed } from "../../src/words/lists.ts";
import { apart, figure, percent, percentApart } from "../../src/words/numbers.ts";
import { stressText, temperatureText } from "../../src/words/quantities.ts";
import { PSI } from "../../src/facts/quantity/conversions.ts";

describe("Figures in sentences", () => {
  it("has a true minus and no minus zero", () => {
    expect(figure(-1.25, 1)).toBe("−1.3");
    expect(figure(-0.04, 1)).toBe("0.0");
    expect(figure(1234.5, 1)).toBe("1234.5");
    expect(percent(0.0172, 1)).toBe("1.7 %");
    expect(percent(0.5)).toBe("50 %");
  });

  it("never rounds a figure onto or over its limit", () => {
    expect(apart(5.004, 5, 1)).toBe("5.004");
    expect(apart(4.96, 5, 1)).toBe("4.96");
    expect(apart(5, 5, 1)).toBe("5.0");
    expect(apart(5.2, 5, 1)).toBe("5.2");
    expect(percentApart(0.050_4, 0.05)).toBe("5.04 %");
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (n) => {
        const value = n / 10_000;
        expect(Number(apart(value, 5, 1)) > 5).toBe(value > 5);
        expect(Number(apart(value, 5, 1)) < 5).toBe(value < 5);
      }),
    );
  });

  it("rounds time down", () => {
    expect(span(0)).toBe("less than a minute");
    expect([0, 59, 60].map(reached)).toEqual(["nothing", "nothing", "1 min"]);
    expect(span(59)).toBe("less than a minute");
    expect(span(35 * 60)).toBe("35 min");
    expect(span(65 * 60)).toBe("1 h 5 min");
    expect(span(2 * 3600)).toBe("2 h");
    expect(span(3 * 86_400 - 1)).toBe("2 d 23 h");
    expect(span(3 * 86_400)).toBe("3 d");
    expect(span(86_400)).toBe("1 d");
    expect(span(86_399)).toBe("23 h 59 min");
  });

  it("counts and lists", () => {
    expect([0, 1, 2].map((n) => counted(n, "piece"))).toEqual(["0 pieces", "1 piece", "2 pieces"]);
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listed)).toEqual(["", "a", "a and b", "a, b and c"]);
  });

  it("ends what the builder wrote, once", () => {
    expect(["gap at rib 4", "gap at rib 4.", "gap. At rib 4 ", "why? ", "no!", "so …"].map(ended)).toEqual([
      "gap at rib 4.",
      "gap at rib 4.",
      "gap. At rib 4.",
      "why?",
      "no!",
      "so …",
    ]);
  });

  it("shows the units of the aircraft; one psi is 6,894.757 Pa (NIST SP 811, appendix B.8; memory)", () => {
    expect(PSI).toBeCloseTo(6894.757, 3);
    expect(temperatureText(20, "metric")).toBe("20.0 °C");
    expect(temperatureText(20, "imperial")).toBe("68 °F");
    expect(stressText(6e6, 5e6, "metric")).toBe("6.00 MPa");
    expect(stressText(5.9999e6, 6e6, "metric")).toBe("5.9999 MPa");
    expect(stressText(999.96 * PSI, 1000 * PSI, "imperial")).toBe("999.96 psi");
    expect(stressText(900 * PSI, 1000 * PSI, "imperial")).toBe("900 psi");
  });
});
