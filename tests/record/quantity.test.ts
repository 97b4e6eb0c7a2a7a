import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readQuantity } from "../../src/facts/quantity/quantity.ts";
import { readRange, readRatio, readTolerance } from "../../src/facts/quantity/range.ts";
import { DIMENSIONS, unitOf, wordsFor } from "../../src/facts/quantity/units.ts";
import { isFault } from "../../src/facts/reading.ts";
import type { Dimension } from "../../src/facts/types.ts";

/** All but slopes, which are two numbers and have no unit. */
const MEASURED = (Object.keys(DIMENSIONS) as Dimension[]).filter((dimension) => dimension !== "slope");

function valueIn(typed: string, dimension?: Dimension): number {
  const read = readQuantity(typed, { sign: "any", ...(dimension && { dimensions: [dimension] }) });
  if (isFault(read)) throw new Error(read.fault.message);
  return read.value.value;
}

describe("Quantities as they are written", () => {
  it.each([
    ["42.0 g", 0.042, "kg", 0.0001],
    ["42 g", 0.042, "kg", 0.001],
    ["1/4 in", 0.00635, "m", 0],
    ["1 3/8 in", 0.034925, "m", 0],
    ["1-3/8 in", 0.034925, "m", 0],
    ["½ in", 0.0127, "m", 0],
    ['1½"', 0.0381, "m", 0],
    ["5' 3 1/2\"", 1.6129, "m", 0],
    ["5 ft 3 in", 1.6002, "m", 0.0254],
    ["5′ 3″", 1.6002, "m", 0.0254],
    [".040 in", 0.001016, "m", 0.0000254],
    ["68 °F", 20, "°C", 5 / 9],
    ["19.5 °C", 19.5, "°C", 0.1],
    ["−5 °C", -5, "°C", 1],
    ["293.15 K", 20, "°C", 0.01],
    ["52 %", 0.52, "1", 0.01],
    ["1.5°", 0.02617993877991494, "rad", 0.0017453292519943296],
    ["45 min", 2700, "s", 60],
    ["1 h 30 min", 5400, "s", 60],
    ["7 d", 604800, "s", 86400],
    ["1.16 g/cm³", 1160, "kg/m³", 10],
    ["1.16 g/cm3", 1160, "kg/m³", 10],
    ["250 g/m²", 0.25, "kg/m²", 0.001],
    ["9 /in", 354.3307086614173, "1/m", 39.37007874015748],
    ["9 per inch", 354.3307086614173, "1/m", 39.37007874015748],
    ["320 cm^2", 0.032, "m²", 0.0001],
    ["40 ml", 0.00004, "m³", 0.000001],
    ["2.5 thicknesses", 2.5, "1", 0.1],
    ["6 MPa", 6e6, "Pa", 1e6],
    ["2 lb 3 oz", 0.9922332, "kg", 0.02835],
  ])("reads %s", (typed, value, unit, step) => {
    const read = readQuantity(typed, { sign: "any" });
    if (isFault(read)) throw new Error(read.fault.message);
    expect(read.value.typed).toBe(typed);
    expect(read.value.unit).toBe(unit);
    expect(read.value.value).toBeCloseTo(value, 6);
    expect(read.value.value / value).toBeCloseTo(1, 6);
    expect(read.value.step).toBeCloseTo(step, 5);
  });

  it("reads ranges, open and closed", () => {
    expect(readRange("8 to 12 %", { dimensions: ["share"] })).toEqual({
      value: { typed: "8 to 12 %", least: 0.08, most: 0.12 },
    });
    expect(readRange("59 °F to 86 °F", { dimensions: ["temperature"] })).toEqual({
      value: { typed: "59 °F to 86 °F", least: 15, most: 30 },
    });
    expect(readRange("at least 15 °C", { dimensions: ["temperature"] })).toEqual({
      value: { typed: "at least 15 °C", least: 15 },
    });
    expect(readRange("at most 70 %", { dimensions: ["share"] })).toEqual({
      value: { typed: "at most 70 %", most: 0.7 },
    });
    expect(readRange("-5 to 5 °C", { dimensions: ["temperature"], sign: "any" })).toEqual({
      value: { typed: "-5 to 5 °C", least: -5, most: 5 },
    });
  });

  it("reads tolerances, alike and unlike to both sides", () => {
    expect(readTolerance("±0.5 mm")).toEqual({
      value: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005, dimension: "length" },
    });
    expect(readTolerance("+0.5 mm -0 mm")).toEqual({
      value: { typed: "+0.5 mm -0 mm", minus: 0, plus: 0.0005, dimension: "length" },
    });
    expect(readTolerance("+0.5 −0.2 mm")).toEqual({
      value: { typed: "+0.5 −0.2 mm", minus: -0.0002, plus: 0.0005, dimension: "length" },
    });
    expect(readTolerance("+/- 1/64 in")).toEqual({
      value: { typed: "+/- 1/64 in", minus: -0.000396875, plus: 0.000396875, dimension: "length" },
    });
  });

  it("reads ratios as parts of resin to parts of hardener", () => {
    expect(readRatio("100 : 83")).toEqual({ value: { typed: "100 : 83", secondOverFirst: 0.83 } });
    expect(readRatio("2:1")).toEqual({ value: { typed: "2:1", secondOverFirst: 0.5 } });
  });
});

describe("Conversions", () => {
  // NIST Special Publication 811, 2008 edition, Appendix B.8 (factors in bold there are exact); values from memory.
  it.each([
    ["1 in", 0.0254, "inch, exact"],
    ["1 ft", 0.3048, "foot, exact"],
    ["1 lb", 0.45359237, "avoirdupois pound, exact"],
    ["1 oz", 0.028349523125, "avoirdupois ounce, a sixteenth of the pound, exact"],
    ["1 lbf", 4.4482216152605, "pound-force: the pound times standard gravity 9.80665 m/s², exact"],
    ["1 kgf", 9.80665, "kilogram-force, exact"],
    ["1 psi", 6894.757293168361, "pound-force per square inch"],
    ["1 ksi", 6894757.293168361, "a thousand of them"],
    ["1 in²", 0.00064516, "square inch, exact"],
    ["1 ft²", 0.09290304, "square foot, exact"],
    ["1 in³", 0.000016387064, "cubic inch, exact"],
    ["1 US fl oz", 0.0000295735295625, "US fluid ounce: 231/128 cubic inches, exact"],
    ["1 lb/ft³", 16.01846337396014, "pound per cubic foot"],
    ["1 oz/ft²", 0.3051517, "ounce per square foot"],
    ["212 °F", 100, "°C = (°F − 32)/1.8, exact"],
    ["0 K", -273.15, "°C = K − 273.15, exact"],
  ])("turn %s into %d (%s)", (typed, value) => {
    expect(Math.abs(valueIn(typed) / value - 1)).toBeLessThan(typed.startsWith("1 oz/ft²") ? 1e-7 : 1e-14);
  });

  it("move decimals where that is all there is to do, so that 42.0 g is 0.042 kg and nothing else", () => {
    expect(valueIn("42.0 g")).toBe(0.042);
    expect(valueIn("35.1 g")).toBe(0.0351);
    expect(valueIn("52 %")).toBe(0.52);
    expect(valueIn("11.2 %")).toBe(0.112);
    expect(valueIn("68 °F")).toBe(20);
    expect(valueIn("162.3 mm")).toBe(0.1623);
  });

  it("give each word for a unit its dimension and unit of reckoning", () => {
    for (const dimension of MEASURED) {
      const { base, example } = DIMENSIONS[dimension];
      expect(unitOf(wordsFor(dimension)[0] ?? "")).toMatchObject({ dimension, base });
      expect(isFault(readQuantity(example, { dimensions: [dimension] })), example).toBe(false);
    }
  });
});

describe("Any quantity", () => {
  const written = fc
    .record({
      dimension: fc.constantFrom(...MEASURED),
      whole: fc.nat(99_999),
      decimals: fc.option(fc.nat(9_999), { nil: undefined }),
      word: fc.nat(),
      blank: fc.constantFrom(" ", "", "  ", "\u00a0"),
    })
    .map(({ dimension, whole, decimals, word, blank }) => {
      const words = wordsFor(dimension);
      const unit = words[word % words.length] ?? "";
      return { dimension, number: decimals === undefined ? `${whole}` : `${whole}.${decimals}`, unit, blank };
    });

  it("keeps what was typed, and reads back what it prints", () => {
    fc.assert(
      fc.property(written, ({ dimension, number, unit, blank }) => {
        const typed = `${number}${blank}${unit}`;
        const read = readQuantity(typed, { dimensions: [dimension], sign: "any" });
        if (isFault(read)) throw new Error(`${typed}: ${read.fault.message}`);
        expect(read.value.typed).toBe(typed);
        const { value, unit: base } = read.value;
        const printed =
          { "1": dimension === "share" ? `${value * 100} %` : `${value} thicknesses`, "m³": `${value * 1e6} ml` }[
            base
          ] ?? `${value} ${base === "1/m" ? "/m" : base}`;
        if (/e/.test(printed) || value < 0) return;
        expect(valueIn(printed, dimension)).toBeCloseTo(value, 6);
      }),
    );
  });

  it("reads fractions as the numbers they are", () => {
    fc.assert(
      fc.property(
        fc.nat(99),
        fc.integer({ min: 1, max: 63 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        (whole, over, under) => {
          expect(valueIn(`${whole} ${over}/${under} in`)).toBeCloseTo((whole + over / under) * 0.0254, 12);
        },
      ),
    );
  });

  it("is read or refused, whatever is typed, and never made of nothing", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (typed) => {
        const read = readQuantity(typed, {});
        if (isFault(read)) expect(read.fault.mend).not.toBe("");
        else {
          expect(read.value.typed).toBe(typed);
          expect(Number.isFinite(read.value.value)).toBe(true);
          expect(typed).toMatch(/[\d¼½¾⅐-⅞]/);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
