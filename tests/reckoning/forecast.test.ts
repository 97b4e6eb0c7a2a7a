import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { finishWeeks, MOST_WEEKS } from "../../src/reckoning/hours/finish-week.ts";
import { forecastBacktest } from "../../src/reckoning/hours/forecast-backtest.ts";
import { foretold, ratioAt, sumsOf } from "../../src/reckoning/hours/foretold.ts";
import { wholeWeeks } from "../../src/reckoning/hours/whole-weeks.ts";
import { workAhead, workBy } from "../../src/reckoning/hours/work-ahead.ts";

const pasts = fc.array(fc.integer({ min: 0, max: 1200 }), { minLength: 8, maxLength: 40 });

/** Quantiles of the standard normal: NIST/SEMATECH handbook 1.3.6.7.1 (memory). */
const Z90 = 1.2815516;

describe("What is foretold", () => {
  it("has no spread of weeks in which nothing was worked, and looks back by single weeks too", () => {
    const idle = Array.from({ length: 12 }, () => 0);
    expect(foretold(idle, sumsOf(idle), 4)).toEqual({ ratios: [], windows: 0, spread: 0.65 });
    const even = Array.from({ length: 12 }, () => 60);
    expect(foretold(even, sumsOf(even), 1)).toEqual({ ratios: [1, 1, 1, 1], windows: 4, spread: 0.65 });
  });

  it("has, before any forecast could be looked back at, a log-normal doubt alone: s² = 0.65² + cv²/h", () => {
    const weekly = [60, 60, 60, 60, 60, 60, 60, 60];
    const none = foretold(weekly, sumsOf(weekly), 4);
    expect(none).toEqual({ ratios: [], windows: 0, spread: 0.65 });
    expect(ratioAt(none, 0.5)).toBeCloseTo(1, 6);
    expect(ratioAt(none, 0.9)).toBeCloseTo(Math.exp(0.65 * Z90), 5);
    expect(ratioAt(none, 0.1)).toBeCloseTo(Math.exp(-0.65 * Z90), 5);
    const uneven = [0, 120, 0, 120, 0, 120, 0, 120];
    expect(foretold(uneven, sumsOf(uneven), 4).spread).toBeCloseTo(Math.sqrt(0.65 ** 2 + 1 / 4), 12);
  });

  it("looks back at every week at which eight weeks were known: of 8 weeks of 60 and 6 of 120, two ahead", () => {
    const weekly = [...new Array<number>(8).fill(60), ...new Array<number>(6).fill(120)];
    const { ratios, windows } = foretold(weekly, sumsOf(weekly), 2);
    const means = [60, 600 / 9, 720 / 10, 840 / 11, 960 / 12];
    expect(ratios).toEqual(means.map((mean) => expect.closeTo(120 / mean, 12)).reverse());
    expect(windows).toBe(2.5);
  });

  it("uses the longest look back there is where none is long enough, and leaves out weeks before which nothing was worked", () => {
    const weekly = new Array<number>(20).fill(60);
    expect(foretold(weekly, sumsOf(weekly), 52)).toEqual({ ratios: [1, 1, 1, 1], windows: 4 / 9, spread: 0.65 });
    const late = [...new Array<number>(10).fill(0), ...new Array<number>(10).fill(60)];
    expect(foretold(late, sumsOf(late), 1).ratios).toHaveLength(9);
  });

  it("mixes both: with ten windows of ratio 1 against a doubt worth ten, a quarter of the doubt's tail lies below it at 0.25", () => {
    const even = { ratios: new Array<number>(10).fill(1), windows: 10, spread: 0.65 };
    expect(ratioAt(even, 0.05)).toBeCloseTo(Math.exp(-0.65 * Z90), 5);
    expect(ratioAt(even, 0.95)).toBeCloseTo(Math.exp(0.65 * Z90), 5);
    expect(ratioAt(even, 0.4)).toBeCloseTo(1, 6);
  });

  it("grows surer as the record does, where every forecast came true", () => {
    const width = (weeks: number): number => {
      const weekly = new Array<number>(weeks).fill(60);
      const spread = foretold(weekly, sumsOf(weekly), 4);
      return ratioAt(spread, 0.9) / ratioAt(spread, 0.1);
    };
    expect(width(40)).toBeLessThan(width(8));
    expect(width(300)).toBeCloseTo(1, 5);
  });
});

describe("The work ahead", () => {
  it("keeps its quantiles in order and never falls from one week to the next", () => {
    fc.assert(
      fc.property(pasts, (past) => {
        const weeks = workAhead(past, 12, [0.1, 0.5, 0.9]) ?? [];
        expect(weeks).toHaveLength(12);
        weeks.forEach((sums, i) => {
          expect(sums).toEqual([...sums].sort((a, b) => a - b));
          sums.forEach((sum, j) => expect(sum).toBeGreaterThanOrEqual(weeks[i - 1]?.[j] ?? 0));
        });
      }),
      { numRuns: 100 },
    );
  });

  it("scales with the weeks, and the work of one horizon alone is never more than with those before it", () => {
    fc.assert(
      fc.property(pasts, fc.integer({ min: 1, max: 30 }), (past, weeks) => {
        const [low = 0, high = 0] = workBy(past, weeks, [0.1, 0.9]) ?? [];
        const threefold =
          workBy(
            past.map((week) => week * 3),
            weeks,
            [0.1, 0.9],
          ) ?? [];
        expect(threefold).toEqual([expect.closeTo(3 * low, 3), expect.closeTo(3 * high, 3)]);
        expect(workAhead(past, weeks, [0.9])?.at(-1)?.[0]).toBeGreaterThanOrEqual(high);
      }),
      { numRuns: 100 },
    );
  });

  it("stays where it was in a week for which less was foretold than for the one before", () => {
    const past = [0, 0, 383, 0, 0];
    const [[one = 0] = [], [two = 0] = []] = [1, 2].map((weeks) => workBy(past, weeks, [0.9]) ?? []);
    expect(two).toBeLessThan(one);
    expect(workAhead(past, 2, [0.9])).toEqual([[one], [one]]);
  });

  it("is nothing where nothing was ever worked", () => {
    expect(workAhead([0, 0], 2, [0.5])).toEqual([[0], [0]]);
  });

  it("gives nothing where there is nothing to go by, no week to foretell, or a chance that is none", () => {
    for (const of of [workAhead, workBy])
      expect([
        of([], 3, [0.5]),
        of([60], 0, [0.5]),
        of([60], 1.5, [0.5]),
        of([-60], 1, [0.5]),
        of([60], 1, [0]),
        of([60], 1, [1]),
      ]).toEqual(new Array(6).fill(undefined));
  });
});

describe("The week by which the work is done", () => {
  it("is the first by which the sum foretold with that chance is worked", () => {
    fc.assert(
      fc.property(
        pasts.filter((past) => past.some((week) => week > 200)),
        fc.integer({ min: 1, max: 9000 }),
        (past, left) => {
          const found = finishWeeks(past, left, [0.5, 0.8], 200) ?? [];
          const sums = workAhead(past, 200, [0.5, 0.2]) ?? [];
          found.forEach((week, i) => {
            const done = sums.map((quantiles) => (quantiles[i] ?? 0) >= left);
            expect(week).toBe(done.includes(true) ? done.indexOf(true) + 1 : undefined);
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  it("comes later for greater certainty and for more work", () => {
    const past = Array.from({ length: 60 }, (_, i) => (i * 37) % 101);
    const of = (left: number): number[] =>
      (finishWeeks(past, left, [0.5, 0.8, 0.95]) ?? []).map((week) => week ?? Infinity);
    expect(of(2000)).toEqual([...of(2000)].sort((a, b) => a - b));
    of(4000).forEach((later, i) => expect(later).toBeGreaterThan(of(2000)[i] ?? NaN));
  });

  it("says nothing beyond twenty years, takes no week for no work, and refuses what it cannot reckon with", () => {
    expect(MOST_WEEKS).toBe(1040);
    expect(finishWeeks([60], 0, [0.5])).toEqual([0]);
    expect(finishWeeks([1], 5000, [0.5])).toEqual([undefined]);
    expect(finishWeeks([0, 0], 60, [0.5])).toEqual([undefined]);
    expect([
      finishWeeks([], 60, [0.5]),
      finishWeeks([60], -1, [0.5]),
      finishWeeks([60], NaN, [0.5]),
      finishWeeks([NaN], 60, [0.5]),
      finishWeeks([60], 60, [0.5], 0),
      finishWeeks([60], 60, [1]),
    ]).toEqual(new Array(6).fill(undefined));
  });
});

describe("The look back at earlier forecasts", () => {
  const steady = new Array<number>(20).fill(60);

  it("tries an origin only where eight weeks lie before it and the weeks foretold after it", () => {
    const tried = forecastBacktest(steady, [4, 7, 8, 12, 16, 17], 4) ?? [];
    expect(tried.map(({ origin }) => origin)).toEqual([8, 12, 16]);
    expect(tried.every(({ low, high, worked, held }) => low < 240 && high > 240 && worked === 240 && held)).toBe(true);
  });

  it("sees only the weeks before its origin, and holds them against those right after it", () => {
    const weekly = [...new Array<number>(10).fill(60), 0, 100, 1200, 5000, 5000];
    const [low, high] = workBy(weekly.slice(0, 10), 3, [0.1, 0.9]) ?? [];
    expect(forecastBacktest(weekly, [10], 3)).toEqual([{ origin: 10, low, high, worked: 1300, held: false }]);
    expect(forecastBacktest([...new Array<number>(10).fill(60), 0, 0, 0], [10], 3)?.[0]?.held).toBe(false);
  });

  it("counts a band whose edge is met as held, looks one week ahead too, and gives nothing for minutes below zero or no weeks", () => {
    const [, high = 0] = workBy(steady.slice(0, 8), 1, [0.1, 0.9]) ?? [];
    expect(forecastBacktest([...steady.slice(0, 8), high], [8], 1)?.[0]?.held).toBe(true);
    expect(forecastBacktest(new Array<number>(9).fill(0), [8], 1)?.[0]).toMatchObject({ low: 0, high: 0, held: true });
    expect([forecastBacktest([-1], [8], 4), forecastBacktest([1], [8], 0)]).toEqual([undefined, undefined]);
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

describe("Outside what a forecast is for", () => {
  it("nothing is said", () => {
    expect(finishWeeks([], 60, [0.5])).toBeUndefined();
    expect(finishWeeks([60], -1, [0.5])).toBeUndefined();
    expect(finishWeeks([60], 60, [0.5], 0)).toBeUndefined();
    expect(workAhead([60], 2, [0.5, 1])).toBeUndefined();
    expect(workAhead([60], 2, [0, 0.5])).toBeUndefined();
    expect(workBy([60], 0, [0.5])).toBeUndefined();
  });

  it("one week at most is still a time", () => {
    expect(finishWeeks([60], 1, [0.5], 1)).toEqual([1]);
    expect(finishWeeks([60], 0, [0.5], 1)).toEqual([0]);
    expect(finishWeeks([60], 6000, [0.5], 1)).toEqual([undefined]);
  });

  it("a sum that is worked just by the end of a week takes no week more", () => {
    const [sum = 0] = workBy([60, 60, 60], 2, [0.5]) ?? [];
    expect(finishWeeks([60, 60, 60], sum, [0.5], 4)).toEqual([2]);
  });
});
