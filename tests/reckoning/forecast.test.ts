import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { finishWeeks, MOST_WEEKS } from "../../src/reckoning/hours/finish-week.ts";
import { forecastBacktest } from "../../src/reckoning/hours/forecast-backtest.ts";
import { quantile } from "../../src/reckoning/statistics/quantile.ts";
import { seedOf } from "../../src/reckoning/hours/seed.ts";
import { wholeWeeks } from "../../src/reckoning/hours/whole-weeks.ts";
import { workAhead, workBy } from "../../src/reckoning/hours/work-ahead.ts";
import { numbers, referenceRows } from "../reference/rows.ts";

const pasts = fc.array(fc.integer({ min: 0, max: 1200 }), { minLength: 8, maxLength: 40 });

describe("The week by which the work is done", () => {
  it("agrees with R's negative binomial, within 4 % of chance, on 200 random records of weeks either idle or worked an hour", () => {
    const rows = referenceRows("finish-week");
    expect(rows).toHaveLength(200);
    rows.forEach((row, i) => {
      const [weeks = 0, worked = 0, needed = 0] = ["weeks", "worked", "needed"].map((name) => Number(row(name)));
      const past = Array.from({ length: weeks }, (_, week) => (week < worked ? 60 : 0));
      const found = finishWeeks(past, needed * 60, [0.5, 0.8, 0.95], i) ?? [];
      const least = numbers(row("least"));
      numbers(row("most")).forEach((most, j) => {
        const week = found[j] ?? MOST_WEEKS + 1;
        expect(week, row("needed")).toBeGreaterThanOrEqual(Math.min(least[j] ?? NaN, MOST_WEEKS + 1));
        expect(week, row("needed")).toBeLessThanOrEqual(Math.max(most, 0) > MOST_WEEKS ? MOST_WEEKS + 1 : most);
      });
    });
  });

  it("is certain where every week was worked alike", () => {
    expect(finishWeeks([90, 90, 90], 900, [0.5, 0.8, 0.95], 7)).toEqual([10, 10, 10]);
    expect(finishWeeks([90], 901, [0.5, 0.95], 7)).toEqual([11, 11]);
    expect(finishWeeks([90], 0, [0.5], 7)).toEqual([0]);
  });

  it("says nothing beyond twenty years, and just reaches them", () => {
    expect(finishWeeks([1], MOST_WEEKS, [0.95], 1)).toEqual([MOST_WEEKS]);
    expect(finishWeeks([1], MOST_WEEKS + 1, [0.5], 1)).toEqual([undefined]);
    expect(finishWeeks([0, 0], 60, [0.5, 0.95], 1)).toEqual([undefined, undefined]);
  });

  it("ends where nothing was ever worked", () => {
    expect(finishWeeks([0], 60, [0.5], 1, 5, 10)).toEqual([undefined]);
  });

  it("takes one future, and one week at most, and refuses none", () => {
    expect(MOST_WEEKS).toBe(1040);
    expect(finishWeeks([60], 60, [1], 1, 1, 1)).toEqual([1]);
    expect(finishWeeks([60], 61, [1], 1, 1, 1)).toEqual([undefined]);
    expect([
      finishWeeks([60], 60, [1], 1, 0),
      finishWeeks([60], 60, [1], 1, 1, 0),
      finishWeeks([60], 60, [1], 1, 1.5),
      finishWeeks([60], 60, [1], 1, 1, 1.5),
    ]).toEqual(new Array(4).fill(undefined));
  });

  it("gives the same for the same seed, and comes later with more work or for greater certainty", () => {
    fc.assert(
      fc.property(
        pasts.filter((past) => past.some((week) => week > 200)),
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer(),
        (past, left, seed) => {
          const at = (minutes: number): number[] =>
            (finishWeeks(past, minutes, [0.5, 0.8, 0.95], seed, 200) ?? []).map((week) => week ?? Infinity);
          const weeks = at(left);
          expect(at(left)).toEqual(weeks);
          expect(weeks).toEqual([...weeks].sort((a, b) => a - b));
          at(left * 2).forEach((later, i) =>
            expect(later).toBeGreaterThanOrEqual((weeks[i] ?? NaN) - (i === 0 ? 0 : 3)),
          );
          const scaled = finishWeeks(
            past.map((week) => week * 3),
            left * 3,
            [0.5, 0.8, 0.95],
            seed,
            200,
          )?.map((week) => week ?? Infinity);
          expect(scaled).toEqual(weeks);
        },
      ),
      { numRuns: 40 },
    );
  });

  it.each([
    [[], 60],
    [[60], -1],
    [[60], NaN],
    [[60], Infinity],
    [[-5], 60],
    [[NaN], 60],
  ])("gives nothing for weeks %j and %d minutes left", (past, left) => {
    expect(finishWeeks(past, left, [0.5], 1)).toBeUndefined();
  });
});

describe("The work ahead", () => {
  it("has the mean and the spread that sums of independent weeks have: n·mean and √n·deviation", () => {
    const past = [0, 60, 120, 300, 0, 480, 240, 0, 90, 600];
    const mean = past.reduce((a, b) => a + b, 0) / past.length;
    const deviation = Math.sqrt(past.reduce((sum, x) => sum + (x - mean) ** 2, 0) / past.length);
    const [low = 0, middle = 0, high = 0] = workAhead(past, 50, [0.1587, 0.5, 0.8413], 3, 20_000)?.[49] ?? [];
    expect(middle / (50 * mean)).toBeCloseTo(1, 1.5);
    expect((high - low) / 2 / (Math.sqrt(50) * deviation)).toBeCloseTo(1, 1);
  });

  it("keeps its quantiles in order and never falls from one week to the next", () => {
    fc.assert(
      fc.property(pasts, fc.integer(), (past, seed) => {
        const weeks = workAhead(past, 12, [0.1, 0.5, 0.9], seed, 200) ?? [];
        expect(weeks).toHaveLength(12);
        weeks.forEach((sums, i) => {
          expect(sums).toEqual([...sums].sort((a, b) => a - b));
          sums.forEach((sum, j) => expect(sum).toBeGreaterThanOrEqual(weeks[i - 1]?.[j] ?? 0));
        });
      }),
      { numRuns: 40 },
    );
  });

  it("draws only weeks that were worked, the first and the last of them too", () => {
    const [ends = []] = workAhead([7, 20, 1000], 1, [0.0001, 0.5, 1], 5) ?? [];
    expect(ends).toEqual([7, 20, 1000]);
  });

  it("gives the same last week where that alone is asked for", () => {
    fc.assert(
      fc.property(pasts, fc.integer({ min: 1, max: 9 }), fc.integer(), (past, weeks, seed) => {
        expect(workBy(past, weeks, [0.1, 0.5, 0.9], seed, 200)).toEqual(
          workAhead(past, weeks, [0.1, 0.5, 0.9], seed, 200)?.at(-1),
        );
      }),
      { numRuns: 40 },
    );
  });

  it("takes one past week, one week ahead and one future", () => {
    expect(workAhead([60], 1, [1], 1, 1)).toEqual([[60]]);
    expect(workAhead([0], 2, [0.5], 1)).toEqual([[0], [0]]);
  });

  it("gives nothing where there is nothing to draw from, or no week to draw for", () => {
    expect([
      workAhead([], 3, [0.5], 1),
      workAhead([60], 0, [0.5], 1),
      workAhead([60], 1.5, [0.5], 1),
      workAhead([-60], 1, [0.5], 1),
      workAhead([60], 1, [0.5], 1, 0),
    ]).toEqual(new Array(5).fill(undefined));
  });
});

describe("The last week of the work ahead", () => {
  it("is not foretold of no weeks, of minutes below nought, or for no week", () => {
    expect([
      workBy([], 4, [0.5], 1),
      workBy([-1], 4, [0.5], 1),
      workBy([60], 0, [0.5], 1),
      workBy([60], 4, [0.5], 1, 0),
    ]).toEqual(new Array(4).fill(undefined));
    expect(workBy([60], 4, [0.5], 1)).toEqual([240]);
  });
});

describe("The look back at earlier forecasts", () => {
  it("tries an origin only where eight weeks lie before it and the weeks foretold after it", () => {
    const weekly = new Array<number>(20).fill(60);
    const tried = forecastBacktest(weekly, [4, 7, 8, 12, 16, 17], 4, 1) ?? [];
    expect(tried.map(({ origin }) => origin)).toEqual([8, 12, 16]);
    expect(tried.every(({ low, high, worked, held }) => low === 240 && high === 240 && worked === 240 && held)).toBe(
      true,
    );
  });

  it("sees only the weeks before its origin, and holds them against those right after it", () => {
    const weekly = [...new Array<number>(10).fill(60), 0, 100, 120, 5000, 5000];
    const [look] = forecastBacktest(weekly, [10], 3, 1) ?? [];
    expect(look).toEqual({ origin: 10, low: 180, high: 180, worked: 220, held: false });
    const idle = forecastBacktest([...new Array<number>(10).fill(60), 0, 0, 0], [10], 3, 1);
    expect(idle?.[0]?.held).toBe(false);
  });

  it("draws for each origin anew, by a seed of its own", () => {
    const weekly = Array.from({ length: 40 }, (_, i) => (i * 37) % 101);
    const looks = forecastBacktest(weekly, [20, 30], 4, 7) ?? [];
    expect(looks.map(({ low, high }) => [low, high])).toEqual(
      [20, 30].map((origin) => workBy(weekly.slice(0, origin), 4, [0.1, 0.9], 7 + origin)),
    );
  });

  it("holds about four times in five where weeks really are independent", () => {
    let seed = 1;
    const next = (): number => (seed = (seed * 48271) % 2147483647) / 2147483647;
    const weekly = Array.from({ length: 900 }, () => Math.round(next() * 600));
    const tried =
      forecastBacktest(
        weekly,
        Array.from({ length: 200 }, (_, i) => 60 + 4 * i),
        4,
        9,
      ) ?? [];
    const share = tried.filter(({ held }) => held).length / tried.length;
    expect(tried).toHaveLength(200);
    expect(share).toBeGreaterThan(0.72);
    expect(share).toBeLessThan(0.88);
  });

  it("looks one week ahead too", () => {
    expect(forecastBacktest(new Array<number>(9).fill(60), [8], 1, 1)).toEqual([
      { origin: 8, low: 60, high: 60, worked: 60, held: true },
    ]);
  });

  it("gives nothing for minutes below zero or no weeks ahead", () => {
    expect([forecastBacktest([-1], [8], 4, 1), forecastBacktest([1], [8], 0, 1)]).toEqual([undefined, undefined]);
  });
});

describe("Whole weeks", () => {
  it("leaves out the weeks that either day cuts short, and keeps idle ones", () => {
    const work = [
      { day: "2025-01-08", minutes: 10 },
      { day: "2025-01-13", minutes: 20 },
      { day: "2025-01-19", minutes: 30 },
      { day: "2025-02-03", minutes: 40 },
    ];
    expect(wholeWeeks(work, "2025-01-08", "2025-02-03")).toEqual([
      { day: "2025-01-13", minutes: 50 },
      { day: "2025-01-20", minutes: 0 },
      { day: "2025-01-27", minutes: 0 },
    ]);
    expect(wholeWeeks(work, "2025-01-06", "2025-01-19")?.map(({ day }) => day)).toEqual(["2025-01-06", "2025-01-13"]);
    expect(wholeWeeks(work, "2025-01-07", "2025-01-18")).toEqual([]);
    expect(wholeWeeks([], "2025-02-30", "2025-03-30")).toBeUndefined();
    expect(wholeWeeks([], "2025-03-03", "2025-03-32")).toBeUndefined();
  });
});

describe("Quantiles and seeds", () => {
  it("takes the least value that so many do not exceed", () => {
    const values = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
    expect([0.1, 0.5, 0.51, 0.7, 0.95, 1].map((q) => quantile(values, q))).toEqual([1, 5, 6, 7, 10, 10]);
    expect([
      quantile([], 0.5),
      quantile(values, 0),
      quantile(values, 1.01),
      quantile(values, 1 + Number.EPSILON),
    ]).toEqual(new Array(4).fill(undefined));
  });

  it("makes the published FNV-1a hashes of the empty text, of a and of foobar (memory)", () => {
    expect(["", "a", "foobar"].map((text) => seedOf(text).toString(16))).toEqual(["811c9dc5", "e40c292c", "bf9cf968"]);
  });
});
