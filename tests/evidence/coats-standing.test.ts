import fc from "fast-check";
import { expect, it } from "vitest";
import { coatsBefore, coatsStood } from "../../src/evidence/coats/standing.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Coat } from "../../src/facts/types.ts";
import { entry, record } from "./make.ts";

const line = fc.record({
  entry: fc.integer({ min: 0, max: 5 }),
  where: fc.constantFrom("inside", "outside"),
  finish: fc.constantFrom("varnish", "primer"),
  coat: fc.integer({ min: 1, max: 3 }),
  stripped: fc.boolean(),
});

/** From the definitions alone: a coat is there until the first later line of its place, in another entry, by which all was taken off. */
function slowly(coats: readonly Coat[]) {
  const all = coats.map((coat, at) => ({
    coat,
    off: coats
      .slice(at + 1)
      .find((later) => later.stripped !== undefined && later.where === coat.where && later.entry !== coat.entry),
  }));
  return all.map(({ coat, off }) => ({
    coat,
    off,
    before: all.find(
      (one) =>
        one.off === off &&
        one.coat.where === coat.where &&
        one.coat.finish === coat.finish &&
        one.coat.coat === coat.coat - 1,
    )?.coat,
  }));
}

it("Coats stand until their place is said to have been stripped, and each knows the one before it", () => {
  fc.assert(
    fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
      const coats = [...lines]
        .sort((a, b) => a.entry - b.entry)
        .map(
          ({ stripped, entry: at, ...rest }): Coat => ({
            ...rest,
            place: { file: "made.md", line: 1, column: 1 },
            entry: `2025-03-0${at + 1}-day`,
            day: `2025-03-0${at + 1}`,
            assembly: "wing",
            lots: [],
            ...(stripped && { stripped: "sanded back" }),
          }),
        );
      const entries = [...new Set(coats.map((coat) => coat.entry))].map((id) =>
        entry(id, { coats: coats.filter((coat) => coat.entry === id) }),
      );
      const index = recordIndexOf(record({ entries }));
      const stood = coatsStood(index, "wing");
      const before = coatsBefore(stood);
      expect(stood.map((one) => ({ coat: one.coat, off: one.off, before: before.get(one) }))).toEqual(slowly(coats));
    }),
    { numRuns: 500 },
  );
});
