import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filled, type Held, type Readings } from "../../src/reckoning/climate/filled.ts";
import { spanOf } from "../../src/reckoning/climate/span-of-track.ts";
import { trackOf } from "../../src/reckoning/climate/track.ts";
import { cureClock, provenAge } from "../../src/reckoning/cure/proven-age.ts";

const HOUR = 3600;
const hourly = (from: number, to: number, value: number): Readings => {
  const times = Float64Array.from({ length: to - from + 1 }, (_, i) => (from + i) * HOUR);
  return { times, values: times.map(() => value), limits: times.map(() => 2 * HOUR) };
};
const none: Readings = { times: new Float64Array(), values: new Float64Array(), limits: new Float64Array() };
const held = (from: number, to: number, value: number): Held => ({ from: from * HOUR, to: to * HOUR, value });
const asked = (readings: Readings, from: number, to: number) =>
  spanOf(trackOf(readings.times, readings.values, readings.limits), from * HOUR, to * HOUR);

describe("What a thermometer of least and greatest adds to a log", () => {
  it("is all there is where there is no log", () => {
    const span = asked(filled(none, [held(0, 100, 17)], Math.min), 10, 90);
    expect(span).toMatchObject({ whole: true, least: 17, mean: 17 });
    expect(asked(filled(none, [held(0, 100, 17)], Math.min), 10, 101)?.whole).toBe(false);
    expect(asked(filled(none, [held(5, 100, 17)], Math.min), 0, 100)?.whole).toBe(false);
  });

  it("fills a gap that it covers, and leaves what it does not cover a gap", () => {
    const log: Readings = {
      times: Float64Array.from([0, HOUR, 30 * HOUR, 31 * HOUR]),
      values: Float64Array.from([20, 20, 20, 20]),
      limits: Float64Array.from([2, 2, 2, 2].map((h) => h * HOUR)),
    };
    expect(asked(log, 0, 31)?.whole).toBe(false);
    expect(asked(filled(log, [held(0, 31, 12)], Math.min), 0, 31)).toMatchObject({ whole: true, least: 12 });
    expect(asked(filled(log, [held(10, 31, 12)], Math.min), 0, 31)?.whole).toBe(false);
    expect(asked(filled(log, [held(0, 20, 12)], Math.min), 0, 31)?.whole).toBe(false);
  });

  it("goes on before the first reading and after the last", () => {
    const both = filled(hourly(10, 20, 21), [held(0, 12, 15), held(19, 40, 14)], Math.min);
    expect(asked(both, 0, 40)).toMatchObject({ whole: true, least: 14, greatest: 21 });
  });

  it("takes the worse of two spans where they overlap", () => {
    const both = [held(0, 20, 18), held(10, 40, 15)];
    expect(asked(filled(none, both, Math.min), 12, 18)?.mean).toBe(15);
    expect(asked(filled(none, both, Math.max), 12, 18)?.mean).toBe(18);
    expect(asked(filled(none, both, Math.min), 1, 39)?.whole).toBe(true);
  });

  it("is in each hour the worst of the spans that hold then, in whatever order they were noted", () => {
    const span = fc.record({
      from: fc.nat(12),
      lasts: fc.integer({ min: 1, max: 8 }),
      value: fc.integer({ min: 5, max: 25 }),
    });
    fc.assert(
      fc.property(
        fc.array(span, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(Math.min, Math.max),
        (spans, worse) => {
          const made = filled(
            none,
            spans.map(({ from, lasts, value }) => held(from, from + lasts, value)),
            worse,
          );
          for (let hour = 0; hour < 20; hour += 1) {
            const then = spans.filter(({ from, lasts }) => from <= hour && from + lasts > hour);
            const found = asked(made, hour + 0.1, hour + 0.9);
            if (then.length === 0) expect(found?.whole ?? false).toBe(false);
            else
              expect(found).toMatchObject({
                whole: true,
                mean: expect.closeTo(worse(...then.map(({ value }) => value)), 9),
              });
          }
        },
      ),
    );
  });

  it("says nothing of the time between its last span and the first reading, however many spans come before", () => {
    const made = filled(hourly(15, 16, 20), [held(0, 5, 17), held(3, 10, 16), held(20, 30, 15)], Math.min);
    expect([...made.values].filter(Number.isNaN)).toEqual([]);
    expect(asked(made, 1, 9)).toMatchObject({ whole: true, least: 16 });
    expect(asked(made, 9, 16)?.whole).toBe(false);
  });

  it("leaves a gap between two spans that do not meet", () => {
    expect(asked(filled(none, [held(0, 10, 18), held(11, 20, 18)], Math.min), 1, 19)?.whole).toBe(false);
  });

  it("changes nothing where the logger has readings, nor where there is no thermometer", () => {
    const log = hourly(0, 50, 21);
    expect(filled(log, [], Math.min)).toBe(log);
    expect(asked(filled(log, [held(10, 20, 3)], Math.min), 0, 50)).toEqual(asked(log, 0, 50));
  });

  it("fills no step of just the limit, and any step beyond the shorter limit of its two readings", () => {
    const log = (step: number, [first, second]: readonly [number, number]): Readings => ({
      times: Float64Array.from([0, step * HOUR]),
      values: Float64Array.from([20, 20]),
      limits: Float64Array.from([first * HOUR, second * HOUR]),
    });
    const least = (readings: Readings): number | undefined =>
      asked(filled(readings, [held(0, 5, 3)], Math.min), 0, 5)?.least;
    expect(least(log(5, [5, 5]))).toBe(20);
    expect(least(log(5, [10, 4]))).toBe(3);
    expect(least(log(5, [4, 10]))).toBe(3);
  });

  it("takes nothing from a span that lasts no time", () => {
    const span = held(0, 20, 18);
    expect(filled(none, [span, held(10, 10, 3)], Math.min)).toEqual(filled(none, [span], Math.min));
  });

  it("begins one span where another ended a second after it began", () => {
    const [first, second] = [
      { from: 0, to: 1, value: 18 },
      { from: 1, to: 100, value: 15 },
    ];
    expect([...filled(none, [first, second], Math.min).times]).toEqual([0, 1, 100]);
  });

  it("has rising times and every reading in gaps of seconds too, whatever spans lie over them", () => {
    const second = fc.integer({ min: 0, max: 30 });
    const logged = fc.uniqueArray(second, { maxLength: 8 }).map((some) => some.sort((a, b) => a - b));
    const spans = fc.array(fc.tuple(second, second, fc.integer({ min: 0, max: 9 })), { maxLength: 5 });
    fc.assert(
      fc.property(logged, spans, fc.constantFrom(0.5, 3), (times, some, limit) => {
        const readings: Readings = {
          times: Float64Array.from(times),
          values: Float64Array.from(times, () => 20),
          limits: Float64Array.from(times, () => limit),
        };
        const all = some.map(([from, to, value]): Held => ({ from, to, value }));
        const made = [...filled(readings, all, Math.min).times];
        expect(made).toEqual([...new Set(made)].sort((a, b) => a - b));
        expect(times.every((time) => made.includes(time))).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("leaves what is assumed of a gap as it was where no span covers it", () => {
    const log: Readings = {
      times: Float64Array.from([0, 100 * HOUR]),
      values: Float64Array.from([20, 20]),
      limits: Float64Array.from([2 * HOUR, 2 * HOUR]),
    };
    const { times, values, limits } = filled(log, [held(-20, -10, 15), held(60, 80, 15), held(120, 130, 15)], Math.min);
    const clock = cureClock(trackOf(times, values, limits), { from: "doubling" }, 20);
    expect(provenAge(clock, 0, 50 * HOUR, 20)).toBeCloseTo(50 * HOUR * 2 ** -0.5, 0);
    expect(provenAge(clock, 85 * HOUR, 100 * HOUR, 20)).toBeCloseTo(15 * HOUR * 2 ** -0.5, 0);
    expect(provenAge(clock, 0, 100 * HOUR, undefined)).toBeCloseTo(20 * HOUR * 2 ** -0.5, 0);
  });

  it("has rising times, and knows no instant that neither the log, by its own limit, nor a thermometer covers", () => {
    const spans = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 1, max: 30 }), fc.integer({ min: -5, max: 40 })),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(spans, fc.integer({ min: 0, max: 120 }), fc.integer({ min: 1, max: 20 }), (some, from, length) => {
        const all = some.map(([start, hours, value]) => held(start, start + hours, value));
        const made = filled(hourly(40, 50, 20), all, Math.min);
        expect([...made.times]).toEqual([...new Set(made.times)].sort((a, b) => a - b));
        const isCovered = (hour: number): boolean =>
          (hour >= 38 && hour + 1 <= 52) ||
          all.some((span) => span.from <= hour * HOUR && (hour + 1) * HOUR <= span.to);
        const hours = Array.from({ length }, (_, i) => from + i);
        if (asked(made, from, from + length)?.whole === true) expect(hours.every(isCovered)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
