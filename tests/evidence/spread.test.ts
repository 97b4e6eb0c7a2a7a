/** Adhesive mixed over the area of the joints that it went into. */
import { describe, expect, it } from "vitest";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { adhesive, assembly, batch, glued, joint, test } from "./make.ts";
import { g, gcc, ml } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const area = (square: number) => ({ typed: `${square} m²`, value: square, unit: "m²", step: 0.01 });
const DENSITY = { resin: gcc("1.0"), hardener: gcc("1.0") };
const SPREAD = { typed: "300 g/m²", value: 0.3, unit: "kg/m²", step: 0.001 };
const wing = (...areas: (number | undefined)[]) =>
  assembly("wing", {
    joints: areas.map((one, i) => ({ ...joint(`W-${i + 1}`), ...(one !== undefined && { area: area(one) }) })),
  });

/** 60 g mixed into W-1 unless others are given. */
function told(
  areas: (number | undefined)[],
  batches: readonly Batch[] = [batch("B-1")],
  change: Partial<Adhesive> = {},
) {
  const made = { assemblies: [wing(...areas)], adhesives: [adhesive({ spread: SPREAD, ...change })] };
  return reckon(glued(batches, [test("B-1/1")], made))
    .batches.get("B-1")
    ?.findings.filter(({ rule }) => rule === "spread")
    .map(({ severity, sentence, limit }) => `${severity}: ${sentence} ${limit?.from.text ?? ""}`);
}

describe("The spread of a session", () => {
  it("is all that was mixed over the area, and at the figure itself enough", () => {
    expect(told([0.2])).toEqual(["meets: 60.0 g mixed over 2000 cm² of joints is at most 300 g/m². the record itself"]);
    expect(told([0.21])).toEqual([
      "caution: 60.0 g mixed over 2100 cm² of joints is at most 286 g/m², less than 300 g/m² even if nothing stayed in the cup: the joint may be starved. the record itself",
    ]);
  });

  it("is less what was left over, of a mix by volume the same share of its mass", () => {
    const left = (change: Partial<Batch>) => told([0.15], [batch("B-1", change)], { density: DENSITY });
    expect(left({ waste: g("15.0") })).toEqual([
      "meets: 60.0 g mixed less 15.0 g of waste over 1500 cm² of joints is at most 300 g/m². the record itself",
    ]);
    expect(left({ waste: g("18.0") })).toEqual([
      "caution: 60.0 g mixed less 18.0 g of waste over 1500 cm² of joints is at most 280 g/m², less than 300 g/m² even if nothing more stayed in the cup: the joint may be starved. the record itself",
    ]);
    const byVolume = { resin: { volume: ml("40") }, hardener: { volume: ml("20") }, waste: ml("15") };
    expect(left(byVolume)?.[0]).toMatch(/^meets: 60.0 g mixed less 15.0 g of waste over/u);
    const second = batch("B-2", { waste: g("6.0") });
    expect(told([0.2], [batch("B-1", { waste: g("4.0") }), second])?.[0]).toMatch(
      /^meets: 120.0 g mixed less 10.0 g of waste over 2000 cm² of joints is at most 550 g/u,
    );
  });

  it("is less the most that may have been left over, of the least that may have been mixed; by an estimate there was never enough", () => {
    const between = (least: number, most: number, typed: string) => ({ typed, unit: "kg", step: 0.001, least, most });
    const about = { typed: "about 5 g", unit: "kg", step: 0.001, about: { least: 0.005, most: 0.005 } };
    const left = (change: Partial<Batch>) => told([0.15], [batch("B-1", change)], { density: DENSITY })?.[0];
    expect(left({ waste: between(0.01, 0.018, "10 to 18 g") })).toBe(
      "caution: 60.0 g mixed less 18.0 g of waste over 1500 cm² of joints is 280 g/m² by the worse ends of what was noted, less than 300 g/m²: the joint may be starved. the record itself",
    );
    const resin = { lot: "R-1", mass: between(0.02, 0.04, "20 to 40 g") };
    expect(left({ resin })).toMatch(
      /^caution: 40.0 g mixed over 1500 cm² of joints is 267 g\/m² by the worse ends of what was noted, less than 300 g\/m²: /u,
    );
    expect(left({ waste: about })).toMatch(/^caution: How much was mixed, or left of it, is only estimated/u);
    expect(left({ waste: { ...about, about: { least: 0.01, most: 0.02 } } })).toMatch(/less 20.0 g of waste/u);
  });

  it("counts the cups of one session together, and every joint that they went into", () => {
    const second = batch("B-2", { joints: ["W-1", "W-2"] });
    expect(told([0.2, 0.2], [batch("B-1"), second])?.[0]).toMatch(/^meets: 120.0 g mixed over 4000 cm²/u);
    expect(told([0.2, 0.3], [batch("B-1"), second])?.[0]).toMatch(/^caution: 120.0 g mixed over 5000 cm²/u);
    const another = batch("B-2", {}, "2025-03-11");
    expect(told([0.2], [batch("B-1"), another])?.[0]).toMatch(/^meets: 60.0 g mixed over 2000 cm²/u);
  });

  it("is not known without an area or an amount, and is not asked without a figure or a joint", () => {
    const unknown =
      "caution: How much was mixed, or the area that was glued with it, is not noted, so nothing shows that there was enough to spread. the record itself";
    expect(told([undefined])).toEqual([unknown]);
    expect(told([0])).toEqual([unknown]);
    expect(told([0.2], [batch("B-1", { resin: { lot: "R-1" } }), batch("B-2")])).toEqual([unknown]);
    expect(told([undefined, 0.2], [batch("B-1", { joints: ["W-1", "W-2"] })])).toEqual([unknown]);
    expect(told([0.2, undefined], [batch("B-1", { joints: ["W-1", "W-2"] })])).toEqual([unknown]);
    expect(told([0.2], [batch("B-1", { resin: { lot: "R-1" } })])).toEqual([unknown]);
    expect(told([0.2], [batch("B-1", { joints: [] })])).toEqual([]);
    expect(told([0.2], [batch("B-1")], { spread: undefined })).toEqual([]);
  });

  it("of several cups is as sure as the least sure of them", () => {
    const about = (typed: string, value: number) => ({
      typed,
      unit: "kg",
      step: 0.001,
      about: { least: value, most: value },
    });
    const estimated = batch("B-2", { resin: { lot: "R-1", mass: about("about 40 g", 0.04) } });
    const wasted = batch("B-2", { waste: about("about 5 g", 0.005) });
    for (const second of [estimated, wasted])
      expect(told([0.2], [batch("B-1"), second])?.[0]).toMatch(/^caution: How much was mixed, or left of it, is only/u);
    const range = { typed: "30 to 40 g", unit: "kg", step: 0.001, least: 0.03, most: 0.04 };
    const between = batch("B-2", { resin: { lot: "R-1", mass: range } });
    expect(told([0.5], [batch("B-1"), between])?.[0]).toContain("by the worse ends of what was noted");
  });

  it("of a joint that is glued in stages is not known", () => {
    const staged = {
      assemblies: [assembly("wing", { joints: [{ ...joint("W-1"), area: area(0.2), stages: 2 }, joint("W-2")] })],
      adhesives: [adhesive({ spread: SPREAD })],
    };
    const found = reckon(glued([batch("B-1")], [test("B-1/1")], staged)).batches.get("B-1")?.findings;
    expect(found?.filter(({ rule }) => rule === "spread").map(({ code }) => code)).toEqual(["spread/not-known"]);
  });

  it("is called the sheet's only where the sheet is attached", () => {
    expect(told([0.2], [batch("B-1")], { sheetFile: "sheet.pdf" })?.[0]).toContain("Resorcin data sheet, revision 4");
    const made = { assemblies: [wing(0.2)], adhesives: [adhesive({ spread: SPREAD })] };
    const { findings } = reckon(glued([batch("B-1")], [test("B-1/1")], made)).batches.get("B-1") ?? { findings: [] };
    expect(findings.find(({ rule }) => rule === "spread")?.limit?.text).toContain("300 g/m²");
  });
});
