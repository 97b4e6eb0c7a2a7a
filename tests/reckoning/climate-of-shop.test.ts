import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dewPoint } from "../../src/reckoning/climate/dew-point.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";

const fahrenheit = (f: number): number => (f - 32) / 1.8;
const temperature = fc.double({ min: 0, max: 45, noNaN: true });

describe("Equilibrium moisture content", () => {
  // Wood Handbook, FPL-GTR-190, Table 4-2; memory, consistent with eq. 4-5 to ±0.1.
  it.each([
    [21.1, 30, 6.2],
    [21.1, 50, 9.2],
    [21.1, 65, 12.0],
    [21.1, 80, 16.0],
    [10, 50, 9.5],
    [10, 65, 12.3],
    [26.7, 50, 9.1],
  ])("at %d °C and %d %% is %d %% (Wood Handbook, FPL-GTR-190, Table 4-2)", (celsius, humidity, percent) => {
    expect(Math.abs((equilibriumMoisture(celsius, humidity / 100) ?? 0) * 100 - percent)).toBeLessThanOrEqual(0.1);
  });

  // Reckoned apart from this program from eq. 4-5 with the coefficients as seen, to hold every coefficient in its place.
  it.each([
    [0, 0.5, 9.519403],
    [50, 0.2, 3.869753],
    [50, 0.95, 21.899031],
    [-1.1, 0.05, 1.399625],
    [21.1, 0.65, 11.958481],
  ])("at %d °C and %d follows eq. 4-5 to the sixth decimal: %d %%", (celsius, humidity, percent) => {
    expect((equilibriumMoisture(celsius, humidity) ?? 0) * 100).toBeCloseTo(percent, 6);
  });

  it("is none in dry air, and rises with humidity", () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
    fc.assert(
      fc.property(temperature, fc.integer({ min: 0, max: 94 }), (t, h) => {
        expect(equilibriumMoisture(t, (h + 1) / 100)).toBeGreaterThan(equilibriumMoisture(t, h / 100) ?? Number.NaN);
      }),
    );
  });

  it("is not reckoned outside its domain", () => {
    for (const [t, h] of [
      [-1.2, 0.5],
      [54.5, 0.5],
      [20, -0.01],
      [20, 0.951],
      [Number.NaN, 0.5],
      [20, Number.NaN],
    ] as const)
      expect(equilibriumMoisture(t, h)).toBeUndefined();
    for (const [t, h] of [
      [-1.1, 0.5],
      [54.4, 0.5],
      [20, 0.95],
    ] as const)
      expect(equilibriumMoisture(t, h)).toBeGreaterThan(0);
  });
});

describe("Dew point", () => {
  it("at 20 °C and 50 % is 9.26 °C (Magnus form, coefficients of WMO-No. 8, Annex 4.B; seen second-hand)", () => {
    expect(dewPoint(20, 0.5)).toBeCloseTo(9.26, 2);
    expect(dewPoint(20, 0.5)).toBeCloseTo(9.255175, 6);
    expect(dewPoint(-10, 0.3)).toBeCloseTo(-24.334674, 6);
  });

  it("at 70 °F and 65 % is 57 °F within 2 °F (a published chart, seen)", () => {
    expect(Math.abs((dewPoint(fahrenheit(70), 0.65) ?? 0) * 1.8 + 32 - 57)).toBeLessThanOrEqual(2);
  });

  it("is the temperature itself in saturated air, and below it otherwise", () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0.05, max: 0.99, noNaN: true }), (t, h) => {
        expect(dewPoint(t, 1)).toBeCloseTo(t, 9);
        expect(dewPoint(t, h)).toBeLessThan(t);
      }),
    );
  });

  it("is not reckoned outside its domain", () => {
    for (const [t, h] of [
      [-45.1, 0.5],
      [60.1, 0.5],
      [20, 0],
      [20, 1.01],
      [Number.NaN, 0.5],
      [20, Number.NaN],
    ] as const)
      expect(dewPoint(t, h)).toBeUndefined();
    expect([dewPoint(-45, 1), dewPoint(60, 1)].every((td) => td !== undefined)).toBe(true);
  });
});
