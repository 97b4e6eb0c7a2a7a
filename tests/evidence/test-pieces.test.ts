/** How the test pieces of a batch decide its verdict. */
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { SaidBatch } from "./reckoned.ts";
import type { Batch, PieceTest, Procedure } from "../../src/facts/types.ts";
import { batch, entry, glued, piece, procedure, test } from "./make.ts";
import { mm, moment } from "./quantities.ts";

type Outcome = "pass" | "fail" | "inconclusive" | "too early" | "not broken";

const TESTS: { readonly [outcome in Outcome]: (of: string) => PieceTest[] } = {
  pass: (of) => [test(of)],
  fail: (of) => [test(of, { failure: "glue line" })],
  inconclusive: (of) => [test(of, { failure: "crushed", woodFailure: undefined })],
  "too early": (of) => [test(of, { at: moment("2025-03-11", "12:00") }, "2025-03-11")],
  "not broken": () => [],
};

function fileOf(
  asked: number | undefined,
  outcomes: readonly Outcome[],
  change: Partial<Batch> = {},
  trials: readonly Outcome[] = [],
): SaidBatch {
  const counting = outcomes.map((_, i) => piece("B-1", i + 1));
  const onTrial = trials.map((_, i) => piece("B-1", 50 + i, { trial: "T", preparation: "abraded" }));
  const tests = [
    ...outcomes.flatMap((outcome, i) => TESTS[outcome](`B-1/${i + 1}`)),
    ...trials.flatMap((outcome, i) => TESTS[outcome](`B-1/${50 + i}`)),
  ];
  const made = glued([batch("B-1", { pieces: [...counting, ...onTrial], ...change })], tests, {
    procedures: [procedure({ pieces: asked })],
  });
  const file = reckon(made).batches.get("B-1");
  if (!file) throw new Error("no batch");
  expect(file.pieces.map((one) => one.verdict)).toEqual([...outcomes, ...trials]);
  return file;
}

const said = (file: SaidBatch) => file.findings.find((one) => one.rule === "test-pieces")?.sentence;

describe("The test pieces of a batch", () => {
  it.each<[number, Outcome[], string]>([
    [3, ["pass", "pass", "pass"], "shown"],
    [3, ["pass", "pass", "not broken"], "pending"],
    [3, ["not broken", "not broken", "not broken"], "pending"],
    [3, ["pass", "pass"], "not shown"],
    [3, ["not broken", "not broken"], "not shown"],
    [3, [], "not shown"],
    [3, ["pass", "pass", "inconclusive"], "not shown"],
    [3, ["pass", "pass", "too early"], "not shown"],
    [3, ["pass", "not broken", "too early"], "not shown"],
    [3, ["pass", "pass", "fail"], "rejected"],
    [3, ["pass", "pass", "pass", "fail"], "rejected"],
    [3, ["fail"], "rejected"],
    [3, ["not broken", "not broken", "fail"], "rejected"],
    [3, ["pass", "pass", "pass", "inconclusive"], "shown"],
    [3, ["pass", "pass", "pass", "not broken"], "pending"],
    [3, ["pass", "pass", "pass", "inconclusive", "not broken"], "pending"],
    [3, ["pass", "pass", "not broken", "inconclusive"], "pending"],
    [1, ["inconclusive"], "not shown"],
    [1, ["too early"], "not shown"],
    [1, ["too early", "not broken"], "pending"],
    [1, ["too early", "pass"], "shown"],
    [0, [], "not shown"],
    [0, ["inconclusive"], "not shown"],
  ])("of which %d are asked and which are %j leave it %3$s", (asked, outcomes, verdict) => {
    expect(fileOf(asked, outcomes).verdict).toBe(verdict);
  });

  it("are at least one where the procedure does not say, after AC 43.13-1B, para 1-29h", () => {
    expect(fileOf(undefined, ["pass"]).verdict).toBe("shown");
    expect(fileOf(undefined, ["inconclusive"]).verdict).toBe("not shown");
    expect(fileOf(undefined, []).verdict).toBe("not shown");
    expect(fileOf(undefined, ["pass"]).findings.find((one) => one.rule === "test-pieces")?.limit?.from).toMatchObject({
      text: expect.stringContaining("1-29h"),
      known: "seen",
    });
  });

  it("made for a trial never count, and are said not to", () => {
    expect(fileOf(1, [], {}, ["pass"]).verdict).toBe("not shown");
    expect(fileOf(2, ["pass"], {}, ["pass"]).verdict).toBe("not shown");
    const file = fileOf(1, ["pass"], {}, ["fail", "pass"]);
    expect(file.verdict).toBe("shown");
    expect(file.findings.find(({ rule }) => rule === "trial-pieces")).toMatchObject({
      rule: "trial-pieces",
      severity: "caution",
      sentence: "2 pieces made for a trial are not counted.",
    });
    expect(fileOf(1, ["pass"], {}, ["fail"]).findings.find(({ rule }) => rule === "trial-pieces")?.sentence).toBe(
      "1 piece made for a trial is not counted.",
    );
  });

  it("are not asked of a batch that went into no joint, which has a state of its own whatever they show", () => {
    for (const pieces of [[], ["not broken"], ["pass"], ["fail"]] as const)
      expect(fileOf(3, pieces, { joints: [] }).verdict).toBe("in no joint");
    expect(said(fileOf(3, ["pass"], { joints: [] }))).toBeUndefined();
    expect(fileOf(3, ["pass"], { joints: [], timber: [] }).findings.map(({ rule }) => rule)).toEqual([
      "mix-ratio",
      "mix-doubt",
      "lot-known",
      "lot-known",
      "lot-in-date",
      "lot-in-date",
      "lot-recalled",
      "shop-temperature",
      "shop-humidity",
      "wood-moisture",
      "dew-point",
      "working-life",
    ]);
  });

  it("are as many as each of their procedures asks, of its own: none fills the count of another", () => {
    const of = (procedures: Procedure[]) => {
      const pieces = [piece("B-1", 1), piece("B-1", 2, { procedure: "lap", overlap: mm("15.0") })];
      return reckon(glued([batch("B-1", { pieces })], [test("B-1/1"), test("B-1/2")], { procedures })).batches.get(
        "B-1",
      )?.verdict;
    };
    const lap = (pieces: number | undefined) =>
      procedure({ id: "lap", form: "single-lap", overlap: undefined, pieces });
    expect(of([procedure({ pieces: 1 }), lap(3)])).toBe("not shown");
    expect(of([procedure({ pieces: 3 }), lap(1)])).toBe("not shown");
    expect(of([procedure({ pieces: 2 }), lap(1)])).toBe("not shown");
    expect(of([procedure({ pieces: 1 }), lap(1)])).toBe("shown");
    expect(of([procedure({ pieces: undefined }), lap(undefined)])).toBe("shown");
  });

  it("are told by count, and rest on the entries they were broken in", () => {
    expect(said(fileOf(3, ["pass", "pass", "pass"]))).toBe("3 test pieces passed of the 3 asked: 3 pass.");
    expect(said(fileOf(3, ["pass", "not broken", "inconclusive"]))).toBe(
      "Fewer than the 3 test pieces asked can still pass: 1 pass, 1 inconclusive and 1 not broken.",
    );
    expect(said(fileOf(3, ["pass", "not broken", "too early"]))).toBe(
      "Fewer than the 3 test pieces asked can still pass: 1 pass, 1 too early and 1 not broken.",
    );
    expect(said(fileOf(3, ["pass", "not broken", "not broken"]))).toBe(
      "Of the 3 test pieces asked not all are broken: 1 pass and 2 not broken.",
    );
    expect(said(fileOf(3, ["pass"]))).toBe("1 test piece of the 3 asked: 1 pass.");
    expect(said(fileOf(3, ["fail", "pass", "fail"]))).toBe("B-1/1 and B-1/3 failed.");
    expect(said(fileOf(3, []))).toBe("No test piece was made from it.");
    expect(fileOf(1, ["pass"]).findings.find((one) => one.rule === "test-pieces")?.restsOn).toEqual([
      { kind: "batch", id: "B-1" },
      { kind: "entry", id: "2025-03-10-glue" },
      { kind: "piece", id: "B-1/1" },
      { kind: "entry", id: "2025-03-20-tests" },
    ]);
    expect(
      fileOf(1, ["not broken"])
        .findings.find((one) => one.rule === "test-pieces")
        ?.restsOn.slice(2),
    ).toEqual([{ kind: "piece", id: "B-1/1" }]);
    expect(
      fileOf(1, ["pass"], {}, ["pass", "not broken"])
        .findings.find(({ rule }) => rule === "trial-pieces")
        ?.restsOn.slice(2),
    ).toEqual([
      { kind: "piece", id: "B-1/50" },
      { kind: "piece", id: "B-1/51" },
    ]);
  });
});

describe("The builder's rejection", () => {
  it("rejects a batch whatever its pieces show", () => {
    const rejections = [
      {
        place: { file: "", line: 1, column: 1 },
        entry: "2025-04-01-doubts",
        day: "2025-04-01",
        batch: "B-1",
        why: "lumpy",
      },
    ];
    const file = reckon(
      glued([batch("B-1")], [test("B-1/1")], { entries: [entry("2025-04-01-doubts", { rejections })] }),
    ).batches.get("B-1");
    expect(file?.verdict).toBe("rejected");
    expect(file?.rejection).toEqual(rejections[0]);
    expect(file?.findings.at(-1)).toMatchObject({
      rule: "builders-rejection",
      severity: "rejects",
      sentence: "Rejected by the builder on 1 April 2025: lumpy.",
    });
    expect(file?.findings.at(-1)?.restsOn).toContainEqual({ kind: "entry", id: "2025-04-01-doubts" });
  });
});
