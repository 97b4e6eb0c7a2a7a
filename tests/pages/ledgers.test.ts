import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { exampleRecord, exampleSite } from "./example.ts";

interface Json {
  readonly aircraft: string;
  readonly edition: string;
  readonly day: string;
  readonly rows: readonly { readonly [column: string]: unknown }[];
}

const NAMES = [
  "hours",
  "batches",
  "pieces",
  "joints",
  "findings",
  "measurements",
  "hold-points",
  "weights",
  "scales",
  "tasks",
  "cuts",
  "stock",
];
const { shown } = exampleSite("inspector");
const texts = new Map(ledgersOf(shown).map(({ path, text }) => [path, text]));
const json = (name: string): Json => JSON.parse(texts.get(`data/${name}.json`) ?? "") as Json;
const csv = (name: string): { [column: string]: string }[] =>
  parse(texts.get(`data/${name}.csv`) ?? "", { columns: true });

/** What a value of the JSON stands as in the CSV. */
function inCsv(value: unknown): string {
  if (value === null) return "";
  if (Array.isArray(value)) return value.join(" ");
  const text = String(value);
  return typeof value === "string" && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

describe("ledgers", () => {
  test.each(NAMES)("%s has the same rows and columns as CSV and as JSON", (name) => {
    const { rows } = json(name);
    expect(rows.length).toBeGreaterThan(0);
    expect(csv(name)).toEqual(
      rows.map((row) => Object.fromEntries(Object.entries(row).map(([column, value]) => [column, inCsv(value)]))),
    );
  });

  test("every row of a ledger has the same columns", () => {
    for (const name of NAMES) expect(new Set(json(name).rows.map((row) => Object.keys(row).join())).size).toBe(1);
  });

  test("hours agree with the minutes of the assemblies", () => {
    const sum = json("hours").rows.reduce((minutes, row) => minutes + Number(row["minutes"]), 0);
    expect(sum).toBe(300);
    expect(sum).toBe(shown.evidence.assemblies.get("fin")?.minutes);
  });

  test("a batch stands in units of reckoning beside what was typed, with its verdict", () => {
    const row = json("batches").rows.find(({ batch }) => batch === "B-002");
    expect(row).toMatchObject({
      verdict: "rejected",
      resin_typed: "40.0 g",
      hardener_typed: "22.6 g",
      hardener_lot: "H-1",
      shop_temperature_degc: 20,
      working_life_s: 1800,
      open_for_s: 1200,
    });
    expect(row?.["hardener_kg"]).toBeCloseTo(0.0226, 12);
    expect(row?.["ratio_error_share"]).toBeCloseTo(0.13, 12);
  });

  test("findings name their rule, and a limit its source and how that is known", () => {
    const row = json("findings").rows.find(({ about, rule }) => about === "B-002" && rule === "mix-ratio");
    expect(row).toMatchObject({ severity: "rejects", about_kind: "batch", limit_source_known: "record" });
    expect(row?.["rests_on"]).toContain("entry:2025-03-12-glue");
  });

  test("a measure stands with its unit, what it was held against and its pair; a pair with a hidden side keeps its verdict and not its difference", () => {
    const [spacing, left, right] = json("measurements").rows;
    expect(spacing).toMatchObject({
      unit: "m",
      drawing_typed: "212.0 mm",
      found: expect.closeTo(0.2131, 12),
      tolerance_plus: 0.0005,
      verdict: "out",
      departure: "D-1",
      pair: null,
    });
    expect(left).toMatchObject({
      pair: "skin-height",
      side: "left",
      pair_tolerance: null,
      pair_difference: expect.closeTo(-0.0015, 12),
      pair_verdict: "out",
    });
    expect(right).toMatchObject({ side: "right", pair_tolerance: expect.closeTo(0.001, 12) });
    const record = exampleRecord();
    const open = ledgersOf(
      editionOf({ ...record, aircraft: { ...record.aircraft, publicShows: ["ledgers"] } }, reckon(record), "public"),
    );
    const rows = (JSON.parse(open.find(({ path }) => path === "data/measurements.json")?.text ?? "") as Json).rows;
    expect(rows.map((row) => [row["pair_difference"], row["pair_verdict"], row["departure"]])).toEqual([
      [null, null, "withheld"],
      [null, "out", null],
    ]);
  });

  test("weights and tasks add up to what the pages say", () => {
    const counting = json("weights").rows.filter(({ counts }) => counts === "yes");
    expect(counting.reduce((sum, row) => sum + Number(row["mass_kg"]), 0)).toBeCloseTo(1.341, 12);
    expect(counting.reduce((sum, row) => sum + Number(row["moment_kg_m"]), 0)).toBeCloseTo(
      -0.39 * 0.118 + 0.9 * 0.02,
      12,
    );
    expect(json("scales").rows).toMatchObject([
      { third_wheel: "tail", mass_kg: 2, centre_m: expect.closeTo(0.1 + (0.4 * 0.5) / 2, 12) },
    ]);
    expect(
      json("tasks").rows.map((row) => [row["task"], row["applicable"], row["maker"], row["amateur_fabrication"]]),
    ).toEqual([
      ["T-1", "yes", 0, 0.7],
      ["T-2", "yes", 1, 0],
      ["T-3", "no", null, null],
    ]);
  });

  test("cuts and stock have their unit beside them, and say of each lot what is left at most or that it is not known", () => {
    expect(json("cuts").rows).toEqual([
      { entry: "2025-03-10-glue", day: "2025-03-10", lot: "S-1", unit: "m", amount_typed: "1.2 m", amount: 1.2 },
      { entry: "2025-03-10-glue", day: "2025-03-10", lot: "P-1", unit: "m2", amount_typed: "4500 cm²", amount: 0.45 },
      { entry: "2025-03-28-glue", day: "2025-03-28", lot: "P-1", unit: "m2", amount_typed: "3700 cm²", amount: 0.37 },
    ]);
    const stock = new Map(json("stock").rows.map((row) => [row["lot"], row]));
    expect(stock.get("S-1")).toEqual({
      lot: "S-1",
      title: "Spruce plank",
      material: "timber",
      received_day: "2025-01-10",
      good_until_day: "2026-01-10",
      recalled: "no",
      unit: "m",
      received_typed: "24 m",
      received: 24,
      used: 1.2,
      used_unknown_batches: [],
      left_at_most: 22.8,
      cost_typed: null,
      cost: null,
      currency: null,
    });
    expect(stock.get("P-1")).toMatchObject({
      unit: "m2",
      received: 2,
      used: expect.closeTo(0.82, 12),
      left_at_most: expect.closeTo(1.18, 12),
    });
    expect(stock.get("R-2")).toMatchObject({
      recalled: "yes",
      unit: "kg",
      received: null,
      used: 0.04,
      left_at_most: null,
    });
  });

  test("text that a spreadsheet would run has an apostrophe before it in CSV, and is itself in JSON", () => {
    const record = exampleRecord();
    const entries = record.entries.map((entry) => ({
      ...entry,
      tests: entry.tests.map((one) => ({ ...one, note: "=HYPERLINK(1)" })),
    }));
    const made = { ...record, entries };
    const [, , , , pieces, piecesCsv] = ledgersOf(editionOf(made, reckon(made), "inspector"));
    expect(pieces?.text).toContain('"note":"=HYPERLINK(1)"');
    expect(piecesCsv?.text).toContain(",'=HYPERLINK(1)");
  });

  test("the public edition has none unless the aircraft file says so", () => {
    expect(ledgersOf(exampleSite("public").shown)).toEqual([]);
    const record = exampleRecord();
    const made = { ...record, aircraft: { ...record.aircraft, publicShows: ["ledgers" as const] } };
    const open = ledgersOf(editionOf(made, reckon(made), "public"));
    expect(open.map(({ path }) => path)).toEqual(
      NAMES.filter((name) => name !== "scales").flatMap((name) => [`data/${name}.json`, `data/${name}.csv`]),
    );
    const rows = (name: string): Json["rows"] =>
      (JSON.parse(open.find(({ path }) => path === `data/${name}.json`)?.text ?? "") as Json).rows;
    expect(rows("cuts")).toMatchObject([{ lot: "P-1", amount: 0.45 }]);
    expect(rows("stock").map((row) => [row["lot"], row["used"]])).toContainEqual(["P-1", 0.45]);
    expect(open.some(({ text }) => text.includes("Vollmer") || text.includes("B-004"))).toBe(false);
  });

  test("the same record gives the same bytes", () => {
    expect(ledgersOf(exampleSite("inspector").shown)).toEqual(ledgersOf(shown));
  });
});
