import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { climateTracks } from "../../src/reckoning/climate/climate-tracks.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";
import { spanOf } from "../../src/reckoning/climate/span-of-track.ts";
import { type Track, trackOf } from "../../src/reckoning/climate/track.ts";
import { instant, LIMIT, readings, secondBySecond, track } from "./any-track.ts";

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

const isWhole = (one: Track, from: number, to: number) => spanOf(one, from, to)?.whole ?? false;

describe("A track of readings between two instants", () => {
  it("says the same as going through it second by second", () => {
    fc.assert(
      fc.property(readings, instant, instant, (of, from, to) => {
        const found = spanOf(track(of), from, to);
        const seconds = secondBySecond(of, from, to);
        if (seconds.length === 0) {
          expect(found).toBeUndefined();
          return;
        }
        const values = seconds.flat().map(({ value }) => value);
        expect(found?.known).toBeCloseTo(seconds.length, 6);
        expect(found?.mean).toBeCloseTo(mean(values), 6);
        expect(found?.whole).toBe(seconds.length === to - from);
        expect(found?.least).toBeLessThanOrEqual(Math.min(...values));
        expect(found?.greatest).toBeGreaterThanOrEqual(Math.max(...values));
        // Beyond the seconds' own readings only those that stand alone between two gaps of the time can add to the extremes.
        const within = of.filter(({ time }) => time >= from && time <= to).map(({ value }) => value);
        expect(found?.least).toBe(Math.min(...values, ...within));
        expect(found?.greatest).toBe(Math.max(...values, ...within));
      }),
      { numRuns: 500 },
    );
  });

  it("weighs by time and not by readings", () => {
    const uneven = track([
      { time: 0, value: 10 },
      { time: 10, value: 10 },
      { time: 20, value: 10 },
      { time: 30, value: 20 },
      { time: 80, value: 20 },
    ]);
    expect(spanOf(uneven, 0, 80)).toEqual({
      whole: true,
      known: 80,
      mean: (20 * 10 + 10 * 15 + 50 * 20) / 80,
      least: 10,
      greatest: 20,
    });
    expect(spanOf(uneven, 25, 30)).toEqual({ whole: true, known: 5, mean: 15, least: 10, greatest: 20 });
    expect(spanOf(uneven, 30, 70)).toEqual({ whole: true, known: 40, mean: 20, least: 20, greatest: 20 });
  });

  it("has the readings at its two ends, though a gap lies beside them", () => {
    const gapped = track([
      { time: 0, value: 3 },
      { time: 10, value: 9 },
      { time: 11 + LIMIT, value: 5 },
      { time: 12 + LIMIT, value: 4 },
      { time: 13 + 2 * LIMIT, value: 1 },
      { time: 14 + 2 * LIMIT, value: 2 },
    ]);
    expect(spanOf(gapped, 10, 12 + LIMIT)).toMatchObject({ whole: false, known: 1, least: 4, greatest: 9 });
    expect(spanOf(gapped, 11 + LIMIT, 13 + 2 * LIMIT)).toMatchObject({ known: 1, least: 1, greatest: 5 });
  });

  it("takes in nothing that was read before it, where a gap lies between, nor after it", () => {
    const cold = [0, 11 + LIMIT, 21 + LIMIT, 32 + 2 * LIMIT].map((time, i) => ({
      time,
      value: i % 3 === 0 ? 1 : 9 + i,
    }));
    const span = spanOf(track(cold), 5, 30 + 2 * LIMIT);
    expect(span).toMatchObject({ whole: false, known: 10, least: 10, greatest: 11 });
  });

  it("is whole up to a step of just the limit, and broken by one beyond it or by an end", () => {
    const steps = (step: number) =>
      track([
        { time: 0, value: 1 },
        { time: 10, value: 1 },
        { time: 10 + step, value: 1 },
        { time: 20 + step, value: 1 },
      ]);
    expect(isWhole(steps(LIMIT), 0, LIMIT + 20)).toBe(true);
    expect(isWhole(steps(LIMIT + 1), 0, LIMIT + 21)).toBe(false);
    expect(isWhole(steps(LIMIT + 1), 0, 10)).toBe(true);
    expect(isWhole(steps(LIMIT + 1), 0, 11)).toBe(false);
    expect(isWhole(steps(LIMIT + 1), 10 + LIMIT + 1, LIMIT + 21)).toBe(true);
    expect(isWhole(steps(LIMIT), -1, 20)).toBe(false);
    expect(isWhole(steps(LIMIT), 0, LIMIT + 21)).toBe(false);
    expect(spanOf(steps(LIMIT), 20, 20)).toBeUndefined();
    expect(spanOf(trackOf(new Float64Array(), new Float64Array(), new Float64Array()), 0, 10)).toBeUndefined();
  });

  it("takes the shorter limit where two files meet, and a gap on both sides of a value that is none", () => {
    const of = (values: number[], limits: number[]) =>
      trackOf(Float64Array.of(0, 10, 20), Float64Array.from(values), Float64Array.from(limits));
    expect(isWhole(of([1, 1, 1], [10, 10, 5]), 0, 10)).toBe(true);
    expect(isWhole(of([1, 1, 1], [10, 10, 5]), 0, 20)).toBe(false);
    expect(spanOf(of([1, Number.NaN, 1], [10, 10, 10]), 0, 20)).toBeUndefined();
    expect(spanOf(of([1, 2, Number.NaN], [10, 10, 10]), 0, 20)).toEqual({
      whole: false,
      known: 10,
      mean: 1.5,
      least: 1,
      greatest: 2,
    });
  });
});

describe("The ends of a track", () => {
  const even = () => track([0, 10, 20, 30].map((time) => ({ time, value: time })));

  it("are no gaps", () => {
    expect([...even().gaps]).toEqual([]);
    expect([
      ...track([
        { time: 0, value: 1 },
        { time: LIMIT + 1, value: 1 },
        { time: LIMIT + 2, value: 1 },
      ]).gaps,
    ]).toEqual([0]);
  });

  it("at a reading itself take in no reading beyond it", () => {
    expect(spanOf(even(), 10, 20)).toMatchObject({ least: 10, greatest: 20 });
    expect(spanOf(even(), 10, 21)).toMatchObject({ least: 10, greatest: 30 });
    expect(spanOf(even(), 9, 20)).toMatchObject({ least: 0, greatest: 20 });
  });

  it("that run backwards hold nothing", () => {
    const spans = [spanOf(even(), 5, 25), spanOf(even(), 25, 5), spanOf(even(), 5, 5)];
    expect(spans.map((span) => span?.known)).toEqual([20, undefined, undefined]);
  });
});

describe("The climate of a workshop", () => {
  const log = (times: number[], temperatures: number[], humidities: number[], gap = 10) => ({
    times: Float64Array.from(times),
    temperatures: Float64Array.from(temperatures),
    humidities: Float64Array.from(humidities),
    gap,
  });

  it("leaves out what is missing, each quantity by itself", () => {
    const { temperature, humidity, moisture } = climateTracks([
      log([0, 5, 10], [20, Number.NaN, 22], [0.5, 0.6, Number.NaN]),
    ]);
    expect([temperature.times, humidity.times, moisture.times].map((times) => [...times])).toEqual([
      [0, 10],
      [0, 5],
      [0],
    ]);
    expect(spanOf(temperature, 0, 10)).toEqual({ whole: true, known: 10, mean: 21, least: 20, greatest: 22 });
  });

  it("has in a gap the least of a thermometer for warmth, and its greatest for heat", () => {
    const logs = [log([0, 100], [20, 20], [0.5, 0.5])];
    const { temperature, warmest, humidity } = climateTracks(logs, [{ from: 0, to: 100, least: 11, greatest: 33 }]);
    expect(spanOf(temperature, 10, 90)).toMatchObject({ whole: true, least: 11, greatest: 11 });
    expect(warmest && spanOf(warmest, 10, 90)).toMatchObject({ whole: true, least: 33, greatest: 33 });
    expect(climateTracks(logs)).not.toHaveProperty("warmest");
    expect(spanOf(humidity, 10, 90)).toBeUndefined();
  });

  it("joins files, whichever comes first, and counts once what stands in both", () => {
    const [early, late] = [
      log([0, 5, 10], [20, 21, 22], [0.5, 0.5, 0.5]),
      log([5, 10, 15], [21, 22, 23], [0.5, 0.5, 0.5]),
    ];
    for (const logs of [
      [early, late],
      [late, early],
    ]) {
      const { temperature } = climateTracks(logs);
      expect([...temperature.times]).toEqual([0, 5, 10, 15]);
      expect([...temperature.values]).toEqual([20, 21, 22, 23]);
    }
    expect([...climateTracks([log([0], [1], [0.5]), log([5], [2], [0.5])]).temperature.times]).toEqual([0, 5]);
    expect(climateTracks([]).temperature.times).toHaveLength(0);
  });

  it("puts readings in order and keeps, of those at one time, that of the file given first", () => {
    const single = (time: number, temperature: number) => log([time], [temperature], [0.5]);
    const of = (...logs: ReturnType<typeof log>[]) => {
      const { temperature } = climateTracks(logs);
      return [[...temperature.times], [...temperature.values]];
    };
    expect(of(single(10, 1), single(5, 2), single(0, 3))).toEqual([
      [0, 5, 10],
      [3, 2, 1],
    ]);
    expect(of(log([0, 5], [20, 21], [0.5, 0.5]), log([5, 10], [30, 31], [0.5, 0.5]))).toEqual([
      [0, 5, 10],
      [20, 21, 31],
    ]);
    expect(of(single(5, 1), single(5, 2), single(5, 3))).toEqual([[5], [1]]);
  });

  it("means the moisture of each reading, and breaks off where the equation ends", () => {
    const { moisture } = climateTracks([log([0, 10, 20, 30], [20, 20, 20, 20], [0.3, 0.8, 0.97, 0.5])]);
    const [dry = 0, damp = 0] = [0.3, 0.8].map((humidity) => equilibriumMoisture(20, humidity));
    expect(spanOf(moisture, 0, 10)?.mean).toBeCloseTo((dry + damp) / 2, 12);
    expect(isWhole(moisture, 0, 10)).toBe(true);
    expect(isWhole(moisture, 0, 11)).toBe(false);
  });
});
