/** What is found of the lots of a batch and of the moisture of its wood, and what each finding rests on. */
import { describe, expect, it } from "vitest";
import { lotInDate, lotKnown, lotRecalled, lotsOf, timberGrade } from "../../src/evidence/batch/lots.ts";
import { woodMoisture } from "../../src/evidence/batch/moisture.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";
import type { Adhesive, Batch, ClimateLog } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, DAY, entry, lot, LOTS } from "./make.ts";
import { type About, asked, caseOf } from "./one-rule.ts";
import { celsius, d, g, pc } from "./quantities.ts";

describe("The lots of a batch", () => {
  const of = (change: Partial<Batch>, more: Partial<About> = {}): About => ({ batch: change, ...more });

  it("are known where they are noted, of both components and of the timber", () => {
    expect(asked(lotKnown, of({ timber: ["S-1", "R-2"] }))).toEqual([
      ["meets lot-known/noted", { material: "resin", lot: "R-1" }, ["lot R-1"]],
      ["meets lot-known/noted", { material: "hardener", lot: "H-1" }, ["lot H-1"]],
      ["meets lot-known/timber", { lots: ["S-1", "R-2"] }, ["lot S-1", "lot R-2"]],
    ]);
    expect(asked(lotKnown, of({ resin: { mass: g("40.0") }, hardener: undefined, timber: [] }))).toEqual([
      ["unproven lot-known/not-noted", { material: "resin" }, []],
      ["unproven lot-known/not-noted", { material: "hardener" }, []],
      ["caution lot-known/no-timber", {}, []],
    ]);
    expect(asked(lotKnown, of({ timber: [], joints: [] }))).toHaveLength(2);
  });

  it("are in date up to their last day, and the finding rests on the lot", () => {
    const dated = (expiry: string | undefined, sheet: Partial<Adhesive> = {}) => {
      const lots = [lot("R-1", { expiry }), ...LOTS.slice(1)];
      const about = of({ hardener: undefined }, { lots, adhesives: [adhesive(sheet)] });
      expect(lotInDate(caseOf(about))[0]?.limit?.code).toBe(
        expiry === undefined ? (sheet.shelfLife ? "limit/shelf-life" : undefined) : "limit/expiry",
      );
      return asked(lotInDate, about);
    };
    const found = (code: string, until: string) => [[code, { lot: "R-1", used: DAY, until }, ["lot R-1"]]];
    expect(dated(DAY)).toEqual(found("meets lot-in-date/good", DAY));
    expect(dated("2025-03-09")).toEqual(found("rejects lot-in-date/past", "2025-03-09"));
    expect(dated(undefined, { shelfLife: d("59") })).toEqual(found("meets lot-in-date/good", DAY));
    expect(dated(undefined, { shelfLife: undefined })).toEqual([
      ["unproven lot-in-date/no-date", { lot: "R-1" }, ["lot R-1"]],
    ]);
  });

  it("are none of them recalled, or each recall is told with its entry", () => {
    expect(asked(lotRecalled, of({}))).toEqual([
      ["meets lot-recalled/none", { lots: 3 }, ["lot R-1", "lot H-1", "lot S-1"]],
    ]);
    const recalls = ["S-1", "R-1", "R-2"].map((one) => ({
      ...{ place: { file: "", line: 1, column: 1 }, entry: "2025-04-01-recall", day: "2025-04-01" },
      ...{ lot: one, why: "soft" },
    }));
    const recalled = of({}, { entries: [entry("2025-04-01-recall", { recalls })] });
    expect(asked(lotRecalled, recalled)).toEqual(
      ["R-1", "S-1"].map((one) => [
        "caution lot-recalled/recalled",
        { lot: one, day: "2025-04-01", why: "soft" },
        [`lot ${one}`, "entry 2025-04-01-recall"],
      ]),
    );
    expect(asked(lotRecalled, of({ resin: undefined, hardener: undefined, timber: [] }))).toEqual([]);
  });

  it("of timber are graded where the batch is in a joint; each lot is counted once", () => {
    const codes = (joints: string[]) => asked(timberGrade, of({ joints, timber: ["S-1"] })).map(([code]) => code);
    expect([codes(["W-1"]), codes([])]).toEqual([["caution timber-grade/slope-not-noted"], []]);
    expect(lotsOf({ batch: batch("B-1", { timber: ["S-1", "R-1", "S-1"] }) })).toEqual(["R-1", "H-1", "S-1"]);
  });
});

describe("The moisture of the wood", () => {
  const RANGE = "8 % to 12 %";
  const of = (change: Partial<Batch>, climate: readonly ClimateLog[] = [], sheet: Partial<Adhesive> = {}) =>
    asked(woodMoisture, { batch: { moisture: undefined, ...change }, climate, adhesives: [adhesive(sheet)] });
  /** Hourly up to 20 March, from so many hours after 20 February on. */
  const logged = (humidity: number, from = 0) => [
    log("shop", "2025-02-20", 24 * 28, (hour) => (hour < from ? undefined : { temperature: 20, humidity })),
  ];
  const settled = (humidity: number) => expect.closeTo(equilibriumMoisture(20, humidity) ?? 0, 6);

  it("is the meter's, at the limits themselves within, and beyond them rejected", () => {
    const meter = (found: string) => of({ moisture: pc(found) });
    for (const found of ["8", "12"])
      expect(meter(found)).toEqual([["meets wood-moisture/by-meter", { found: `${found} %` }, []]]);
    const outside = (found: string, where: string) => [
      ["rejects wood-moisture/by-meter-outside", { found: `${found} %`, where, asked: RANGE }, []],
    ];
    expect([meter("7.9"), meter("12.1")]).toEqual([outside("7.9", "below"), outside("12.1", "above")]);
  });

  it("is else the mean of the two weeks that were logged whole, a caution or unproven, and rests on the log", () => {
    expect(of({}, logged(0.5))).toEqual([
      ["caution wood-moisture/logged", { estimate: settled(0.5) }, ["climate log shop"]],
    ]);
    expect(of({}, logged(0.8))).toEqual([
      [
        "unproven wood-moisture/logged-outside",
        { estimate: settled(0.8), where: "above", asked: RANGE },
        ["climate log shop"],
      ],
    ]);
    expect(of({}, logged(0.2))[0]?.[1]).toMatchObject({ where: "below" });
  });

  it("is not shown by the log of wood that came within the two weeks, nor where no wood is noted", () => {
    const of = (received: string, timber: string[], moisture?: string) => {
      const lots = LOTS.map((one) => (one.id === "S-1" ? { ...one, received } : one));
      const change = { moisture: moisture === undefined ? undefined : pc(moisture), timber };
      return asked(woodMoisture, { batch: change, climate: logged(0.5), lots });
    };
    const estimate = settled(0.5);
    const late = ["unproven wood-moisture/came-late", { estimate, lots: ["S-1"] }, ["climate log shop", "lot S-1"]];
    const inShop = ["caution wood-moisture/logged", { estimate }, ["climate log shop"]];
    expect(of("2025-02-25", ["R-1", "S-1"])).toEqual([late]);
    expect(of("2025-02-24", ["R-1", "S-1"])).toEqual([inShop]);
    expect(of("2025-02-24", [])).toEqual([["unproven wood-moisture/no-timber", { estimate }, ["climate log shop"]]]);
    const loose = { batch: { moisture: undefined, timber: [], joints: [] }, climate: logged(0.5) };
    expect(asked(woodMoisture, loose)).toEqual([inShop]);
    expect(of("2025-02-25", ["S-1"], "10")[0]?.[0]).toBe("meets wood-moisture/by-meter");
  });

  it("is else never shown by one moment, nor by a log of less, which counts where it was worse", () => {
    const short = 24 * 10;
    const climate = { temperature: "20 °C", humidity: "50 %" };
    expect(of({})).toEqual([
      ["unproven wood-moisture/estimated", { ...climate, shortLog: false, estimate: settled(0.5) }, []],
    ]);
    expect(of({}, logged(0.5, short))).toEqual([
      ["unproven wood-moisture/estimated", { ...climate, shortLog: true, estimate: settled(0.5) }, []],
    ]);
    expect(of({}, logged(0.8, short))).toEqual([
      ["unproven wood-moisture/logged-in-part", { estimate: settled(0.8), where: "above", asked: RANGE }, []],
    ]);
    expect(of({ humidity: pc("80") }, logged(0.5, short))[0]).toEqual([
      "unproven wood-moisture/estimated-outside",
      { temperature: "20 °C", humidity: "80 %", shortLog: true, estimate: settled(0.8), where: "above", asked: RANGE },
      [],
    ]);
  });

  it("is not known without a climate, nor in one of which nothing tells", () => {
    for (const lacking of ["temperature", "humidity"] as const)
      expect(of({ [lacking]: undefined })).toEqual([["unproven wood-moisture/no-climate", {}, []]]);
    expect(of({ temperature: celsius("-300") })).toEqual([
      ["unproven wood-moisture/no-estimate", { temperature: "-300 °C", humidity: "50 %" }, []],
    ]);
  });

  it("is held against the sheet, else against the handbook", () => {
    const limits = (sheet: Partial<Adhesive>) =>
      [{ moisture: pc("10") }, { moisture: pc("99") }, { moisture: undefined }].map((change) => {
        const { code, values, from } =
          woodMoisture(caseOf({ batch: change, adhesives: [adhesive(sheet)] }))[0]?.limit ?? {};
        return [code, values, from?.code];
      });
    const limit = (from: string) => ["limit/wood-moisture", { asked: RANGE }, from];
    expect(limits({})).toEqual([limit("source/sheet"), limit("source/sheet"), limit("source/sheet")]);
    for (const about of [
      { batch: { moisture: undefined, temperature: celsius("-300") } },
      { batch: { moisture: undefined, humidity: pc("90") } },
      { batch: { moisture: undefined }, climate: logged(0.8, 240) },
    ])
      expect(woodMoisture(caseOf(about))[0]?.limit?.code).toBe("limit/wood-moisture");
    const handbook = limit("source/handbook-moisture");
    expect(limits({ woodMoisture: undefined })).toEqual([handbook, handbook, handbook]);
  });
});
