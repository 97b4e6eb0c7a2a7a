import { describe, expect, it } from "vitest";
import { english, reckon, saidFinding, type SaidFinding } from "./reckoned.ts";
import { reckonStock } from "../../src/evidence/lots/stock.ts";
import type { AdhesiveNeed } from "../../src/evidence/types/stock.ts";
import type { LotStock, Stock } from "../../src/evidence/types/stock.ts";
import type { Adhesive, Batch, Cut, Lot, Quantity } from "../../src/facts/types.ts";
import { adhesive, assembly, batch, cut, DAY, entry, glued, joint, lot, LOTS, piece } from "./make.ts";
import { g, gcc, ml, mm, pc } from "./quantities.ts";

interface Case {
  readonly batches?: readonly Batch[];
  readonly lots?: readonly Lot[];
  readonly adhesive?: Partial<Adhesive>;
  readonly areas?: readonly (number | undefined)[];
  readonly day?: string;
  readonly recalled?: string;
  readonly cuts?: readonly Cut[];
}

const cm2 = (value: number): Quantity => ({ typed: `${value} cm²`, value: value / 1e4, unit: "m²", step: 1e-4 });
const spread: Quantity = { typed: "300 g/m²", value: 0.3, unit: "kg/m²", step: 0.001 };

function stockOf(c: Case): Omit<Stock, "findings"> & { readonly findings: readonly SaidFinding[] } {
  const joints = (c.areas ?? []).map((area, at) => ({
    ...joint(`W-${at + 10}`),
    ...(area === undefined ? {} : { area: cm2(area) }),
  }));
  const recall =
    c.recalled === undefined
      ? []
      : [
          entry(`${DAY}-recall`, {
            recalls: [
              { place: { file: "", line: 1, column: 1 }, entry: `${DAY}-recall`, day: DAY, lot: c.recalled, why: "" },
            ],
          }),
        ];
  const made = glued(c.batches ?? [], [], {
    adhesives: [adhesive({ spread, ...c.adhesive })],
    lots: c.lots ?? LOTS,
    assemblies: [assembly("wing", { joints: [joint("W-1"), ...joints] })],
    entries: [...recall, ...(c.cuts ?? []).map((one) => entry(one.entry, { cuts: [one] }))],
  });
  const record = { ...made, day: c.day ?? DAY };
  const stock = reckonStock(record, reckon(record));
  return { ...stock, findings: stock.findings.map((one) => saidFinding(english(), one)) };
}

const lotIn = (c: Case, id = "R-1"): LotStock => stockOf(c).lots.find((each) => each.lot.id === id) as LotStock;
const resin = (change: Partial<Lot> = {}): Lot[] => [lot("R-1", { amount: g("1000"), ...change }), ...LOTS.slice(1)];

describe("What is left of a lot", () => {
  const two = [batch("B-1"), batch("B-2", { resin: { lot: "R-1", mass: g("60.5") } })];

  it("is what came less what the batches took", () => {
    expect(lotIn({ lots: resin(), batches: two })).toMatchObject({
      unit: "kg",
      received: 1,
      used: 0.1005,
      left: 0.8995,
      batches: ["B-1", "B-2"],
      unknown: [],
    });
    expect(lotIn({ lots: resin(), batches: [] })).toMatchObject({ used: 0, left: 1 });
  });

  it("goes by density where one is by volume and the other by mass", () => {
    const poured = [
      batch("B-1", { resin: { lot: "R-1", volume: ml("100") }, hardener: { lot: "H-1", volume: ml("50") } }),
    ];
    expect(lotIn({ lots: resin(), batches: poured }).left).toBeCloseTo(1 - 0.12, 12);
    expect(
      lotIn(
        {
          lots: [lot("R-1"), ...LOTS.slice(1), lot("H-1", { material: "hardener", amount: g("1000") })],
          batches: poured,
        },
        "H-1",
      ).left,
    ).toBeCloseTo(1 - 0.05, 12);
    expect(lotIn({ lots: resin({ amount: ml("1000") }), batches: two }).left).toBeCloseTo(
      (1000 - 100.5 / 1.2) / 1e6,
      12,
    );
    expect(lotIn({ lots: resin({ amount: ml("1000") }), batches: poured }).left).toBeCloseTo(0.0009, 12);
  });

  it("is not known where an amount is not noted, or no density turns it, or nothing says what came", () => {
    expect(lotIn({ lots: resin(), batches: [...two, batch("B-3", { resin: { lot: "R-1" } })] })).toMatchObject({
      used: 0.1005,
      left: undefined,
      unknown: ["B-3"],
    });
    expect(
      lotIn({
        lots: resin(),
        batches: [batch("B-1", { resin: { lot: "R-1", volume: ml("100") } })],
        adhesive: { density: undefined },
      }),
    ).toMatchObject({ left: undefined, unknown: ["B-1"] });
    expect(
      lotIn({ lots: resin({ amount: ml("1000") }), batches: two, adhesive: { density: undefined } }).left,
    ).toBeUndefined();
    expect(lotIn({ batches: two })).toMatchObject({ received: undefined, used: 0.1005, left: undefined });
    expect(lotIn({ batches: two }, "S-1")).toMatchObject({ used: undefined, left: undefined, batches: ["B-1", "B-2"] });
  });

  it("is not known of a lot by volume from which an amount was taken that is not noted", () => {
    expect(
      lotIn({ lots: resin({ amount: ml("1000") }), batches: [batch("B-1", { resin: { lot: "R-1" } })] }),
    ).toMatchObject({ left: undefined, unknown: ["B-1"] });
  });

  it("stands where a batch has no resin or no hardener noted", () => {
    expect(
      lotIn({
        lots: resin(),
        batches: [batch("B-1", { resin: undefined }), batch("B-2", { hardener: undefined, joints: [] })],
      }),
    ).toMatchObject({ used: 0.04, batches: ["B-2"] });
  });

  it("is never below nought: more used than came is told", () => {
    const over = { lots: resin({ amount: g("100") }), batches: two };
    expect(lotIn(over).left).toBe(0);
    expect(stockOf(over).findings).toMatchObject([
      {
        rule: "stock",
        severity: "caution",
        about: { kind: "lot", id: "R-1" },
        sentence:
          "By the batches noted 100.5 g of lot R-1 were used, and 100 g came: an amount or a lot is noted wrong.",
        restsOn: [
          { kind: "lot", id: "R-1" },
          { kind: "batch", id: "B-1" },
          { kind: "batch", id: "B-2" },
        ],
      },
    ]);
    expect(stockOf({ lots: resin({ amount: g("100.5") }), batches: two }).findings).toEqual([]);
    expect(stockOf({ lots: resin({ amount: ml("80") }), batches: two }).findings[0]?.sentence).toContain(
      "83.8 ml of lot R-1",
    );
  });
});

describe("What is left of a lot of timber", () => {
  const planks = (change: Partial<Lot> = {}): Lot[] => [
    ...LOTS.slice(0, 4),
    lot("S-1", { material: "timber", adhesive: undefined, amount: metres(24), ...change }),
  ];
  const metres = (value: number): Quantity => ({ typed: `${value} m`, value, unit: "m", step: 0.1 });
  const one = [batch("B-1")];

  it("is what came less what was cut, in the unit of what came", () => {
    const cuts = [cut(metres(1.2)), cut(mm("800"), { day: "2025-03-12" })];
    expect(lotIn({ lots: planks(), batches: one, cuts }, "S-1")).toMatchObject({
      unit: "m",
      received: 24,
      used: 2,
      left: 22,
      unknown: [],
      cuts,
      batches: ["B-1"],
    });
    expect(lotIn({ lots: planks(), cuts, batches: [] }, "S-1")).toMatchObject({ used: 2, left: 22 });
  });

  it("is never taken for all of it where batches used what nobody noted as cut", () => {
    expect(lotIn({ lots: planks(), batches: one }, "S-1")).toMatchObject({
      received: 24,
      used: undefined,
      left: undefined,
      unknown: ["B-1"],
    });
    expect(stockOf({ lots: planks(), batches: one }).findings).toEqual([]);
    expect(
      lotIn(
        { lots: planks(), batches: [batch("B-1", { timber: [], pieces: [piece("B-1", 1, { lot: "S-1" })] })] },
        "S-1",
      ),
    ).toMatchObject({ used: undefined, left: undefined, batches: ["B-1"] });
  });

  it("is not known where a batch came before the first cut noted, whatever was noted after", () => {
    const batches = [batch("B-1"), batch("B-2", {}, "2025-03-11"), batch("B-3", {}, "2025-03-12")];
    const cuts = [cut(metres(2), { day: "2025-03-12" }), cut(metres(1), { day: "2025-03-11" })];
    expect(lotIn({ lots: planks(), batches, cuts }, "S-1")).toMatchObject({
      used: 3,
      left: undefined,
      unknown: ["B-1"],
    });
    expect(lotIn({ lots: planks(), batches: batches.slice(1), cuts }, "S-1")).toMatchObject({
      used: 3,
      left: 21,
      unknown: [],
    });
  });

  it("is all that came where nothing was cut or glued, but of other things nothing is said", () => {
    expect(lotIn({ lots: planks(), batches: [] }, "S-1")).toMatchObject({ used: 0, left: 24, unknown: [] });
    expect(lotIn({ lots: planks({ material: "plywood" }), batches: [] }, "S-1")).toMatchObject({ used: 0, left: 24 });
    expect(lotIn({ lots: planks({ material: "other" }), batches: [] }, "S-1")).toMatchObject({
      used: undefined,
      left: undefined,
      unknown: [],
    });
    expect(lotIn({ lots: planks({ material: "other" }), batches: [], cuts: [cut(metres(2))] }, "S-1")).toMatchObject({
      used: 2,
      left: 22,
    });
  });

  it("is not known where nothing says how much came, while what was cut is", () => {
    expect(lotIn({ lots: planks({ amount: undefined }), batches: one, cuts: [cut(g("750"))] }, "S-1")).toMatchObject({
      unit: "kg",
      received: undefined,
      used: 0.75,
      left: undefined,
    });
  });

  it("is never below nought: more cut than came is told with the entries that cut it", () => {
    const told = (amount: Quantity, ...of: Quantity[]) => {
      const c = {
        lots: planks({ amount }),
        batches: one,
        cuts: of.map((each, at) => cut(each, { day: `2025-03-0${at + 1}` })),
      };
      return { left: lotIn(c, "S-1").left, findings: stockOf(c).findings };
    };
    expect(told(metres(24), metres(20), metres(4.004))).toMatchObject({
      left: 0,
      findings: [
        {
          rule: "stock",
          severity: "caution",
          about: { kind: "lot", id: "S-1" },
          sentence:
            "By the cuts noted 24.004 m of lot S-1 were used, and 24 m came: an amount or a lot is noted wrong.",
          restsOn: [
            { kind: "lot", id: "S-1" },
            { kind: "entry", id: "2025-03-01-sawn" },
            { kind: "entry", id: "2025-03-02-sawn" },
          ],
        },
      ],
    });
    expect(told(metres(0.3), metres(0.1), metres(0.2))).toMatchObject({ left: 0, findings: [] });
    expect(told(ml("12000"), ml("12500")).findings[0]?.sentence).toContain(
      "12.50 dm³ of lot S-1 were used, and 12000 ml came",
    );
    expect(told(ml("12000"), ml("12000.4")).findings[0]?.sentence).toContain("12.0004 dm³ of lot S-1");
    expect(told(g("900"), g("950")).findings[0]?.sentence).toContain("0.95 kg of lot S-1 were used, and 900 g came");
  });

  it("counts no lot's cuts for another", () => {
    const lots = [...planks(), lot("S-2", { material: "timber", adhesive: undefined, amount: metres(10) })];
    const c = { lots, batches: [], cuts: [cut(metres(2)), cut(metres(3), { lot: "S-2", day: "2025-03-11" })] };
    expect([lotIn(c, "S-1").left, lotIn(c, "S-2").left]).toEqual([22, 7]);
  });
});

describe("How long a lot keeps", () => {
  it("is held against the date of the record, the last day being good still and sixty days being soon", () => {
    const life = (day: string) => lotIn({ lots: resin({ expiry: "2026-01-10" }), day }).life;
    expect(["2026-01-11", "2026-01-10", "2025-11-11", "2025-11-10"].map(life)).toEqual([
      "past",
      "soon",
      "soon",
      "good",
    ]);
  });

  it("comes from the sheet's shelf life where there is no date, and is not known without one", () => {
    expect(lotIn({ lots: resin({ expiry: undefined, received: "2025-01-10" }), day: "2026-01-10" })).toMatchObject({
      lastDay: "2026-01-10",
      life: "soon",
    });
    expect(lotIn({ lots: resin({ expiry: undefined }), adhesive: { shelfLife: undefined } })).toMatchObject({
      lastDay: undefined,
      life: "no date",
    });
  });
});

const partOf = (need: AdhesiveNeed | undefined, part: string) => need?.parts?.find((one) => one.part === part);

describe("What is still to be glued", () => {
  it("is the area of the joints that wait, those without an area told apart", () => {
    const stock = stockOf({ batches: [batch("B-1")], areas: [200, undefined, 300] });
    expect(stock).toMatchObject({ planned: ["W-10", "W-12"], withoutArea: ["W-11"] });
    expect(stock.area).toBeCloseTo(0.05, 12);
    expect(stockOf({ batches: [batch("B-1")] }).needs).toEqual([]);
    expect(stockOf({ areas: [200], adhesive: { spread: undefined } }).needs).toEqual([]);
  });

  it("asks area times spread and a quarter more, parted by the ratio, of lots in date and not recalled", () => {
    const lots = [
      lot("R-1", { amount: g("1000") }),
      lot("R-2", { amount: g("400"), expiry: "2025-03-09" }),
      lot("H-1", { material: "hardener", amount: g("300") }),
      lot("H-2", { material: "hardener", amount: g("250") }),
    ];
    const [need] = stockOf({ lots, areas: [8000], recalled: "H-2" }).needs;
    expect(need?.mixed).toBeCloseTo(0.8 * 0.3 * 1.25, 12);
    expect(partOf(need, "resin")?.needed).toBeCloseTo(0.2, 12);
    expect(partOf(need, "hardener")?.needed).toBeCloseTo(0.1, 12);
    expect(need?.parts?.map(({ usable }) => usable)).toEqual([1, 0.3]);
  });

  it("counts joints that were opened again", () => {
    const joints = [{ ...joint("W-1"), area: cm2(200) }];
    const place = { file: "", line: 1, column: 1 };
    const rework = entry("2025-04-01-rework", {
      reworks: [{ place, entry: "2025-04-01-rework", day: "2025-04-01", joints: ["W-1"], why: "" }],
    });
    const of = (entries: ReturnType<typeof entry>[]) => {
      const record = glued([batch("B-1")], [], { assemblies: [assembly("wing", { joints })], entries });
      return reckonStock(record, reckon(record)).planned;
    };
    expect([of([]), of([rework])]).toEqual([[], ["W-1"]]);
  });

  it("counts of each adhesive its own lots, and needs no density for what is weighed", () => {
    const lots = [
      lot("R-1", { amount: g("1000") }),
      lot("X-1", { amount: g("500"), adhesive: "epoxy" }),
      lot("H-1", { material: "hardener", amount: g("300") }),
    ];
    expect(stockOf({ lots, areas: [8000], adhesive: { density: undefined } }).needs[0]?.parts).toMatchObject([
      { part: "resin", usable: 1 },
      { part: "hardener", usable: 0.3 },
    ]);
  });

  it("has nothing to say of what there is where that of one lot is not known", () => {
    const batches = [batch("B-1", { resin: { lot: "R-1" } })];
    const usable = (amount: Quantity) =>
      stockOf({
        batches,
        lots: [lot("R-1", { amount }), lot("R-2", { amount: g("500") }), ...LOTS.slice(2)],
        areas: [8000],
      }).needs[0]?.parts?.[0];
    expect([usable(g("1000")), usable(ml("1000"))]).toEqual([
      { part: "resin", needed: expect.closeTo(0.2, 12), usable: undefined },
      { part: "resin", needed: expect.closeTo(0.2, 12), usable: undefined },
    ]);
  });

  it("turns volumes by density, and does not tell what there is where it cannot", () => {
    const lots = [lot("R-1", { amount: ml("1000") }), lot("H-1", { material: "hardener" })];
    expect(stockOf({ lots, areas: [8000] }).needs[0]?.parts).toMatchObject([
      { part: "resin", usable: 1.2 },
      { part: "hardener", usable: undefined },
    ]);
    const byVolume = {
      byMass: undefined,
      byVolume: { typed: "2 : 1", secondOverFirst: 0.5, tolerance: pc("5") },
      density: { resin: gcc("1.2"), hardener: gcc("1.0") },
    };
    const [need] = stockOf({ lots, areas: [8000], adhesive: byVolume }).needs;
    expect((partOf(need, "hardener")?.needed ?? 0) / (partOf(need, "resin")?.needed ?? 1)).toBeCloseTo(0.5 / 1.2, 12);
    expect(stockOf({ lots, areas: [8000], adhesive: { ...byVolume, density: undefined } }).needs[0]).toEqual({
      adhesive: "resorcin",
      mixed: expect.closeTo(0.3, 9),
    });
  });
});
