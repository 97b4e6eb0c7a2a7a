import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import { english } from "./reckoned.ts";
import { toldSource } from "../../src/words/findings/told.ts";
import { SANDING } from "../../src/evidence/trial/conclusion.ts";
import type { TrialFile } from "../../src/evidence/types/trial.ts";
import type { Piece, PieceTest, Procedure, Trial } from "../../src/facts/types.ts";
import { batch, glued, piece, procedure, test } from "./make.ts";
import { mm, moment, mpa } from "./quantities.ts";

const place = { file: "made.md", line: 1, column: 1 };
const trial = (preparations: readonly string[]): Trial => ({
  id: "papers",
  place,
  title: "Papers",
  question: "Does it matter?",
  stated: "2025-03-01",
  expectation: "No.",
  audience: "public",
  body: [],
  preparations: preparations.map((id) => ({ id, what: `prepared as ${id}` })),
});

type Outcome = "held" | "failed" | "silent" | "early" | "waits";
interface Made {
  readonly [preparation: string]: readonly Outcome[];
}

const TESTS: { readonly [outcome in Outcome]: Partial<PieceTest> | undefined } = {
  held: {},
  failed: { failure: "glue line", woodFailure: undefined },
  silent: { failure: "mixed", woodFailure: undefined },
  waits: undefined,
  early: { day: "2025-03-11", at: moment("2025-03-11", "12:00") },
};

interface Way {
  readonly shape?: Partial<Piece>;
  readonly shapeOf?: (preparation: string, n: number) => Partial<Piece>;
  readonly procedure?: Partial<Procedure>;
  readonly batchOf?: (preparation: string, n: number) => string;
  readonly stated?: readonly string[];
}

function trialOf(
  made: Made,
  {
    shape = {},
    shapeOf = () => ({}),
    procedure: how = {},
    batchOf = () => "B-1",
    stated = Object.keys(made),
  }: Way = {},
): Omit<TrialFile, "cautions" | "conclusion"> & Readonly<{ [of in "cautions" | "conclusion"]: readonly string[] }> {
  const listed = Object.entries(made).flatMap(([preparation, outcomes]) =>
    outcomes.map((outcome, n) => ({
      preparation,
      outcome,
      batch: batchOf(preparation, n),
      shaped: shapeOf(preparation, n),
    })),
  );
  const pieces = listed.map((one, i) => ({
    ...one,
    piece: piece(one.batch, i + 1, { trial: "papers", preparation: one.preparation, ...shape, ...one.shaped }),
  }));
  const batches = [...new Set(listed.map((one) => one.batch))].map((id) =>
    batch(id, { joints: [], pieces: pieces.filter((one) => one.batch === id).map((one) => one.piece) }),
  );
  const tests = pieces.flatMap((one) => {
    const change = TESTS[one.outcome];
    return change === undefined ? [] : [test(one.piece.id, { load: undefined, ...change })];
  });
  const file = reckon({
    ...glued(batches, tests, { procedures: [procedure({ stress: undefined, ...how })] }),
    trials: new Map([["papers", trial(stated)]]),
  }).trials.get("papers");
  if (file === undefined) throw new Error("no trial");
  const say = english();
  return { ...file, cautions: file.cautions.map(say), conclusion: file.conclusion.map(say) };
}

const held = (n: number): Outcome[] => new Array<Outcome>(n).fill("held");
const failed = (n: number): Outcome[] => new Array<Outcome>(n).fill("failed");

describe("The outcomes of a trial", () => {
  it("counts what held, what failed, what shows nothing and what is not broken, by preparation as stated", () => {
    const { outcomes } = trialOf({ a: ["held", "held", "failed", "silent"], b: ["waits", "held"] });
    expect(
      outcomes.map(({ preparation, held, failed, silent, notBroken, pieces }) => [
        preparation.id,
        held,
        failed,
        silent,
        notBroken,
        pieces.length,
      ]),
    ).toEqual([
      ["a", 2, 1, 1, 0, 4],
      ["b", 1, 0, 0, 1, 2],
    ]);
    expect(trialOf({ a: ["early", "held"] }).outcomes[0]).toMatchObject({
      held: 1,
      failed: 0,
      silent: 1,
      notBroken: 0,
    });
  });

  it("gives exact intervals of what shows something, and none where nothing does", () => {
    const { outcomes } = trialOf({ a: ["held", "held", "held", "silent"], b: ["silent"] });
    expect(outcomes[0]?.atLeast).toBeCloseTo(0.05 ** (1 / 3), 12);
    expect(outcomes[0]?.interval?.lower).toBeCloseTo(0.025 ** (1 / 3), 12);
    expect(outcomes[1]).toStrictEqual({
      preparation: { id: "b", what: "prepared as b" },
      pieces: ["B-1/5"],
      held: 0,
      failed: 0,
      silent: 1,
      notBroken: 0,
    });
  });

  it("reckons the bounds of held and failed together: two of three, where 3p² − 2p³ is 0.05 at the one bound and 0.025 at the other", () => {
    const [outcome] = trialOf({ a: ["held", "held", "failed"], b: ["waits"] }).outcomes;
    const chance = (p = NaN): number => 3 * p ** 2 - 2 * p ** 3;
    expect(chance(outcome?.atLeast)).toBeCloseTo(0.05, 12);
    expect(chance(outcome?.interval?.lower)).toBeCloseTo(0.025, 12);
    expect((outcome?.interval?.upper ?? NaN) ** 3).toBeCloseTo(0.975, 12);
  });

  it("has nothing of pieces that belong to no trial, and no comparison where there is none", () => {
    expect(trialOf({ a: held(1) })).not.toHaveProperty("comparison");
    const record = { ...glued([batch("B-1")], [test("B-1/1")]), trials: new Map([["papers", trial(["a", "b"])]]) };
    expect(reckon(record).trials.get("papers")?.restsOn).toEqual([{ kind: "trial", id: "papers" }]);
  });

  it("rests on the trial and every one of its pieces", () => {
    expect(trialOf({ a: held(1), b: held(1) }).restsOn).toEqual([
      { kind: "trial", id: "papers" },
      { kind: "piece", id: "B-1/1" },
      { kind: "piece", id: "B-1/2" },
    ]);
  });
});

describe("The conclusion of a trial", () => {
  it("of three of three against three of three claims nothing, and says that nothing could have been shown", () => {
    const { conclusion, comparison } = trialOf({ abraded: held(3), washed: held(3) });
    expect(comparison).toEqual({ preparations: ["abraded", "washed"], p: 1, least: { clearest: 0.1 } });
    expect(conclusion).toEqual([
      "Of the pieces that show something, the bond held in 3 of 3 (abraded) and 3 of 3 (washed).",
      "No difference is shown (Fisher's exact test, p = 1.00). That is not to say that there is none.",
      "So few pieces could not have shown any difference: even had every bond of one preparation failed and every bond of the other held, p would be 0.10.",
    ]);
  });

  it("says of more pieces how great a difference would have had to be, rounded up", () => {
    const { conclusion, comparison } = trialOf({ a: held(6), b: [...held(5), "failed"] });
    // 6 of 6 against 1 of 6 is told apart (p = 0.015) and against 2 of 6 is not (p = 0.06); 0.86⁶ + 6·0.14·0.86⁵ = 0.80.
    expect(comparison?.least.effect).toBeCloseTo(0.86, 3);
    expect(conclusion.at(-1)).toBe(
      "So few pieces could have shown only a great difference: even if every bond of the other were sure to hold, those of one would have to fail in at least 87 % of cases for four such trials in five to tell them apart.",
    );
  });

  it("shows a difference from p = 0.05 down, and says neither its cause nor more than the trial's own conditions", () => {
    const { conclusion } = trialOf({ a: held(4), b: failed(4) });
    expect(conclusion[1]).toBe(
      "Were the preparations alike, outcomes as far apart as these or further would come about in 2.9 % of such trials (Fisher's exact test, p = 0.029). That shows a difference between them under the conditions of this trial; not its cause, and not how it would be with other timber, adhesive or hands.",
    );
    expect(trialOf({ a: held(1), b: failed(19) }).conclusion[1]).toContain("p = 0.050). That shows a difference");
    expect(trialOf({ a: held(1), b: failed(18) }).conclusion[1]).toContain(
      "No difference is shown (Fisher's exact test, p = 0.053)",
    );
    expect(trialOf({ a: [...held(5), ...failed(1)], b: [...held(5), ...failed(13)] }).conclusion[1]).toContain(
      "No difference is shown (Fisher's exact test, p = 0.050083)",
    );
  });

  it("never says which of three preparations differ", () => {
    const { conclusion, comparison } = trialOf({
      coated: ["failed", "failed", "failed", "silent"],
      open: held(4),
      scraped: held(4),
    });
    expect(comparison?.p).toBeCloseTo(1 / 165, 12);
    expect(conclusion).toEqual([
      "Of the pieces that show something, the bond held in 0 of 3 (coated), 4 of 4 (open) and 4 of 4 (scraped).",
      "Were the preparations alike, outcomes as far apart as these or further would come about in 0.61 % of such trials (Fisher's exact test, p = 0.0061). That shows that they are not all alike under the conditions of this trial, not which of them differ; not its cause, and not how it would be with other timber, adhesive or hands.",
      expect.stringContaining("even if every bond of the others were sure to hold"),
    ]);
  });

  it("tells very small chances without rounding them to none", () => {
    expect(trialOf({ a: held(9), b: failed(9) }).conclusion[1]).toContain(
      "in fewer than one in ten thousand of such trials (Fisher's exact test, p = less than 0.0001)",
    );
    expect(trialOf({ a: held(7), b: failed(7) }).conclusion[1]).toContain(
      "in fewer than one in a thousand of such trials (Fisher's exact test, p = 0.00058)",
    );
  });

  it("compares one preparation with nothing", () => {
    const alone = trialOf({ a: held(3) });
    expect(alone.comparison).toBeUndefined();
    expect(alone.cautions).toContain("There is only one preparation, so that nothing is compared.");
    expect(alone.conclusion).toEqual([
      "Of the pieces that show something, the bond held in 3 of 3 (a).",
      "That shows, at 95 % confidence, no more than that at least 36.8 % of such bonds hold. It is compared with nothing.",
    ]);
    expect(trialOf({ a: held(1) }).conclusion[1]).toContain("at least 5.0 % of such bonds hold");
    const made = trialOf({ a: held(3) }, { stated: ["a", "b"] });
    expect(made.comparison).toBeUndefined();
    expect(made.cautions.at(-1)).toBe("Only a has pieces, so that nothing is compared.");
  });

  it("leaves out of the comparison a preparation of which nothing is shown, and says so", () => {
    const { conclusion, comparison } = trialOf({ a: held(4), b: failed(4), c: ["silent", "waits"] });
    expect(comparison?.preparations).toEqual(["a", "b"]);
    expect(conclusion[1]).toBe("Of c no piece shows anything, so that it is not compared.");
    expect(trialOf({ a: ["held", "failed"], b: held(2) }, { stated: ["a", "b", "c"] }).conclusion[1]).toContain(
      "No difference is shown",
    );
    expect(trialOf({ a: held(4), b: ["silent"] }).conclusion.at(-1)).toContain("It is compared with nothing.");
    expect(trialOf({ a: held(4), b: ["silent"], c: ["waits"] }).conclusion[1]).toBe(
      "Of b and c no piece shows anything, so that they are not compared.",
    );
  });

  it("does not compare more pieces than this program goes through, and says so", () => {
    const { comparison, conclusion } = trialOf({ a: held(61), b: held(60) });
    expect(comparison).toBeUndefined();
    expect(conclusion[1]).toBe("So many pieces are not compared by this program.");
  });

  it("does not compare preparations of which there are more outcomes than this program goes through, though so few pieces are", () => {
    const many = trialOf(Object.fromEntries([..."abcdefgh"].map((id) => [id, [...held(4), ...failed(4)]])));
    expect(many.comparison).toBeUndefined();
    expect(many.conclusion[1]).toBe("So many pieces are not compared by this program.");
  });

  it("says nothing is shown where nothing has been broken, or nothing that was broken shows anything", () => {
    expect(trialOf({ a: ["waits"], b: ["waits"] }).conclusion).toEqual([
      "No piece has been broken, so that nothing is shown yet.",
    ]);
    expect(trialOf({ a: ["silent"], b: ["waits"] }).conclusion).toEqual([
      "No piece that was broken shows anything, so that there is nothing to conclude.",
    ]);
  });
});

describe("What is said of a trial before anything else", () => {
  it("is first that its pieces could not by their shape reveal a weak glue line", () => {
    const { cautions, outcomes } = trialOf(
      { a: [...held(2), "waits"], b: held(2) },
      { shape: { overlap: mm("30.0") } },
    );
    expect(cautions[0]).toBe(
      "None of the pieces could by their shape reveal a weak glue line: by statics a glue line with only 49 % of the wood's own shear strength would have passed.",
    );
    expect(outcomes.map(({ held, silent }) => [held, silent])).toEqual([
      [0, 2],
      [0, 2],
    ]);
    expect(cautions.at(-1)).toBe("1 piece is not broken yet: what follows is how it stands now.");
    expect(trialOf({ a: ["held", "waits"], b: ["waits"] }).cautions.at(-1)).toBe(
      "2 pieces are not broken yet: what follows is how it stands now.",
    );
  });

  it("is how many of the pieces could not, and by the most that would have passed", () => {
    const longer = (lengths: readonly string[]): Way => ({
      shapeOf: (preparation, n) => ({ overlap: mm(preparation === "a" ? (lengths[n] ?? "14.0") : "14.0") }),
    });
    expect(trialOf({ a: held(3), b: held(3) }, longer(["30.0", "24.0"])).cautions[0]).toBe(
      "2 of 6 pieces could not by their shape reveal a weak glue line: by statics a glue line with only 49 % of the wood's own shear strength would have passed.",
    );
    expect(trialOf({ a: held(3), b: held(3) }, longer(["24.0"])).cautions[0]).toContain(
      "1 of 6 pieces could not by its shape reveal a weak glue line: by statics a glue line with only 61 %",
    );
    const wood = { crushing: mpa("40"), shear: mpa("10") };
    expect(
      trialOf({ a: held(1), b: held(1) }, { procedure: { wood }, shape: { overlap: mm("24.0") } }).cautions[0],
    ).toContain("with only 50 % of");
    expect(trialOf({ a: held(1) }, { stated: ["a", "b"], shape: { overlap: mm("24.0") } }).cautions[0]).toContain(
      "None of the pieces could by its shape",
    );
  });

  it("is that the shape is not noted, or shorter than the limit allows", () => {
    expect(trialOf({ a: held(2), b: held(2) }, { shape: { overlap: undefined } }).cautions).toEqual([
      "Of 4 of 4 pieces the shape is not noted, or not one that the procedure allows: breaking in the wood, such a piece shows nothing.",
    ]);
    expect(trialOf({ a: held(2), b: held(2) }, { shape: { overlap: mm("9.0") } }).cautions[0]).toContain(
      "Of 4 of 4 pieces the shape is not noted",
    );
  });

  it("is how strong a bond was at least of which it is said that it held", () => {
    expect(trialOf({ a: held(2), b: held(2) }, { shape: { overlap: mm("18.0") } }).cautions).toEqual([
      "That a bond held says no more than that its glue line had at least 81 % of the wood's own shear strength: by its shape, or by the load read, the least telling of the pieces that held shows nothing above that.",
    ]);
    expect(trialOf({ a: held(2), b: held(2) }, { shape: { overlap: mm("14.0") } }).cautions).toEqual([]);
    const by = (overlaps: { readonly [preparation: string]: string }): Way => ({
      shapeOf: (preparation) => ({ overlap: mm(overlaps[preparation] ?? "14.0") }),
    });
    expect(trialOf({ a: held(2), b: failed(2) }, by({ b: "18.0" })).cautions).toEqual([]);
    expect(trialOf({ a: held(2), b: held(2) }, by({ a: "16.0", b: "18.0" })).cautions[0]).toContain("at least 81 %");
    const weak = { wood: { crushing: mpa("30"), shear: mpa("10") } };
    expect(
      trialOf({ a: held(2), b: held(2) }, { procedure: weak, shape: { overlap: mm("18.0") } }).cautions[0],
    ).toContain("at least 50 %");
    expect(trialOf({ a: held(2), b: held(2) }, { procedure: { form: "single-lap" } }).cautions).toEqual([]);
  });

  it("is that the preparations were not bonded from one batch, and then a difference may be one between batches", () => {
    const { cautions, conclusion } = trialOf(
      { a: held(4), b: failed(4) },
      { shape: { overlap: mm("14.0") }, batchOf: (preparation) => (preparation === "a" ? "B-2" : "B-1") },
    );
    expect(cautions).toEqual([
      "The preparations were not bonded from one batch but from B-1 and B-2: a difference between preparations may be one between batches.",
    ]);
    expect(conclusion[1]).toContain(
      "under the conditions of this trial; it may be one between their batches, and not how",
    );
  });

  it("is less where each of several batches has every preparation", () => {
    const { cautions, conclusion } = trialOf(
      { a: held(4), b: failed(4) },
      { shape: { overlap: mm("14.0") }, batchOf: (_, n) => `B-${(n % 2) + 1}` },
    );
    expect(cautions).toEqual([
      "The pieces come from 2 batches, B-1 and B-2, each with every preparation; they are counted together here.",
    ]);
    expect(conclusion[1]).toContain("not its cause");
    const where: { readonly [preparation: string]: readonly string[] } = {
      a: ["B-1", "B-2", "B-3"],
      b: ["B-1", "B-3", "B-1"],
    };
    const three = trialOf(
      { a: held(3), b: held(3) },
      { shape: { overlap: mm("14.0") }, batchOf: (preparation, n) => where[preparation]?.[n] ?? "" },
    );
    expect(three.cautions).toEqual([
      "The preparations were not bonded from one batch but from B-1, B-2 and B-3: a difference between preparations may be one between batches.",
    ]);
  });

  it("is that a piece names none of the trial's preparations and is left out", () => {
    const { cautions, outcomes } = trialOf(
      { a: held(2), b: held(2), stray: held(2) },
      { stated: ["a", "b"], shape: { overlap: mm("14.0") } },
    );
    expect(cautions).toEqual(["2 pieces of the trial name none of its preparations and are left out."]);
    expect(outcomes.map(({ pieces }) => pieces.length)).toEqual([2, 2]);
    expect(
      trialOf({ a: held(2), b: held(2), stray: held(1) }, { stated: ["a", "b"], shape: { overlap: mm("14.0") } })
        .cautions,
    ).toEqual(["1 piece of the trial names none of its preparations and is left out."]);
  });
});

describe("The standing rule on sandpaper", () => {
  it("is named with its paragraph and as read, apart from abrading cured adhesive", () => {
    expect(toldSource(english(), SANDING.source)).toEqual({ text: "FAA AC 43.13-1B, para 1-6", known: "seen" });
    expect(english()(SANDING)).toContain("not for smoothing softwood that is to be bonded");
    expect(english()(SANDING)).toContain("Abrading adhesive that has already cured is another matter");
  });
});
