import { describe, expect, it } from "vitest";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { after, fileOf, sentence, severities } from "./one-batch.ts";
import { assembly, DAY, joint, lot, LOTS, piece } from "./make.ts";
import { celsius, g, gcc, min, ml, moment, pc } from "./quantities.ts";

const cm2 = (square: number) => ({ typed: `${square} cm²`, value: square / 10_000, unit: "m²", step: 0.0001 });

const NO_PARTS: Partial<Batch> = { resin: undefined, hardener: undefined };
const lots = [...LOTS, lot("G-1", { material: "glue" }), lot("U-1", { material: "powder" })];

const ONE: Partial<Adhesive> = {
  kind: "one-part",
  byMass: undefined,
  density: undefined,
  workingLife: [{ temperature: celsius("25"), time: min("30") }],
};
const glue = (change: Partial<Batch> = {}): Partial<Batch> => ({
  ...NO_PARTS,
  scale: undefined,
  glue: { lot: "G-1" },
  ...change,
});

describe("An adhesive of one part", () => {
  it("is shown without hardener, ratio, scale or mass", () => {
    const file = fileOf(glue(), ONE, { lots });
    expect(file.verdict).toBe("shown");
    expect([severities(file, "mix-ratio"), severities(file, "mix-doubt")]).toEqual([[], []]);
    expect(file.ratio).toBeUndefined();
  });

  it("needs its lot, in date", () => {
    expect(after("lot-known", glue({ glue: {} }), ONE, { lots })).toEqual(["not shown", "unproven", "meets"]);
    expect(after("lot-known", glue({ glue: undefined }), ONE, { lots })).toEqual(["not shown", "unproven", "meets"]);
    expect(sentence(fileOf(glue({ glue: {} }), ONE, { lots }), "lot-known")).toBe("The lot of the glue is not noted.");
    const old = [...LOTS, lot("G-1", { material: "glue", expiry: "2025-03-07" })];
    expect(after("lot-in-date", glue(), ONE, { lots: old })).toEqual(["rejected", "rejects"]);
  });

  it("is closed in time from its spreading, for any mass where the sheet names none", () => {
    const within = fileOf(glue(), ONE, { lots });
    expect(sentence(within, "working-life")).toMatch(/^First spread at 14:00 and closed at /);
    const short = { ...ONE, workingLife: [{ temperature: celsius("25"), time: min("5") }] };
    expect(after("working-life", glue(), short, { lots })).toEqual(["rejected", "rejects"]);
    expect(after("working-life", glue(), { ...ONE, workingLife: [] }, { lots })).toEqual(["not shown", "unproven"]);
    expect(after("working-life", glue({ mixed: undefined }), ONE, { lots })).toEqual(["not shown", "unproven"]);
    expect(sentence(fileOf(glue({ mixed: undefined }), ONE, { lots }), "working-life")).toBe(
      "When it was first spread is not noted, so the time it stood is not known.",
    );
  });

  it("asks the mass where the sheet has its time for one", () => {
    const byMass = { ...ONE, workingLife: [{ temperature: celsius("25"), mass: g("100"), time: min("30") }] };
    expect(after("working-life", glue(), byMass, { lots })).toEqual(["not shown", "unproven"]);
    const of = (mass: string) => glue({ glue: { lot: "G-1", mass: g(mass) } });
    expect(after("working-life", of("100"), byMass, { lots })).toEqual(["shown", "meets"]);
    expect(after("working-life", of("100.1"), byMass, { lots })).toEqual(["not shown", "unproven"]);
  });

  it("has a piece glued in time for any mass where the sheet names none", () => {
    const of = (time: string) => {
      const pieces = [piece("B-1", 1, { glued: moment(DAY, time) })];
      const found = fileOf(glue({ pieces }), ONE, { lots }).pieces[0]?.findings.find(
        ({ rule }) => rule === "piece-glued",
      );
      return [found?.code, found?.limit?.text];
    };
    expect(of("14:30")).toEqual(["piece-glued/within", "closed within 30 min, as at 25 °C"]);
    expect(of("14:31")).toEqual(["piece-glued/too-late", "closed within 30 min, as at 25 °C"]);
  });

  it("turns a volume into the mass that was spread by its own density", () => {
    const sheet = { ...ONE, density: { glue: gcc("1.1") }, spread: { typed: "", value: 0.2, unit: "kg/m²", step: 0 } };
    const wing = assembly("wing", { joints: [{ ...joint("W-1"), area: cm2(100) }] });
    const spread = (volume: string) =>
      after("spread", glue({ glue: { lot: "G-1", volume: ml(volume) } }), sheet, { lots, assemblies: [wing] });
    expect([spread("1.83"), spread("1.81")]).toEqual([
      ["shown", "meets"],
      ["shown", "caution"],
    ]);
  });
});

describe("Powder and water", () => {
  const POWDER: Partial<Adhesive> = {
    kind: "powder-and-water",
    byMass: { typed: "100 : 60", secondOverFirst: 0.6, tolerance: pc("10") },
    density: undefined,
    workingLife: [{ temperature: celsius("25"), time: min("30") }],
  };
  const mix = (powder: string, water: string, change: Partial<Batch> = {}): Partial<Batch> => ({
    ...NO_PARTS,
    powder: { lot: "U-1", mass: g(powder) },
    water: { mass: g(water) },
    ...change,
  });

  it("holds the water against the powder, on both sides of the tolerance", () => {
    expect(after("mix-ratio", mix("50.00", "33.0"), POWDER, { lots })[1]).toBe("meets");
    expect(after("mix-ratio", mix("50.00", "33.1"), POWDER, { lots })).toEqual(["rejected", "rejects"]);
    expect(after("mix-ratio", mix("50.0", "27.1"), POWDER, { lots })).toEqual(["shown", "meets"]);
    expect(after("mix-ratio", mix("50.0", "26.9"), POWDER, { lots })).toEqual(["rejected", "rejects"]);
    expect(sentence(fileOf(mix("50.0", "26.9"), POWDER, { lots }), "mix-ratio")).toBe(
      "26.9 g of water to 50.0 g of powder is 0.538, and the sheet's 100 : 60 is 0.600, 10.3 % too little water; more than 10 %.",
    );
  });

  it("is not shown without either amount, or with the sheet's ratio left out", () => {
    expect(after("mix-ratio", mix("50.0", "30.0", { water: undefined }), POWDER, { lots })).toEqual([
      "not shown",
      "unproven",
    ]);
    expect(
      sentence(fileOf(mix("5", "3", { water: undefined, powder: { lot: "U-1" } }), POWDER, { lots }), "mix-ratio"),
    ).toBe("The amounts of powder and water are not noted, so the ratio of the mix is not known.");
    expect(after("mix-ratio", mix("50.0", "30.0"), { ...POWDER, byMass: undefined }, { lots })).toEqual([
      "not shown",
      "unproven",
    ]);
  });

  it("asks no lot of the water, and one of the powder", () => {
    expect(after("lot-known", mix("50.0", "30.0"), POWDER, { lots })).toEqual(["shown", "meets", "meets"]);
    expect(after("lot-known", mix("50.0", "30.0", { powder: { mass: g("50.0") } }), POWDER, { lots })).toEqual([
      "not shown",
      "unproven",
      "meets",
    ]);
  });
});

describe("Two parts applied apart", () => {
  const APART: Partial<Adhesive> = {
    kind: "applied-apart",
    byMass: undefined,
    workingLife: [{ temperature: celsius("25"), time: min("30") }],
  };

  it("have no ratio where their sheet gives none, which is told", () => {
    expect(after("mix-ratio", { hardener: { lot: "H-1" } }, APART)).toEqual(["shown", "caution"]);
    expect(after("lot-known", { hardener: undefined }, APART)).toEqual(["not shown", "meets", "unproven", "meets"]);
  });

  it("were there to spread as far as their first part goes, whatever the hardener weighs", () => {
    const sheet = { ...APART, spread: { typed: "", value: 4, unit: "kg/m²", step: 0 } };
    const wing = assembly("wing", { joints: [{ ...joint("W-1"), area: cm2(100) }] });
    const spread = (resin: string) =>
      after("spread", { resin: { lot: "R-1", mass: g(resin) } }, sheet, { assemblies: [wing] });
    expect([spread("40.0"), spread("39.9")]).toEqual([
      ["shown", "meets"],
      ["shown", "caution"],
    ]);
  });

  it("are held against the ratio where their sheet gives one", () => {
    const stated = { ...APART, byMass: { typed: "100 : 50", secondOverFirst: 0.5, tolerance: pc("5") } };
    expect(after("mix-ratio", {}, stated)).toEqual(["shown", "meets"]);
    expect(after("mix-ratio", { hardener: { lot: "H-1", mass: g("22.0") } }, stated)).toEqual(["rejected", "rejects"]);
    expect(after("mix-ratio", { hardener: { lot: "H-1" } }, stated)).toEqual(["not shown", "unproven"]);
  });
});
