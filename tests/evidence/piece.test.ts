import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { woodOf } from "../../src/evidence/piece/case.ts";
import type { PieceFile } from "../../src/evidence/types.ts";
import type { Batch, Piece, PieceTest, Procedure } from "../../src/record/types.ts";
import { batch, DAY, entry, glued, piece, procedure, test } from "./make.ts";
import { celsius, d, inches, mm, moment, mpa, newton, pc, range } from "./quantities.ts";

interface Case {
  readonly piece?: Partial<Piece>;
  readonly test?: Partial<PieceTest>;
  readonly procedure?: Partial<Procedure>;
  readonly batch?: Partial<Batch>;
}

function fileOf(c: Case): PieceFile {
  const made = glued([batch("B-1", { ...c.batch, pieces: [piece("B-1", 1, c.piece)] })], [test("B-1/1", c.test)], { procedures: [procedure(c.procedure)] });
  const file = reckon(made).pieces.get("B-1/1");
  if (!file) throw new Error("no piece");
  return file;
}

const verdict = (c: Case): string => fileOf(c).verdict;
const finding = (c: Case, rule: string) => fileOf(c).findings.find((one) => one.rule === rule);

describe("The overlap of a piece", () => {
  it.each([
    [mm("12.0"), "pass"], [mm("11.9"), "inconclusive"], [mm("18.0"), "pass"], [mm("18.1"), "inconclusive"],
  ])("of %o at 6.0 mm, against 2 to 3 thicknesses, is as the bound has it: %s", (overlap, expected) => {
    expect(verdict({ piece: { overlap } })).toBe(expected);
  });

  it("is held by three thicknesses exactly, whatever binary arithmetic makes of them", () => {
    expect(0.01905 / 0.00635).toBeGreaterThan(3);
    expect(verdict({ piece: { overlap: mm("19.05"), thickness: mm("6.35") } })).toBe("pass");
    expect(verdict({ piece: { overlap: inches(3, 4), thickness: inches(1, 4) } })).toBe("pass");
    expect(verdict({ piece: { overlap: inches(25, 32), thickness: inches(1, 4) } })).toBe("inconclusive");
  });

  it("is held to 2 to 3 thicknesses, named as the program's default, where the procedure of a three-leg piece is silent", () => {
    expect(verdict({ procedure: { overlap: undefined }, piece: { overlap: mm("18.0") } })).toBe("pass");
    expect(verdict({ procedure: { overlap: undefined }, piece: { overlap: mm("18.1") } })).toBe("inconclusive");
    expect(verdict({ procedure: { overlap: undefined }, piece: { overlap: mm("11.9") } })).toBe("inconclusive");
    expect(finding({ procedure: { overlap: undefined } }, "overlap")?.limit?.from).toMatchObject({ known: "common practice" });
    expect(finding({}, "overlap")?.limit?.from).toEqual({ text: "procedure: Three legs", known: "record" });
  });

  it.each([["thickness"], ["overlap"]] as const)("without %s cannot be held against the limits", (size) => {
    expect(verdict({ piece: { [size]: undefined } })).toBe("inconclusive");
    expect(finding({ piece: { [size]: undefined } }, "overlap")?.sentence).toBe(`No ${size} is noted, so nothing shows that a weak glue line would have been seen.`);
  });

  it("of a lap or block has limits only where the procedure gives them", () => {
    for (const form of ["single-lap", "block-shear"] as const) {
      expect(verdict({ procedure: { form, overlap: undefined }, piece: { overlap: mm("40.0"), thickness: undefined } })).toBe("pass");
      expect(verdict({ procedure: { form, overlap: range("at most 4 thicknesses", undefined, 4) }, piece: { overlap: mm("25.0") } })).toBe("inconclusive");
      expect(verdict({ procedure: { form, overlap: range("at most 4 thicknesses", undefined, 4) }, piece: { overlap: mm("24.0") } })).toBe("pass");
    }
  });

  it("too long says by how much a weak glue line could have passed, and whose strengths that rests on", () => {
    const said = finding({ piece: { overlap: mm("24.0") } }, "overlap");
    expect(said?.sentence).toBe(
      "An overlap of 24.0 mm at a thickness of 6.0 mm is 4.00 thicknesses, too long to show a weak glue line: by statics it would let pass one with " +
        "61 % of the wood's own shear strength (strengths of the wood: this program's default: clear Sitka spruce at 12 %, Wood Handbook FPL-GTR-190).",
    );
    const wood = { crushing: mpa("40"), shear: mpa("10") };
    expect(fileOf({ piece: { overlap: mm("24.0") }, procedure: { wood } }).revealing).toBeCloseTo(0.5, 9);
    expect(finding({ piece: { overlap: mm("24.0") }, procedure: { wood } }, "overlap")?.sentence).toContain("50 % of the wood's own shear strength (strengths of the wood: procedure: Three legs)");
  });

  it("hardly beyond a bound never reads as if it were on it", () => {
    const said = (overlap: string) => finding({ piece: { overlap: mm(overlap) } }, "overlap")?.sentence;
    expect(said("18.006")).toContain(" is 3.001 thicknesses, too long");
    expect(said("11.994")).toBe("An overlap of 11.994 mm at a thickness of 6.0 mm is 1.999 thicknesses, shorter than the procedure allows.");
  });

  it("too long says no more where statics let no weaker line pass, or say nothing of the form", () => {
    const wood = { crushing: mpa("40"), shear: mpa("10") };
    const short = range("1 to 1.5 thicknesses", 1, 1.5);
    const said = (c: Case) => finding(c, "overlap")?.sentence;
    expect(said({ procedure: { wood, overlap: short }, piece: { overlap: mm("12.0") } })).toBe("An overlap of 12.0 mm at a thickness of 6.0 mm is 2.00 thicknesses, too long to show a weak glue line.");
    expect(said({ procedure: { overlap: short, form: "single-lap" }, piece: { overlap: mm("30.0") } })).toBe("An overlap of 30.0 mm at a thickness of 6.0 mm is 5.00 thicknesses, too long to show a weak glue line.");
  });

  it("is reckoned with the procedure's own wood, else with a wood that is named as from memory", () => {
    expect(woodOf(procedure({ wood: { crushing: mpa("40"), shear: mpa("10") } }))).toEqual({ crushing: 40e6, shear: 10e6, from: { text: "procedure: Three legs", known: "record" } });
    expect(woodOf(procedure()).from).toEqual({ text: expect.stringContaining("Sitka spruce"), known: "memory" });
  });

  it("of a thickness of nothing is no overlap", () => {
    expect(finding({ piece: { thickness: mm("0.0") } }, "overlap")?.sentence).toBe("No usable overlap is noted, so nothing shows that a weak glue line would have been seen.");
    expect(finding({ piece: { thickness: undefined, overlap: undefined } }, "overlap")?.sentence).toContain("No overlap and no thickness is noted");
  });

  it("is a caution before the piece is broken", () => {
    const file = reckon(glued([batch("B-1", { pieces: [piece("B-1", 1, { overlap: mm("24.0") })] })], [])).pieces.get("B-1/1");
    expect(file?.findings.map(({ rule, severity }) => [rule, severity])).toEqual([["piece-broken", "waits"], ["overlap", "caution"]]);
  });
});

describe("The cure of a piece", () => {
  const broken = (day: string, time?: string) => ({ day, at: time === undefined ? undefined : moment(day, time) });

  it("counts from closing to breaking, and exactly the least cure is enough", () => {
    expect(verdict({ test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(fileOf({ test: broken("2025-03-13", "14:20") }).curedFor).toBe(3 * 86_400);
  });

  it("counts from the start of its day where a test has no time, from the end of its day where a batch has none", () => {
    expect(fileOf({ test: broken("2025-03-14") }).curedFor).toBe(3 * 86_400 + (9 * 60 + 40) * 60);
    expect(fileOf({ batch: { closed: undefined }, test: broken("2025-03-14", "12:00") }).curedFor).toBe(3 * 86_400 + 12 * 3600 + 1);
    expect(verdict({ batch: { closed: undefined }, test: broken("2025-03-13", "23:00") })).toBe("too early");
    expect(verdict({ batch: { closed: undefined }, test: broken("2025-03-14") })).toBe("pass");
    expect(fileOf({ test: broken(DAY, "14:00") }).curedFor).toBe(0);
  });

  it("says which times it assumed", () => {
    const said = (c: Case) => finding(c, "full-cure")?.sentence;
    expect(said({ test: broken("2025-03-12", "14:20") })).toBe("The record shows 2 d of cure, and 3 d are asked: broken too early, it proves nothing.");
    expect(said({ test: broken("2025-03-14") })).toBe("The record shows 3 d 9 h of cure, counted to the start of the day on which it was broken since no time is noted.");
    expect(said({ batch: { closed: undefined }, test: broken("2025-03-15", "12:00") })).toBe("The record shows 4 d 12 h of cure, counted from the end of the day on which it was glued since no time is noted.");
    expect(said({ batch: { closed: undefined }, test: broken("2025-03-15") })).toContain("since no times are noted.");
  });

  it("is held to three days, named as the program's default, where the procedure is silent", () => {
    expect(verdict({ procedure: { leastCure: undefined }, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ procedure: { leastCure: undefined }, test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(finding({ procedure: { leastCure: undefined } }, "full-cure")?.limit?.from.known).toBe("common practice");
    expect(finding({ procedure: { leastCure: { time: d("7"), temperature: celsius("20") } } }, "full-cure")?.limit).toEqual({ text: "at least 7 d of cure at 20 °C", from: { text: "procedure: Three legs", known: "record" } });
  });

  it("in a shop cooler than the least cure is for takes longer", () => {
    const leastCure = { time: d("3"), temperature: celsius("30") };
    const cool = (time: string) => ({ procedure: { leastCure }, test: broken("2025-03-16", time) });
    expect(verdict(cool("14:20"))).toBe("pass");
    expect(verdict(cool("14:19"))).toBe("too early");
    expect(finding(cool("14:19"), "full-cure")?.sentence).toBe("The record shows 5 d 23 h of cure, worth 2 d 23 h at 30.0 °C by the 20 °C noted when it was glued, and 3 d are asked: broken too early, it proves nothing.");
    expect(finding(cool("14:20"), "cure-warmth")).toMatchObject({ severity: "meets", sentence: "What its days of cure are worth at 30.0 °C is reckoned with the rate doubling for every 10 K, from the 20 °C noted when it was glued.", limit: { from: { known: "common practice" } } });
  });

  it("in a shop warmer than the least cure is for takes no less", () => {
    const leastCure = { time: d("3"), temperature: celsius("10") };
    expect(verdict({ procedure: { leastCure }, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ procedure: { leastCure }, test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(finding({ procedure: { leastCure }, test: broken("2025-03-13", "14:19") }, "full-cure")?.sentence).toContain("worth 5 d 23 h at 10.0 °C");
  });

  it("of no known temperature counts by days, with a caution", () => {
    const unknown = { procedure: { leastCure: { time: d("3"), temperature: celsius("30") } }, batch: { temperature: undefined } };
    expect(verdict({ ...unknown, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(finding({ ...unknown, test: broken("2025-03-13", "14:20") }, "cure-warmth")).toMatchObject({ severity: "caution", sentence: "No temperature of the cure is known, so only the days count; the least cure is for 30.0 °C." });
    expect(verdict({ ...unknown, procedure: { ...unknown.procedure, leastTemperature: celsius("20") }, test: broken("2025-03-13", "14:20") })).toBe("too early");
    expect(finding({ test: broken("2025-03-13", "14:20") }, "cure-warmth")).toBeUndefined();
  });
});

describe("Where a piece broke", () => {
  it("passes at exactly the procedure's share of wood failure and fails below it", () => {
    expect(verdict({ test: { woodFailure: pc("75") } })).toBe("pass");
    expect(verdict({ test: { woodFailure: pc("74") } })).toBe("fail");
    expect(verdict({ test: { failure: "mixed", woodFailure: pc("75") } })).toBe("pass");
    expect(verdict({ test: { failure: "mixed", woodFailure: pc("74") } })).toBe("fail");
  });

  it("is inconclusive for any share that no limit of the procedure says is enough", () => {
    const silent = { procedure: { woodFailure: undefined } };
    expect(verdict({ ...silent, test: { woodFailure: undefined } })).toBe("pass");
    expect(verdict({ ...silent, test: { woodFailure: pc("100") } })).toBe("pass");
    expect(verdict({ ...silent, test: { woodFailure: pc("99") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "mixed", woodFailure: pc("90") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "mixed", woodFailure: undefined } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "glue line" } })).toBe("fail");
    expect(finding({ ...silent }, "failure-mode")?.limit).toBeUndefined();
  });

  it("is told with what was noted and what is asked", () => {
    const said = (c: Case) => finding(c, "failure-mode")?.sentence;
    expect(said({})).toBe("It broke in the wood, 100 % wood failure.");
    expect(said({ test: { failure: "mixed", woodFailure: pc("60") } })).toBe("It broke partly in the wood and partly in the glue line, 60 % wood failure, and the procedure asks at least 75 %.");
    expect(said({ test: { failure: "glue line", woodFailure: undefined } })).toBe("It broke in the glue line, which fails in any shape and after any cure.");
    expect(said({ test: { woodFailure: undefined } })).toBe("It broke in the wood, with no percentage noted, and the procedure asks at least 75 %.");
    expect(said({ procedure: { woodFailure: undefined }, test: { failure: "mixed", woodFailure: undefined } })).toBe("It broke partly in the wood and partly in the glue line, with no percentage noted.");
    expect(finding({}, "failure-mode")?.limit?.text).toBe("at least 75 % wood failure");
  });
});

describe("The load of a piece", () => {
  it("at exactly the stress asked is enough: 1,080 N over two faces of 6 × 15 mm is 6 MPa", () => {
    expect(verdict({ test: { load: newton("1080") } })).toBe("pass");
    expect(verdict({ test: { load: newton("1079") } })).toBe("inconclusive");
    expect(fileOf({ test: { load: newton("1080") } }).stress).toBeCloseTo(6e6, 3);
    expect(finding({ test: { load: newton("1079") } }, "piece-load")?.sentence).toBe("1079 N put 5.99 MPa on the glue faces, less than 6 MPa: the wood gave way early and the glue line was not tried.");
  });

  it("of a lap or block is carried by one face", () => {
    for (const form of ["single-lap", "block-shear"] as const) {
      expect(verdict({ procedure: { form }, test: { load: newton("540") } })).toBe("pass");
      expect(verdict({ procedure: { form }, test: { load: newton("539") } })).toBe("inconclusive");
      expect(fileOf({ procedure: { form } }).revealing).toBeUndefined();
    }
  });

  it("without the sizes it takes is inconclusive where the procedure asks a stress", () => {
    expect(verdict({ piece: { width: undefined }, test: { load: newton("2000") } })).toBe("inconclusive");
    expect(finding({ piece: { width: undefined }, test: { load: newton("2000") } }, "piece-load")?.sentence).toBe("2000 N was read, but without width it gives no stress.");
    expect(finding({ piece: { width: mm("0.0") }, test: { load: newton("2000") } }, "piece-load")?.sentence).toBe("2000 N was read, but without usable sizes it gives no stress.");
    const block = { form: "block-shear", overlap: undefined } as const;
    expect(verdict({ procedure: block, piece: { overlap: undefined }, test: { load: newton("2000") } })).toBe("inconclusive");
    expect(verdict({ procedure: block, piece: { overlap: undefined } })).toBe("pass");
  });

  it("is asked for by nobody where the procedure gives no stress", () => {
    const silent = { procedure: { stress: undefined } };
    expect(verdict({ ...silent, test: { load: newton("1") } })).toBe("pass");
    expect(finding({ ...silent, test: { load: newton("1") } }, "piece-load")).toBeUndefined();
    expect(finding({}, "piece-load")).toMatchObject({ severity: "caution", sentence: "No load is noted, so the 6 MPa of the procedure could not be checked." });
  });
});

describe("A piece", () => {
  it("that is said to have been broken twice keeps its graver verdict", () => {
    for (const order of [["wood", "glue line"], ["glue line", "wood"]] as const) {
      const tests = order.map((failure, i) => test("B-1/1", { failure }, `2025-03-2${i}`));
      expect(reckon(glued([batch("B-1")], tests)).pieces.get("B-1/1")?.verdict).toBe("fail");
    }
  });

  it("broken twice to the same end is told by its first test", () => {
    const tests = ["2025-03-20", "2025-03-21"].map((day) => test("B-1/1", { failure: "glue line" }, day));
    expect(reckon(glued([batch("B-1")], tests)).pieces.get("B-1/1")?.test?.day).toBe("2025-03-20");
  });

  it("from timber that nobody recalled carries none", () => {
    expect(fileOf({ piece: { lot: "S-1" } }).findings.map(({ rule }) => rule)).toEqual(["failure-mode", "full-cure", "overlap", "piece-load"]);
  });

  it("from recalled timber carries a caution", () => {
    const recalls = [{ place: { file: "", line: 1, column: 1 }, entry: "2025-04-01-recall", day: "2025-04-01", lot: "S-1", why: "brash" }];
    const made = glued([batch("B-1", { pieces: [piece("B-1", 1, { lot: "S-1" })] })], [test("B-1/1")], { entries: [entry("2025-04-01-recall", { recalls })] });
    const file = reckon(made).pieces.get("B-1/1");
    expect(file?.verdict).toBe("pass");
    expect(file?.findings.at(-1)).toMatchObject({ rule: "piece-timber", severity: "caution", sentence: "It was made from lot S-1, recalled on 2025-04-01: brash." });
  });

  it("rests on its batch, the entry it was glued in and the entry it was broken in", () => {
    for (const one of fileOf({}).findings) {
      expect(one.about).toEqual({ kind: "piece", id: "B-1/1" });
      expect(one.restsOn).toEqual([
        { kind: "piece", id: "B-1/1" }, { kind: "batch", id: "B-1" }, { kind: "entry", id: "2025-03-10-glue" }, { kind: "entry", id: "2025-03-20-tests" },
      ]);
    }
  });
});
