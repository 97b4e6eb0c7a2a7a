import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choose } from "../../src/reckoning/statistics/binomial-coefficient.ts";
import { exactInterval } from "../../src/reckoning/statistics/exact-interval.ts";
import { exactLowerBound } from "../../src/reckoning/statistics/exact-lower-bound.ts";
import { factorials } from "../../src/reckoning/statistics/factorials.ts";
import { exactShare } from "../../src/reckoning/statistics/exact-share.ts";
import { apart, referenceRows } from "../reference/rows.ts";

const binomial = (x: number, n: number, p: number): number => Number(choose(n, x)) * p ** x * (1 - p) ** (n - x);
const outcomes = (n: number): number[] => Array.from({ length: n + 1 }, (_, x) => x);

describe("The exact interval of a share", () => {
  it("gives 0.7076683 to 0.7654066 for 682 of 925 (R's documentation of binom.test, seen)", () => {
    const { lower, upper } = exactInterval(682, 925) ?? { lower: 0, upper: 0 };
    expect(lower).toBeCloseTo(0.7076683, 7);
    expect(upper).toBeCloseTo(0.7654066, 7);
  });

  it("agrees with R's binom.test on 300 random inputs, both sides and one", () => {
    const rows = referenceRows("exact-share");
    expect(rows).toHaveLength(300);
    for (const row of rows) {
      const [held = 0, tried = 0, level = 0] = ["held", "tried", "level"].map((name) => Number(row(name)));
      const interval = exactInterval(held, tried, level);
      const off = [
        apart(interval?.lower, Number(row("lower"))),
        apart(interval?.upper, Number(row("upper"))),
        apart(exactLowerBound(held, tried, level), Number(row("lower_one_sided"))),
      ];
      expect(Math.max(...off), `${held} of ${tried} at ${level}`).toBeLessThan(1e-10);
    }
  });

  it("holds the true share at least as often as its level says, and leaves out no more than half of the rest at either end, by going through every outcome", () => {
    for (const n of [1, 2, 3, 5, 8, 13, 30, 60]) {
      for (const level of [0.8, 0.95, 0.99]) {
        const intervals = outcomes(n).map((x) => exactInterval(x, n, level) ?? { lower: NaN, upper: NaN });
        for (let i = 1; i < 100; i += 1) {
          const p = i / 100;
          const chanceOf = (out: (i: { lower: number; upper: number }) => boolean): number =>
            intervals.reduce((sum, interval, x) => sum + (out(interval) ? binomial(x, n, p) : 0), 0);
          expect(chanceOf(({ lower }) => !(lower <= p))).toBeLessThanOrEqual((1 - level) / 2 + 1e-12);
          expect(chanceOf(({ upper }) => !(upper >= p))).toBeLessThanOrEqual((1 - level) / 2 + 1e-12);
        }
      }
    }
  });

  it("is the narrowest that does so: at its own ends the tail is exactly half of the rest", () => {
    const { lower, upper } = exactInterval(4, 9, 0.9) ?? { lower: 0, upper: 0 };
    const from4 = outcomes(9)
      .slice(4)
      .reduce((sum, x) => sum + binomial(x, 9, lower), 0);
    const upTo4 = outcomes(4).reduce((sum, x) => sum + binomial(x, 9, upper), 0);
    expect(from4).toBeCloseTo(0.05, 12);
    expect(upTo4).toBeCloseTo(0.05, 12);
  });

  it("reads the same from the other side: what held and what did not change places", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 150 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n))),
        ([x, n]) => {
          const one = exactInterval(x, n);
          const other = exactInterval(n - x, n);
          expect(one?.lower).toBeCloseTo(1 - (other?.upper ?? NaN), 10);
        },
      ),
    );
  });

  it("reaches from 0 where none held, and to 1 where all did", () => {
    expect(exactInterval(0, 3)?.lower).toBe(0);
    expect(exactInterval(3, 3)?.upper).toBe(1);
    expect(exactInterval(0, 3)?.upper).toBeLessThan(1);
    expect(exactInterval(3, 3)?.lower).toBeGreaterThan(0);
  });

  it.each([
    [4, 3, 0.95],
    [-1, 3, 0.95],
    [1.5, 3, 0.95],
    [0, 0, 0.95],
    [1, 2.5, 0.95],
    [1, 3, 0],
    [1, 3, 1],
    [NaN, 3, 0.95],
  ])("gives nothing for %d of %d at %d", (held, tried, level) => {
    expect(exactInterval(held, tried, level)).toBeUndefined();
    expect(exactLowerBound(held, tried, level)).toBeUndefined();
  });
});

describe("The exact lower bound of a share", () => {
  it("shows no more than 37 % where three of three held, at 95 % confidence (0.05 to the power of a third)", () => {
    expect(exactLowerBound(3, 3)).toBeCloseTo(0.3684031, 7);
  });

  it("is the root of what is left over, of as many as were tried, where all held; and 0 where none did", () => {
    for (const n of [1, 2, 10, 59]) expect(exactLowerBound(n, n, 0.9)).toBeCloseTo(0.1 ** (1 / n), 12);
    expect(exactLowerBound(0, 7)).toBe(0);
  });

  it("covers at least its level, by going through every outcome", () => {
    for (const n of [1, 3, 7, 20, 45]) {
      const bounds = outcomes(n).map((x) => exactLowerBound(x, n, 0.95) ?? NaN);
      for (let i = 1; i < 200; i += 1) {
        const missed = bounds.reduce((sum, bound, x) => sum + (bound <= i / 200 ? 0 : binomial(x, n, i / 200)), 0);
        expect(missed).toBeLessThanOrEqual(0.05 + 1e-12);
      }
    }
  });

  it("rises with each one that holds", () => {
    const bounds = outcomes(12).map((x) => exactLowerBound(x, 12) ?? NaN);
    expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
    expect(new Set(bounds).size).toBe(13);
  });
});

describe("Whole numbers beneath", () => {
  it("adds up the rows of Pascal's triangle", () => {
    for (const n of [0, 1, 5, 64, 200])
      expect(outcomes(n).reduce((sum, k) => sum + choose(n, k), 0n)).toBe(2n ** BigInt(n));
    expect([choose(5, 2), choose(5, 3), choose(5, 6), choose(5, -1), choose(5, 1.5)]).toEqual([10n, 10n, 0n, 0n, 0n]);
  });

  it("multiplies up the factorials, and gives none below nought or between", () => {
    expect(factorials(5)).toEqual([1n, 1n, 2n, 6n, 24n, 120n]);
    expect(factorials(0)).toEqual([1n]);
    expect([factorials(-1), factorials(1.5), factorials(Number.NaN)]).toEqual([[], [], []]);
  });

  it("divides numbers far beyond what a double holds", () => {
    expect(exactShare(10n ** 400n, 3n * 10n ** 400n)).toBeCloseTo(1 / 3, 15);
    expect(exactShare(1n, 10n ** 200n)).toBeCloseTo(1e-200, 210);
    expect(exactShare(7n, 7n)).toBe(1);
    expect(exactShare(0n, 7n)).toBe(0);
    expect(exactShare(1n, 20n)).toBe(0.05);
    expect([exactShare(1n, 0n), exactShare(-1n, 3n), exactShare(1n, -3n)]).toEqual([undefined, undefined, undefined]);
  });
});
