import { describe, expect, it } from "vitest";
import type { Ask, Asks, Batch, GlueUp, Noted } from "../../src/facts/types.ts";
import { DAY, lot, LOTS } from "./make.ts";
import { fileOf } from "./one-batch.ts";
import { celsius, g, min, mm, moment, pc, range } from "./quantities.ts";

type Said = Partial<GlueUp>;
const said = (own: Said): GlueUp => ({ drop: [], beaded: [], ...own });
const at = (time: string) => moment(DAY, time);
const about = (typed: string, least: number, most: number): Noted => ({
  typed,
  about: { least, most },
  unit: "",
  step: 0,
});
const between = (typed: string, least: number, most: number): Noted => ({ typed, least, most, unit: "", step: 0 });

/** Codes without their rule, how severe, and what was found of it. */
function answers(asks: Asks, glueUp?: Said, change: Partial<Batch> = {}) {
  const file = fileOf(
    { ...change, ...(glueUp && { glueUp: said(glueUp) }) },
    { asks },
    { lots: [...LOTS, lot("P-1", { material: "timber", adhesive: undefined, species: "Ash" })] },
  );
  return file.findings
    .filter(({ rule }) => rule === "glue-up")
    .map((one) => {
      const values = one.values as { found?: unknown; by?: string };
      return [one.code.replace("glue-up/", ""), one.severity, values.found];
    });
}
const asAsked = (found: unknown) => [["as-asked", "meets", found]];
const notAsAsked = (found: unknown) => [["not-as-asked", "rejects", found]];
const NOT_NOTED = [["not-noted", "unproven", undefined]];
const estimated = (typed: string) => [["estimate", "unproven", typed]];

const MIN = 60;
const QUANTITIES: { readonly [ask in Ask]?: Asks[ask] } = {
  preparedWithin: min("60"),
  openTime: min("15"),
  assemblyTime: min("25"),
  clamped: min("600"),
  mixing: min("3"),
  gap: mm("0.5"),
  moistureDifference: pc("2"),
  fillerMass: pc("5"),
  pressure: range("0.7 to 1.0 MPa", 0.7e6, 1e6),
  resin: range("18 to 30 °C", 18, 30),
};
const asking = (ask: Ask): Asks => ({ [ask]: QUANTITIES[ask] });

describe("A glue-up is held against what its sheet asks of a time", () => {
  const CASES: readonly (readonly [string, Ask, Said | undefined, Partial<Batch>, unknown])[] = [
    [
      "surfaces used in time to the last face",
      "preparedWithin",
      { prepared: at("13:20"), spreadTo: at("14:10") },
      {},
      asAsked({ seconds: 50 * MIN }),
    ],
    [
      "surfaces used in time to the closing",
      "preparedWithin",
      { prepared: at("13:20"), spread: at("14:00") },
      {},
      asAsked({ seconds: 60 * MIN }),
    ],
    [
      "surfaces that waited too long for the last face",
      "preparedWithin",
      { prepared: at("13:00"), spreadTo: at("14:01") },
      {},
      notAsAsked({ seconds: 61 * MIN }),
    ],
    [
      "surfaces that waited too long for the first face",
      "preparedWithin",
      { prepared: at("12:59"), spread: at("14:00") },
      {},
      notAsAsked({ seconds: 61 * MIN }),
    ],
    [
      "surfaces that waited too long for the mixing",
      "preparedWithin",
      { prepared: at("12:00") },
      {},
      notAsAsked({ seconds: 120 * MIN }),
    ],
    [
      "surfaces that may have waited too long",
      "preparedWithin",
      { prepared: at("13:10"), spread: at("14:00") },
      {},
      NOT_NOTED,
    ],
    ["surfaces of which nobody noted the time", "preparedWithin", { spread: at("14:05") }, {}, NOT_NOTED],
    [
      "surfaces prepared, it says, after they were spread",
      "preparedWithin",
      { prepared: at("14:30"), spreadTo: at("14:10") },
      {},
      NOT_NOTED,
    ],
    [
      "surfaces whose batch has no times",
      "preparedWithin",
      { prepared: at("13:10") },
      { mixed: undefined, closed: undefined },
      NOT_NOTED,
    ],
    ["a joint closed in time", "openTime", { spread: at("14:05") }, {}, asAsked({ seconds: 15 * MIN })],
    ["a joint closed late", "openTime", { spread: at("14:04") }, {}, notAsAsked({ seconds: 16 * MIN })],
    ["a joint closed at once", "openTime", { spread: at("14:20") }, {}, asAsked({ seconds: 0 })],
    ["a joint whose spreading nobody noted", "openTime", {}, {}, NOT_NOTED],
    ["a joint whose closing nobody noted", "openTime", { spread: at("14:05") }, { closed: undefined }, NOT_NOTED],
    [
      "clamps that were tight in time",
      "assemblyTime",
      { spread: at("14:05"), on: at("14:30") },
      {},
      asAsked({ seconds: 25 * MIN }),
    ],
    [
      "clamps that were tight late",
      "assemblyTime",
      { spread: at("14:05"), on: at("14:31") },
      {},
      notAsAsked({ seconds: 26 * MIN }),
    ],
    ["clamps of which only the end is noted", "assemblyTime", { on: at("14:31") }, {}, NOT_NOTED],
    [
      "clamps left on long enough",
      "clamped",
      { on: at("14:00"), off: moment("2025-03-11", "00:00") },
      {},
      asAsked({ seconds: 600 * MIN }),
    ],
    [
      "clamps taken off early",
      "clamped",
      { on: at("14:00"), off: at("23:59") },
      {},
      notAsAsked({ seconds: 599 * MIN }),
    ],
    ["clamps that may still be on", "clamped", { on: at("14:00") }, {}, NOT_NOTED],
    ["a mix stirred long enough", "mixing", { mixedFor: min("3") }, {}, asAsked({ typed: "3 min" })],
    ["a mix stirred too short", "mixing", { mixedFor: min("2") }, {}, notAsAsked({ typed: "2 min" })],
    [
      "a mix stirred for about long enough",
      "mixing",
      { mixedFor: about("about 4 min", 200, 280) },
      {},
      estimated("about 4 min"),
    ],
    [
      "a mix stirred for about too short",
      "mixing",
      { mixedFor: about("about 2 min", 60, 150) },
      {},
      notAsAsked({ typed: "about 2 min" }),
    ],
  ];
  it.each(CASES)("%s", (_, ask, glueUp, change, expected) => {
    expect(answers(asking(ask), glueUp, change)).toEqual(expected);
  });
});

describe("A glue-up is held against what its sheet asks of a measure", () => {
  const parts = (...all: readonly (readonly [string, Noted])[]) => all.map(([of, moisture]) => ({ lot: of, moisture }));
  const TWO = { timber: ["S-1", "P-1"] };
  const CASES: readonly (readonly [string, Ask, Said, Partial<Batch>, unknown])[] = [
    ["a gap that is small enough", "gap", { gap: mm("0.5") }, {}, asAsked({ typed: "0.5 mm" })],
    ["a gap that is too wide", "gap", { gap: mm("0.6") }, {}, notAsAsked({ typed: "0.6 mm" })],
    [
      "a gap of a range that reaches too far",
      "gap",
      { gap: between("0.3 to 0.6 mm", 0.0003, 0.0006) },
      {},
      notAsAsked({ typed: "0.3 to 0.6 mm" }),
    ],
    ["a gap that nobody measured", "gap", {}, {}, NOT_NOTED],
    [
      "pressure within",
      "pressure",
      { pressure: { typed: "0.8 MPa", value: 0.8e6, unit: "Pa", step: 1e5 } },
      {},
      asAsked({ typed: "0.8 MPa" }),
    ],
    [
      "pressure beyond",
      "pressure",
      { pressure: { typed: "1.2 MPa", value: 1.2e6, unit: "Pa", step: 1e5 } },
      {},
      notAsAsked({ typed: "1.2 MPa" }),
    ],
    ["resin warm enough", "resin", { resin: celsius("18") }, {}, asAsked({ typed: "18 °C" })],
    ["resin too cold", "resin", { resin: celsius("17") }, {}, notAsAsked({ typed: "17 °C" })],
    [
      "parts alike in moisture",
      "moistureDifference",
      { parts: parts(["S-1", pc("10")], ["P-1", pc("8")]) },
      TWO,
      asAsked({ share: expect.closeTo(0.02, 9) }),
    ],
    [
      "parts too unlike",
      "moistureDifference",
      { parts: parts(["S-1", pc("8")], ["P-1", pc("10.5")]) },
      TWO,
      notAsAsked({ share: expect.closeTo(0.025, 9) }),
    ],
    [
      "the ends of ranges that lie too far apart",
      "moistureDifference",
      { parts: parts(["S-1", between("8 to 9 %", 0.08, 0.09)], ["P-1", between("9 to 11 %", 0.09, 0.11)]) },
      TWO,
      notAsAsked({ share: expect.closeTo(0.03, 9) }),
    ],
    [
      "one wide range beside one reading within it",
      "moistureDifference",
      { parts: parts(["S-1", between("7 to 12 %", 0.07, 0.12)], ["P-1", pc("10")]) },
      TWO,
      notAsAsked({ share: expect.closeTo(0.03, 9) }),
    ],
    [
      "parts of which one is estimated to be alike",
      "moistureDifference",
      { parts: parts(["S-1", pc("10")], ["P-1", about("about 10 %", 0.095, 0.105)]) },
      TWO,
      estimated("about 10 %"),
    ],
    [
      "two parts that are both estimated to be alike",
      "moistureDifference",
      { parts: parts(["S-1", about("about 9 %", 0.085, 0.095)], ["P-1", about("about 10 %", 0.095, 0.105)]) },
      TWO,
      estimated("about 9 %, about 10 %"),
    ],
    [
      "parts of which one is estimated to be unlike",
      "moistureDifference",
      { parts: parts(["S-1", pc("6")], ["P-1", about("about 10 %", 0.095, 0.105)]) },
      TWO,
      notAsAsked({ share: expect.closeTo(0.045, 9) }),
    ],
    ["one part alone", "moistureDifference", { parts: parts(["S-1", pc("10")]) }, {}, NOT_NOTED],
    [
      "parts without one that was glued",
      "moistureDifference",
      { parts: parts(["S-1", pc("10")], ["S-1", pc("10")]) },
      TWO,
      NOT_NOTED,
    ],
    ["no part at all", "moistureDifference", {}, TWO, NOT_NOTED],
    [
      "little filler",
      "fillerMass",
      { filler: "microfibre", fillerMass: g("3.0") },
      {},
      asAsked({ share: expect.closeTo(0.05, 9) }),
    ],
    [
      "too much filler",
      "fillerMass",
      { filler: "microfibre", fillerMass: g("3.1") },
      {},
      notAsAsked({ share: expect.closeTo(0.0517, 4) }),
    ],
    ["no filler, as is said", "fillerMass", { filler: " None " }, {}, asAsked({ typed: " None " })],
    [
      "no filler, as is said, and some weighed",
      "fillerMass",
      { filler: "none", fillerMass: g("1.0") },
      {},
      asAsked({ share: expect.closeTo(1 / 60, 9) }),
    ],
    ["a filler that nobody weighed", "fillerMass", { filler: "microfibre" }, {}, NOT_NOTED],
    ["filler of which nothing is said", "fillerMass", {}, {}, NOT_NOTED],
    [
      "filler in a mix that nobody weighed",
      "fillerMass",
      { fillerMass: g("1.0") },
      { hardener: { lot: "H-1" } },
      NOT_NOTED,
    ],
    [
      "filler that is only estimated",
      "fillerMass",
      { fillerMass: about("about 2 g", 0.001, 0.0025) },
      {},
      estimated("about 2 g"),
    ],
    [
      "filler that is estimated at too much",
      "fillerMass",
      { fillerMass: about("about 3 g", 0.0025, 0.0035) },
      {},
      notAsAsked({ share: expect.closeTo(0.0583, 4) }),
    ],
    [
      "filler in a mix that is only estimated",
      "fillerMass",
      { fillerMass: g("1.0") },
      { resin: { lot: "R-1", mass: about("about 40 g", 0.035, 0.045) } },
      estimated("about 40 g"),
    ],
    [
      "filler in a mix of a range, by its least",
      "fillerMass",
      { fillerMass: g("3.0") },
      { resin: { lot: "R-1", mass: between("30 to 40 g", 0.03, 0.04) } },
      notAsAsked({ share: expect.closeTo(0.06, 9) }),
    ],
  ];
  it.each(CASES)("%s", (_, ask, glueUp, change, expected) => {
    expect(answers(asking(ask), glueUp, change)).toEqual(expected);
  });
});

describe("A glue-up is held against what its sheet asks to be done", () => {
  const CASES: readonly (readonly [string, Asks, Said | undefined, unknown])[] = [
    ["both faces spread", { faces: "both" }, { faces: "both" }, asAsked({ typed: "both" })],
    [
      "one face spread",
      { faces: "both" },
      { faces: "one" },
      [...notAsAsked({ typed: "one" }), ["one-face", "caution", undefined]],
    ],
    ["faces of which nothing is said", { faces: "both" }, {}, NOT_NOTED],
    ["nothing said at all", { faces: "both" }, undefined, NOT_NOTED],
    ["end grain coated twice", { endGrain: "twice" }, { endGrain: "twice" }, asAsked({ typed: "twice" })],
    ["end grain coated once", { endGrain: "twice" }, { endGrain: "once" }, notAsAsked({ typed: "once" })],
    ["staples pulled", { staples: "pulled" }, { staples: "pulled" }, asAsked({ typed: "pulled" })],
    ["staples left in", { staples: "pulled" }, { staples: "left" }, notAsAsked({ typed: "left" })],
    ["the cup scraped", { scraped: "yes" }, { scraped: "yes" }, asAsked({ typed: "yes" })],
    ["the cup not scraped", { scraped: "yes" }, { scraped: "no" }, notAsAsked({ typed: "no" })],
    ["a second cup", { secondCup: "yes" }, { secondCup: "yes" }, asAsked({ typed: "yes" })],
    ["no second cup", { secondCup: "yes" }, { secondCup: "no" }, notAsAsked({ typed: "no" })],
    [
      "squeezed out all along",
      { squeezeOut: "all along" },
      { squeezeOut: "all along" },
      asAsked({ typed: "all along" }),
    ],
    [
      "squeezed out in part",
      { squeezeOut: "all along" },
      { squeezeOut: "in part" },
      [...notAsAsked({ typed: "in part" }), ["little-squeezed", "caution", undefined]],
    ],
    [
      "squeezed out, and a dry spot seen",
      { squeezeOut: "all along" },
      { squeezeOut: "all along", drySpots: "at the root" },
      [...notAsAsked({ typed: "at the root" }), ["dry-spots", "unproven", undefined]],
    ],
    [
      "a filler that is among those",
      { fillers: ["Micro  fibre", "cotton"] },
      { filler: " micro FIBRE" },
      asAsked({ typed: " micro FIBRE" }),
    ],
    ["no filler, where some are allowed", { fillers: ["cotton"] }, { filler: "none" }, asAsked({ typed: "none" })],
    [
      "a filler that is not among those",
      { fillers: ["cotton"] },
      { filler: "microfibre" },
      notAsAsked({ typed: "microfibre" }),
    ],
    [
      "a filler of another name",
      { fillers: ["microfibre"] },
      { filler: "micro fibre" },
      notAsAsked({ typed: "micro fibre" }),
    ],
    ["a filler of which nothing is said", { fillers: ["cotton"] }, {}, NOT_NOTED],
  ];
  it.each(CASES)("%s", (_, asks, glueUp, expected) => {
    expect(answers(asks, glueUp)).toEqual(expected);
  });

  it("names what is asked as it is typed, in one list where it is several things", () => {
    const limits = (asks: Asks) =>
      fileOf({ glueUp: said({}) }, { asks })
        .findings.filter(({ rule }) => rule === "glue-up")
        .map(({ values }) => (values as { asked: string }).asked);
    expect(limits({ fillers: ["cotton", "microfibre"] })).toEqual(["cotton, microfibre"]);
    expect(limits({ gap: mm("0.5"), faces: "both" })).toEqual(["0.5 mm", "both"]);
  });

  it("is asked nothing by a sheet that leaves it open", () => {
    expect(answers({ faces: undefined }, { faces: "both" })).toEqual([]);
    expect(answers({}, { faces: "both" })).toEqual([]);
  });

  it("is not asked of a batch that is in no joint", () => {
    expect(answers({ faces: "both" }, {}, { joints: [] })).toEqual([]);
  });
});
