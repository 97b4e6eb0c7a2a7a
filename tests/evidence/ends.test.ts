/** What was read as a range or only estimated, for each rule that takes an end of it. */
import { describe, expect, it } from "vitest";
import { readNoted, readNotedOrScarf } from "../../src/facts/quantity/noted.ts";
import { isFault } from "../../src/facts/reading.ts";
import { notedOf } from "../../src/facts/typing.ts";
import type { Adhesive, Batch, Dimension, Noted } from "../../src/facts/types.ts";
import { against, standing } from "../../src/reckoning/compare.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { fileOf, sentence, severities } from "./one-batch.ts";
import { g, range } from "./quantities.ts";

const as =
  (dimension: Dimension) =>
  (typed: string): Noted => {
    const reading = readNoted(typed, { dimensions: [dimension], sign: "any" });
    if (isFault(reading)) throw new Error(reading.fault.message);
    return notedOf(reading.value);
  };
const [warm, share, mass] = [as("temperature"), as("share"), as("mass")];

describe("What was noted", () => {
  it("is one figure, a range or an estimate, with the coarser step of its ends", () => {
    expect(share("10.5 %")).toMatchObject({ typed: "10.5 %", value: 0.105 });
    expect(share("9 to 11.5 %")).toEqual({ typed: "9 to 11.5 %", unit: "1", step: 0.01, least: 0.09, most: 0.115 });
    expect(warm("-2 to 3 °C")).toMatchObject({ least: -2, most: 3 });
    expect(warm("about 20 °C")).toEqual({ typed: "about 20 °C", unit: "°C", step: 1, about: { least: 20, most: 20 } });
    expect(mass("About 40 to 42 g")).toMatchObject({ about: { least: 0.04, most: 0.042 } });
    expect(readNotedOrScarf("about 1 in 11 to 1 in 13", {})).toMatchObject({
      value: { unit: "slope", about: { least: 1 / 13, most: 1 / 11 } },
    });
  });

  it("is within limits where both its ends are, and by an estimate only estimated", () => {
    const limits = range("8 % to 12 %", 0.08, 0.12);
    const all = ["8 to 12 %", "7 to 11 %", "9 to 13 %", "7 to 13 %", "about 9 to 11 %", "about 9 to 13 %", "about 7 %"];
    expect(all.map((typed) => standing(share(typed), limits))).toEqual([
      "within",
      "below",
      "above",
      "below",
      "estimate",
      "above",
      "below",
    ]);
    expect(standing(share("9 %"), limits)).toBe(against(0.09, limits));
  });

  it("is shown as typed, and both its ends in the units of the aircraft", () => {
    expect(quantityWords(warm("19 to 21 °C"), "metric")).toBe("19 to 21 °C");
    expect(quantityWords(warm("19 to 21 °C"), "imperial")).toBe("19 to 21 °C (66.2 °F to 69.8 °F)");
    expect(quantityWords(warm("about 20 °C"), "imperial")).toBe("about 20 °C (about 68.0 °F)");
  });
});

/** Mixed 40 g to 20 g, 20 °C, 50 %, 10 %; the sheet asks 15 to 30 °C, at most 70 %, 8 to 12 %. */
const told = (rule: string, change: Partial<Batch>, sheet: Partial<Adhesive> = {}) => {
  const file = fileOf(change, sheet);
  return [...severities(file, rule), sentence(file, rule)];
};

describe("A rule takes the worse end", () => {
  it("of the ratio that of both amounts by which it is further off, and the doubt of the lesser amounts", () => {
    const mix = (resin: string, hardener: string) =>
      fileOf({ resin: { lot: "R-1", mass: mass(resin) }, hardener: { lot: "H-1", mass: mass(hardener) } });
    expect(mix("40.0 g", "19.8 to 20.4 g").ratio).toMatchObject({ found: 0.51, error: expect.closeTo(0.02, 9) });
    expect(mix("40.0 g", "19.2 to 20.4 g").ratio).toMatchObject({
      found: expect.closeTo(0.48, 9),
      error: expect.closeTo(-0.04, 9),
    });
    expect(mix("39.5 to 40.5 g", "20.0 g").ratio?.found).toBeCloseTo(20 / 39.5, 9);
    const [plain, blurred] = [mix("40.0 g", "20.0 g").ratio?.doubt, mix("39.5 to 40.5 g", "20.0 g").ratio?.doubt];
    expect(blurred).toBeGreaterThan(plain ?? Number.NaN);
    expect(mix("about 40 g", "20.0 g").ratio).toBeUndefined();
  });

  it("of the working life the warmer air and the greater mass, be they estimates", () => {
    expect(told("working-life", { temperature: warm("24 to 26 °C") })[0]).toBe("unproven");
    expect(told("working-life", { temperature: warm("about 20 °C") })).toEqual([
      "unproven",
      expect.stringContaining("about 20 °C is only an estimate, so that working life is not shown"),
    ]);
    const much = {
      resin: { lot: "R-1", mass: mass("60 to 90 g") },
      hardener: { lot: "H-1", mass: mass("30 to 45 g") },
    };
    expect(sentence(fileOf(much), "working-life")).toContain("of 20 min");
    const guessed = { resin: { lot: "R-1", mass: mass("about 90 g") } };
    expect(sentence(fileOf({ ...guessed, hardener: { lot: "H-1", mass: g("45.0") } }), "working-life")).toContain(
      "about 90 g is only an estimate",
    );
  });

  it("of the dew point the coldest surface in the warmest and dampest air", () => {
    expect(told("dew-point", { surface: warm("10 to 19 °C") })[0]).toBe("caution");
    expect(told("dew-point", { humidity: share("50 to 90 %"), surface: warm("19 °C") })[0]).toBe("caution");
    expect(told("dew-point", { temperature: warm("18 to 28 °C"), surface: warm("18 °C") })[0]).toBe("caution");
    expect(told("dew-point", { surface: warm("19 to 21 °C") })[0]).toBe("meets");
    expect(told("dew-point", { surface: warm("about 19 °C") })).toEqual([undefined]);
    expect(told("dew-point", { surface: warm("about 10 °C") })[0]).toBe("caution");
    expect(fileOf({ humidity: share("about 50 %") }).dewPoint).toBeUndefined();
  });

  it("of what the air makes of the wood the damper, and of an estimate none", () => {
    const { moistureEstimate: damp } = fileOf({ moisture: undefined, humidity: share("40 to 60 %") });
    expect(damp).toBe(fileOf({ moisture: undefined, humidity: share("60 %") }).moistureEstimate);
    expect(fileOf({ moisture: undefined, humidity: share("about 60 %") }).moistureEstimate).toBeUndefined();
  });

  it("of filler the most, over the least that was mixed", () => {
    const asks = { asks: { fillerMass: { typed: "5 %", value: 0.05, unit: "1", step: 0.01 } } };
    const filled = (fillerMass: Noted, resin: Noted) =>
      told("glue-up", { glueUp: { drop: [], beaded: [], fillerMass }, resin: { lot: "R-1", mass: resin } }, asks)[0];
    expect(filled(g("3.0"), g("40.0"))).toBe("meets");
    expect(filled(mass("2.0 to 3.1 g"), g("40.0"))).toBe("rejects");
    expect(filled(g("3.0"), mass("39 to 41 g"))).toBe("rejects");
    expect(filled(mass("about 2 g"), g("40.0"))).toBe("unproven");
    expect(filled(g("2.0"), mass("about 40 g"))).toBe("unproven");
    expect(filled(mass("about 4 g"), g("40.0"))).toBe("rejects");
  });
});
