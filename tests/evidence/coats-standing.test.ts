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

const [FIRST, SECOND, THIRD] = ["2025-03-01-day", "2025-03-02-day", "2025-03-03-day"] as const;
const put = (entry_: string, coat: number, change: Partial<Coat> = {}): Coat => ({
  place: { file: "made.md", line: 1, column: 1 },
  entry: entry_,
  day: entry_.slice(0, 10),
  assembly: "wing",
  where: "inside",
  finish: "varnish",
  coat,
  lots: [],
  ...change,
});
function stoodOf(...coats: readonly Coat[]) {
  const entries = [...new Set(coats.map((coat) => coat.entry))].map((id) =>
    entry(id, { coats: coats.filter((coat) => coat.entry === id) }),
  );
  const stood = coatsStood(recordIndexOf(record({ entries })), "wing");
  const before = coatsBefore(stood);
  const placeOf = (coat: Coat | undefined) => (coat === undefined ? undefined : coats.indexOf(coat));
  return stood.map((one) => ({ off: placeOf(one.off), before: placeOf(before.get(one)) }));
}

it("What is put on in the entry that took all off stands on, until a later entry takes it off", () => {
  const stripped = "sanded back";
  expect(stoodOf(put(FIRST, 1), put(SECOND, 1), put(SECOND, 1, { stripped })).map(({ off }) => off)).toEqual([
    2,
    undefined,
    undefined,
  ]);
  expect(
    stoodOf(put(SECOND, 1), put(SECOND, 1, { stripped }), put(THIRD, 1, { stripped })).map(({ off }) => off),
  ).toEqual([2, 2, undefined]);
});

it("A second coat was put on the first of its own, and on none that was taken off before", () => {
  const anew = { stripped: "sanded back" };
  expect(stoodOf(put(FIRST, 1), put(SECOND, 2)).map(({ before }) => before)).toEqual([undefined, 0]);
  expect(stoodOf(put(FIRST, 1), put(SECOND, 1, anew), put(THIRD, 2)).map(({ before }) => before)).toEqual([
    undefined,
    undefined,
    1,
  ]);
  expect(stoodOf(put(FIRST, 1), put(SECOND, 2, anew)).map(({ before }) => before)).toEqual([undefined, undefined]);
  expect(stoodOf(put(FIRST, 1), put(SECOND, 1), put(THIRD, 2)).map(({ before }) => before)).toEqual([
    undefined,
    undefined,
    0,
  ]);
});

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
