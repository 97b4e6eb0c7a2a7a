import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Amendment, Change } from "../../src/facts/types.ts";
import { assembly, batch, entry, glued, holdPoint, joint, test } from "./make.ts";

const place = { file: "made.md", line: 1, column: 1 };
const BY = "2025-04-01-mended";
const change = (more: Partial<Change>): Change => ({
  place,
  about: { kind: "batch", id: "B-1" },
  fact: "Resin",
  value: "mass",
  was: ["41.0 g"],
  is: ["40.0 g"],
  needs: [],
  audience: "public",
  ...more,
});
const amendment = (changes: readonly Change[], why = "misread"): Amendment => ({
  place,
  entry: "2025-03-10-glue",
  by: BY,
  day: "2025-04-01",
  why,
  prose: false,
  changes,
  withheld: false,
});

function findingsOf(amendments: readonly Amendment[], of: "batch" | "piece") {
  const evidence = reckon(glued([batch("B-1")], [test("B-1/1")], { entries: [entry(BY, { amendments })] }));
  const findings = of === "batch" ? evidence.batches.get("B-1")?.findings : evidence.pieces.get("B-1/1")?.findings;
  return findings?.filter(({ rule }) => rule === "amended") ?? [];
}

describe("What was amended of a batch or a piece", () => {
  it("is a caution of that thing alone, with what was and what is", () => {
    const [found, ...rest] = findingsOf([amendment([change({})])], "batch");
    expect(rest).toEqual([]);
    expect(found).toMatchObject({
      severity: "caution",
      about: { kind: "batch", id: "B-1" },
      sentence: "Amended on 1 April 2025: Resin, mass: was 41.0 g, is 40.0 g, because: misread.",
    });
    expect(findingsOf([amendment([change({})])], "piece")).toEqual([]);
    expect(
      findingsOf(
        [amendment([change({ about: { kind: "piece", id: "B-1/1" }, fact: "Test of B-1/1", value: "load" })])],
        "piece",
      )[0]?.about,
    ).toEqual({ kind: "piece", id: "B-1/1" });
    expect(findingsOf([amendment([change({ about: { kind: "piece", id: "B-1/1" } })])], "batch")).toEqual([]);
  });

  it("says where nothing stood before, what was struck out, and what was the whole fact", () => {
    const said = (more: Partial<Change>) => findingsOf([amendment([change(more)], "it was so!")], "batch")[0]?.sentence;
    expect(said({ was: undefined })).toBe(
      "Amended on 1 April 2025: Resin, mass: was not written down, is 40.0 g, because: it was so!",
    );
    expect(said({ is: undefined, value: undefined })).toBe(
      "Amended on 1 April 2025: Resin: was 41.0 g, is struck out, because: it was so!",
    );
  });

  it("rests on both entries and on all that it names or needs", () => {
    const named = change({
      value: "lot",
      was: [{ kind: "lot", id: "R-2" }],
      is: ["lot ", { kind: "lot", id: "R-1" }],
      needs: [{ kind: "joint", id: "W-1" }],
    });
    const [found] = findingsOf([amendment([named])], "batch");
    expect(found?.sentence).toContain("was R-2, is lot R-1");
    expect(found?.restsOn).toEqual([
      { kind: "batch", id: "B-1" },
      { kind: "entry", id: "2025-03-10-glue" },
      { kind: "entry", id: BY },
      { kind: "joint", id: "W-1" },
      { kind: "lot", id: "R-2" },
      { kind: "lot", id: "R-1" },
    ]);
  });

  it("is told in the order of the record, and not where it names a person", () => {
    const person = change({ value: "witness", was: [{ kind: "person", id: "ann" }], is: ["nobody"] });
    const later = change({ value: "volume" });
    expect(
      findingsOf([amendment([change({}), person]), amendment([later])], "batch").map(
        ({ sentence }) => sentence.split(":")[1],
      ),
    ).toEqual([" Resin, mass", " Resin, volume"]);
    expect(
      findingsOf([amendment([change({ was: ["nobody"], is: [{ kind: "person", id: "ann" }] })])], "batch"),
    ).toEqual([]);
  });
});

describe("What an amendment touches", () => {
  const OF_TEST = change({ about: { kind: "piece", id: "B-1/1" }, fact: "Test of B-1/1", value: "load" });
  const NEW_PIECE: Change = {
    ...change({ about: { kind: "piece", id: "B-1/1" }, fact: "Piece B-1/1", value: undefined, was: undefined }),
    is: ["procedure legs"],
  };
  const of = (changes: readonly Change[]) =>
    reckon(
      glued([batch("B-1")], [test("B-1/1")], {
        entries: [entry(BY, { amendments: [amendment(changes)] })],
        assemblies: [assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("CLOSE")] })],
      }),
    );

  it("says so on the joint, for its batches and for their pieces", () => {
    const said = of([change({}), OF_TEST])
      .joints.get("W-1")
      ?.findings.filter(({ rule }) => rule === "amended");
    expect(said?.map(({ sentence }) => sentence)).toEqual([
      "Amended on 1 April 2025: Resin, mass: was 41.0 g, is 40.0 g, because: misread.",
      "Amended on 1 April 2025: Test of B-1/1, load: was 41.0 g, is 40.0 g, because: misread.",
    ]);
    expect(said?.[1]?.restsOn).toContainEqual({ kind: "piece", id: "B-1/1" });
  });

  it("says so at a hold point that nobody has signed", () => {
    expect(of([OF_TEST]).holdPoints.get("CLOSE")?.remarks).toMatchObject([
      { code: "remark/amended", values: { fact: "Test of B-1/1" }, about: { kind: "hold point", id: "CLOSE" } },
    ]);
    expect(of([]).holdPoints.get("CLOSE")?.remarks).toEqual([]);
  });

  it("tells of a piece that was declared later than the day it was glued", () => {
    const told = (changes: readonly Change[]) =>
      of(changes)
        .batches.get("B-1")
        ?.findings.filter(({ code }) => code === "test-pieces/declared-later")
        .map(({ severity, sentence }) => `${severity}: ${sentence}`);
    expect(told([NEW_PIECE])).toEqual([
      "caution: B-1/1 was glued on 10 March 2025 and written down only by an amendment of 1 April 2025: a piece is declared the day it is glued.",
    ]);
    expect(told([{ ...NEW_PIECE, was: ["procedure legs"] }])).toEqual([]);
    expect(told([{ ...NEW_PIECE, value: "width" }])).toEqual([]);
    expect(told([{ ...NEW_PIECE, fact: "Test of B-1/1" }])).toEqual([]);
  });
});
