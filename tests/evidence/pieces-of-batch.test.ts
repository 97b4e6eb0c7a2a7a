/** Whether as many test pieces as asked were made, broken and passed: each rule at its own edge. */
import { describe, expect, it } from "vitest";
import { testPieces } from "../../src/evidence/batch/pieces.ts";
import type { Finding, PieceVerdict } from "../../src/evidence/types.ts";
import { entry, procedure } from "./make.ts";
import { pc } from "./quantities.ts";
import { type About, asked, caseOf, type Judged } from "./one-rule.ts";

const three = (pieces?: number) => [procedure({ pieces }), procedure({ id: "others", title: "Others", pieces: 2 })];
const of = (procedures: About["procedures"], pieces: readonly Judged[], more: Partial<About> = {}) =>
  asked(testPieces, { procedures, pieces, ...more });
const are = (...verdicts: PieceVerdict[]): Judged[] => verdicts.map((verdict) => ({ verdict }));
const ids = (...numbers: number[]) => numbers.map((n) => `B-1/${n}`);
/** Pieces with the entry of their tests, each once. */
const broken = (...numbers: number[]) =>
  ids(...numbers).flatMap((id, i) => [`piece ${id}`, ...(i === 0 ? ["entry 2025-03-20-tests"] : [])]);
const unbroken = (...numbers: number[]) => ids(...numbers).map((id) => `piece ${id}`);

describe("Pieces that were asked for", () => {
  it("are enough at the number itself, and one fewer is too few", () => {
    expect(of(three(3), are("pass", "pass", "pass"))).toEqual([
      ["meets test-pieces/passed", { asked: 3, tally: [{ verdict: "pass", n: 3 }], passed: 3 }, broken(1, 2, 3)],
    ]);
    expect(of(three(3), are("pass", "pass"))).toEqual([
      ["unproven test-pieces/too-few-made", { asked: 3, tally: [{ verdict: "pass", n: 2 }], made: 2 }, broken(1, 2)],
    ]);
  });

  it("wait while one that is not broken could still be counted, or could have failed", () => {
    const tally = [
      { verdict: "pass", n: 2 },
      { verdict: "not broken", n: 1 },
    ];
    expect(of(three(2), are("pass", "not broken", "pass"))).toEqual([
      [
        "waits test-pieces/passed",
        { asked: 2, tally, passed: 2 },
        ["piece B-1/1", "entry 2025-03-20-tests", "piece B-1/2", "piece B-1/3"],
      ],
    ]);
    expect(of(three(3), are("pass", "pass", "not broken"))[0]?.slice(0, 2)).toEqual([
      "waits test-pieces/not-all-broken",
      { asked: 3, tally },
    ]);
    expect(of(three(1), are("not broken"))).toEqual([
      ["waits test-pieces/not-all-broken", { asked: 1, tally: [{ verdict: "not broken", n: 1 }] }, unbroken(1)],
    ]);
  });

  it("are too few where those left cannot reach the number any more, in the order of a tally", () => {
    expect(of(three(3), are("not broken", "too early", "inconclusive", "pass"))).toEqual([
      [
        "unproven test-pieces/too-few-left",
        {
          asked: 3,
          tally: [
            { verdict: "pass", n: 1 },
            { verdict: "inconclusive", n: 1 },
            { verdict: "too early", n: 1 },
            { verdict: "not broken", n: 1 },
          ],
        },
        ["piece B-1/1", "piece B-1/2", "entry 2025-03-20-tests", "piece B-1/3", "piece B-1/4"],
      ],
    ]);
    expect(of(three(1), are("inconclusive"))[0]?.[0]).toBe("unproven test-pieces/too-few-left");
  });

  it("count only where they are samples; one of other wood that is not broken still holds a pass up", () => {
    const other: Judged = { lot: undefined };
    expect(of(three(2), [{}, other])).toEqual([
      ["unproven test-pieces/too-few-made", { asked: 2, tally: [{ verdict: "pass", n: 1 }], made: 1 }, broken(1, 2)],
    ]);
    expect(of(three(1), [other])).toEqual([["unproven test-pieces/no-sample", { asked: 1 }, broken(1)]]);
    expect(of(three(1), [{}, { ...other, verdict: "not broken" }])[0]?.[0]).toBe("waits test-pieces/passed");
  });

  it("are counted for each procedure of its own, and none fills that of another", () => {
    const own: Judged = { procedure: "others" };
    expect(of(three(1), [{}, own])).toEqual([
      ["meets test-pieces/passed", { asked: 1, tally: [{ verdict: "pass", n: 1 }], passed: 1 }, broken(1)],
      [
        "unproven test-pieces/too-few-made",
        { asked: 2, tally: [{ verdict: "pass", n: 1 }], made: 1 },
        ["piece B-1/2", "entry 2025-03-20-tests"],
      ],
    ]);
    expect(of(three(1), [{ ...own, verdict: "not broken" }, own, own, {}]).map(([code]) => code)).toEqual([
      "waits test-pieces/passed",
      "meets test-pieces/passed",
    ]);
  });

  it("are one where the procedure names no number, or none at all", () => {
    const one = { asked: 1, tally: [{ verdict: "pass", n: 1 }], passed: 1 };
    expect(of(three(undefined), [{}])[0]?.[1]).toEqual(one);
    expect(of(three(0), [{}])[0]?.[1]).toEqual(one);
    expect(of(three(undefined), [{}, { procedure: "others" }])[0]?.[1]).toEqual(one);
    expect(of(three(0), [])[0]?.[0]).toBe("unproven test-pieces/none");
  });

  it("are asked of a joint alone", () => {
    expect(of(three(3), [], { batch: { joints: [] } })).toEqual([]);
    expect(of(three(3), are("pass"), { batch: { joints: [] } })).toEqual([]);
    expect(of(three(3), [])).toEqual([["unproven test-pieces/none", {}, []]]);
  });
});

describe("A piece that failed", () => {
  it("rejects the batch, whatever else passed and whether it is in a joint or not", () => {
    const found = ["rejects test-pieces/failed", { pieces: ids(2, 3) }, broken(1, 2, 3)];
    expect(of(three(1), are("pass", "fail", "fail"))).toEqual([found]);
    expect(of(three(1), are("pass", "fail", "fail"), { batch: { joints: [] } })).toEqual([found]);
  });

  it("counts for nothing on a trial, which is said", () => {
    expect(of(three(1), [{ verdict: "fail", trial: "T" }, {}])).toEqual([
      [
        "meets test-pieces/passed",
        { asked: 1, tally: [{ verdict: "pass", n: 1 }], passed: 1 },
        ["piece B-1/2", "entry 2025-03-20-tests"],
      ],
      ["caution trial-pieces/not-counted", { pieces: 1 }, unbroken(1)],
    ]);
    expect(of(three(1), [{ trial: "T" }, { trial: "T" }]).map((one) => one.slice(0, 2))).toEqual([
      ["unproven test-pieces/none", {}],
      ["caution trial-pieces/not-counted", { pieces: 2 }],
    ]);
  });
});

describe("What is told of pieces beside their number", () => {
  const codes = (pieces: readonly Judged[]) => of(three(1), pieces).filter(([code]) => !code.includes("passed"));

  it("is that one broke partly in the glue line, and how much of it was never noted", () => {
    const mixed = { failure: "mixed" as const, woodFailure: undefined };
    expect(codes([{}, { test: mixed }, { test: { ...mixed, woodFailure: pc("80") } }])).toEqual([
      ["unproven test-pieces/mixed-unmeasured", { pieces: ids(2) }, broken(2)],
    ]);
    expect(codes([{ test: { failure: "wood", woodFailure: undefined } }])).toEqual([]);
    expect(codes([{}, { verdict: "not broken" }])).toEqual([]);
  });

  it("is which passes came before the sheet's own cure, and what that rests on", () => {
    const before: Finding = {
      rule: "full-cure",
      code: "full-cure/before-sheet",
      severity: "caution",
      values: { time: "7 d", temperature: "20 °C" },
      about: { kind: "piece", id: "B-1/1" },
      restsOn: [{ kind: "climate log", id: "shop" }],
    };
    const early = [before];
    const rests = ["climate log shop"];
    expect(codes([{ findings: early }, {}, { findings: early }])).toEqual([
      ["caution test-pieces/before-sheet", { pieces: ids(1, 3) }, rests],
    ]);
    expect(codes([{ findings: early, verdict: "inconclusive" }, {}])).toEqual([]);
    const reached = { cured: 1, closedNoted: true, ownTime: false, brokenNoted: true };
    expect(codes([{ findings: [{ ...before, code: "full-cure/reached", values: reached }] }])).toEqual([]);
  });

  it("is each number that is missing below the greatest, where pieces are numbered", () => {
    const gap = (...numbers: string[]) => codes(numbers.map((n) => ({ id: `B-1/${n}` }))).map((one) => one.slice(0, 2));
    const missing = (...numbers: number[]) => [["caution test-pieces/gap", { pieces: ids(...numbers) }]];
    expect(gap("1", "2", "3")).toEqual([]);
    expect(gap("2", "4")).toEqual(missing(1, 3));
    expect(gap("2")).toEqual(missing(1));
    expect(gap("999")[0]?.[0]).toBe("caution test-pieces/gap");
    for (const odd of ["1000", "0", "-2", "2.5", "a"]) expect([odd, gap("3", odd)]).toEqual([odd, []]);
    expect(codes([{ id: "B-1/x/2" }]).map(([, values]) => values)).toEqual([{ pieces: ids(1) }]);
  });
});

describe("How many pieces are asked, and by what", () => {
  const limit = (procedures: About["procedures"], pieces: readonly Judged[]) => {
    const { code, values, from } = testPieces(caseOf({ procedures, pieces }))[0]?.limit ?? {};
    expect(code).toBe("limit/test-pieces");
    return [values, from?.code, from?.values];
  };
  const most = [
    procedure({ id: "few", title: "Few", pieces: 2 }),
    procedure({ id: "silent", title: "Silent", pieces: undefined }),
    procedure({ id: "many", title: "Many", pieces: 5 }),
    procedure({ id: "some", title: "Some", pieces: 3 }),
  ];
  const each = (verdict: PieceVerdict, ...names: string[]): Judged[] =>
    names.map((name) => ({ procedure: name, verdict }));

  it("is the procedure of the pieces, and the circular's one where that names no number", () => {
    expect(limit(three(3), [{}])).toEqual([{ pieces: 3 }, "source/procedure", { title: "Three legs" }]);
    expect(limit(three(undefined), [{}])).toEqual([{ pieces: 1 }, "source/ac-43-13-sample", {}]);
    expect(limit(three(3), [])).toEqual([{ pieces: 1 }, "source/ac-43-13-sample", {}]);
  });

  it("is that which asks for most of them where a piece failed, trials aside", () => {
    const many = [{ pieces: 5 }, "source/procedure", { title: "Many" }];
    expect(limit(most, each("fail", "few", "silent", "many", "some"))).toEqual(many);
    expect(limit(most, each("fail", "many", "some", "few"))).toEqual(many);
    expect(limit(most, [...each("fail", "few"), { procedure: "many", trial: "T" }])[0]).toEqual({ pieces: 2 });
    expect(limit(most, each("fail", "silent"))).toEqual([{ pieces: 1 }, "source/ac-43-13-sample", {}]);
  });
});

it("A piece that only an amendment declared is told after all else", () => {
  const change = {
    place: { file: "made.md", line: 1, column: 1 },
    about: { kind: "piece", id: "B-1/1" } as const,
    fact: "Piece B-1/1",
    is: ["procedure legs"],
    needs: [],
    audience: "public" as const,
  };
  const amendment = {
    ...{ place: change.place, entry: "2025-03-10-glue", by: "2025-04-01-mended", day: "2025-04-01", why: "left out" },
    ...{ prose: false, withheld: false, changes: [change] },
  };
  const found = of(three(1), [{}], { entries: [entry("2025-04-01-mended", { amendments: [amendment] })] });
  expect(found[1]).toEqual([
    "caution test-pieces/declared-later",
    { piece: "B-1/1", day: "2025-04-01", glued: "2025-03-10" },
    ["piece B-1/1", "entry 2025-04-01-mended"],
  ]);
});
