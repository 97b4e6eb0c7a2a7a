import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import { reckonStatistics } from "../../src/evidence/statistics.ts";
import type { Statistics } from "../../src/evidence/types/statistics.ts";
import { mean } from "../../src/reckoning/statistics/mean.ts";
import { sampleDeviation } from "../../src/reckoning/statistics/sample-deviation.ts";
import { toleranceFactor } from "../../src/reckoning/statistics/tolerance-factor.ts";
import type { Batch, PieceTest, Record } from "../../src/facts/types.ts";
import { adhesive, batch, glued, piece, procedure, test, type Made } from "./make.ts";
import { g, ml, mm, moment, newton, pc } from "./quantities.ts";

const of = (record: Record): Statistics => reckonStatistics(record, reckon(record));
const day = (n: number): string => `2025-03-${String(n).padStart(2, "0")}`;

/** A batch a day, with one piece that broke under the given load: N over 2 × 6 mm × 15 mm = 180 mm². */
function loaded(
  loads: readonly number[],
  change: (n: number) => Partial<Batch> = () => ({}),
  testChange: Partial<PieceTest> = {},
  made: Made = {},
): Record {
  const batches = loads.map((_, i) => batch(`B-${String(i + 1).padStart(2, "0")}`, change(i), day(i + 1)));
  const tests = batches.flatMap(({ pieces }, i) =>
    pieces.map(({ id }) => test(id, { load: newton(String(loads[i])), ...testChange }, "2025-04-20")),
  );
  return glued(batches, tests, made);
}

describe("The share of pieces that passed", () => {
  it("counts passes and failures, with exact bounds, and what shows nothing apart", () => {
    const batches = [
      batch("B-1", { pieces: [1, 2, 3, 4].map((n) => piece("B-1", n)) }),
      batch("B-2", { joints: ["W-2"], pieces: [piece("B-2")] }),
    ];
    const tests = [
      test("B-1/1"),
      test("B-1/2"),
      test("B-1/3", { failure: "mixed", woodFailure: undefined }),
      test("B-2/1"),
    ];
    const { shares } = of(glued(batches, tests));
    expect(shares).toHaveLength(1);
    expect(shares[0]).toMatchObject({
      adhesive: "resorcin",
      procedure: "legs",
      batches: 2,
      passed: 3,
      failed: 0,
      silent: 1,
      notBroken: 1,
    });
    expect(shares[0]?.atLeast).toBeCloseTo(0.05 ** (1 / 3), 12);
    expect(shares[0]?.interval?.lower).toBeCloseTo(0.025 ** (1 / 3), 12);
  });

  it("counts a piece broken too early as one that shows nothing", () => {
    const early = test("B-1/1", { at: moment("2025-03-11", "12:00") }, "2025-03-11");
    expect(of(glued([batch("B-1")], [early])).shares[0]).toMatchObject({
      passed: 0,
      failed: 0,
      silent: 1,
      notBroken: 0,
    });
  });

  it("names the build's own pieces before those of any trial, whatever its name", () => {
    const pieces = [piece("B-1", 1, { trial: "A", preparation: "A" }), piece("B-1", 2)];
    expect(of(glued([batch("B-1", { pieces })], [])).shares.map(({ trial }) => trial)).toEqual([undefined, "A"]);
  });

  it("gives no bound where no piece shows anything", () => {
    const [share] = of(glued([batch("B-1")], [])).shares;
    expect(share).toStrictEqual({
      adhesive: "resorcin",
      procedure: "legs",
      batches: 1,
      passed: 0,
      failed: 0,
      silent: 0,
      notBroken: 1,
    });
  });

  it("reckons its bounds of passes and failures together: two of three, where 3p² − 2p³ is 0.05 at the one bound and 0.025 at the other", () => {
    const pieces = [1, 2, 3].map((n) => piece("B-1", n));
    const [share] = of(
      glued(
        [batch("B-1", { pieces })],
        [test("B-1/1"), test("B-1/2"), test("B-1/3", { failure: "glue line", woodFailure: undefined })],
      ),
    ).shares;
    const chance = (p = NaN): number => 3 * p ** 2 - 2 * p ** 3;
    expect([share?.passed, share?.failed]).toEqual([2, 1]);
    expect(chance(share?.atLeast)).toBeCloseTo(0.05, 12);
    expect(chance(share?.interval?.lower)).toBeCloseTo(0.025, 12);
  });

  it("never counts together what differs in adhesive, procedure, trial or preparation, and names the build's own pieces first", () => {
    const made: Made = {
      adhesives: [adhesive(), adhesive({ id: "epoxy" })],
      procedures: [procedure(), procedure({ id: "laps" })],
    };
    const pieces = [
      piece("B-1", 1),
      piece("B-1", 2, { procedure: "laps" }),
      piece("B-1", 3, { trial: "t", preparation: "a" }),
      piece("B-1", 4, { trial: "t", preparation: "b" }),
      piece("B-1", 5, { trial: "u", preparation: "a" }),
    ];
    const { shares } = of(
      glued(
        [batch("B-1", { pieces }), batch("B-2", { adhesive: "epoxy", joints: [], pieces: [piece("B-2")] })],
        [],
        made,
      ),
    );
    expect(
      shares.map(({ adhesive: glue, procedure: by, trial, preparation, notBroken }) => [
        glue,
        by,
        trial,
        preparation,
        notBroken,
      ]),
    ).toEqual([
      ["epoxy", "legs", undefined, undefined, 1],
      ["resorcin", "laps", undefined, undefined, 1],
      ["resorcin", "legs", undefined, undefined, 1],
      ["resorcin", "legs", "t", "a", 1],
      ["resorcin", "legs", "t", "b", 1],
      ["resorcin", "legs", "u", "a", 1],
    ]);
  });
});

describe("The chart of ratio errors", () => {
  const weigh = (hardener: string): Partial<Batch> => ({
    resin: { lot: "R-1", mass: g("40.0") },
    hardener: { lot: "H-1", mass: g(hardener) },
  });
  const ratios = (record: Record) => of(record).series.filter(({ quantity }) => quantity === "ratio error");

  it("has each batch in the order of mixing, also within a day; one without a time comes last on its day", () => {
    const at = (time: string | undefined): Partial<Batch> => ({
      joints: [],
      ...weigh("20.4"),
      ...(time === undefined ? { mixed: undefined } : { mixed: moment("2025-03-10", time) }),
    });
    const [series] = ratios(
      glued(
        [
          batch("B-1", at(undefined)),
          batch("B-2", at("16:00")),
          batch("B-3", at("09:00")),
          batch("B-4", { joints: [] }, "2025-03-11"),
        ],
        [],
      ),
    );
    expect(series?.points.map((point) => point.batch)).toEqual(["B-3", "B-2", "B-1", "B-4"]);
    expect(series?.points[0]).toEqual({ batch: "B-3", day: "2025-03-10", value: expect.closeTo(0.02, 12) });
    expect(series).toMatchObject({ adhesive: "resorcin", by: "mass" });
    expect(series?.chart.limits).toBeUndefined();
    expect(series).not.toHaveProperty("tolerance");
  });

  it("marks a batch outside its limits as one to look into", () => {
    const hardener = ["20.0", "20.1", "19.9", "20.0", "20.1", "20.0", "19.9", "20.0", "21.0", "20.0"];
    const [series] = ratios(
      loaded(
        hardener.map(() => 1200),
        (n) => weigh(hardener[n] ?? "20.0"),
      ),
    );
    expect(series?.chart.limits?.outside).toEqual([8]);
    expect(series?.points[8]?.batch).toBe("B-09");
    expect(series).not.toHaveProperty("tolerance");
  });

  it("keeps apart what was weighed and what was poured, and leaves out what has no ratio", () => {
    const poured: Partial<Batch> = {
      joints: [],
      resin: { lot: "R-1", volume: ml("40.0") },
      hardener: { lot: "H-1", volume: ml("24.0") },
      scale: ml("0.1"),
    };
    const series = ratios(
      glued([batch("B-1"), batch("B-2", poured), batch("B-3", { joints: [], resin: { lot: "R-1" } })], []),
    );
    expect(series.map(({ by, points }) => [by, points.map((point) => point.batch)])).toEqual([
      ["mass", ["B-1"]],
      ["volume", ["B-2"]],
    ]);
  });
});

describe("The chart of stresses", () => {
  const stresses = (record: Record) => of(record).series.filter(({ quantity }) => quantity === "stress");

  it("has the mean over the pieces of each batch", () => {
    const pieces = [piece("B-1", 1), piece("B-1", 2)];
    const [series] = stresses(
      glued(
        [batch("B-1", { pieces })],
        [test("B-1/1", { load: newton("1200") }), test("B-1/2", { load: newton("1560") })],
      ),
    );
    expect(series?.points).toEqual([
      { batch: "B-1", day: "2025-03-10", value: expect.closeTo(1380 / 180e-6, 3), pieces: 2 },
    ]);
    expect(series).toMatchObject({ adhesive: "resorcin", procedure: "legs" });
    const [half] = stresses(
      glued([batch("B-1", { pieces })], [test("B-1/1", { load: newton("1200") }), test("B-1/2", { load: undefined })]),
    );
    expect(half?.points).toEqual([
      { batch: "B-1", day: "2025-03-10", value: expect.closeTo(1200 / 180e-6, 3), pieces: 1 },
    ]);
  });

  it("counts a piece however it broke and however low its stress, so that no low one is left out", () => {
    const low = stresses(loaded([900], undefined, { failure: "wood" }));
    expect(low[0]?.points).toHaveLength(1);
    expect(
      stresses(loaded([1200], undefined, { failure: "glue line", woodFailure: undefined }))[0]?.points,
    ).toHaveLength(1);
    expect(stresses(loaded([1200], undefined, { failure: "mixed", woodFailure: pc("10") }))[0]?.points).toHaveLength(1);
  });

  it("leaves out what was broken too early, what has a shape that its procedure does not allow, what has no load, and what belongs to a trial", () => {
    const shaped = (change: Parameters<typeof piece>[2]) =>
      stresses(loaded([1200], () => ({ pieces: [piece("B-01", 1, change)] })));
    expect(shaped({})).toHaveLength(1);
    expect(shaped({ overlap: mm("30.0") })).toEqual([]);
    expect(shaped({ trial: "t", preparation: "a" })).toEqual([]);
    expect(shaped({ width: undefined })).toEqual([]);
    expect(stresses(loaded([1200], undefined, { load: undefined }))).toEqual([]);
    const early = { day: "2025-03-02", at: moment("2025-03-02", "19:00") };
    expect(stresses(loaded([1200], undefined, early))).toEqual([]);
    expect(stresses(loaded([1200], undefined, { ...early, failure: "glue line", woodFailure: undefined }))).toEqual([]);
  });

  it("gives a tolerance bound from eight batches on: mean − k·s of the batches' means, 95 % sure for 90 % of batches", () => {
    const loads = [1200, 1260, 1180, 1230, 1300, 1210, 1190, 1250];
    expect(stresses(loaded(loads.slice(0, 7)))[0]?.tolerance).toBeUndefined();
    const { tolerance } = stresses(loaded(loads))[0] ?? {};
    const values = loads.map((load) => load / 180e-6);
    const k = toleranceFactor(8, 0.9, 0.95) ?? NaN;
    expect(tolerance).toMatchObject({ coverage: 0.9, confidence: 0.95, factor: k });
    expect(tolerance?.bound).toBeCloseTo((mean(values) ?? NaN) - k * (sampleDeviation(values) ?? NaN), 3);
    expect(tolerance?.bound).toBeLessThan(Math.min(...values));
  });

  it("keeps procedures apart, also within one batch", () => {
    const pieces = [piece("B-01", 1), piece("B-01", 2, { procedure: "other" })];
    const series = stresses(
      loaded([1200], () => ({ pieces }), {}, { procedures: [procedure(), procedure({ id: "other" })] }),
    );
    expect(series.map(({ procedure: by, points }) => [by, points.length])).toEqual([
      ["legs", 1],
      ["other", 1],
    ]);
    const turned = stresses(
      loaded(
        [1200],
        () => ({ pieces: [...pieces].reverse() }),
        {},
        { procedures: [procedure(), procedure({ id: "other" })] },
      ),
    );
    expect(turned.map(({ procedure: by }) => by)).toEqual(["legs", "other"]);
  });

  it("says nothing where there is nothing", () => {
    expect(of(glued([], []))).toEqual({ shares: [], series: [] });
    expect(reckonStatistics(loaded([1200]), { batches: new Map() })).toEqual({ shares: [], series: [] });
  });
});
