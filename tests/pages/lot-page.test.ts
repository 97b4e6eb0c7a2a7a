/** The page of a lot of parts bought in, or of what is put on: the hold points that ask for what stands of it. */
import { expect, test } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Coat, Entry, Finish, Fitting } from "../../src/facts/types.ts";
import { lotPage } from "../../src/pages/evidence/lot-page.ts";
import { assembly, entry, holdPoint, LOTS, lot, record } from "../evidence/make.ts";

const place = { file: "", line: 1, column: 1 };
const OIL: Finish = { id: "oil", place, title: "Oil", kind: "varnish", sheet: "Sheet", body: [] };
const ASSEMBLIES = [
  assembly("wing", { holdPoints: [holdPoint("WG-H1")] }),
  assembly("rib", { parent: "wing", holdPoints: [holdPoint("RB-H1", { assembly: "rib" })] }),
  assembly("fin", { holdPoints: [holdPoint("FN-H1", { assembly: "fin" })] }),
  assembly("all", { holdPoints: [holdPoint("AC-H9", { assembly: "all", kind: "flight" })] }),
];

function points(entries: readonly Entry[], id: string): string[] {
  const parts = ["BO-1", "BO-2"].map((one) => lot(one, { material: "part", adhesive: undefined }));
  const lots = [...LOTS, ...parts, lot("OV-1", { material: "finish", adhesive: undefined, finish: "oil" })];
  const made = record({ assemblies: ASSEMBLIES, lots, finishes: [OIL], entries });
  const shown = editionOf(made, reckon(made), "archive");
  const file = shown.evidence.lots.get(id);
  if (file === undefined) throw new Error(id);
  return lotPage(shown, file).holdPoints.map(({ holdPoint: { id: point } }) => point);
}

const fits = (day: string, change: Partial<Fitting> = {}): Entry =>
  entry(day, {
    fitted: [{ place, entry: day, day, assembly: "wing", where: "Hinge bolt", lot: "BO-1", count: 1, ...change }],
  });

test("of parts: those of the assembly they stand in, of what it is within, and before flight", () => {
  expect(points([fits("2025-04-01")], "BO-1")).toEqual(["WG-H1", "AC-H9"]);
  expect(points([fits("2025-04-01", { assembly: "rib" })], "BO-1")).toEqual(["WG-H1", "RB-H1", "AC-H9"]);
  expect(points([], "BO-1")).toEqual([]);
});

test("of parts: none once another has taken their place", () => {
  const both = [fits("2025-04-01"), fits("2025-04-02", { lot: "BO-2", replaces: "BO-1" })];
  expect(points(both, "BO-1")).toEqual([]);
  expect(points(both, "BO-2")).toEqual(["WG-H1", "AC-H9"]);
});

const oiled = (day: string, change: Partial<Coat> = {}): Entry =>
  entry(day, {
    coats: [
      { place, entry: day, day, assembly: "rib", where: "Inside", finish: "oil", lots: ["OV-1"], coat: 1, ...change },
    ],
  });

test("of what is put on: likewise, until all of it was taken off there", () => {
  expect(points([oiled("2025-04-01")], "OV-1")).toEqual(["WG-H1", "RB-H1", "AC-H9"]);
  const off = oiled("2025-04-02", { lots: [], stripped: "It wrinkled" });
  expect(points([oiled("2025-04-01"), off], "OV-1")).toEqual([]);
});
