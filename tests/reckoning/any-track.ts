/** Tracks of readings for property tests, with some gaps. */
import fc from "fast-check";
import { trackOf, type Track } from "../../src/reckoning/climate/track.ts";

export const LIMIT = 60;

export interface Reading {
  readonly time: number;
  readonly value: number;
}

export const readings: fc.Arbitrary<Reading[]> = fc
  .array(fc.record({ step: fc.integer({ min: 1, max: 80 }), value: fc.double({ min: -5, max: 35, noNaN: true }) }), {
    minLength: 1,
    maxLength: 40,
  })
  .map((steps) => {
    let time = 1000;
    return steps.map(({ step, value }) => ({ time: (time += step), value }));
  });

export const instant = fc.integer({ min: 950, max: 4500 });

export const track = (of: readonly Reading[]): Track =>
  trackOf(
    Float64Array.from(of, ({ time }) => time),
    Float64Array.from(of, ({ value }) => value),
    new Float64Array(of.length).fill(LIMIT),
  );

/** Second by second, the two readings around each second between two instants, where no gap lies between them. */
export function secondBySecond(of: readonly Reading[], from: number, to: number): (readonly [Reading, Reading])[] {
  return Array.from({ length: Math.max(0, to - from) }, (_, i) => from + i + 0.5).flatMap((moment) => {
    const next = of.findIndex(({ time }) => time > moment);
    const [a, b] = [of[next - 1], of[next]];
    return a && b && b.time - a.time <= LIMIT ? [[a, b] as const] : [];
  });
}
