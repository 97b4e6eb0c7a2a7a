import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cureRate, type CureLaw } from "../../src/reckoning/cure/cure-rate.ts";
import { cureClock, provenAge, reachedAt } from "../../src/reckoning/cure/proven-age.ts";
import { instant, LIMIT, type Reading, readings, track } from "./any-track.ts";

const law: fc.Arbitrary<CureLaw> = fc.oneof(
  fc.constant<CureLaw>({ from: "doubling" }),
  fc.double({ min: 20_000, max: 120_000, noNaN: true }).map((energy): CureLaw => ({ energy, from: "cure times" })),
);
const assumed = fc.option(fc.double({ min: -5, max: 35, noNaN: true }), { nil: undefined });
const clockOf = (of: readonly Reading[], by: CureLaw) => cureClock(track(of), by, 20);

/** By the second, from the definition alone. */
function slowly(of: readonly Reading[], by: CureLaw, from: number, to: number, warmth: number | undefined): number {
  let age = 0;
  for (let moment = from + 0.5; moment < to; moment += 1) {
    const next = of.findIndex(({ time }) => time > moment);
    const [a, b] = [next < 0 ? of.at(-1) : of[next - 1], of[next]];
    const logged = a && b && b.time - a.time <= LIMIT;
    const inGap = a && b ? [a.value, b.value] : [];
    if (logged) age += cureRate(by, Math.min(a.value, b.value), 20) ?? 0;
    else if (warmth !== undefined) age += cureRate(by, Math.min(warmth, ...inGap), 20) ?? 0;
  }
  return age;
}

describe("The age that a record proves", () => {
  it("is that of going through it second by second", () => {
    fc.assert(
      fc.property(readings, law, instant, instant, assumed, (of, by, from, to, warmth) => {
        expect(provenAge(clockOf(of, by), from, to, warmth)).toBeCloseTo(slowly(of, by, from, to, warmth), 5);
      }),
      { numRuns: 300 },
    );
  });

  it("adds up over any split", () => {
    fc.assert(
      fc.property(readings, law, instant, instant, instant, assumed, (of, by, a, b, c, warmth) => {
        const [from = 0, middle = 0, to = 0] = [a, b, c].sort((x, y) => x - y);
        const clock = clockOf(of, by);
        expect(provenAge(clock, from, middle, warmth) + provenAge(clock, middle, to, warmth)).toBeCloseTo(
          provenAge(clock, from, to, warmth),
          6,
        );
      }),
    );
  });

  it("rises with any reading and with the temperature assumed", () => {
    fc.assert(
      fc.property(
        readings,
        law,
        instant,
        instant,
        fc.double({ min: -5, max: 30, noNaN: true }),
        fc.nat(),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (of, by, from, to, warmth, which, more) => {
          const before = provenAge(clockOf(of, by), from, to, warmth);
          const warmer = of.map((reading, i) =>
            i === which % of.length ? { ...reading, value: reading.value + more } : reading,
          );
          expect(provenAge(clockOf(warmer, by), from, to, warmth)).toBeGreaterThanOrEqual(before - 1e-9);
          expect(provenAge(clockOf(of, by), from, to, warmth + more)).toBeGreaterThanOrEqual(before - 1e-9);
          expect(provenAge(clockOf(of, by), from, to, undefined)).toBeLessThanOrEqual(before + 1e-9);
        },
      ),
    );
  });

  it("is never more than the time at the warmest reading", () => {
    fc.assert(
      fc.property(readings, law, instant, instant, (of, by, from, to) => {
        const warmest = cureRate(by, Math.max(...of.map(({ value }) => value)), 20) ?? 0;
        expect(provenAge(clockOf(of, by), from, to, undefined)).toBeLessThanOrEqual(
          warmest * Math.max(0, to - from) + 1e-9,
        );
      }),
    );
  });

  it("is reached within the second after it was, and not before", () => {
    fc.assert(
      fc.property(
        readings,
        law,
        instant,
        fc.double({ min: 1, max: 5000, noNaN: true }),
        assumed,
        (of, by, from, age, warmth) => {
          const clock = clockOf(of, by);
          const at = reachedAt(clock, from, age, warmth);
          if (at === undefined) {
            expect(warmth === undefined && provenAge(clock, from, 1e6, undefined) < age).toBe(true);
            return;
          }
          expect(provenAge(clock, from, at, warmth)).toBeGreaterThanOrEqual(age - 1e-6);
          expect(provenAge(clock, from, at - 1.001, warmth)).toBeLessThan(age);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("is that of the temperature assumed all along where nothing was logged, and nothing without one", () => {
    expect(provenAge(clockOf([], { from: "doubling" }), 100, 300, 30)).toBe(400);
    expect(provenAge(clockOf([], { from: "doubling" }), 100, 300, undefined)).toBe(0);
    expect(provenAge(clockOf([{ time: 200, value: 30 }], { from: "doubling" }), 100, 300, 10)).toBe(100);
  });

  it("is nothing between instants that run backwards", () => {
    expect(provenAge(clockOf([], { from: "doubling" }), 300, 100, 30)).toBe(0);
    expect(provenAge(clockOf([{ time: 200, value: 30 }], { from: "doubling" }), 300, 100, 30)).toBe(0);
  });

  it("goes in a gap by the colder of its ends, whichever that is", () => {
    const ends = (before: number, after: number) =>
      provenAge(
        clockOf(
          [
            { time: 0, value: before },
            { time: LIMIT * 2, value: after },
          ],
          { from: "doubling" },
        ),
        0,
        LIMIT * 2,
        30,
      );
    expect([ends(10, 20), ends(20, 10)]).toEqual([LIMIT, LIMIT]);
  });

  it("is reached where the readings just do it", () => {
    const logged = clockOf(
      [0, 50, 100].map((time) => ({ time, value: 20 })),
      { from: "doubling" },
    );
    expect(reachedAt(logged, 0, 100, undefined)).toBeCloseTo(100, 0);
    expect(reachedAt(logged, 0, 50, undefined)).toBe(50);
    expect(reachedAt(logged, 0, 100.5, undefined)).toBeUndefined();
    expect(reachedAt(logged, 0, 0, undefined)).toBe(0);
  });

  it("is reached at once where none is asked", () => {
    expect(reachedAt(clockOf([], { from: "doubling" }), 100, 0, 20)).toBe(100);
    expect(reachedAt(clockOf([], { from: "doubling" }), 100, 50, 10)).toBe(200);
    expect(reachedAt(clockOf([], { from: "doubling" }), 100, 50, undefined)).toBeUndefined();
  });
});
