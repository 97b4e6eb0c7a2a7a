/** What reopens a hold point that was signed, and what does not. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateWords } from "../../src/words/dates.ts";
import type { Entry } from "../../src/facts/types.ts";
import { entry, inspection } from "./make.ts";
import { mm } from "./quantities.ts";
import {
  SIGNED,
  LATER,
  sound,
  GLUED,
  TESTS,
  signing,
  pointOf,
  type Happens,
  ref,
  recall,
  reject,
  rework,
  departs,
  raises,
  OUT,
  measures,
  glues,
  SIDES,
  inEntry,
  after,
  told,
} from "./signed.ts";

describe("What changed of a hold point that was signed", () => {
  it("leads from each change to what it is about, and rests on it, on its entry and on whatever else it speaks of", () => {
    const later = ref("entry", `${LATER}-it`);
    const first = (happens: Happens): unknown => {
      const [change] = after(happens, { joints: ["W-1"] }).changes;
      return [change?.about, ...(change?.restsOn ?? [])];
    };
    expect(first(glues("W-1"))).toEqual([ref("batch", "B-9"), ref("batch", "B-9"), later]);
    expect(first(rework("W-1"))).toEqual([later, later]);
    expect(first(reject("B-1"))).toEqual([ref("batch", "B-1"), ref("batch", "B-1"), later]);
    expect(first(departs())).toEqual([ref("departure", "D-1"), ref("departure", "D-1"), later]);
    expect(first(raises({ before: "CLOSE" }))).toEqual([ref("open item", "O-1"), ref("open item", "O-1"), later]);
    expect(first(measures(OUT))).toEqual([later, later]);
    expect(pointOf([signing()], { joints: ["W-1"] }).changes).toEqual([]);
  });

  it("rests what a recall changes on the batches that brought the lot, and on no others", () => {
    const day = "2025-03-10";
    const two = entry(`${day}-glue`, {
      batches: [
        sound("B-1", ["W-1"], day),
        sound("B-2", ["W-1"], day, { resin: { lot: "R-2" }, hardener: undefined }),
        sound("B-3", ["W-1"], day, { resin: undefined }),
      ],
    });
    const brought = (of: string): unknown[] =>
      pointOf([two, signing(), inEntry(recall(of), LATER)], { joints: ["W-1"] }).changes[0]?.restsOn.slice(2) ?? [];
    expect(brought("R-1")).toEqual([ref("batch", "B-1")]);
    expect(brought("H-1")).toEqual([ref("batch", "B-1"), ref("batch", "B-3")]);
    expect(brought("R-2")).toEqual([ref("batch", "B-2")]);
    expect(brought("S-1")).toEqual([ref("batch", "B-1"), ref("batch", "B-2"), ref("batch", "B-3")]);
  });

  it("is reopened by a pair from the day its last side was measured, whichever that was", () => {
    const [left, right] = SIDES.map((side) => measures(side));
    const tolerance = measures({ what: "left", pair: "P", side: "left", found: mm("62.0"), pairTolerance: mm("0.5") });
    if (!left || !right) throw new Error("two sides");
    for (const [before, then] of [
      [left, right],
      [right, left],
    ] as const) {
      const file = pointOf([GLUED, TESTS, inEntry(before, "2025-04-30"), signing(), inEntry(then, LATER)]);
      expect([file.state, file.changes.length, file.changes[0]?.about]).toEqual([
        "signed with things open",
        1,
        ref("entry", `${LATER}-it`),
      ]);
    }
    const thrice = pointOf([
      GLUED,
      TESTS,
      inEntry(tolerance, "2025-04-20"),
      inEntry(measures({ what: "left", pair: "P", side: "left", found: mm("62.0") }), "2025-04-30"),
      signing(),
      inEntry(right, LATER),
    ]);
    expect(thrice.changes[0]?.restsOn).toEqual(
      [`${LATER}-it`, "2025-04-30-it", "2025-04-20-it"].map((id) => ref("entry", id)),
    );
  });

  it("is signed with things open while one of its joints is not shown, though no later entry says why", () => {
    for (const [entries, sentence] of [
      [[GLUED, signing()], "Joint W-1 is pending."],
      [[GLUED, TESTS, inEntry(rework("W-1"), "2025-04-30"), signing()], "Joint W-1 is opened."],
      [[signing()], "Joint W-1 is not glued."],
    ] as const) {
      const file = pointOf(entries, { joints: ["W-1"] });
      expect(file).toMatchObject({ state: "signed with things open", changes: [] });
      expect(file.needs[0]?.sentence).toContain(sentence);
    }
  });

  it("tells what changed in the order of the record, and asks for another look as something that blocks", () => {
    const file = pointOf([
      GLUED,
      TESTS,
      signing(),
      inEntry(departs(), "2025-05-03"),
      entry("2025-05-02-x", recall("R-1")("2025-05-02-x", "2025-05-02")),
    ]);
    expect(
      told(file)
        .slice(0, 2)
        .map((sentence) => sentence.slice(0, 10)),
    ).toEqual(["Lot R-1, w", "Departure "]);
    const turned = pointOf([
      GLUED,
      TESTS,
      signing(),
      inEntry(measures(OUT), "2025-05-02"),
      inEntry(departs(), "2025-05-03"),
      inEntry(rework("W-1"), "2025-05-04"),
    ]);
    expect(
      told(turned)
        .slice(0, 3)
        .map((sentence) => sentence.slice(0, 4)),
    ).toEqual(["rib ", "Depa", "Glue"]);
    expect(file.needs.at(-1)).toEqual({
      about: { kind: "hold point", id: "CLOSE" },
      sentence: `It was signed on ${dateWords(SIGNED)}, and what was looked at has changed since.`,
      needs: "have it looked at again, with what has changed or was open",
      blocks: true,
      restsOn: [
        { kind: "hold point", id: "CLOSE" },
        { kind: "entry", id: `${SIGNED}-look` },
      ],
    });
    expect(file.changes[0]?.restsOn).toEqual([
      { kind: "lot", id: "R-1" },
      { kind: "entry", id: "2025-05-02-x" },
      { kind: "batch", id: "B-1" },
    ]);
  });

  it("is passed again once it is signed again, and blocked where the next look was not signed", () => {
    const again = (result: "signed" | "not signed"): Entry =>
      entry("2025-05-09-look", {
        inspections: [inspection("CLOSE", { entry: "2025-05-09-look", day: "2025-05-09", result })],
      });
    expect(
      pointOf([
        GLUED,
        TESTS,
        signing(),
        inEntry(departs({ acceptedBy: "ins", reference: "letter 4" }), LATER),
        again("signed"),
      ]),
    ).toMatchObject({ state: "passed", changes: [], needs: [] });
    expect(
      pointOf([
        GLUED,
        TESTS,
        signing(),
        inEntry(departs({ acceptedBy: "ins", reference: "letter 4" }), LATER),
        again("not signed"),
      ]),
    ).toMatchObject({ state: "blocked", changes: [] });
  });

  it("is reopened exactly where something later touches it, whatever else happens", () => {
    const touching: Happens[] = [
      glues("W-1"),
      rework("R-1"),
      recall("H-1"),
      reject("B-1"),
      departs(),
      raises({ before: "close-up" }),
      measures(OUT),
    ];
    const beside: Happens[] = [
      glues("F-1"),
      rework("F-1"),
      recall("R-2"),
      departs({ assembly: "fin" }),
      raises({ before: "flight" }),
      measures({ found: mm("61.2") }),
    ];
    fc.assert(
      fc.property(
        fc.subarray(beside),
        fc.option(fc.constantFrom(...touching), { nil: undefined }),
        fc.nat(6),
        (around, it, at) => {
          const all = [...around.slice(0, at), ...(it ? [it] : []), ...around.slice(at)].map((happens, n): Entry => {
            const id = `2025-05-${String(n + 2).padStart(2, "0")}-it`;
            return entry(id, happens(id, id.slice(0, 10)));
          });
          expect(pointOf([GLUED, TESTS, signing(), ...all]).state).toBe(it ? "reopened" : "passed");
        },
      ),
      { numRuns: 150 },
    );
  });
});
