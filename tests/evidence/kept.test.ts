/** How lots were kept and how warm glue has been since: from when to when that is asked, and what the answer rests on. */
import { describe, expect, it } from "vitest";
import { lotStorage, serviceHeat } from "../../src/evidence/batch/storage.ts";
import type { Adhesive, Batch, ClimateLog, Lot } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, DAY, entry, lot } from "./make.ts";
import { type About, asked, caseOf } from "./one-rule.ts";
import { celsius, moment, range } from "./quantities.ts";

const SHEET = { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" }, known: "record" };
const lots = (change: Partial<Lot> = {}) => [
  lot("R-1", { received: "2025-03-09", ...change }),
  lot("H-1", { material: "hardener", received: "2025-03-09" }),
  lot("S-1", { material: "timber", adhesive: undefined }),
];
/** 20 °C from 9 March on, but for one hour of the day counted from there. */
const shop = (at = -1, warmth = 20, hours = 24 * 30): ClimateLog[] => [
  log("shop", "2025-03-09", hours, (hour) => ({ temperature: hour === at ? warmth : 20 })),
];
const END = [entry("2025-03-20-middle"), entry("2025-04-01-end")];

describe("How a lot was kept", () => {
  const STORAGE = range("10 °C to 25 °C", 10, 25);
  const about = (change: Partial<Batch>, more: Partial<About> = {}, storage = STORAGE): About => ({
    batch: { hardener: undefined, ...change },
    adhesives: [adhesive({ storage })],
    lots: lots(),
    climate: shop(),
    ...more,
  });
  const of = (...all: Parameters<typeof about>) => asked(lotStorage, about(...all));
  const kept = (least: number, greatest: number) => [
    "meets lot-storage/kept",
    { lot: "R-1", least, greatest },
    ["lot R-1", "climate log shop"],
  ];
  const outside = (where: string, found: number, limit: number) => [
    "caution lot-storage/outside",
    { lot: "R-1", where, found, limit },
    ["lot R-1", "climate log shop"],
  ];

  it("is asked from the day it came until it was mixed, else closed, and rests on lot and log", () => {
    expect(of({})).toEqual([kept(20, 20)]);
    expect(of({}, { climate: shop(38, 9) })).toEqual([outside("below", 9, 10)]);
    expect(of({ closed: moment(DAY, "20:00") }, { climate: shop(43, 9) })).toEqual([kept(20, 20)]);
    expect(of({ mixed: undefined, closed: moment(DAY, "20:00") }, { climate: shop(43, 9) })).toEqual([
      outside("below", 9, 10),
    ]);
    expect(of({}, { climate: shop(12, 26) })).toEqual([outside("above", 26, 25)]);
  });

  it("is held against what the sheet says, of one end alone too", () => {
    const cold = { climate: shop(12, 5) };
    const hot = { climate: shop(12, 35) };
    const [least, most] = [range("at least 10 °C", 10), range("at most 25 °C", undefined, 25)];
    expect([of({}, cold, least), of({}, cold, most)]).toEqual([[outside("below", 5, 10)], [kept(5, 20)]]);
    expect([of({}, hot, least), of({}, hot, most)]).toEqual([[kept(20, 35)], [outside("above", 35, 25)]]);
  });

  it("is not known where it was logged at no time between, and in part where it was at some", () => {
    const unknown = ["caution lot-storage/not-known", { lot: "R-1" }, ["lot R-1"]];
    expect(of({}, { climate: [] })).toEqual([unknown]);
    expect(of({}, { lots: lots({ received: "2025-03-12" }) })).toEqual([unknown]);
    expect(of({}, { lots: lots({ received: DAY }) })).toEqual([kept(20, 20)]);
    expect(of({}, { climate: shop(-1, 20, 12) })).toEqual([
      ["caution lot-storage/kept-in-part", { lot: "R-1", least: 20, greatest: 20 }, ["lot R-1", "climate log shop"]],
    ]);
  });

  it("is asked of each lot that is noted, of no batch in no joint, and names the sheet", () => {
    expect(of({ resin: undefined })).toEqual([]);
    expect(of({ joints: [] })).toEqual([]);
    expect(of({ hardener: { lot: "H-1" } }).map((one) => one.slice(0, 2))).toEqual(
      ["R-1", "H-1"].map((id) => ["meets lot-storage/kept", { lot: id, least: 20, greatest: 20 }]),
    );
    const limit = { code: "limit/storage", values: { asked: "10 °C to 25 °C" }, from: SHEET };
    for (const climate of [[], shop(), shop(12, 5), shop(12, 35), shop(-1, 20, 12)])
      expect(lotStorage(caseOf(about({}, { climate })))[0]?.limit).toEqual(limit);
  });
});

describe("Heat since a batch was closed", () => {
  const about = (climate: readonly ClimateLog[], change: Partial<Batch> = {}, more: Partial<Adhesive> = {}): About => ({
    batch: change,
    adhesives: [adhesive({ service: celsius("40"), ...more })],
    lots: lots(),
    entries: END,
    climate,
  });
  const of = (...all: Parameters<typeof about>) => asked(serviceHeat, about(...all));
  const below = (greatest: number) => ["meets service-heat/below", { greatest, asked: "40 °C" }, ["climate log shop"]];
  /** Hours from 9 March on: closed at 38:20, 20 March begins at 264, 1 April at 552. */
  const above = ["caution service-heat/above", { greatest: 41, asked: "40 °C", limit: 40 }, ["climate log shop"]];

  it("is asked up to the day of the record's last entry, and names the sheet", () => {
    expect(of(shop())).toEqual([below(20)]);
    expect(of(shop(300, 40))).toEqual([below(40)]);
    expect(of(shop(300, 41))).toEqual([above]);
    expect(of(shop(39, 41))).toEqual([above]);
    expect(of(shop(37, 41))).toEqual([below(20)]);
    expect(of(shop(553, 41))).toEqual([below(20)]);
    const limit = { code: "limit/service", values: { asked: "40 °C" }, from: SHEET };
    for (const climate of [shop(), shop(300, 41), shop(-1, 20, 100)])
      expect(serviceHeat(caseOf(about(climate)))[0]?.limit).toEqual(limit);
  });

  it("is a caution where it was logged in part, and is not asked where it was not, or of a batch in no joint", () => {
    expect(of(shop(-1, 20, 100))).toEqual([
      ["caution service-heat/below-in-part", { greatest: 20, asked: "40 °C" }, ["climate log shop"]],
    ]);
    expect([of([]), of(shop(), { joints: [] }), of(shop(), {}, { service: undefined })]).toEqual([[], [], []]);
  });

  it("is not asked of glue that was closed after the record's last day began", () => {
    const { entries: _, ...rest } = about(shop(40, 45));
    expect(asked(serviceHeat, rest).map(([code]) => code)).toEqual([]);
  });
});
