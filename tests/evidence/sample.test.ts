/** Which pieces are samples of a joint, and what lacks where its wood is not tried. */
import { describe, expect, it } from "vitest";
import { sampleWood } from "../../src/evidence/batch/sample.ts";
import { lot } from "./make.ts";
import { asked, type Judged } from "./one-rule.ts";

const wood = (id: string, species?: string, material: "timber" | "plywood" = "timber") =>
  lot(id, { material, adhesive: undefined, species });
const LOTS = [
  wood("S-1", "Sitka spruce"),
  wood("S-2", " sitka  SPRUCE "),
  wood("A-1", "ash"),
  wood("P-1", "Sitka spruce", "plywood"),
  wood("U-1"),
  wood("U-2", " "),
];

/** Of what was glued, and the pieces: B-1/1, B-1/2 and so on. */
const of = (timber: readonly string[], ...pieces: readonly Judged[]) =>
  asked(sampleWood, { batch: { timber }, pieces, lots: LOTS });
const legs = (...lots: string[]): Judged => ({ lot: undefined, legs: lots.map((one) => ({ lot: one })) });
const SCRAPS: Judged = { lot: undefined, scraps: true };
const lots = (...ids: string[]) => ids.map((id) => `lot ${id}`);
const covered = (...ids: string[]) => ["meets sample-wood/covered", { lots: ids }, lots(...ids)];
const lacking = (severity: "waits" | "unproven", ...ids: string[]) => [
  `${severity} sample-wood/lacking`,
  { lots: ids },
  lots(...ids),
];
const otherLot = (...ids: string[]) => ["caution sample-wood/other-lot", { lots: ids }, lots(...ids)];
const numbered = (numbers: number[]) => numbers.map((n) => `B-1/${n}`);
const otherWood = (...numbers: number[]) => [
  "caution sample-wood/other-wood",
  { pieces: numbered(numbers) },
  numbered(numbers).map((id) => `piece ${id}`),
];
const noLot = (...numbers: number[]) => [
  "caution sample-wood/no-lot",
  { pieces: numbered(numbers) },
  numbered(numbers).map((id) => `piece ${id}`),
];

describe("A piece is a sample of the joint", () => {
  it("where it is of a lot that was glued, or of another of the same kind and species however that is written", () => {
    expect(of(["S-1"], { lot: "S-1" })).toEqual([covered("S-1")]);
    expect(of(["S-1"], { lot: "S-2" })).toEqual([covered("S-1"), otherLot("S-1")]);
    expect(of(["U-1"], { lot: "U-1" })).toEqual([covered("U-1")]);
    expect(of(["S-1"], SCRAPS)).toEqual([covered("S-1")]);
  });

  it("and not where it is of another species or kind, or of one that nothing tells to be the same", () => {
    for (const [glued, tried] of [
      ["S-1", "A-1"],
      ["S-1", "P-1"],
      ["P-1", "S-1"],
      ["S-1", "U-1"],
      ["U-1", "U-2"],
      ["U-2", "U-1"],
    ] as const)
      expect(of([glued], { lot: tried })).toEqual([otherWood(1), lacking("unproven", glued)]);
  });

  it("only with every leg of a kind that was glued", () => {
    expect(of(["S-1"], legs("S-1", "A-1"))).toEqual([otherWood(1), lacking("unproven", "S-1")]);
    expect(of(["A-1"], legs("S-1", "A-1"))).toEqual([otherWood(1), lacking("unproven", "A-1")]);
    expect(of(["S-1", "A-1"], legs("A-1", "S-1"))).toEqual([covered("S-1", "A-1")]);
    expect(of(["S-1", "A-1"], legs("S-2", "A-1"))).toEqual([covered("S-1", "A-1"), otherLot("S-1")]);
  });

  it("not for being called scraps where its own lot is another wood", () => {
    expect(of(["S-1"], { scraps: true, lot: "A-1" })).toEqual([otherWood(1), lacking("unproven", "S-1")]);
    expect(of(["S-1"], { ...legs("A-1"), scraps: true })).toEqual([otherWood(1), lacking("unproven", "S-1")]);
    expect(of(["S-1"], { scraps: true, lot: "S-2" })).toEqual([covered("S-1"), otherLot("S-1")]);
  });

  it("not where nothing says of what wood it is", () => {
    expect(of(["S-1"], { lot: undefined })).toEqual([noLot(1), lacking("unproven", "S-1")]);
    expect(of(["S-1"], { lot: "S-1" }, { lot: undefined }, { lot: "A-1" })).toEqual([
      noLot(2),
      otherWood(3),
      covered("S-1"),
    ]);
  });
});

describe("The wood of a joint", () => {
  it("is covered where each kind that was glued has a piece that passed, in one or apart", () => {
    expect(of(["S-1", "A-1"], { lot: "S-1" }, { lot: "A-1" })).toEqual([covered("S-1", "A-1")]);
    expect(of(["S-1", "A-1"], { lot: "S-1" })).toEqual([lacking("unproven", "A-1"), otherLot("A-1")]);
    expect(of(["S-1", "A-1"], SCRAPS)).toEqual([covered("S-1", "A-1")]);
  });

  it("waits for what is not broken yet, and for nothing else", () => {
    const [spruce, ash] = [{ lot: "S-1" }, { lot: "A-1" }];
    const unbroken = { verdict: "not broken" } as const;
    expect(of(["S-1"], { ...spruce, ...unbroken })).toEqual([lacking("waits", "S-1")]);
    expect(of(["S-1", "A-1"], spruce, { ...ash, ...unbroken })).toEqual([lacking("waits", "A-1")]);
    expect(of(["S-1", "A-1"], { ...spruce, ...unbroken })).toEqual([
      lacking("unproven", "S-1", "A-1"),
      otherLot("A-1"),
    ]);
    for (const verdict of ["inconclusive", "too early", "fail"] as const)
      expect(of(["S-1"], { ...spruce, verdict })).toEqual([lacking("unproven", "S-1")]);
    expect(of(["S-1"], { ...spruce, verdict: "inconclusive" }, spruce)).toEqual([covered("S-1")]);
  });

  it("is not known where nothing says what was glued, unless every piece is of its scraps", () => {
    const nothing = ["unproven sample-wood/nothing-noted", {}, []];
    expect(of([], { lot: "S-1" })).toEqual([nothing]);
    expect(of([], SCRAPS, { lot: "S-1" })).toEqual([nothing]);
    expect(of([], SCRAPS)).toEqual([covered()]);
    expect(of([], { scraps: true, lot: "A-1" })).toEqual([otherWood(1)]);
  });

  it("is not asked of a batch in no joint, nor where all pieces are of a trial", () => {
    expect(asked(sampleWood, { batch: { joints: [] }, pieces: [{}], lots: LOTS })).toEqual([]);
    expect(of(["S-1"])).toEqual([]);
    expect(of(["S-1"], { lot: "A-1", trial: "T" })).toEqual([]);
    expect(of([], SCRAPS, { lot: undefined, trial: "T" })).toEqual([covered()]);
    expect(of(["S-1"], { lot: "A-1", trial: "T" }, { lot: "S-1" })).toEqual([covered("S-1")]);
  });
});
