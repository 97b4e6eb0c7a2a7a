/** Each rule of a batch: holds, broken, missing, and exactly at its limit. The shop of make.ts is in order; one thing is changed at a time. */
import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import type { BatchFile } from "../../src/evidence/types.ts";
import type { Adhesive, Batch, Lot } from "../../src/record/types.ts";
import { adhesive, batch, DAY, entry, glued, lot, LOTS, type Made, test } from "./make.ts";
import { celsius, d, fahrenheit, g, ml, moment, pc, range } from "./quantities.ts";

function fileOf(change: Partial<Batch> = {}, sheet: Partial<Adhesive> = {}, made: Made = {}): BatchFile {
  const file = reckon(glued([batch("B-1", change)], [test("B-1/1")], { adhesives: [adhesive(sheet)], ...made })).batches.get("B-1");
  if (!file) throw new Error("no batch");
  return file;
}

const severities = (file: BatchFile, rule: string) => file.findings.filter((one) => one.rule === rule).map((one) => one.severity);
const sentence = (file: BatchFile, rule: string) => file.findings.find((one) => one.rule === rule)?.sentence;

/** Verdict and severities of one rule after one change. */
const after = (rule: string, change: Partial<Batch>, sheet?: Partial<Adhesive>, made?: Made) => {
  const file = fileOf(change, sheet, made);
  return [file.verdict, ...severities(file, rule)];
};

describe("A batch in order", () => {
  it("is accepted, and says so by every rule", () => {
    const file = fileOf();
    expect(file.verdict).toBe("accepted");
    expect(file.findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      "mix-ratio meets", "mix-doubt meets", "lot-known meets", "lot-known meets", "lot-known meets", "lot-in-date meets", "lot-in-date meets", "lot-recalled meets",
      "shop-temperature meets", "shop-humidity meets", "wood-moisture meets", "dew-point meets", "working-life meets", "test-pieces meets",
    ]);
  });
});

describe("Mix ratio", () => {
  const weigh = (resin: string, hardener: string): Partial<Batch> => ({ resin: { lot: "R-1", mass: g(resin) }, hardener: { lot: "H-1", mass: g(hardener) } });
  const fine = { scale: g("0.0001") };

  it("holds up to the tolerance and rejects beyond it, on both sides", () => {
    expect(after("mix-ratio", { ...weigh("40.000", "21.000"), ...fine })).toEqual(["unproven", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "20.999"), ...fine })).toEqual(["accepted", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "21.001"), ...fine })).toEqual(["rejected", "rejects"]);
    expect(after("mix-ratio", { ...weigh("40.000", "19.001"), ...fine })).toEqual(["accepted", "meets"]);
    expect(after("mix-ratio", { ...weigh("40.000", "18.999"), ...fine })).toEqual(["rejected", "rejects"]);
  });

  it("is unproven where the scale cannot show that it holds", () => {
    expect(after("mix-doubt", weigh("40.0", "20.9"))).toEqual(["accepted", "meets"]);
    const { error = 0, doubt = 0 } = fileOf(weigh("40.0", "20.9")).ratio ?? {};
    const within = (tolerance: number) => ({ byMass: { typed: "100 : 50", hardenerOverResin: 0.5, tolerance: { ...pc("5"), value: tolerance } } });
    expect(after("mix-doubt", weigh("40.0", "20.9"), within(error + doubt))).toEqual(["accepted", "meets"]);
    expect(after("mix-doubt", weigh("40.0", "20.9"), within(error + doubt - 1e-6))).toEqual(["unproven", "unproven"]);
    expect(after("mix-doubt", weigh("40.0", "19.1"), within(error + doubt - 1e-6))).toEqual(["accepted", "meets"]);
    expect(after("mix-doubt", weigh("40.0", "21.0"))).toEqual(["unproven", "unproven"]);
    expect(after("mix-doubt", { ...weigh("4.0", "2.0"), scale: g("1") })).toEqual(["unproven", "unproven"]);
    expect(sentence(fileOf({ ...weigh("4.0", "2.0"), scale: g("1") }), "mix-doubt")).toBe(
      "By the noted reading step of 1 g the scale alone leaves ±32.3 % of doubt, 32.3 % with the error; the scale is too coarse for so little: it could not show any mix to be within the limit.",
    );
  });

  it("takes the doubt as a share of the nominal ratio: 41 to 21.5 g by 0.1 g is 4.9 % off and ±0.3 %", () => {
    const { ratio } = fileOf(weigh("41.0", "21.5"));
    expect(ratio?.error).toBeCloseTo(0.048780, 6);
    expect(ratio?.doubt).toBeCloseTo((2 * (0.1 / Math.sqrt(12)) * Math.hypot(1 / 41, 1 / 21.5) * (21.5 / 41)) / 0.5, 9);
    expect(ratio?.tolerance).toBe(0.05);
  });

  it("reads the step from the coarser last digit where none is noted, and says so", () => {
    const file = fileOf({ ...weigh("4", "2.00"), scale: undefined });
    expect(file.verdict).toBe("unproven");
    expect(sentence(file, "mix-doubt")).toContain("By the last digit as typed, for want of a noted reading step");
    expect(after("mix-doubt", { ...weigh("40.0", "20.0"), scale: undefined })).toEqual(["accepted", "meets"]);
    expect(after("mix-doubt", { ...weigh("40.00", "2"), hardener: { lot: "H-1", mass: g("20") }, scale: undefined })).toEqual(["accepted", "meets"]);
    expect(fileOf({ ...weigh("40.00", "20"), scale: undefined }).ratio?.doubt).toBeCloseTo((2 / Math.sqrt(12)) * Math.hypot(1 / 40, 1 / 20), 9);
    const noStep = { ...g("20"), step: 0 };
    expect(after("mix-doubt", { hardener: { lot: "H-1", mass: noStep }, scale: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-doubt", { resin: { lot: "R-1", mass: { ...g("40"), step: 0 } }, scale: undefined })).toEqual(["unproven", "unproven"]);
  });

  it("takes no step of a measure for one of the scale", () => {
    expect(after("mix-doubt", { scale: ml("0.1") })).toEqual(["unproven", "unproven"]);
  });

  it("is unproven where an amount, the sheet's ratio or its tolerance is missing", () => {
    expect(after("mix-ratio", { resin: { lot: "R-1" } })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", { hardener: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", { resin: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", { resin: undefined, hardener: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", { resin: { lot: "R-1", volume: ml("40.0") }, hardener: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", { resin: { lot: "R-1", volume: ml("40") } })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", {}, { byMass: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", {}, { byMass: { typed: "100 : 50", hardenerOverResin: 0.5 } })).toEqual(["unproven", "unproven"]);
    expect(after("mix-ratio", weigh("0", "20.0"))).toEqual(["unproven", "unproven"]);
  });

  it("says what is missing: an amount, one measure for both, a ratio that can be used, a reading step", () => {
    const said = (change: Partial<Batch>, sheet?: Partial<Adhesive>) => sentence(fileOf(change, sheet), "mix-ratio");
    expect(said({ resin: { lot: "R-1" }, hardener: { lot: "H-1" } })).toBe("The amounts of resin and hardener are not noted, so the ratio of the mix is not known.");
    const half = "The amounts of resin and hardener are not both noted in one measure, so the ratio of the mix is not known.";
    expect([said({ hardener: undefined }), said({ resin: undefined }), said({ resin: { lot: "R-1", volume: ml("40.0") } }), said({ resin: undefined, hardener: { lot: "H-1", volume: ml("24.0") } })]).toEqual([half, half, half, half]);
    const noRatio = "The data sheet gives no usable ratio by mass, and none that its densities could turn into one.";
    expect(said({}, { byMass: { typed: "100 : 0", hardenerOverResin: 0, tolerance: pc("5") } })).toBe(noRatio);
    expect(said({}, { byMass: undefined, byVolume: { typed: "5 : 3", hardenerOverResin: 0.6, tolerance: pc("5") }, density: { resin: { ...g("0"), value: 0 }, hardener: { ...g("0"), value: 0 } } })).toBe(noRatio);
    const stepless = fileOf({ resin: { lot: "R-1", mass: { ...g("40"), step: 0 } }, scale: undefined });
    expect(sentence(stepless, "mix-doubt")).toBe("Neither the scale's reading step nor a last digit is noted, so nothing shows how far the amounts can be trusted.");
    expect(stepless.ratio).toHaveProperty("doubt", undefined);
  });

  it("hardly within the tolerance never reads as if it were on it", () => {
    expect(sentence(fileOf({ ...weigh("40.000", "20.992"), ...fine }), "mix-ratio")).toContain("4.96 % too much hardener.");
    expect(sentence(fileOf({ ...weigh("40.000", "20.992"), ...fine }, { byMass: { typed: "100 : 50", hardenerOverResin: 0.5 } }), "mix-ratio")).toContain("5.0 % too much hardener; the data sheet as entered gives no tolerance to hold that against.");
  });

  it("by volume is held to the sheet's ratio by volume, or by mass with its densities, and the other way round", () => {
    const poured = { resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") }, scale: ml("0.1") };
    expect(fileOf(poured).ratio).toMatchObject({ by: "volume", nominal: expect.closeTo(0.6, 12), error: expect.closeTo(0, 12) });
    expect(fileOf(poured).verdict).toBe("accepted");
    const byVolume = { typed: "5 : 3", hardenerOverResin: 0.6, tolerance: pc("5") };
    expect(fileOf(poured, { byVolume }).ratio?.nominal).toBe(0.6);
    expect(fileOf({}, { byMass: undefined, byVolume }).ratio?.nominal).toBeCloseTo(0.5, 12);
    expect(after("mix-ratio", poured, { density: undefined })).toEqual(["unproven", "unproven"]);
    expect(sentence(fileOf(poured), "mix-ratio")).toBe("24.0 ml of hardener to 40.0 ml of resin is 0.600, and the sheet's 100 : 50 is 0.600, turned into a ratio by volume with the sheet's densities, on the ratio.");
  });

  it("is told with the amounts as typed", () => {
    expect(sentence(fileOf(weigh("40.0", "22.0")), "mix-ratio")).toBe("22.0 g of hardener to 40.0 g of resin is 0.550, and the sheet's 100 : 50 is 0.500, 10.0 % too much hardener; more than 5 %.");
    expect(sentence(fileOf(weigh("40.0", "19.6")), "mix-ratio")).toBe("19.6 g of hardener to 40.0 g of resin is 0.490, and the sheet's 100 : 50 is 0.500, 2.0 % too little hardener.");
    expect(fileOf().findings[0]?.limit).toEqual({ text: "hardener over resin 100 : 50, 5 %", from: { text: "Resorcin data sheet, revision 4", known: "record" } });
  });
});

describe("Lots", () => {
  const dated = (change: Partial<Lot>): Made => ({ lots: [lot("R-1", change), ...LOTS.slice(1)] });

  it("of each component must be known", () => {
    expect(after("lot-known", { resin: { mass: g("40.0") } })).toEqual(["unproven", "unproven", "meets", "meets"]);
    expect(after("lot-known", { hardener: { mass: g("20.0") } })).toEqual(["unproven", "meets", "unproven", "meets"]);
    expect(after("lot-known", { timber: [] })).toEqual(["accepted", "meets", "meets", "caution"]);
    expect(after("lot-known", { timber: [], joints: [] })).toEqual(["accepted", "meets", "meets"]);
  });

  it("are named one by one", () => {
    const two: Made = { lots: [...LOTS, lot("P-1", { material: "plywood" })] };
    const saying = (file: BatchFile, rule: string) => file.findings.filter((one) => one.rule === rule).map((one) => one.sentence).at(-1);
    expect(saying(fileOf({ timber: ["S-1", "P-1"] }, {}, two), "lot-known")).toBe("The parts are of lots S-1 and P-1.");
    expect(saying(fileOf({ timber: ["S-1", "P-1"] }, {}, two), "lot-recalled")).toBe("None of the 4 lots noted is recalled.");
    const alone = { resin: { mass: g("40.0") }, hardener: { lot: "H-1", mass: g("20.0") }, timber: [] };
    expect(saying(fileOf(alone), "lot-recalled")).toBe("The lot noted is not recalled.");
    expect(saying(fileOf({ ...alone, hardener: { mass: g("20.0") } }), "lot-recalled")).toBeUndefined();
  });

  it("are good on the day they expire and not on the next", () => {
    expect(after("lot-in-date", {}, {}, dated({ expiry: DAY }))).toEqual(["accepted", "meets", "meets"]);
    expect(after("lot-in-date", {}, {}, dated({ expiry: "2025-03-09" }))).toEqual(["rejected", "rejects", "meets"]);
  });

  it("without an expiry date are good for the sheet's shelf life from the day received", () => {
    expect(after("lot-in-date", {}, { shelfLife: d("59") }, dated({ expiry: undefined, received: "2025-01-10" }))).toEqual(["accepted", "meets", "meets"]);
    expect(after("lot-in-date", {}, { shelfLife: d("58") }, dated({ expiry: undefined, received: "2025-01-10" }))).toEqual(["rejected", "rejects", "meets"]);
    expect(after("lot-in-date", {}, { shelfLife: d("1") }, dated({ expiry: "2026-01-01" }))).toEqual(["accepted", "meets", "meets"]);
    expect(after("lot-in-date", {}, { shelfLife: undefined }, dated({ expiry: undefined }))).toEqual(["unproven", "unproven", "meets"]);
  });

  it("that are recalled are shown on the batch and change nothing found of it", () => {
    const recalls = ["R-1", "S-1"].map((id) => ({ place: { file: "", line: 1, column: 1 }, entry: "2025-04-01-recall", day: "2025-04-01", lot: id, why: "mislabelled" }));
    const file = fileOf({}, {}, { entries: [entry("2025-04-01-recall", { recalls })] });
    expect([file.verdict, ...severities(file, "lot-recalled")]).toEqual(["accepted", "caution", "caution"]);
    expect(file.recalls).toEqual(recalls);
    expect(sentence(file, "lot-recalled")).toBe("Lot R-1 was recalled on 2025-04-01: mislabelled.");
    expect(file.findings.find((one) => one.rule === "lot-recalled")?.restsOn).toContainEqual({ kind: "entry", id: "2025-04-01-recall" });
  });
});

describe("The climate of the shop", () => {
  it("must be as warm as the sheet asks, its ends included", () => {
    const at = (t: string) => after("shop-temperature", { temperature: celsius(t), surface: celsius(t), moisture: pc("10"), mixed: moment(DAY, "14:10"), closed: moment(DAY, "14:20") }, { workingLife: [{ temperature: celsius("40"), mass: g("100"), time: d("1") }] });
    expect(["14.9", "15.0", "30.0", "30.1"].map(at)).toEqual([["rejected", "rejects"], ["accepted", "meets"], ["accepted", "meets"], ["rejected", "rejects"]]);
    expect(after("shop-temperature", { temperature: fahrenheit("59") })).toEqual(["accepted", "meets"]);
    expect(after("shop-temperature", { temperature: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("shop-temperature", {}, { temperature: undefined })).toEqual(["accepted", "caution"]);
    expect(after("shop-temperature", { temperature: undefined }, { temperature: undefined })).toEqual(["unproven", "unproven"]);
    expect(sentence(fileOf({ temperature: celsius("14.9") }), "shop-temperature")).toBe("The shop was at 14.9 °C; the sheet asks 15 °C to 30 °C.");
  });

  it("must be as dry as the sheet asks, where it asks", () => {
    expect(after("shop-humidity", { humidity: pc("70") })).toEqual(["accepted", "meets"]);
    expect(after("shop-humidity", { humidity: pc("71") })).toEqual(["rejected", "rejects"]);
    expect(after("shop-humidity", { humidity: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("shop-humidity", { humidity: undefined }, { humidity: undefined })).toEqual(["accepted", "caution"]);
    expect(after("shop-humidity", { humidity: pc("90") }, { humidity: undefined })).toEqual(["accepted", "caution"]);
  });

  it("less than 3 K from the dew point is a caution", () => {
    const dew = fileOf().dewPoint ?? 0;
    const at = (above: number) => after("dew-point", { surface: { typed: "x", value: dew + above, unit: "°C", step: 0.1 } });
    expect([3, 2.99, -1].map(at)).toEqual([["accepted", "meets"], ["accepted", "caution"], ["accepted", "caution"]]);
    expect(after("dew-point", { surface: undefined })).toEqual(["accepted", "meets"]);
    expect(after("dew-point", { surface: undefined, humidity: pc("69"), temperature: celsius("20") })).toEqual(["accepted", "meets"]);
    expect(after("dew-point", { humidity: undefined }, { humidity: undefined })).toEqual(["accepted"]);
    expect(sentence(fileOf({ surface: celsius("11") }), "dew-point")).toBe("The dew point was 9.3 °C and the surfaces were at 11 °C, 1.7 K from it: water may have settled on them.");
    expect(sentence(fileOf({ surface: undefined }), "dew-point")).toContain("the shop, for want of a reading of the surfaces, was at 20 °C");
  });
});

describe("Moisture of the wood", () => {
  it("by meter lies within the sheet's range, its ends included", () => {
    const at = (m: string) => after("wood-moisture", { moisture: pc(m) });
    expect(["7.9", "8.0", "12.0", "12.1"].map(at)).toEqual([["rejected", "rejects"], ["accepted", "meets"], ["accepted", "meets"], ["rejected", "rejects"]]);
    expect(after("wood-moisture", { moisture: pc("14") }, { woodMoisture: range("6 % to 15 %", 0.06, 0.15) })).toEqual(["accepted", "meets"]);
  });

  it("is held to 8 to 12 % of FAA-H-8083-31, chapter 6, where the sheet is silent", () => {
    const at = (m: string) => after("wood-moisture", { moisture: pc(m) }, { woodMoisture: undefined });
    expect(["7.9", "8.0", "12.0", "12.1"].map(at)).toEqual([["rejected", "rejects"], ["accepted", "meets"], ["accepted", "meets"], ["rejected", "rejects"]]);
    expect(fileOf({}, { woodMoisture: undefined }).findings.find((one) => one.rule === "wood-moisture")?.limit?.from).toMatchObject({ text: expect.stringContaining("FAA-H-8083-31"), known: "seen" });
  });

  it("without a reading is estimated from the climate: in range a caution, out of range or without a climate unproven", () => {
    const none = { moisture: undefined };
    const open = { humidity: undefined };
    expect(after("wood-moisture", none)).toEqual(["accepted", "caution"]);
    expect(after("wood-moisture", { ...none, humidity: pc("30") })).toEqual(["unproven", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: pc("70") })).toEqual(["unproven", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: undefined }, open)).toEqual(["unproven", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: pc("99") }, open)).toEqual(["unproven", "unproven"]);
    expect(sentence(fileOf(none), "wood-moisture")).toBe("No meter reading of the wood is noted; at 20 °C and 50 % wood settles at about 9.3 % (an estimate, for wood that has had time).");
    expect(fileOf(none).moistureEstimate).toBeCloseTo(0.0927, 3);
    expect(sentence(fileOf({ ...none, humidity: pc("99") }, open), "wood-moisture")).toBe("No meter reading of the wood is noted, and at 20 °C and 99 % none can be estimated.");
    expect(sentence(fileOf({ ...none, humidity: pc("30") }), "wood-moisture")).toMatch(/ wood settles at about 6\.\d % \(an estimate, for wood that has had time\), below 8 % to 12 %\.$/u);
    expect(sentence(fileOf({ ...none, humidity: undefined }, open), "wood-moisture")).toBe("No meter reading of the wood is noted, and no temperature and humidity to estimate one from.");
  });
});

describe("Working life", () => {
  const closed = (time: string): Partial<Batch> => ({ closed: moment(DAY, time) });

  it("may be used up to its last minute and not beyond", () => {
    expect(after("working-life", closed("14:30"))).toEqual(["accepted", "meets"]);
    expect(after("working-life", closed("14:31"))).toEqual(["rejected", "rejects"]);
    expect(sentence(fileOf(closed("14:31")), "working-life")).toBe("Mixed at 14:00 and closed at 14:31: 31 min, more than 30 min.");
    expect(sentence(fileOf(closed("14:30")), "working-life")).toBe("Mixed at 14:00 and closed at 14:30: 30 min of 30 min.");
    expect(fileOf().findings.find((one) => one.rule === "working-life")?.limit).toEqual({ text: "closed within 30 min, as for 100 g at 25 °C", from: { text: "Resorcin data sheet, revision 4", known: "record" } });
  });

  it("is that of the row at least so warm and so much, the mass being that of both components", () => {
    const much = (resin: string, hardener: string) => ({ ...closed("14:25"), resin: { lot: "R-1", mass: g(resin) }, hardener: { lot: "H-1", mass: g(hardener) } });
    expect(fileOf(much("66.6", "33.4")).workingLife).toBe(1800);
    expect(after("working-life", much("66.8", "33.4"))).toEqual(["rejected", "rejects"]);
    expect(after("working-life", much("201", "100"))).toEqual(["unproven", "unproven"]);
    expect(after("working-life", { temperature: celsius("26"), surface: celsius("26") })).toEqual(["unproven", "unproven"]);
    expect(fileOf({ resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } }).workingLife).toBe(1800);
    expect(fileOf({ resin: { lot: "R-1", volume: ml("60.0") }, hardener: { lot: "H-1", volume: ml("36.0") } }).workingLife).toBe(1200);
  });

  it("may be as short as the minute in which it was mixed", () => {
    expect(after("working-life", closed("14:00"))).toEqual(["accepted", "meets"]);
    expect(sentence(fileOf(closed("14:00")), "working-life")).toBe("Mixed at 14:00 and closed at 14:00: 0 min of 30 min.");
  });

  it("says what is missing", () => {
    const said = (change: Partial<Batch>, sheet?: Partial<Adhesive>) => sentence(fileOf(change, sheet), "working-life");
    expect(said({ mixed: undefined })).toBe("When it was mixed is not noted, so the time it stood is not known.");
    expect(said({ closed: undefined })).toBe("When the joint was closed is not noted, so the time it stood is not known.");
    expect(said({ mixed: undefined, closed: undefined })).toBe("Neither when it was mixed nor when the joint was closed is noted, so the time it stood is not known.");
    const poured = { resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } };
    expect(said(poured, { density: undefined })).toBe("Mixed at 14:00 and closed at 14:20, 20 min; the mass of the mix is not known, so no working life can be looked up.");
    expect(said({ temperature: undefined })).toBe("Mixed at 14:00 and closed at 14:20, 20 min; without a temperature no working life can be looked up.");
    expect(said({}, { workingLife: [] })).toBe("Mixed at 14:00 and closed at 14:20, 20 min; the data sheet gives no working life for 60.0 g at 20 °C.");
  });

  it("is unproven where a time, the warmth or the mass is missing, or the times run backwards", () => {
    expect(after("working-life", { mixed: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("working-life", { closed: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("working-life", { temperature: undefined })).toEqual(["unproven", "unproven"]);
    expect(after("working-life", closed("13:59"))).toEqual(["unproven", "unproven"]);
    expect(after("working-life", {}, { workingLife: [] })).toEqual(["unproven", "unproven"]);
    const poured = { resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } };
    expect(after("working-life", poured, { density: undefined, byVolume: { typed: "5 : 3", hardenerOverResin: 0.6, tolerance: pc("5") } })).toEqual(["unproven", "unproven"]);
  });
});
