/** What each lot has left, by what came, what was mixed and what was sawn; and when. */
import { describe, expect, it } from "vitest";
import { meant } from "./meant.ts";
import { batches, demo, entries, figure, lotOf, massOf, prose } from "./told.ts";

interface Taken {
  readonly lot: string;
  readonly day: string;
  /** kg, m, m², m³ */
  readonly amount: number;
}

const taken: readonly Taken[] = entries.flatMap((entry): Taken[] => [
  ...entry.batches.flatMap((batch) =>
    (["resin", "hardener"] as const).flatMap((part) => {
      const lot = batch[part]?.lot;
      return lot === undefined ? [] : [{ lot, day: entry.day, amount: massOf(batch, part) }];
    }),
  ),
  ...entry.batches.flatMap(({ powder, glue }) =>
    [powder, glue].flatMap((part) =>
      part?.lot === undefined ? [] : [{ lot: part.lot, day: entry.day, amount: figure(part.mass) ?? 0 }],
    ),
  ),
  ...entry.cuts.map(({ lot, amount }) => ({ lot, day: entry.day, amount: amount.value })),
]);

const usedOf = (lot: string, before: string): number =>
  taken.filter((one) => one.lot === lot && one.day < before).reduce((sum, one) => sum + one.amount, 0);

const dm3 = (value: number): string => `${Number((value * 1000).toFixed(2))} dm³`;

function overdrawn(): string[] {
  return [...demo.lots.values()].flatMap(({ id, amount, material }) => {
    if (amount === undefined) return [];
    const days = [...new Set(taken.filter(({ lot }) => lot === id).map(({ day }) => day))].sort();
    return days.flatMap((day) => {
      const used = usedOf(id, `${day}z`);
      if (used <= amount.value + 1e-9) return [];
      const [had, took] =
        material === "timber" && amount.typed.endsWith("dm³")
          ? [dm3(amount.value), dm3(used)]
          : [amount.typed, `${used}`];
      return [`lot ${id}: ${took} taken of ${had} on ${day}`];
    });
  });
}

/** What the story says is left of a lot, in its words; g. */
const SAID: readonly (readonly [entry: string, lot: string, words: string, grams: number])[] = [
  ["2025-09-06-the-jar-is-opened", "R-2", "94 g of resin, which is what the book leaves", 94],
  ["2025-09-06-the-jar-is-opened", "H-2", "19 g of hardener, where it leaves 59", 19],
  ["2026-01-31-the-hoop", "OR-1", "The Osier was finished bar a smear", 22],
];

describe("Lots", () => {
  it("give no more than came, but where they are meant to", () => {
    expect(overdrawn().sort()).toEqual(meant("lot"));
  });

  it("have left what the story says is left", () => {
    const off = SAID.flatMap(([entry, lot, words, grams]) => {
      expect(prose(entry)).toContain(words);
      const day = entry.slice(0, 10);
      const left = ((lotOf(lot).amount?.value ?? Number.NaN) - usedOf(lot, day)) * 1000;
      return Math.abs(left - grams) <= 1
        ? []
        : [`left of ${lot} on ${day}: ${grams} g told, ${Number(left.toFixed(1))} g by what was mixed`];
    });
    expect(off).toEqual(meant("left"));
  });

  it("are used between the day they came and their last one, and the open tin first", () => {
    const off = taken.filter(({ lot, day }) => {
      const { received, expiry } = lotOf(lot);
      return day < received || (expiry !== undefined && day > expiry);
    });
    expect(off).toEqual([]);
    const wood = batches.flatMap((batch) =>
      [...batch.timber, ...batch.pieces.flatMap((piece) => piece.legs?.map((leg) => leg.lot) ?? piece.lot ?? [])]
        .filter((lot) => lotOf(lot).received > batch.day)
        .map((lot) => [batch.id, lot]),
    );
    expect(wood).toEqual([]);
  });

  it("a new tin is opened when the old one would not do", () => {
    const kinds = [...demo.lots.values()].filter(({ material }) => material === "resin");
    const firsts = kinds.flatMap((lot) => {
      const first = batches.find((batch) => batch.resin?.lot === lot.id);
      return first === undefined ? [] : [{ lot, first }];
    });
    const early = firsts.flatMap(({ lot, first }) => {
      const opened = firsts.filter((one) => one.lot.adhesive === lot.adhesive && one.first.day < first.day);
      const last = opened.sort((a, b) => (a.first.day < b.first.day ? 1 : -1))[0]?.lot;
      if (last === undefined) return [];
      const left = (last.amount?.value ?? 0) - usedOf(last.id, first.day);
      return left > massOf(first, "resin") ? [[lot.id, last.id]] : [];
    });
    // The rest of R-3 stood beside a hardener that had been recalled.
    expect(early).toEqual([["R-4", "R-3"]]);
  });
});
