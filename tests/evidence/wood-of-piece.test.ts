/** Of what wood a piece is, whether its lots can give its legs, where it broke, and what it can have shown. */
import { describe, expect, it } from "vitest";
import { caseOf } from "../../src/evidence/piece/case.ts";
import { failureMode } from "../../src/evidence/piece/failure.ts";
import { isSpruce, kindOf, lotsOfPiece, maybeSpruce } from "../../src/evidence/piece/lots.ts";
import { floorOf, shapeShows, strengthsOf } from "../../src/evidence/piece/strength.ts";
import { pieceFile } from "../../src/evidence/piece/verdict.ts";
import { legsOfLots } from "../../src/evidence/piece/wood.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Entry, Lot, Piece, PieceTest, Procedure } from "../../src/facts/types.ts";
import { batch, entry, glued, lot, piece, procedure, test } from "./make.ts";
import { mm, mpa, newton, pc } from "./quantities.ts";

const wood = (id: string, change: Partial<Lot> = {}) =>
  lot(id, { material: "timber", adhesive: undefined, species: "Sitka spruce", ...change });
const LOTS = [
  wood("S-1"),
  wood("S-9", { thickness: mm("9") }),
  wood("A-1", { species: "ash" }),
  wood("P-2", { material: "plywood", species: "birch", thickness: mm("2.0") }),
  wood("P-0", { material: "plywood", species: "birch" }),
];

function made(change: Partial<Piece>, how: Partial<Procedure> = {}, tests: PieceTest[] = [], entries: Entry[] = []) {
  const own = piece("B-1", 1, change);
  const glue = batch("B-1", { pieces: [own], timber: ["S-9", "A-1"] });
  const index = recordIndexOf(glued([glue], tests, { lots: LOTS, procedures: [procedure(how)], entries }));
  return { own, glue, index };
}
const caseFor = (change: Partial<Piece>, how: Partial<Procedure> = {}, tried?: PieceTest) => {
  const { own, glue, index } = made(change, how, tried ? [tried] : []);
  return caseOf(index, glue, own, tried);
};

describe("The lots of a piece", () => {
  const of = (change: Partial<Piece>) => {
    const { own, glue, index } = made(change);
    return lotsOfPiece(index, own, glue).map(({ id }) => id);
  };

  it("are those of its legs, its own, or of scraps those that were glued, each once", () => {
    expect(of({ lot: "S-9" })).toEqual(["S-9"]);
    expect(of({ lot: "S-1", scraps: true })).toEqual(["S-1"]);
    expect(of({ legs: [{ lot: "A-1" }, { lot: "P-2" }, { lot: "A-1" }] })).toEqual(["A-1", "P-2"]);
    expect(of({ lot: undefined, scraps: true })).toEqual(["S-9", "A-1"]);
    expect(of({ lot: undefined })).toEqual([]);
    expect(of({ lot: undefined, scraps: false })).toEqual([]);
  });
});

describe("The kind of wood", () => {
  it("is what it is and of which species, however that is written", () => {
    expect(kindOf(wood("X", { species: "  Sitka \t SPRUCE " }))).toBe("timber sitka spruce");
    expect(kindOf(wood("X", { species: "birch", material: "plywood" }))).toBe("plywood birch");
    expect(kindOf(wood("X", { species: undefined }))).toBeUndefined();
    expect(kindOf(wood("X", { species: "  " }))).toBeUndefined();
  });

  it("is not known by a name that leaves it open", () => {
    const open = [
      "unknown",
      "Unknown softwood",
      "?",
      "ash?",
      "not known",
      "various",
      "mixed",
      "spruce or larch",
      "---",
    ];
    expect(open.map((species) => kindOf(wood("X", { species })))).toEqual(open.map(() => undefined));
    expect(kindOf(wood("X", { species: "Norway pine, air-dried" }))).toBe("timber norway pine, air-dried");
  });

  it("is spruce by its name as a word of its own, and plywood never", () => {
    const spruce = (species: string | undefined, material: Lot["material"] = "timber") =>
      isSpruce(wood("X", { species, material }));
    const sure = ["spruce", "Sitka  spruce", "European SPRUCE", "Canadian Sitka spruce"];
    expect(sure.filter((name) => !spruce(name))).toEqual([]);
    const others = [
      "no spruce, larch",
      "Hemlock, sold as spruce",
      "hemlock sold as spruce",
      "not spruce",
      "spruce pine",
    ];
    expect([...others, "sprucelike", "spruce 2", "ash", "", undefined].filter((name) => spruce(name))).toEqual([]);
    expect(spruce("Sitka spruce", "plywood")).toBe(false);
  });

  it("may be spruce where its name does not say another species", () => {
    const maybe = (species: string | undefined, material: Lot["material"] = "timber") =>
      maybeSpruce(wood("X", { species, material }));
    expect(["Spruce, Sitka", "no spruce, larch", "unknown", undefined].filter((name) => !maybe(name))).toEqual([]);
    expect([maybe("ash"), maybe("sprucelike"), maybe("spruce", "plywood"), maybe(undefined, "plywood")]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });
});

describe("A leg", () => {
  const wrong = (change: Partial<Piece>, tried?: PieceTest) => {
    const check = legsOfLots(caseFor(change, {}, tried));
    return check && [check.finding.severity, check.finding.values, check.verdict];
  };
  const of = (lotId: string, thickness?: string) => ({
    lot: undefined,
    thickness: undefined,
    legs: [{ lot: lotId, ...(thickness !== undefined && { thickness: mm(thickness) }) }],
  });

  it("of timber is no thicker than its plank, where that is known", () => {
    expect(wrong(of("S-9", "9"))).toBeUndefined();
    expect(wrong(of("S-9", "9.1"))).toEqual([
      "caution",
      { lot: "S-9", leg: "9.1 mm", of: "9 mm", material: "timber" },
      undefined,
    ]);
    expect(wrong(of("S-9", "1"))).toBeUndefined();
    expect(wrong(of("S-1", "99"))).toBeUndefined();
    expect(wrong(of("S-9"))).toBeUndefined();
  });

  it("of plywood is as thick as its sheet within a tenth, and of a sheet of which no thickness is noted shows nothing", () => {
    expect(["1.8", "2.0", "2.2"].map((thick) => wrong(of("P-2", thick)))).toEqual([undefined, undefined, undefined]);
    for (const thick of ["1.79", "2.21", "6.35"]) expect(wrong(of("P-2", thick))?.[0]).toBe("caution");
    expect(wrong(of("P-0", "2.0"))?.[1]).toEqual({ lot: "P-0", leg: "2.0 mm", of: undefined, material: "plywood" });
    expect(wrong(of("P-2"))).toBeUndefined();
  });

  it("has its own thickness, else that of the piece, and so has a piece of one lot", () => {
    expect(wrong({ legs: [{ lot: "S-1" }, { lot: "P-2" }], thickness: mm("6.0") })?.[1]).toEqual({
      lot: "P-2",
      leg: "6.0 mm",
      of: "2.0 mm",
      material: "plywood",
    });
    expect(wrong({ legs: [{ lot: "P-2", thickness: mm("2.0") }], thickness: mm("6.0") })).toBeUndefined();
    expect(wrong({ lot: "P-2", thickness: mm("6.0") })?.[0]).toBe("caution");
    expect(wrong({ lot: "P-2", thickness: mm("2.0") })).toBeUndefined();
    expect(wrong({ lot: undefined, scraps: true, thickness: mm("99") })).toBeUndefined();
  });

  it("that its lot cannot give leaves a broken piece without a verdict, and rests on that lot", () => {
    const tried = test("B-1/1");
    expect(wrong({ lot: "S-9", thickness: mm("12") }, tried)).toEqual([
      "unproven",
      { lot: "S-9", leg: "12 mm", of: "9 mm", material: "timber" },
      "inconclusive",
    ]);
    const { finding } = legsOfLots(caseFor({ lot: "S-9", thickness: mm("12") })) ?? {};
    expect([finding?.code, finding?.restsOn.at(-1)]).toEqual(["piece-wood/leg-of-lot", { kind: "lot", id: "S-9" }]);
  });
});

describe("Where a piece broke", () => {
  const broke = (change: Partial<PieceTest>, how: Partial<Procedure> = {}, own: Partial<Piece> = {}) => {
    const tried = test("B-1/1", { woodFailure: undefined, ...change });
    const { finding, verdict } = failureMode(caseFor(own, how, tried), tried);
    return [finding.severity, finding.code, finding.values, verdict];
  };
  const none = { woodFailure: undefined };

  it("tells nothing of the glue where it was crushed or not opened", () => {
    for (const failure of ["crushed", "not opened"] as const)
      expect(broke({ failure, woodFailure: pc("100") })).toEqual([
        "unproven",
        "failure-mode/not-the-bond",
        { failure, share: "100 %" },
        "inconclusive",
      ]);
  });

  it("counts the face ply as wood only where the procedure says so and a leg is of plywood", () => {
    const face = (counts: boolean | undefined, own: Partial<Piece>) =>
      broke({ failure: "face ply", woodFailure: pc("100") }, { facePlyCounts: counts }, own);
    const ply = { lot: undefined, legs: [{ lot: "S-1" }, { lot: "P-2" }] };
    const held = ["meets", "failure-mode/held", { failure: "face ply", share: "100 %" }, undefined];
    const not = ["unproven", "failure-mode/face-ply", { failure: "face ply", share: "100 %" }, "inconclusive"];
    expect(face(true, ply)).toEqual(held);
    expect([face(undefined, ply), face(false, ply), face(true, {})]).toEqual([not, not, not]);
  });

  it("fails in the glue line, and by a share of wood below the one asked, at that share not", () => {
    expect(broke({ failure: "glue line" })).toEqual([
      "rejects",
      "failure-mode/glue-line",
      { failure: "glue line", share: undefined },
      "fail",
    ]);
    const few = ["rejects", "failure-mode/too-little-wood", { failure: "mixed", share: "74 %", asked: "75 %" }, "fail"];
    expect(broke({ failure: "mixed", woodFailure: pc("74") })).toEqual(few);
    const held = (failure: string, share?: string) => ["meets", "failure-mode/held", { failure, share }, undefined];
    expect(broke({ failure: "mixed", woodFailure: pc("75") })).toEqual(held("mixed", "75 %"));
    expect(broke({ failure: "wood" }, none)).toEqual(held("wood"));
    expect(broke({ failure: "wood", woodFailure: pc("100") }, none)).toEqual(held("wood", "100 %"));
  });

  it("shows nothing without the share that is asked, or with one that nothing says is enough", () => {
    const silent = (failure: string, asked?: string) => [
      "unproven",
      "failure-mode/no-share",
      { failure, share: undefined, asked },
      "inconclusive",
    ];
    expect(broke({ failure: "wood" })).toEqual(silent("wood", "75 %"));
    expect(broke({ failure: "mixed" })).toEqual(silent("mixed", "75 %"));
    expect(broke({ failure: "mixed" }, none)).toEqual(silent("mixed"));
    const free = (failure: string, share: string) => [
      "unproven",
      "failure-mode/no-limit",
      { failure, share },
      "inconclusive",
    ];
    expect(broke({ failure: "wood", woodFailure: pc("99") }, none)).toEqual(free("wood", "99 %"));
    expect(broke({ failure: "mixed", woodFailure: pc("100") }, none)).toEqual(free("mixed", "100 %"));
  });

  it("names the procedure's share as its limit, and none where that has none", () => {
    const limit = (how: Partial<Procedure>) => {
      const tried = test("B-1/1");
      return failureMode(caseFor({}, how, tried), tried).finding.limit;
    };
    expect(limit({})).toEqual({
      code: "limit/wood-failure",
      values: { asked: "75 %" },
      from: { code: "source/procedure", values: { title: "Three legs" }, known: "record" },
    });
    expect(limit(none)).toBeUndefined();
  });
});

describe("The strengths that a piece is reckoned with", () => {
  it("are the procedure's, else those of spruce where every leg is of it", () => {
    const own = { crushing: mpa("30"), shear: mpa("6") };
    const of = (how: Partial<Procedure>, ...ids: string[]) =>
      strengthsOf(
        procedure(how),
        ids.flatMap((id) => LOTS.filter((one) => one.id === id)),
      );
    expect(of({ wood: own })).toEqual({
      crushing: 30e6,
      shear: 6e6,
      from: { code: "source/procedure", values: { title: "Three legs" }, known: "record" },
    });
    expect(of({}, "S-1", "S-9")?.from).toEqual({ code: "source/sitka-spruce", values: {}, known: "memory" });
    expect([of({}), of({}, "A-1"), of({}, "S-1", "A-1"), of({}, "A-1", "S-1")]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("show as much as the legs bear: of a lap of one face half as much, of a block of three thicknesses all", () => {
    const woodOf = {
      crushing: 30e6,
      shear: 10e6,
      from: { code: "source/record", values: {}, known: "record" },
    } as const;
    const three = shapeShows("three-leg", 3, woodOf);
    expect(three).toBeGreaterThan(0);
    expect(shapeShows("single-lap", 6, woodOf)).toBe(three);
    expect(shapeShows("block-shear", 3, woodOf)).toBe(1);
    expect(shapeShows("block-shear", 30, woodOf)).toBe(shapeShows("single-lap", 30, woodOf));
    expect(floorOf(woodOf)).toBe(three);
  });
});

describe("A piece file", () => {
  const file = (tests: PieceTest[], change: Partial<Piece> = {}, entries: Entry[] = []) => {
    const { own, glue, index } = made(change, { wood: { crushing: mpa("30"), shear: mpa("10") } }, tests, entries);
    return pieceFile(index, glue, own);
  };

  it("of several tests holds the gravest, whichever came first", () => {
    const at = (id: string, change: Partial<PieceTest>) => test("B-1/1", { entry: id, ...change }, id.slice(0, 10));
    const [good, bad, lost] = [
      at("2025-03-20-tests", {}),
      at("2025-03-21-tests", { failure: "glue line" }),
      at("2025-03-22-tests", { failure: "crushed" }),
    ];
    expect(file([good, bad]).verdict).toBe("fail");
    expect(file([at("2025-03-19-tests", { failure: "glue line" }), good]).verdict).toBe("fail");
    expect(file([good, lost]).verdict).toBe("inconclusive");
    expect(file([bad, lost]).verdict).toBe("fail");
    expect(file([]).verdict).toBe("not broken");
    const early = at("2025-03-11-tests", { at: undefined });
    expect([file([early, good]).verdict, file([lost, early]).verdict]).toEqual(["too early", "too early"]);
    const twice = file([good, at("2025-03-23-tests", {})]);
    expect(twice.test).toBe(good);
  });

  it("shows by its shape, and no more than the load that was read", () => {
    const read = (load?: string) => file([test("B-1/1", { load: load === undefined ? undefined : newton(load) })]);
    const { revealing = 0 } = read("1800");
    const stress = (newtons: number) => newtons / (2 * 0.006 * 0.015);
    expect(read("1260").atMost).toBeCloseTo(Math.min(revealing, stress(1260) / 10e6), 9);
    expect(read("90").atMost).toBeCloseTo(stress(90) / 10e6, 9);
    expect(read("9000").atMost).toBe(revealing);
    expect(read().atMost).toBe(revealing);
    expect(file([test("B-1/1")], { overlap: undefined }).atMost).toBeUndefined();
    expect(file([test("B-1/1")], { thickness: undefined }).atMost).toBeUndefined();
  });

  it("tells of a recalled lot of its own, and of none that was only glued", () => {
    const recalls = ["S-1", "S-9"].map((of) => ({
      ...{ place: { file: "", line: 1, column: 1 }, entry: "2025-04-01-recall", day: "2025-04-01" },
      ...{ lot: of, why: "mislabelled" },
    }));
    const recalled = (change: Partial<Piece>) =>
      file([], change, [entry("2025-04-01-recall", { recalls })])
        .findings.filter(({ rule }) => rule === "piece-timber")
        .map(({ values }) => values);
    const told = (of: string) => [{ lot: of, day: "2025-04-01", why: "mislabelled" }];
    expect(recalled({ lot: "S-9" })).toEqual(told("S-9"));
    expect(recalled({ lot: undefined, legs: [{ lot: "A-1" }, { lot: "S-1" }] })).toEqual(told("S-1"));
    expect(recalled({ lot: "A-1" })).toEqual([]);
    expect(recalled({ lot: undefined, scraps: true })).toEqual([]);
  });
});
