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
import { lastAtMost, steps, type Steps, sumAt, type Track } from "../climate/track.ts";

/** A track with its cure summed up for one law and one reference temperature, °C. Made once and asked often. */
export interface CureClock {
  readonly track: Track;
  readonly law: CureLaw;
  readonly reference: number;
  readonly ages: Steps;
  /** What gaps are worth, for each temperature assumed so far. */
  readonly gaps: Map<number, Steps>;
}

export function cureClock(track: Track, law: CureLaw, reference: number): CureClock {
  const { times, values, joined } = track;
  const lower = (i: number): number => Math.min(values[i] ?? Number.NaN, values[i + 1] ?? Number.NaN);
  const ages = steps(times, joined, (i) => cureRate(law, lower(i), reference) ?? 0);
  return { track, law, reference, ages, gaps: new Map() };
}

/** Each question takes O(log n), and the first with an assumed temperature one pass over the gaps. */
export function provenAge(clock: CureClock, from: number, to: number, assumed: number | undefined): number {
  return from < to ? ageSince(clock, from, assumed)(to, lastAtMost(clock.track.times, to)) : 0;
}

/** The age from an instant on to any later one, of which the place of the last reading not later than it is known; ready to be asked many times. */
function ageSince(clock: CureClock, from: number, assumed: number | undefined): (to: number, last: number) => number {
  const { times } = clock.track;
  const first = lastAtMost(times, from);
  const before = sumAt(times, clock.ages, first, from);
  const logged = (to: number, last: number): number => sumAt(times, clock.ages, last, to) - before;
  if (assumed === undefined) return logged;
  const rate = cureRate(clock.law, assumed, clock.reference) ?? 0;
  const gaps = clock.gaps.get(assumed) ?? gapsOf(clock, assumed);
  clock.gaps.set(assumed, gaps);
  const skipped = gapsUpTo(clock.track, gaps, first, from);
  return (to, last) =>
    logged(to, last) + rate * outside(clock.track, from, to) + (gapsUpTo(clock.track, gaps, last, to) - skipped);
}

/** How much of the time is before the first reading or after the last, s. */
function outside({ times }: Track, from: number, to: number): number {
  const [first, last] = [times[0] ?? to, times[times.length - 1] ?? to];
  return Math.max(0, Math.min(to, first) - from) + Math.max(0, to - Math.max(from, last));
}

/** In the order of the gaps, the assumed temperature standing in each, or what was read at its ends where that is colder. */
function gapsOf({ track: { times, values, gaps }, law, reference }: CureClock, assumed: number): Steps {
  const heights = new Float64Array(gaps.length);
  gaps.forEach((i, g) => {
    heights[g] = cureRate(law, Math.min(assumed, values[i] ?? assumed, values[i + 1] ?? assumed), reference) ?? 0;
  });
  const sums = new Float64Array(gaps.length);
  gaps.forEach((i, g) => {
    // Past the last it is written nowhere.
    sums[g + 1] = (sums[g] ?? 0) + (heights[g] ?? 0) * ((times[i + 1] ?? 0) - (times[i] ?? 0));
  });
  return { heights, sums };
}

/** `last` is the place of the last reading not later than the instant. */
function gapsUpTo({ times, gaps }: Track, { heights, sums }: Steps, last: number, time: number): number {
  const g = firstGap(gaps, last + 1) - 1;
  const i = gaps[g] ?? 0;
  return (sums[g] ?? 0) + (heights[g] ?? 0) * (Math.min(time, times[i + 1] ?? time) - (times[i] ?? time));
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
  const { times } = clock.track;
  const ageBy = ageSince(clock, from, assumed);
  let [early, late] = [from, to];
  let [first, last] = [lastAtMost(times, early), lastAtMost(times, late)];
  while (late - early > 1) {
    const middle = (early + late) / 2;
    const place = lastAtMost(times, middle, Math.max(0, first), last + 1);
    if (ageBy(middle, place) >= age) [late, last] = [middle, place];
    else [early, first] = [middle, place];
  }
  return late;
}
