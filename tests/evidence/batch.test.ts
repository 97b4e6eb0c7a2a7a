/** Each rule of a batch: holds, broken, missing, and exactly at its limit. The shop of make.ts is in order; one thing is changed at a time. */
import { describe, expect, it } from "vitest";
import type { SaidBatch } from "./reckoned.ts";
import type { Adhesive, Batch, Lot } from "../../src/facts/types.ts";
import { DAY, entry, lot, LOTS, type Made } from "./make.ts";
import { fileOf, severities, sentence, after } from "./one-batch.ts";
import { celsius, d, fahrenheit, g, ml, moment, pc, range } from "./quantities.ts";

describe("A batch in order", () => {
  it("is accepted, and says so by every rule", () => {
    const file = fileOf();
    expect(file.verdict).toBe("shown");
    expect(file.findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      "mix-ratio meets",
      "mix-doubt meets",
      "lot-known meets",
      "lot-known meets",
      "lot-known meets",
      "lot-in-date meets",
      "lot-in-date meets",
      "lot-recalled meets",
      "timber-grade caution",
      "shop-temperature meets",
      "shop-humidity meets",
      "wood-moisture meets",
      "dew-point meets",
      "working-life meets",
      "cure-temperature caution",
      "test-pieces meets",
      "sample-wood meets",
    ]);
  });
});

describe("Lots", () => {
  const dated = (change: Partial<Lot>): Made => ({ lots: [lot("R-1", change), ...LOTS.slice(1)] });

  it("of each component must be known", () => {
    expect(after("lot-known", { resin: { mass: g("40.0") } })).toEqual(["not shown", "unproven", "meets", "meets"]);
    expect(after("lot-known", { hardener: { mass: g("20.0") } })).toEqual(["not shown", "meets", "unproven", "meets"]);
    expect(after("lot-known", { timber: [] })).toEqual(["not shown", "meets", "meets", "caution"]);
    expect(after("lot-known", { timber: [], joints: [] })).toEqual(["in no joint", "meets", "meets"]);
  });

  it("are named one by one", () => {
    const two: Made = { lots: [...LOTS, lot("P-1", { material: "plywood" })] };
    const saying = (file: SaidBatch, rule: string) =>
      file.findings
        .filter((one) => one.rule === rule)
        .map((one) => one.sentence)
        .at(-1);
    expect(saying(fileOf({ timber: ["S-1", "P-1"] }, {}, two), "lot-known")).toBe("The parts are of lots S-1 and P-1.");
    expect(saying(fileOf({ timber: ["S-1", "P-1"] }, {}, two), "lot-recalled")).toBe(
      "None of the 4 lots noted is recalled.",
    );
    const alone = { resin: { mass: g("40.0") }, hardener: { lot: "H-1", mass: g("20.0") }, timber: [] };
    expect(saying(fileOf(alone), "lot-recalled")).toBe("The lot noted is not recalled.");
    expect(saying(fileOf({ ...alone, hardener: { mass: g("20.0") } }), "lot-recalled")).toBeUndefined();
  });

  it("are good on the day they expire and not on the next", () => {
    expect(after("lot-in-date", {}, {}, dated({ expiry: DAY }))).toEqual(["shown", "meets", "meets"]);
    expect(after("lot-in-date", {}, {}, dated({ expiry: "2025-03-09" }))).toEqual(["rejected", "rejects", "meets"]);
  });

  it("without an expiry date are good for the sheet's shelf life from the day received", () => {
    expect(
      after("lot-in-date", {}, { shelfLife: d("59") }, dated({ expiry: undefined, received: "2025-01-10" })),
    ).toEqual(["shown", "meets", "meets"]);
    expect(
      after("lot-in-date", {}, { shelfLife: d("58") }, dated({ expiry: undefined, received: "2025-01-10" })),
    ).toEqual(["rejected", "rejects", "meets"]);
    expect(after("lot-in-date", {}, { shelfLife: d("1") }, dated({ expiry: "2026-01-01" }))).toEqual([
      "shown",
      "meets",
      "meets",
    ]);
    expect(after("lot-in-date", {}, { shelfLife: undefined }, dated({ expiry: undefined }))).toEqual([
      "not shown",
      "unproven",
      "meets",
    ]);
  });

  it("that are recalled are shown on the batch and change nothing found of it", () => {
    const recalls = ["R-1", "S-1"].map((id) => ({
      place: { file: "", line: 1, column: 1 },
      entry: "2025-04-01-recall",
      day: "2025-04-01",
      lot: id,
      why: "mislabelled",
    }));
    const file = fileOf({}, {}, { entries: [entry("2025-04-01-recall", { recalls })] });
    expect([file.verdict, ...severities(file, "lot-recalled")]).toEqual(["shown", "caution", "caution"]);
    expect(file.recalls).toEqual(recalls);
    expect(sentence(file, "lot-recalled")).toBe("Lot R-1 was recalled on 1 April 2025: mislabelled.");
    expect(file.findings.find((one) => one.rule === "lot-recalled")?.restsOn).toContainEqual({
      kind: "entry",
      id: "2025-04-01-recall",
    });
  });
});

describe("The climate of the shop", () => {
  it("must be as warm as the sheet asks, its ends included", () => {
    const at = (t: string) =>
      after(
        "shop-temperature",
        {
          temperature: celsius(t),
          surface: undefined,
          moisture: pc("10"),
          mixed: moment(DAY, "14:10"),
          closed: moment(DAY, "14:20"),
        },
        { workingLife: [{ temperature: celsius("40"), mass: g("100"), time: d("1") }] },
      );
    expect(["14.9", "15.0", "30.0", "30.1"].map(at)).toEqual([
      ["rejected", "rejects"],
      ["shown", "meets"],
      ["shown", "meets"],
      ["rejected", "rejects"],
    ]);
    expect(after("shop-temperature", { temperature: fahrenheit("59") })).toEqual(["shown", "meets"]);
    expect(after("shop-temperature", { temperature: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("shop-temperature", {}, { temperature: undefined })).toEqual(["shown", "caution"]);
    expect(after("shop-temperature", { temperature: undefined }, { temperature: undefined })).toEqual([
      "not shown",
      "unproven",
    ]);
    expect(sentence(fileOf({ temperature: celsius("14.9") }), "shop-temperature")).toBe(
      "The shop was at 14.9 °C; the sheet asks 15 °C to 30 °C.",
    );
  });

  it("must be as dry as the sheet asks, where it asks", () => {
    expect(after("shop-humidity", { humidity: pc("70") })).toEqual(["shown", "meets"]);
    expect(after("shop-humidity", { humidity: pc("71") })).toEqual(["rejected", "rejects"]);
    expect(after("shop-humidity", { humidity: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("shop-humidity", { humidity: undefined }, { humidity: undefined })).toEqual(["shown", "caution"]);
    expect(after("shop-humidity", { humidity: pc("90") }, { humidity: undefined })).toEqual(["shown", "caution"]);
  });

  it("less than 3 K from the dew point is a caution", () => {
    const dew = fileOf().dewPoint ?? 0;
    const at = (above: number) =>
      after(
        "dew-point",
        { surface: { typed: "x", value: dew + above, unit: "°C", step: 0.1 } },
        { temperature: undefined },
      );
    expect([3, 2.99, -1].map(at)).toEqual([
      ["shown", "meets"],
      ["shown", "caution"],
      ["shown", "caution"],
    ]);
    expect(after("dew-point", { surface: undefined })).toEqual(["shown", "meets"]);
    expect(after("dew-point", { surface: undefined, humidity: pc("69"), temperature: celsius("20") })).toEqual([
      "shown",
      "meets",
    ]);
    expect(after("dew-point", { humidity: undefined }, { humidity: undefined })).toEqual(["shown"]);
    expect(sentence(fileOf({ surface: celsius("11") }), "dew-point")).toBe(
      "The dew point was 9.3 °C and the surfaces were at 11 °C, 1.7 K from it: water may have settled on them.",
    );
    expect(sentence(fileOf({ surface: undefined }), "dew-point")).toContain(
      "the shop, for want of a reading of the surfaces, was at 20 °C",
    );
  });
});

describe("Moisture of the wood", () => {
  it("by meter lies within the sheet's range, its ends included", () => {
    const at = (m: string) => after("wood-moisture", { moisture: pc(m) });
    expect(["7.9", "8.0", "12.0", "12.1"].map(at)).toEqual([
      ["rejected", "rejects"],
      ["shown", "meets"],
      ["shown", "meets"],
      ["rejected", "rejects"],
    ]);
    expect(after("wood-moisture", { moisture: pc("14") }, { woodMoisture: range("6 % to 15 %", 0.06, 0.15) })).toEqual([
      "shown",
      "meets",
    ]);
  });

  it("is held to 8 to 12 % of FAA-H-8083-31, chapter 6, where the sheet is silent", () => {
    const at = (m: string) => after("wood-moisture", { moisture: pc(m) }, { woodMoisture: undefined });
    expect(["7.9", "8.0", "12.0", "12.1"].map(at)).toEqual([
      ["rejected", "rejects"],
      ["shown", "meets"],
      ["shown", "meets"],
      ["rejected", "rejects"],
    ]);
    expect(
      fileOf({}, { woodMoisture: undefined }).findings.find((one) => one.rule === "wood-moisture")?.limit?.from,
    ).toMatchObject({ text: expect.stringContaining("FAA-H-8083-31"), known: "seen" });
  });

  it("without a reading is estimated from the air of the moment, which proves nothing of it, in range or out of it", () => {
    const none = { moisture: undefined };
    const open = { humidity: undefined };
    expect(after("wood-moisture", none)).toEqual(["not shown", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: pc("30") })).toEqual(["not shown", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: pc("70") })).toEqual(["not shown", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: undefined }, open)).toEqual(["not shown", "unproven"]);
    expect(after("wood-moisture", { ...none, humidity: pc("99") }, open)).toEqual(["not shown", "unproven"]);
    expect(sentence(fileOf(none), "wood-moisture")).toBe(
      "No meter reading of the wood is noted; at 20 °C and 50 % wood settles at about 9.3 % (an estimate, for wood that has had time); the air of one moment shows nothing of the wood.",
    );
    expect(fileOf(none).moistureEstimate).toBeCloseTo(0.0927, 3);
    expect(sentence(fileOf({ ...none, humidity: pc("99") }, open), "wood-moisture")).toBe(
      "No meter reading of the wood is noted, and at 20 °C and 99 % none can be estimated.",
    );
    expect(sentence(fileOf({ ...none, humidity: pc("30") }), "wood-moisture")).toMatch(
      / wood settles at about 6\.\d % \(an estimate, for wood that has had time\), below 8 % to 12 %\.$/u,
    );
    expect(sentence(fileOf({ ...none, humidity: undefined }, open), "wood-moisture")).toBe(
      "No meter reading of the wood is noted, and no temperature and humidity to estimate one from.",
    );
  });
});

describe("Working life", () => {
  const closed = (time: string): Partial<Batch> => ({ closed: moment(DAY, time) });

  it("may be used up to its last minute and not beyond", () => {
    expect(after("working-life", closed("14:30"))).toEqual(["shown", "meets"]);
    expect(after("working-life", closed("14:31"))).toEqual(["rejected", "rejects"]);
    expect(sentence(fileOf(closed("14:31")), "working-life")).toBe(
      "Mixed at 14:00 and closed at 14:31: 31 min, more than 30 min.",
    );
    expect(sentence(fileOf(closed("14:30")), "working-life")).toBe(
      "Mixed at 14:00 and closed at 14:30: 30 min of 30 min.",
    );
    expect(fileOf().findings.find((one) => one.rule === "working-life")?.limit).toEqual({
      text: "closed within 30 min, as for 100 g at 25 °C",
      from: { text: "Resorcin data sheet, revision 4", known: "record" },
    });
  });

  it("is that of the row at least so warm and so much, the mass being that of both components", () => {
    const much = (resin: string, hardener: string) => ({
      ...closed("14:25"),
      resin: { lot: "R-1", mass: g(resin) },
      hardener: { lot: "H-1", mass: g(hardener) },
    });
    expect(fileOf(much("66.6", "33.4")).workingLife).toBe(1800);
    expect(after("working-life", much("66.8", "33.4"))).toEqual(["rejected", "rejects"]);
    expect(after("working-life", much("201", "100"))).toEqual(["not shown", "unproven"]);
    expect(after("working-life", { temperature: celsius("26"), surface: celsius("26") })).toEqual([
      "not shown",
      "unproven",
    ]);
    expect(
      fileOf({ resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } }).workingLife,
    ).toBe(1800);
    expect(
      fileOf({ resin: { lot: "R-1", volume: ml("60.0") }, hardener: { lot: "H-1", volume: ml("36.0") } }).workingLife,
    ).toBe(1200);
  });

  it("may be as short as the minute in which it was mixed", () => {
    expect(after("working-life", closed("14:00"))).toEqual(["shown", "meets"]);
    expect(sentence(fileOf(closed("13:59")), "working-life")).toBe(
      "Mixed at 14:00 and closed at 13:59: closed before it was mixed.",
    );
    expect(sentence(fileOf(closed("14:00")), "working-life")).toBe(
      "Mixed at 14:00 and closed at 14:00: less than a minute of 30 min.",
    );
  });

  it("says what is missing", () => {
    const said = (change: Partial<Batch>, sheet?: Partial<Adhesive>) => sentence(fileOf(change, sheet), "working-life");
    expect(said({ mixed: undefined })).toBe("When it was mixed is not noted, so the time it stood is not known.");
    expect(said({ closed: undefined })).toBe(
      "When the joint was closed is not noted, so the time it stood is not known.",
    );
    expect(said({ mixed: undefined, closed: undefined })).toBe(
      "Neither when it was mixed nor when the joint was closed is noted, so the time it stood is not known.",
    );
    const poured = { resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } };
    expect(said(poured, { density: undefined })).toBe(
      "Mixed at 14:00 and closed at 14:20, 20 min; the mass of the mix is not known, so no working life can be looked up.",
    );
    expect(said({ temperature: undefined })).toBe(
      "Mixed at 14:00 and closed at 14:20, 20 min; without a temperature no working life can be looked up.",
    );
    expect(said({}, { workingLife: [] })).toBe(
      "Mixed at 14:00 and closed at 14:20, 20 min; the data sheet gives no working life for 60.0 g at 20 °C.",
    );
  });

  it("is unproven where a time, the warmth or the mass is missing, or the times run backwards", () => {
    expect(after("working-life", { mixed: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("working-life", { closed: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("working-life", { temperature: undefined })).toEqual(["not shown", "unproven"]);
    expect(after("working-life", closed("13:59"))).toEqual(["not shown", "unproven"]);
    expect(after("working-life", {}, { workingLife: [] })).toEqual(["not shown", "unproven"]);
    const poured = { resin: { lot: "R-1", volume: ml("40.0") }, hardener: { lot: "H-1", volume: ml("24.0") } };
    expect(
      after("working-life", poured, {
        density: undefined,
        byVolume: { typed: "5 : 3", secondOverFirst: 0.6, tolerance: pc("5") },
      }),
    ).toEqual(["not shown", "unproven"]);
  });
});

describe("A batch that went into no joint", () => {
  it("is asked nothing, and is told apart from one that was thrown away", () => {
    const loose = { joints: [], pieces: [] };
    expect(fileOf(loose).verdict).toBe("in no joint");
    expect(fileOf({ ...loose, discarded: "It went hot" }).verdict).toBe("thrown away");
  });

  it("is no such batch where it is in one, whatever is said of its end", () => {
    expect(fileOf({ discarded: "It went hot" }).verdict).toBe("shown");
  });
});
