/** What there is of lots that are no two-part adhesive, or of which a sheet gives no density. */
import { expect, it } from "vitest";
import { reckonStock } from "../../src/evidence/lots/stock.ts";
import type { Adhesive, Finish, Lot, Quantity } from "../../src/facts/types.ts";
import { adhesive, assembly, batch, glued, joint, lot } from "./make.ts";
import { d, g, gcc, ml, pc } from "./quantities.ts";

const spread: Quantity = { typed: "300 g/m²", value: 0.3, unit: "kg/m²", step: 0.001 };
const area: Quantity = { typed: "0.8 m²", value: 0.8, unit: "m²", step: 0.1 };

interface Case {
  readonly lots: readonly Lot[];
  readonly sheet?: Partial<Adhesive>;
  readonly finishes?: readonly Finish[];
  readonly isGlued?: boolean;
}
function stockOf({ lots, sheet = {}, finishes = [], isGlued = false }: Case) {
  const joints = [{ ...joint("W-1"), area }];
  const record = glued(isGlued ? [batch("B-1")] : [], [], {
    lots,
    finishes,
    adhesives: [adhesive({ spread, ...sheet })],
    assemblies: [assembly("wing", { joints })],
  });
  const waiting = { joint: { ...joint("W-1"), area }, state: "not glued" as const };
  const file = { ...waiting, findings: [], batches: [], superseded: [], reworks: [], lots: [] };
  return reckonStock(record, { joints: new Map([["W-1", file]]) });
}

it("Of a finish nothing says how much was used, and how long it keeps comes from its own sheet", () => {
  const varnish: Finish = {
    id: "clear",
    place: { file: "made.md", line: 1, column: 1 },
    title: "Clear varnish",
    kind: "varnish",
    sheet: "Sheet C",
    shelfLife: d("30"),
    body: [],
  };
  const tin = { material: "finish", adhesive: undefined, expiry: undefined, amount: g("750") } as const;
  const keeps = (change: Partial<Lot>) =>
    stockOf({ lots: [lot("V-1", { ...tin, ...change })], finishes: [varnish] }).lots.map(
      ({ received, used, left, lastDay }) => [received, used, left, lastDay],
    );
  expect(keeps({ finish: "clear" })).toEqual([[0.75, undefined, undefined, "2025-02-09"]]);
  expect(keeps({})).toEqual([[0.75, undefined, undefined, undefined]]);
});

it("Water is needed from no lot", () => {
  const lots = [lot("U-1", { material: "powder", amount: g("500") })];
  const sheet = {
    kind: "powder-and-water",
    byMass: { typed: "2 : 1", secondOverFirst: 0.5, tolerance: pc("5") },
  } as const;
  expect(stockOf({ lots, sheet }).needs).toEqual([
    {
      adhesive: "resorcin",
      mixed: expect.closeTo(0.3, 9) as number,
      parts: [{ part: "powder", needed: expect.closeTo(0.2, 9) as number, usable: 0.5 }],
    },
  ]);
});

it("The density of one part turns nothing of the other", () => {
  const lots = [lot("R-1", { amount: ml("1000") }), lot("H-1", { material: "hardener", amount: ml("1000") })];
  const stock = stockOf({
    lots: [...lots, lot("S-1", { material: "timber" })],
    sheet: { density: { hardener: gcc("1.0") } },
    isGlued: true,
  });
  expect(stock.lots.slice(0, 2).map(({ left, unknown }) => [left, unknown])).toEqual([
    [undefined, ["B-1"]],
    [expect.closeTo(0.00098, 9), []],
  ]);
  expect(stock.needs[0]?.parts?.map(({ usable }) => usable)).toEqual([undefined, expect.closeTo(0.98, 9)]);
  expect(stockOf({ lots, sheet: { density: { hardener: gcc("1.0") } } }).needs[0]?.parts).toMatchObject([
    { part: "resin", usable: undefined },
    { part: "hardener", usable: 1 },
  ]);
});
