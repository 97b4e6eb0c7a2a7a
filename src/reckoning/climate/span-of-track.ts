/**
 * What a track of readings tells of the time between two instants.
 *
 * `whole`: there are readings on both sides of it and no gap within. Where it is not whole, the figures are of what
 * is known within it and claim nothing of the rest. Mean: time-weighted, each step with the mean of its two readings.
 * Least and greatest: of all readings within and at its ends, and of those next to it on either side, so long as no
 * gap lies between. From the definitions; no source.
 */
import { chosenOf, lastAtMost, type Steps, sumAt, type Track } from "./track.ts";

export interface TrackSpan {
  readonly whole: boolean;
  /** s with readings on both sides no further apart than their limit */
  readonly known: number;
  readonly mean: number;
  readonly least: number;
  readonly greatest: number;
}

/** undefined where nothing of the time is known, or where it is no stretch of time. */
export function spanOf(track: Track, from: number, to: number): TrackSpan | undefined {
  const { times, joined, tree } = track;
  const [before, within] = [lastAtMost(times, from), lastAtMost(times, to)];
  const between = (steps: Steps): number => sumAt(times, steps, within, to) - sumAt(times, steps, before, from);
  const known = between(track.known);
  if (!(known > 0)) return undefined;
  const first = times[before] === from || joined[before] === 1 ? before : before + 1;
  const last = times[within] === to || joined[within] !== 1 ? within : within + 1;
  return {
    whole: isWhole(track, before, to),
    known,
    mean: between(track.area) / known,
    least: chosenOf(tree.least, Math.min, Number.POSITIVE_INFINITY, first, last),
    greatest: chosenOf(tree.greatest, Math.max, Number.NEGATIVE_INFINITY, first, last),
  };
}

/** Whether readings stand on both sides of the time from a reading to an instant, and no gap lies within it. */
function isWhole({ times, gaps }: Track, first: number, to: number): boolean {
  if (first < 0 || to > (times[times.length - 1] ?? Number.NEGATIVE_INFINITY)) return false;
  const gap = gaps[firstGap(gaps, first)];
  return gap === undefined || (times[gap] ?? 0) >= to;
}

/** Place among the gaps of the first that begins at a reading or later. */
export function firstGap(gaps: Int32Array, reading: number): number {
  let [low, high] = [0, gaps.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((gaps[middle] ?? 0) < reading) low = middle + 1;
    else high = middle;
  }
  return low;
}
