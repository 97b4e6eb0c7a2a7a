/** What was weighed as left in a lot, against what the batches have left of it. */
import { describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon as evidenceOf } from "../../src/evidence/evidence.ts";
import type { Batch, Lot, Record, Remainder } from "../../src/facts/types.ts";
import { adhesive, batch, DAY, entry, glued, lot, LOTS } from "./make.ts";
import { g, gcc, ml } from "./quantities.ts";
import { english, reckon, saidFinding } from "./reckoned.ts";

const LATER = "2025-12-30";
const place = { file: "a.md", line: 1, column: 1 };
const left = (amount: Remainder["amount"], day = LATER): Remainder => ({
  place,
  entry: `${day}-weighed`,
  day,
  lot: "R-1",
  amount,
});

const resin = (change: Partial<Lot> = {}): Lot[] => [lot("R-1", { amount: g("1000"), ...change }), ...LOTS.slice(1)];
const took = (mass: string): Batch => batch("B-1", { resin: { lot: "R-1", mass: g(mass) } });

function recordOf(one: Remainder, batches: readonly Batch[], lots = resin()): Record {
  return glued(batches, [], { lots, entries: [entry(one.entry, { day: one.day, remains: [one] })] });
}

function found(one: Remainder, batches: readonly Batch[], lots = resin()): string[] {
  const { lots: files } = reckon(recordOf(one, batches, lots));
  return (files.get("R-1")?.findings ?? []).map(
    (one) => `${one.code} ${one.severity}: ${saidFinding(english(), one).sentence}`,
  );
}

describe("What was weighed as left in a lot", () => {
  it("agrees with what came less what the batches took, within a twentieth of what came", () => {
    const agrees = (grams: string): boolean =>
      found(left(g(grams)), [took("100")])[0]?.startsWith("stock/left-agrees meets") === true;
    expect(["850", "900", "950"].map(agrees)).toEqual([true, true, true]);
    expect(["849", "951"].map(agrees)).toEqual([false, false]);
  });

  it("differs either way, and says which", () => {
    expect(found(left(g("800")), [took("100")])).toEqual([
      "stock/left-differs caution: On 30 December 2025 800 g of lot R-1 were weighed as left, where 900.0 g should be by what the batches took: more went out of it than is noted.",
    ]);
    expect(found(left(g("1000")), [took("100")])).toEqual([
      "stock/left-differs caution: On 30 December 2025 1000 g of lot R-1 were weighed as left, where 900.0 g should be by what the batches took: less went out of it than is noted, or it came out of another.",
    ]);
  });

  it("is held against both sums where a cup was mixed on that day, since nothing says which was first", () => {
    expect(found(left(g("1000"), DAY), [took("100")])[0]).toContain("stock/left-agrees");
    expect(found(left(g("900"), DAY), [took("100")])[0]).toContain("900.0 to 1000.0 g should be");
    expect(found(left(g("800"), DAY), [took("100")])[0]).toContain("stock/left-differs");
  });

  it("is held against nothing where what came, or what a batch took, is not one figure", () => {
    const unknown = "stock/left-not-known caution";
    const about = { ...g("100"), about: { least: 0.1, most: 0.1 } };
    const { amount: _, ...without } = lot("R-1", { amount: g("1") });
    expect(found(left(g("900")), [took("100")], [without, ...LOTS.slice(1)])[0]).toContain(unknown);
    expect(found(left(g("900")), [batch("B-1", { resin: { lot: "R-1" } })])[0]).toContain(unknown);
    expect(found(left(g("900")), [batch("B-1", { resin: { lot: "R-1", mass: about } })])[0]).toContain(unknown);
    expect(found(left(ml("900")), [took("100")])[0]).toContain(unknown);
  });

  it("is known by mass though the sheet gives the density of the other part alone, and not by volume then", () => {
    const of = (amount: Remainder["amount"], came: Lot["amount"]): string | undefined => {
      const one = left(amount);
      const made = recordOf(one, [took("100")], resin({ amount: came }));
      const sheet = adhesive({ density: { hardener: gcc("1.0") } });
      return reckon({ ...made, adhesives: new Map([[sheet.id, sheet]]) }).lots.get("R-1")?.findings[0]?.code;
    };
    expect(of(g("900"), g("1000"))).toBe("stock/left-agrees");
    expect(of(ml("900"), ml("1000"))).toBe("stock/left-not-known");
  });

  it("rests on the batches up to its day in the order of the record", () => {
    const { lots: files } = reckon(
      recordOf(left(g("880")), [
        batch("B-2", { resin: { lot: "R-1", mass: g("40") } }),
        batch("B-1", { resin: { lot: "R-1", mass: g("40") } }),
        batch("B-0", { resin: { lot: "R-1", mass: g("40") } }, "2025-03-09"),
      ]),
    );
    expect(files.get("R-1")?.findings.map(({ code, restsOn }) => [code, restsOn.slice(2).map(({ id }) => id)])).toEqual(
      [["stock/left-agrees", ["B-0", "B-2", "B-1"]]],
    );
  });

  it("says no figure in an edition that withholds a batch that took of it", () => {
    const record = recordOf(left(g("800")), [took("100")]);
    const entries = record.entries.map((one) =>
      one.batches.length > 0 ? { ...one, audience: "archive" as const } : one,
    );
    const hidden = { ...record, entries };
    const shown = editionOf(hidden, evidenceOf(hidden), "public").evidence.lots.get("R-1")?.findings ?? [];
    expect(shown.map(({ code, values }) => [code, values])).toEqual([["withheld", {}]]);
  });
});
