import { describe, expect, it } from "vitest";
import { factsOf } from "../../src/evidence/batch/facts.ts";
import type { Adhesive, Batch, Noted } from "../../src/facts/types.ts";
import { dewPoint } from "../../src/reckoning/climate/dew-point.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";
import { ratioDoubt } from "../../src/reckoning/mixing/ratio-doubt.ts";
import { adhesive, batch } from "./make.ts";
import { celsius, g, gcc, min, ml, pc } from "./quantities.ts";

type Change = { readonly [key in keyof Batch]?: Batch[key] | undefined };
const facts = (change: Change = {}, sheet: Partial<Adhesive> = {}, logged?: number) =>
  factsOf({ ...batch("B-1"), ...change } as Batch, adhesive(sheet), logged);
const about = (typed: string, least: number, most: number, unit: string): Noted => ({
  typed,
  about: { least, most },
  unit,
  step: 0.0001,
});
const between = (typed: string, least: number, most: number, unit: string): Noted => ({
  typed,
  least,
  most,
  unit,
  step: 0.0001,
});
const of = (resin: Noted | undefined, hardener: Noted | undefined): Change => ({
  resin: { lot: "R-1", ...(resin && { mass: resin }) },
  hardener: { lot: "H-1", ...(hardener && { mass: hardener }) },
});

describe("What is reckoned of the mix of a batch", () => {
  it("is its mass, as weighed or by the densities of what was measured", () => {
    expect(facts().mass).toEqual({
      least: expect.closeTo(0.06, 12),
      most: expect.closeTo(0.06, 12),
      isProven: true,
      estimates: [],
    });
    const volumes = { resin: { volume: ml("40") }, hardener: { volume: ml("20") } };
    expect(facts(volumes, { density: { resin: gcc("1.2"), hardener: gcc("1.0") } }).mass?.most).toBeCloseTo(0.068, 12);
    expect(facts(volumes, { density: { resin: gcc("1.2") } }).mass).toBeUndefined();
    expect(facts(volumes, { density: undefined }).mass).toBeUndefined();
    expect(facts(of(g("40"), undefined)).mass).toBeUndefined();
  });

  it("is no more than estimated where one part is", () => {
    const guess = about("about 40 g", 0.035, 0.045, "kg");
    const { mass, ratio, lifeEstimates } = facts(of(guess, g("20.0")));
    expect(mass).toEqual({
      least: expect.closeTo(0.055, 12),
      most: expect.closeTo(0.065, 12),
      isProven: false,
      estimates: [guess],
    });
    expect(ratio?.estimates).toEqual(["about 40 g"]);
    expect(lifeEstimates).toEqual([guess]);
    expect(facts().ratio?.estimates).toEqual([]);
  });

  it("is its ratio by the end that is further from the sheet's, with the error and the doubt of the scale", () => {
    const { ratio } = facts();
    expect(ratio).toMatchObject({
      by: "mass",
      parts: ["resin", "hardener"],
      amounts: ["40.0 g", "20.0 g"],
      found: 0.5,
      nominal: 0.5,
      error: 0,
      asTyped: "100 : 50",
      converted: false,
    });
    expect(ratio?.step).toEqual({ value: 0.0001, noted: "0.1 g" });
    expect(ratio?.doubt).toBeCloseTo(ratioDoubt(0.04, 0.02, 0.0001) ?? Number.NaN, 15);
    const lean = facts(of(between("38 to 48 g", 0.038, 0.048, "kg"), g("20.0"))).ratio;
    expect(lean?.found).toBeCloseTo(20 / 48, 12);
    expect(lean?.error).toBeCloseTo(20 / 48 / 0.5 - 1, 12);
    const rich = facts(of(between("32 to 41 g", 0.032, 0.041, "kg"), g("20.0"))).ratio;
    expect(rich?.found).toBeCloseTo(20 / 32, 12);
    expect(rich?.doubt).toBeCloseTo((ratioDoubt(0.032, 0.02, 0.0001) ?? 0) * (20 / 32 / 0.5), 12);
    expect(facts(of(g("40.0"), g("0.0"))).ratio).toBeUndefined();
    expect(facts(of(g("0.0"), g("20.0"))).ratio).toBeUndefined();
  });

  it("is its ratio from the other measure of the sheet, by its densities, where it gives only that", () => {
    const byVolume = { typed: "2 : 1", secondOverFirst: 0.5 };
    const sheet = { byMass: undefined, byVolume, density: { resin: gcc("1.2"), hardener: gcc("1.0") } };
    expect(facts({}, sheet).ratio).toMatchObject({ converted: true, nominal: expect.closeTo(0.5 / 1.2, 12) as number });
    const volumes = { resin: { volume: ml("40") }, hardener: { volume: ml("20") } };
    expect(facts(volumes, { density: sheet.density }).ratio).toMatchObject({
      by: "volume",
      converted: true,
      nominal: expect.closeTo(0.6, 12) as number,
    });
    for (const density of [undefined, { resin: gcc("1.2") }, { hardener: gcc("1.0") }])
      expect(facts({}, { ...sheet, density }).ratio).toBeUndefined();
    expect(facts({}, { byMass: undefined }).ratio).toBeUndefined();
  });

  it("takes the coarser of the scale's noted step and of the last digits, and no step of another measure", () => {
    const step = (scale: Batch["scale"] | undefined, resin = "40.0") =>
      facts({ ...of(g(resin), g("20.0")), scale }).ratio?.step;
    expect(step(g("0.1"))).toEqual({ value: 0.0001, noted: "0.1 g" });
    expect(step(g("0.1"), "40")).toEqual({ value: 0.001 });
    expect(step(g("1"), "40.0")).toEqual({ value: 0.001, noted: "1 g" });
    expect(step(undefined)).toBeUndefined();
    expect(step(ml("1"))).toBeUndefined();
    expect(facts({ scale: undefined }).ratio?.doubt).toBeUndefined();
  });

  it("is what was left over, as a share of the least that was mixed", () => {
    expect(facts({ waste: g("6.0") }).waste).toBeCloseTo(0.006, 12);
    expect(facts({ waste: between("4 to 8 g", 0.004, 0.008, "kg") }).waste).toBeCloseTo(0.008, 12);
    expect(facts().waste).toBeUndefined();
    expect(facts({ ...of(g("40"), undefined), waste: g("6.0") }).waste).toBeUndefined();
  });

  it("is spread by all of a mix, and of parts that are applied apart by the first alone", () => {
    expect(facts().forSpread?.least).toBeCloseTo(0.06, 12);
    expect(facts({}, { kind: "applied-apart" }).forSpread?.least).toBeCloseTo(0.04, 12);
  });
});

describe("What is reckoned of the time and the air of a batch", () => {
  const ROWS = {
    workingLife: [
      { temperature: celsius("25"), mass: g("100"), time: min("30") },
      { temperature: celsius("20"), mass: g("100"), time: min("40") },
      { temperature: celsius("30"), time: min("10") },
    ],
  };
  const life = (change: Change, logged?: number) => facts(change, ROWS, logged).life?.time;

  it("is the life that the sheet gives the warmer of the note and the logger", () => {
    expect(life({ temperature: celsius("20") })).toBe(40 * 60);
    expect(life({ temperature: celsius("20") }, 24)).toBe(30 * 60);
    expect(life({ temperature: celsius("24") }, 20)).toBe(30 * 60);
    expect(life({ temperature: undefined }, 20)).toBe(40 * 60);
    expect(life({ temperature: between("18 to 22 °C", 18, 22, "°C") })).toBe(30 * 60);
    expect(life({ temperature: undefined })).toBeUndefined();
    expect(life({ temperature: celsius("31") })).toBeUndefined();
    expect(life({ temperature: celsius("20"), ...of(g("90.0"), g("20.0")) })).toBe(10 * 60);
    expect(life({ temperature: celsius("20"), ...of(g("40.0"), undefined) })).toBe(10 * 60);
  });

  it("is that of the resin where it was warmer than the air, and not of the resin alone", () => {
    const resin = (warmth: string) => ({ glueUp: { drop: [], beaded: [], resin: celsius(warmth) } });
    expect(life({ temperature: celsius("20"), ...resin("24") })).toBe(30 * 60);
    expect(life({ temperature: celsius("24"), ...resin("19") })).toBe(30 * 60);
    expect(life({ temperature: celsius("20"), ...resin("40") })).toBeUndefined();
    expect(life({ temperature: undefined, ...resin("20") })).toBeUndefined();
  });

  it("rests on what was only estimated of the air, where no logger read it", () => {
    const guess = about("about 20 °C", 19, 21, "°C");
    expect(facts({ temperature: guess }).lifeEstimates).toEqual([guess]);
    expect(facts({ temperature: guess }, {}, 20).lifeEstimates).toEqual([]);
    expect(facts().lifeEstimates).toEqual([]);
    expect(facts({ temperature: undefined }).lifeEstimates).toEqual([]);
  });

  it("is how long it stood open, where both times are noted", () => {
    expect(facts().open?.openFor).toBe(20 * 60);
    expect(facts({ mixed: undefined }).open?.openFor).toBeUndefined();
    expect(facts({ closed: undefined }).open?.openFor).toBeUndefined();
  });

  it("begins with spreading where nothing is mixed in a cup, by whichever note says sooner", () => {
    const { closed } = batch("B-1");
    if (!closed) throw new Error("not closed");
    const spread = (before: number) => ({
      glueUp: { drop: [], beaded: [], spread: { ...closed, epoch: closed.epoch - before * 60 } },
    });
    expect(facts(spread(90), { kind: "applied-apart" }).open?.openFor).toBe(90 * 60);
    expect(facts(spread(5), { kind: "applied-apart" }).open?.openFor).toBe(20 * 60);
    expect(facts(spread(90)).open?.openFor).toBe(20 * 60);
    expect(facts({ ...spread(90), mixed: undefined }, { kind: "applied-apart" }).open).toBeUndefined();
  });

  it("is the dew point at the worst that the air may have been, and none that is proven of an estimate", () => {
    const dew = dewPoint(20, 0.5) ?? Number.NaN;
    expect(facts().dewPoint).toBe(dew);
    expect(facts().aboveDew).toEqual({ dewPoint: dew, apart: 20 - dew, isProven: true });
    const range = { temperature: between("18 to 24 °C", 18, 24, "°C") };
    const warm = dewPoint(24, 0.5) ?? Number.NaN;
    expect(facts(range).aboveDew).toEqual({ dewPoint: warm, apart: 20 - warm, isProven: true });
    const unread = facts({ ...range, surface: undefined }).aboveDew;
    const apart = [18, 24].map((air) => air - (dewPoint(air, 0.5) ?? Number.NaN));
    expect(unread?.apart).toBe(Math.min(...apart));
    for (const change of [
      { temperature: about("about 20 °C", 20, 20, "°C") },
      { humidity: about("about 50 %", 0.5, 0.5, "1") },
      { surface: about("about 20 °C", 20, 20, "°C") },
    ]) {
      expect(facts(change).aboveDew?.isProven).toBe(false);
      expect(facts(change).dewPoint).toBeUndefined();
    }
    expect(facts({ humidity: undefined }).aboveDew).toBeUndefined();
    expect(facts({ temperature: undefined }).aboveDew).toBeUndefined();
    expect(facts({ humidity: pc("0") }).aboveDew).toBeUndefined();
  });

  it("is what wood would settle at, by the colder and damper end of what was read", () => {
    expect(facts().moistureEstimate).toBe(equilibriumMoisture(20, 0.5));
    const range = { temperature: between("18 to 24 °C", 18, 24, "°C"), humidity: between("40 to 60 %", 0.4, 0.6, "1") };
    expect(facts(range).moistureEstimate).toBe(equilibriumMoisture(18, 0.6));
    expect(facts({ temperature: about("about 20 °C", 20, 20, "°C") }).moistureEstimate).toBeUndefined();
    expect(facts({ humidity: undefined }).moistureEstimate).toBeUndefined();
  });
});
