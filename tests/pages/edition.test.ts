import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Shown } from "../../src/editions/shown.ts";
import { mayShow } from "../leaks/words.ts";
import { planted, type Planted, type Word } from "./planted.ts";

const EDITIONS: readonly Edition[] = ["public", "inspector", "archive"];

/** Every map and set opened, so that nothing can hide in one. */
const allText = (shown: Shown): string =>
  JSON.stringify({ ...shown }, (_, value: unknown) =>
    value instanceof Map
      ? [...(value as Map<unknown, unknown>)]
      : value instanceof Set
        ? [...(value as Set<unknown>)]
        : value,
  );

const mayBeSeen = (word: Word, edition: Edition, { record }: Planted): boolean =>
  mayShow(word, edition, record.aircraft.publicShows);

/** Holds for records of many shapes, each with a secret in every place where a builder can type one. */
function holds(claim: (made: Planted) => void): void {
  fc.assert(
    fc.property(fc.gen(), (gen) =>
      claim(planted((...from) => from[gen(fc.nat, { max: from.length - 1 })] as (typeof from)[number])),
    ),
    { numRuns: 100 },
  );
}

describe("an edition", () => {
  test.each(EDITIONS)("%s holds no word that it withholds, and every word that it does not", (edition) => {
    holds((made) => {
      const held = new Set(allText(editionOf(made.record, reckon(made.record), edition)).match(/zq\d+qz/g));
      expect(made.words.filter((word) => !mayBeSeen(word, edition, made) && held.has(word.text))).toEqual([]);
      expect(made.words.filter((word) => mayBeSeen(word, edition, made) && !held.has(word.text))).toEqual([]);
    });
  });

  test.each(EDITIONS)("%s gives everything it shows the verdict of the whole record", (edition) => {
    holds(({ record }) => {
      const whole = reckon(record);
      const { evidence } = editionOf(record, whole, edition);
      for (const [id, { verdict }] of evidence.pieces) expect(verdict).toBe(whole.pieces.get(id)?.verdict);
      for (const [id, { verdict }] of evidence.batches) expect(verdict).toBe(whole.batches.get(id)?.verdict);
      expect([...evidence.joints].map(([id, { state }]) => [id, state])).toEqual(
        [...whole.joints].map(([id, { state }]) => [id, state]),
      );
      expect([...evidence.holdPoints].map(([id, { state }]) => [id, state])).toEqual(
        [...whole.holdPoints].map(([id, { state }]) => [id, state]),
      );
    });
  });

  test("shows to the inspector all that it shows to the public", () => {
    holds(({ record }) => {
      const whole = reckon(record);
      const [narrow, wide] = [editionOf(record, whole, "public"), editionOf(record, whole, "inspector")];
      for (const kind of [
        "pieces",
        "batches",
        "joints",
        "lots",
        "holdPoints",
        "assemblies",
        "departures",
        "openItems",
      ] as const) {
        for (const id of narrow.evidence[kind].keys()) expect(wide.evidence[kind].has(id)).toBe(true);
      }
      const entries = new Set(wide.record.entries.map(({ id }) => id));
      for (const { id } of narrow.record.entries) expect(entries.has(id)).toBe(true);
    });
  });

  test("of the archive is the record and its evidence themselves", () => {
    holds(({ record }) => {
      const whole = reckon(record);
      const shown = editionOf(record, whole, "archive");
      expect(shown.record).toBe(record);
      expect(shown.evidence).toBe(whole);
      expect(shown.leavesOut).toEqual([]);
    });
  });

  test("never names what it does not hold: every id in it leads to something it shows", () => {
    holds(({ record }) => {
      const { evidence, shows } = editionOf(record, reckon(record), "public");
      for (const { batches, superseded, lots } of evidence.joints.values()) {
        expect([...batches, ...superseded].every((id) => evidence.batches.has(id))).toBe(true);
        expect(lots.every((id) => evidence.lots.has(id))).toBe(true);
      }
      for (const file of evidence.lots.values()) {
        expect(file.batches.every((id) => evidence.batches.has(id))).toBe(true);
        expect(file.pieces.every((id) => evidence.pieces.has(id))).toBe(true);
        // Timber of an earlier batch stays in its joint.
        for (const id of file.joints) {
          const { batches = [], superseded = [], reworks = [] } = evidence.joints.get(id) ?? {};
          const putIn = reworks.flatMap(({ replaced = [] }) => replaced.map((one) => one.with));
          expect(
            putIn.includes(file.lot.id) || file.batches.some((batch) => [...batches, ...superseded].includes(batch)),
          ).toBe(true);
        }
      }
      expect(evidence.findings.every(({ about, restsOn }) => shows(about) && restsOn.every(shows))).toBe(true);
    });
  });

  test("says the same of what it leaves out whether or not there is any such thing", () => {
    holds(({ record }) => {
      const bare = { ...record, entries: [], lots: new Map(), trials: new Map() };
      for (const edition of EDITIONS)
        expect(editionOf(record, reckon(record), edition).leavesOut).toEqual(
          editionOf(bare, reckon(bare), edition).leavesOut,
        );
    });
  });
});
