/** An edition withholds a sentence with any of the things it rests on: so every thing that a sentence names must be among them. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import type { Record, Ref } from "../../src/facts/types.ts";
import { anyShop, recordOf } from "./any-batch.ts";
import {
  assembly,
  batch,
  DAY,
  departure,
  entry,
  glued,
  holdPoint,
  inspection,
  joint,
  lot,
  LOTS,
  measurement,
  openItem,
  piece,
  test,
} from "./make.ts";
import { g, mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };

/** Everything that has an id that a sentence could name. */
function things(record: Record, evidence: Evidence): Ref[] {
  const of = (kind: Ref["kind"], ids: Iterable<string>): Ref[] => [...ids].map((id) => ({ kind, id }));
  return [
    ...of("batch", evidence.batches.keys()),
    ...of("piece", evidence.pieces.keys()),
    ...of("lot", record.lots.keys()),
    ...of("joint", evidence.joints.keys()),
    ...of("open item", evidence.openItems.keys()),
    ...of("departure", evidence.departures.keys()),
    ...of("hold point", evidence.holdPoints.keys()),
  ];
}

const names = (sentence: string, id: string): boolean =>
  new RegExp(`(?<![\\w/.-])${id}(?![\\w/-])`, "u").test(sentence);

function unlisted(record: Record): string[] {
  const evidence = reckon(record);
  const all = things(record, evidence);
  const told = [...evidence.findings, ...[...evidence.holdPoints.values()].flatMap((file) => file.needs)];
  return told.flatMap(({ about, sentence, restsOn }) => {
    const listed = (ref: Ref): boolean => [about, ...restsOn].some((one) => one.kind === ref.kind && one.id === ref.id);
    return all
      .filter((ref) => names(sentence, ref.id) && !listed(ref))
      .map((ref) => `${ref.kind} ${ref.id}: ${sentence}`);
  });
}

const troubled = (): Record => {
  const other = `${DAY}-other`;
  const out = measurement({ drawing: mm("61.0"), tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 } });
  return glued(
    [
      batch("B-1", { joints: ["W-1"], pieces: [piece("B-1", 1, { lot: "S-1" }), piece("B-1", 2, { trial: "T" })] }),
      batch("B-2", { joints: ["W-2"], resin: { lot: "R-2", mass: g("90.0") } }, "2025-03-11"),
    ],
    [test("B-1/1", { failure: "glue line" })],
    {
      lots: [lot("R-1"), lot("R-2", { expiry: "2025-01-01" }), ...LOTS.slice(2)],
      assemblies: [
        assembly("wing", { joints: [joint("W-1"), joint("W-2"), joint("W-3")], holdPoints: [holdPoint("CLOSE")] }),
      ],
      entries: [
        entry(other, {
          departures: [departure("D-1")],
          raised: [openItem("O-1", { before: "CLOSE" })],
          measurements: [out],
          inspections: [inspection("CLOSE", { result: "not signed" })],
        }),
        entry("2025-04-01-notices", {
          recalls: ["R-1", "S-1"].map((id) => ({
            place,
            entry: "2025-04-01-notices",
            day: "2025-04-01",
            lot: id,
            why: "notice",
          })),
          rejections: [{ place, entry: "2025-04-01-notices", day: "2025-04-01", batch: "B-1", why: "doubt" }],
          reworks: [{ place, entry: "2025-04-01-notices", day: "2025-04-01", joints: ["W-2"], why: "off ratio" }],
        }),
      ],
    },
  );
};

describe("What a sentence rests on", () => {
  it("lists everything that it names, where everything is in trouble", () => {
    const made = troubled();
    expect(unlisted(made)).toEqual([]);
    expect(reckon(made).holdPoints.get("CLOSE")?.needs).toHaveLength(7);
  });

  it("lists everything that it names, for any batch", () => {
    fc.assert(
      fc.property(anyShop, (shop) => {
        expect(unlisted(recordOf(shop))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it("holds the entry of the batch and of every test that it speaks of", () => {
    for (const one of reckon(troubled()).findings) {
      const entries = one.restsOn.filter((ref) => ref.kind === "entry").map((ref) => ref.id);
      if (one.about.kind === "batch")
        expect(entries).toContain(one.about.id === "B-1" ? `${DAY}-glue` : "2025-03-11-glue");
      if (one.rule === "test-pieces" && one.about.id === "B-1") expect(entries).toContain("2025-03-20-tests");
      if (/recalled|Rejected by|Opened for/.test(one.sentence)) expect(entries).toContain("2025-04-01-notices");
    }
  });
});
