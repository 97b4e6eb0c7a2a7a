/**
 * The equivalent age that a record proves between two instants, s at the reference temperature, from a logger's track
 * of the shop's temperature where it has readings and from a temperature assumed where it has none.
 *
 *   te = Σ rate(T, Tref)·Δt, see cure-rate.ts for the rate and its source
 *
 * Between two readings the lower counts, so that the sum is never more than what was logged; in a gap the lowest of
 * the two readings at its ends and of the assumed temperature; before the first and after the last reading the
 * assumed temperature. Where none is assumed these count for nothing. Additive over splits; rises with any
 * temperature.
 */
import { cureRate, type CureLaw } from "./cure-rate.ts";
import { firstGap } from "../climate/span-of-track.ts";
import { integral, lastAtMost, steps, type Steps, type Track } from "../climate/track.ts";

/** A track with its cure summed up for one law and one reference temperature, °C. Made once and asked often. */
export interface CureClock {
  readonly track: Track;
  readonly law: CureLaw;
  readonly reference: number;
  readonly ages: Steps;
}

export function cureClock(track: Track, law: CureLaw, reference: number): CureClock {
  const { times, values, joined } = track;
  const lower = (i: number): number => Math.min(values[i] ?? Number.NaN, values[i + 1] ?? Number.NaN);
  return { track, law, reference, ages: steps(times, joined, (i) => cureRate(law, lower(i), reference) ?? 0) };
}

/** Each question takes O(log n) and as many steps more as there are gaps between the instants. */
export function provenAge(clock: CureClock, from: number, to: number, assumed: number | undefined): number {
  if (!(from < to)) return 0;
  const {
    track: { times },
    ages,
  } = clock;
  const logged = integral(times, ages, from, to);
  return assumed === undefined ? logged : logged + outside(clock, from, to, assumed) + inGaps(clock, from, to, assumed);
}

function outside({ track: { times }, law, reference }: CureClock, from: number, to: number, assumed: number): number {
  const rate = cureRate(law, assumed, reference) ?? 0;
  const [first, last] = [times[0], times[times.length - 1]];
  if (first === undefined || last === undefined) return rate * (to - from);
  return rate * (Math.max(0, Math.min(to, first) - from) + Math.max(0, to - Math.max(from, last)));
}

function inGaps(
  { track: { times, values, gaps }, law, reference }: CureClock,
  from: number,
  to: number,
  assumed: number,
): number {
  let age = 0;
  for (let g = firstGap(gaps, Math.max(0, lastAtMost(times, from))); g < gaps.length; g += 1) {
    const i = gaps[g] ?? 0;
    const [start, end] = [times[i] ?? 0, times[i + 1] ?? 0];
    if (start >= to) break;
    const lowest = Math.min(assumed, values[i] ?? assumed, values[i + 1] ?? assumed);
    age += (cureRate(law, lowest, reference) ?? 0) * Math.max(0, Math.min(to, end) - Math.max(from, start));
  }
  return age;
}

/**
 * The first instant by which the age is reached, s, no more than one second late; beyond the last reading the assumed
 * temperature is
 * taken to go on. undefined where none is assumed and the readings do not reach it.
 */
export function reachedAt(
  clock: CureClock,
  from: number,
  age: number,
  assumed: number | undefined,
): number | undefined {
  if (!(age > 0)) return from;
  const { times } = clock.track;
  const last = Math.max(from, times[times.length - 1] ?? from);
  const logged = provenAge(clock, from, last, assumed);
  if (logged >= age) return firstBy(clock, from, last, age, assumed);
  const rate = assumed === undefined ? 0 : (cureRate(clock.law, assumed, clock.reference) ?? 0);
  return rate > 0 ? last + (age - logged) / rate : undefined;
}

function firstBy(clock: CureClock, from: number, to: number, age: number, assumed: number | undefined): number {
  let [early, late] = [from, to];
  while (late - early > 1) {
    const middle = (early + late) / 2;
    if (provenAge(clock, from, middle, assumed) >= age) late = middle;
    else early = middle;
  }
  return late;
}
