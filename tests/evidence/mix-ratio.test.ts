import { describe, expect, it } from "vitest";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { fileOf, sentence, after } from "./one-batch.ts";
import { g, ml, pc } from "./quantities.ts";

describe("Mix ratio", () => {
  const weigh = (resin: string, hardener: string): Partial<Batch> => ({
    resin: { lot: "R-1", mass: g(resin) },
    hardener: { lot: "H-1", mass: g(hardener) },
  });
  const fine = { scale: g("0.0001") };

  it("holds up to the tolerance and rejects beyond it, on both sides", () => {
    expect(after("mix-ratio", { ...weigh("40.000", "21.000"), ...fine })).toEqual(["not shown", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "20.999"), ...fine })).toEqual(["shown", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "21.001"), ...fine })).toEqual(["rejected", "rejects"]);
    expect(after("mix-ratio", { ...weigh("40.000", "19.001"), ...fine })).toEqual(["shown", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "18.999"), ...fine })).toEqual(["rejected", "rejects"]);
  });

  it("is unproven where the scale cannot show that it holds", () => {
    expect(after("mix-doubt", weigh("40.0", "20.9"))).toEqual(["shown", "meets"]);
    const { error = 0, doubt = 0 } = fileOf(weigh("40.0", "20.9")).ratio ?? {};
    const within = (tolerance: number) => ({
      byMass: { typed: "100 : 50", secondOverFirst: 0.5, tolerance: { ...pc("5"), value: tolerance } },
    });
    expect(after("mix-doubt", weigh("40.0", "20.9"), within(error + doubt))).toEqual(["shown", "meets"]);
    expect(after("mix-doubt", weigh("40.0", "20.9"), within(error + doubt - 1e-6))).toEqual(["not shown", "unproven"]);
    expect(after("mix-doubt", weigh("40.0", "19.1"), within(error + doubt - 1e-6))).toEqual(["shown", "meets"]);
    expect(after("mix-doubt", weigh("40.0", "21.0"))).toEqual(["not shown", "unproven"]);
    expect(sentence(fileOf(weigh("40.0", "21.0")), "mix-doubt")).toMatch(
      / with the error; so close to the limit the scale cannot show that the mix was within it\.$/u,
    );
    expect(after("mix-doubt", { ...weigh("4.0", "2.0"), scale: g("1") })).toEqual(["not shown", "unproven"]);
    expect(sentence(fileOf({ ...weigh("4.0", "2.0"), scale: g("1") }), "mix-doubt")).toBe(
      "By the noted reading step of 1 g the scale alone leaves ±32.3 % of doubt, 32.3 % with the error; the scale is too coarse for so little: it could not show any mix to be within the limit.",
    );
  });

  it("takes the doubt as a share of the nominal ratio: 41 to 21.5 g by 0.1 g is 4.9 % off and ±0.3 %", () => {
    const { ratio } = fileOf(weigh("41.0", "21.5"));
    expect(ratio?.error).toBeCloseTo(0.04878, 6);
    expect(ratio?.doubt).toBeCloseTo((2 * (0.1 / Math.sqrt(12)) * Math.hypot(1 / 41, 1 / 21.5) * (21.5 / 41)) / 0.5, 9);
    expect(ratio?.tolerance).toBe(0.05);
  });

  it("reads the step from the last digit where that is coarser than what is noted, and says so", () => {
    const file = fileOf(weigh("4", "2.00"));
    expect(file.verdict).toBe("not shown");
    expect(sentence(file, "mix-doubt")).toContain("By the last digit as typed");
    expect(after("mix-doubt", weigh("40.00", "20"))).toEqual(["shown", "meets"]);
    expect(fileOf(weigh("40.00", "20")).ratio?.doubt).toBeCloseTo((2 / Math.sqrt(12)) * Math.hypot(1 / 40, 1 / 20), 9);
  });

  it("takes no digit for a reading step where none is noted", () => {
    expect(after("mix-doubt", { ...weigh("40.00", "20.00"), scale: undefined })).toEqual(["not shown", "unproven"]);
    expect(fileOf({ ...weigh("40.00", "20.00"), scale: undefined }).ratio).toHaveProperty("doubt", undefined);
  });

  it("takes no step of a measure for one of the scale", () => {
    expect(after("mix-doubt", { scale: ml("0.1") })).toEqual(["not shown", "unproven"]);
  });

  it("is unproven where an amount, the sheet's ratio or its tolerance is missing", () => {
    expect(after("mix-ratio", { resin: { lot: "R-1" } })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", { hardener: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", { resin: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", { resin: undefined, hardener: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", { resin: { lot: "R-1", volume: ml("40.0") }, hardener: undefined })).toEqual([
      "not shown",
      "unproven",
    ]);
    expect(after("mix-ratio", { resin: { lot: "R-1", volume: ml("40") } })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", {}, { byMass: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("mix-ratio", {}, { byMass: { typed: "100 : 50", secondOverFirst: 0.5 } })).toEqual([
      "not shown",
      "unproven",
    ]);
    expect(after("mix-ratio", weigh("0", "20.0"))).toEqual(["not shown", "unproven"]);
  });

  it("says what is missing: an amount, one measure for both, a ratio that can be used, a reading step", () => {
    const said = (change: Partial<Batch>, sheet?: Partial<Adhesive>) => sentence(fileOf(change, sheet), "mix-ratio");
    expect(said({ resin: { lot: "R-1" }, hardener: { lot: "H-1" } })).toBe(
      "The amounts of resin and hardener are not noted, so the ratio of the mix is not known.",
    );
    const half =
      "The amounts of resin and hardener are not both noted in one measure, so the ratio of the mix is not known.";
    expect([
      said({ hardener: undefined }),
      said({ resin: undefined }),
      said({ resin: { lot: "R-1", volume: ml("40.0") } }),
      said({ resin: undefined, hardener: { lot: "H-1", volume: ml("24.0") } }),
    ]).toEqual([half, half, half, half]);
    const noRatio = "The data sheet gives no usable ratio by mass, and none that its densities could turn into one.";
    expect(said({}, { byMass: { typed: "100 : 0", secondOverFirst: 0, tolerance: pc("5") } })).toBe(noRatio);
    expect(
      said(
        {},
        {
          byMass: undefined,
          byVolume: { typed: "5 : 3", secondOverFirst: 0.6, tolerance: pc("5") },
          density: { resin: { ...g("0"), value: 0 }, hardener: { ...g("0"), value: 0 } },
        },
      ),
    ).toBe(noRatio);
    const stepless = fileOf({ resin: { lot: "R-1", mass: { ...g("40"), step: 0 } }, scale: undefined });
    expect(sentence(stepless, "mix-doubt")).toBe(
      "The scale's reading step is not noted, so nothing shows how far the amounts can be trusted.",
    );
    expect(stepless.ratio).toHaveProperty("doubt", undefined);
  });

  it("hardly within the tolerance never reads as if it were on it", () => {
    expect(sentence(fileOf({ ...weigh("40.000", "20.992"), ...fine }), "mix-ratio")).toContain(
      "4.96 % too much hardener.",
    );
    expect(
      sentence(
        fileOf({ ...weigh("40.000", "20.992"), ...fine }, { byMass: { typed: "100 : 50", secondOverFirst: 0.5 } }),
        "mix-ratio",
      ),
    ).toContain("5.0 % too much hardener; the data sheet as entered gives no tolerance to hold that against.");
  });

  it("by volume is held to the sheet's ratio by volume, or by mass with its densities, and the other way round", () => {
    const poured = {
      resin: { lot: "R-1", volume: ml("40.0") },
      hardener: { lot: "H-1", volume: ml("24.0") },
      scale: ml("0.1"),
    };
    expect(fileOf(poured).ratio).toMatchObject({
      by: "volume",
      nominal: expect.closeTo(0.6, 12),
      error: expect.closeTo(0, 12),
    });
    expect(fileOf(poured).verdict).toBe("shown");
    const byVolume = { typed: "5 : 3", secondOverFirst: 0.6, tolerance: pc("5") };
    expect(fileOf(poured, { byVolume }).ratio?.nominal).toBe(0.6);
    expect(fileOf({}, { byMass: undefined, byVolume }).ratio?.nominal).toBeCloseTo(0.5, 12);
    expect(after("mix-ratio", poured, { density: undefined })).toEqual(["not shown", "unproven"]);
    expect(sentence(fileOf(poured), "mix-ratio")).toBe(
      "24.0 ml of hardener to 40.0 ml of resin is 0.600, and the sheet's 100 : 50 is 0.600, turned into a ratio by volume with the sheet's densities, on the ratio.",
    );
  });

  it("is told with the amounts as typed", () => {
    expect(sentence(fileOf(weigh("40.0", "22.0")), "mix-ratio")).toBe(
      "22.0 g of hardener to 40.0 g of resin is 0.550, and the sheet's 100 : 50 is 0.500, 10.0 % too much hardener; more than 5 %.",
    );
    expect(sentence(fileOf(weigh("40.0", "19.6")), "mix-ratio")).toBe(
      "19.6 g of hardener to 40.0 g of resin is 0.490, and the sheet's 100 : 50 is 0.500, 2.0 % too little hardener.",
    );
    expect(fileOf().findings[0]?.limit).toEqual({
      text: "hardener over resin 100 : 50, 5 %",
      from: { text: "Resorcin data sheet, revision 4", known: "record" },
    });
  });
});
