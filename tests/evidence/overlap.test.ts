import { describe, expect, it } from "vitest";
import { isBlock, shapeShows } from "../../src/evidence/piece/strength.ts";
import { reckon } from "./reckoned.ts";
import { strengthsOf } from "../../src/evidence/piece/strength.ts";
import { batch, glued, lot, piece, procedure } from "./make.ts";
import { type Case, fileOf, verdict, finding } from "./one-piece.ts";
import { inches, mm, mpa, range } from "./quantities.ts";

/** So that the shape alone decides. */
const NO_STRESS = { procedure: { stress: undefined } } as const;

describe("The overlap of a piece", () => {
  it.each([
    [mm("12.0"), "pass"],
    [mm("11.9"), "inconclusive"],
    [mm("18.0"), "pass"],
    [mm("18.1"), "inconclusive"],
  ])("of %o at 6.0 mm, against 2 to 3 thicknesses, is as the bound has it: %s", (overlap, expected) => {
    expect(verdict({ ...NO_STRESS, piece: { overlap } })).toBe(expected);
  });

  it("is held by three thicknesses exactly, whatever binary arithmetic makes of them", () => {
    expect(0.01905 / 0.00635).toBeGreaterThan(3);
    expect(verdict({ ...NO_STRESS, piece: { overlap: mm("19.05"), thickness: mm("6.35") } })).toBe("pass");
    expect(verdict({ ...NO_STRESS, piece: { overlap: inches(3, 4), thickness: inches(1, 4) } })).toBe("pass");
    expect(verdict({ piece: { overlap: inches(25, 32), thickness: inches(1, 4) } })).toBe("inconclusive");
  });

  it("is held to 2 to 3 thicknesses, named as the program's default, where the procedure of a three-leg piece is silent", () => {
    expect(verdict({ procedure: { overlap: undefined, stress: undefined }, piece: { overlap: mm("18.0") } })).toBe(
      "pass",
    );
    expect(verdict({ procedure: { overlap: undefined }, piece: { overlap: mm("18.1") } })).toBe("inconclusive");
    expect(verdict({ procedure: { overlap: undefined }, piece: { overlap: mm("11.9") } })).toBe("inconclusive");
    expect(finding({ procedure: { overlap: undefined } }, "overlap")?.limit?.from).toMatchObject({
      known: "common practice",
    });
    expect(finding({}, "overlap")?.limit?.from).toEqual({ text: "procedure: Three legs", known: "record" });
  });

  it.each([["thickness"], ["overlap"]] as const)("without %s cannot be held against the limits", (size) => {
    expect(verdict({ piece: { [size]: undefined } })).toBe("inconclusive");
    expect(finding({ piece: { [size]: undefined } }, "overlap")?.sentence).toBe(
      `No ${size} is noted, so nothing shows that a weak glue line would have been seen.`,
    );
  });

  it("of a lap or block has limits only where the procedure gives them, and sizes all the same", () => {
    for (const form of ["single-lap", "block-shear"] as const) {
      expect(
        verdict({ procedure: { form, overlap: undefined }, piece: { overlap: mm("40.0"), thickness: undefined } }),
      ).toBe("inconclusive");
      expect(
        verdict({
          procedure: { form, overlap: range("at most 4 thicknesses", undefined, 4) },
          piece: { overlap: mm("25.0") },
        }),
      ).toBe("inconclusive");
      expect(
        verdict({
          procedure: { form, overlap: range("at most 4 thicknesses", undefined, 4) },
          piece: { overlap: mm("24.0") },
        }),
      ).toBe("pass");
      expect(verdict({ procedure: { form, overlap: undefined }, piece: { overlap: mm("24.0") } })).toBe("pass");
    }
  });

  it("of a block asks for no wood, since nothing of it is crushed, and of a lap does", () => {
    const shape = (form: "block-shear" | "single-lap") => {
      const made = glued([batch("B-1", { timber: [], pieces: [piece("B-1", 1, { lot: undefined })] })], [], {
        procedures: [procedure({ form, overlap: undefined })],
      });
      const file = reckon(made).pieces.get("B-1/1");
      return file?.findings.filter(({ rule }) => rule === "overlap").map(({ code, severity }) => [code, severity]);
    };
    expect(shape("block-shear")).toEqual([["overlap/within", "meets"]]);
    expect(shape("single-lap")).toEqual([["overlap/wood-not-known", "caution"]]);
  });

  it("of a piece whose wood is not known names the limit that it is within all the same", () => {
    const made = glued([batch("B-1", { timber: [], pieces: [piece("B-1", 1, { lot: undefined })] })], []);
    const said = reckon(made)
      .pieces.get("B-1/1")
      ?.findings.find(({ code }) => code === "overlap/wood-not-known");
    expect(said?.limit).toEqual({
      text: "overlap 2 to 3 thicknesses",
      from: { text: "procedure: Three legs", known: "record" },
    });
  });

  it("too long says by how much a weak glue line could have passed, and whose strengths that rests on", () => {
    const said = finding({ piece: { overlap: mm("24.0") } }, "overlap");
    expect(said?.sentence).toBe(
      "An overlap of 24.0 mm at a thickness of 6.0 mm is 4.00 thicknesses, too long to show a weak glue line: by statics it would let pass one with " +
        "61 % of the wood's own shear strength (strengths of the wood: this program's default: clear Sitka spruce at 12 %, Wood Handbook FPL-GTR-190).",
    );
    const wood = { crushing: mpa("40"), shear: mpa("10") };
    expect(fileOf({ piece: { overlap: mm("24.0") }, procedure: { wood } }).revealing).toBeCloseTo(0.5, 9);
    expect(finding({ piece: { overlap: mm("24.0") }, procedure: { wood } }, "overlap")?.sentence).toContain(
      "50 % of the wood's own shear strength (strengths of the wood: procedure: Three legs)",
    );
  });

  it("hardly beyond a bound never reads as if it were on it", () => {
    const said = (overlap: string) => finding({ piece: { overlap: mm(overlap) } }, "overlap")?.sentence;
    expect(said("18.006")).toContain(" is 3.001 thicknesses, too long");
    expect(said("11.994")).toBe(
      "An overlap of 11.994 mm at a thickness of 6.0 mm is 1.999 thicknesses, shorter than the limit allows.",
    );
  });

  it("too long says no more where statics let no weaker line pass, or say nothing of the form", () => {
    const wood = { crushing: mpa("60"), shear: mpa("10") };
    const short = range("1 to 1.5 thicknesses", 1, 1.5);
    const said = (c: Case) => finding(c, "overlap")?.sentence;
    expect(said({ procedure: { wood, overlap: short }, piece: { overlap: mm("12.0") } })).toBe(
      "An overlap of 12.0 mm at a thickness of 6.0 mm is 2.00 thicknesses, too long to show a weak glue line.",
    );
    expect(said({ procedure: { overlap: short, form: "block-shear" }, piece: { overlap: mm("18.0") } })).toBe(
      "An overlap of 18.0 mm at a thickness of 6.0 mm is 3.00 thicknesses, too long to show a weak glue line.",
    );
    expect(said({ procedure: { overlap: short, form: "single-lap" }, piece: { overlap: mm("30.0") } })).toContain(
      "too long to show a weak glue line: by statics it would let pass one with 98 % of the wood's own shear strength",
    );
  });

  it("is reckoned with the procedure's own wood, else with a wood that is named as from memory", () => {
    expect(strengthsOf(procedure({ wood: { crushing: mpa("40"), shear: mpa("10") } }), [])).toEqual({
      crushing: 40e6,
      shear: 10e6,
      from: { code: "source/procedure", values: { title: "Three legs" }, known: "record" },
    });
    expect(strengthsOf(procedure(), [lot("S-1", { material: "timber", species: "Sitka spruce" })])?.from).toEqual({
      code: "source/sitka-spruce",
      values: {},
      known: "memory",
    });
  });

  it("of a thickness of nothing is no overlap", () => {
    expect(finding({ piece: { thickness: mm("0.0") } }, "overlap")?.sentence).toBe(
      "No usable overlap is noted, so nothing shows that a weak glue line would have been seen.",
    );
    expect(finding({ piece: { thickness: undefined, overlap: undefined } }, "overlap")?.sentence).toContain(
      "No overlap and no thickness is noted",
    );
  });

  it("of a block is judged as that of a lap beyond three thicknesses", () => {
    const block = { form: "block-shear", overlap: undefined, stress: undefined } as const;
    const said = (overlap: string) => fileOf({ procedure: block, piece: { overlap: mm(overlap) } });
    expect(said("18.0").revealing).toBe(1);
    expect(said("30.0").revealing).toBeLessThan(1);
    expect(said("60.0").verdict).toBe("inconclusive");
  });

  it("is in thicknesses of the thinner leg of a lap, and of the pressed leg of three", () => {
    const legs = [
      { lot: "S-1", thickness: mm("6.0") },
      { lot: "S-1", thickness: mm("4.0") },
    ];
    const lap = { form: "single-lap", overlap: undefined, stress: undefined } as const;
    expect(fileOf({ procedure: lap, piece: { legs, overlap: mm("12.0") } }).overlapRatio).toBeCloseTo(3, 9);
    expect(fileOf({ piece: { legs, overlap: mm("12.0") } }).overlapRatio).toBeCloseTo(2, 9);
  });

  it("shows nothing where an outer leg is less than half as thick as the pressed one, or of no noted thickness", () => {
    const said = (outer?: string) => {
      const legs = [
        { lot: "S-1", thickness: mm("6.0") },
        { lot: "S-1", ...(outer !== undefined && { thickness: mm(outer) }) },
      ];
      return finding({ piece: { legs, thickness: undefined } }, "overlap");
    };
    expect(said("3.0")?.code).toBe("overlap/within");
    expect(said("2.9")?.sentence).toBe(
      "An outer leg of 2.9 mm is less than half as thick as the pressed one of 6.0 mm and gives way first, so nothing shows that a weak glue line would have been seen.",
    );
    expect(said()?.sentence).toContain("No thickness is noted");
  });

  it("is a caution before the piece is broken", () => {
    const file = reckon(glued([batch("B-1", { pieces: [piece("B-1", 1, { overlap: mm("24.0") })] })], [])).pieces.get(
      "B-1/1",
    );
    expect(file?.findings.map(({ rule, severity }) => [rule, severity])).toEqual([
      ["piece-broken", "waits"],
      ["overlap", "caution"],
    ]);
  });
});

it("A block is one by its form where its overlap in thicknesses is not known, and no longer than three", () => {
  expect([undefined, 3, 3.1].map((ratio) => isBlock("block-shear", ratio))).toEqual([true, true, false]);
  expect([undefined, 3].map((ratio) => isBlock("three-leg", ratio))).toEqual([false, false]);
  const shows = (ratio: number) => shapeShows("block-shear", ratio, { crushing: 8e6, shear: 8e6 } as never);
  expect([shows(2.9), shows(3.1) === 1]).toEqual([1, false]);
});
