/**
 * Readings of one quantity over time, with sums made once so that each question between two instants takes O(log n).
 *
 * What holds between two readings: for a mean, the mean of both; for anything claimed as proven, the lower of both;
 * for the least and
 * the greatest, both. A step longer than its limit is a gap, in which nothing is known. Times in s since
 * 1970-01-01T00:00Z.
 */

export interface Track {
  /** Rising. */
  readonly times: Float64Array;
  /** In the quantity's unit of reckoning. */
  readonly values: Float64Array;
  /** For each reading, 1 where the step from it to the next is no gap. */
  readonly joined: Uint8Array;
  /** Places of the readings after which a gap begins. */
  readonly gaps: Int32Array;
  readonly known: Steps;
  readonly area: Steps;
  readonly tree: { readonly least: Float64Array; readonly greatest: Float64Array };
}

/** A function of time that is constant on each step, with its integral from the first reading on; 0 after the last. */
export interface Steps {
  readonly heights: Float64Array;
  readonly sums: Float64Array;
}

/**
 * `limits` holds for each reading the longest step that is no gap. A value that is not finite makes gaps of the steps
 * on both its sides.
 * The three arrays are of one length.
 */
export function trackOf(times: Float64Array, values: Float64Array, limits: Float64Array): Track {
  const last = Math.max(0, times.length - 1);
  const joined = new Uint8Array(times.length);
  for (let i = 0; i < last; i += 1) {
    const limit = Math.min(at(limits, i), at(limits, i + 1));
    joined[i] =
      at(times, i + 1) - at(times, i) <= limit && Number.isFinite(values[i]) && Number.isFinite(values[i + 1]) ? 1 : 0;
  }
  const gaps: number[] = [];
  for (let i = 0; i < last; i += 1) if (joined[i] === 0) gaps.push(i);
  const known = steps(times, joined, () => 1);
  const area = steps(times, joined, (i) => (at(values, i) + at(values, i + 1)) / 2);
  return {
    times,
    values,
    joined,
    gaps: Int32Array.from(gaps),
    known,
    area,
    tree: {
      least: treeOf(values, Math.min, Number.POSITIVE_INFINITY),
      greatest: treeOf(values, Math.max, Number.NEGATIVE_INFINITY),
    },
  };
}

/** Heights for the steps that are no gaps; 0 for those that are. */
export function steps(times: Float64Array, joined: Uint8Array, height: (i: number) => number): Steps {
  const heights = new Float64Array(times.length);
  const sums = new Float64Array(times.length);
  for (let i = 0; i + 1 < times.length; i += 1) {
    heights[i] = joined[i] === 1 ? height(i) : 0;
    sums[i + 1] = at(sums, i) + at(heights, i) * (at(times, i + 1) - at(times, i));
  }
  return { heights, sums };
}

/** The integral of a step function from the first reading up to an instant, `i` being the place of the last reading not later. */
export function sumAt(times: Float64Array, { heights, sums }: Steps, i: number, time: number): number {
  if (i < 0) return 0;
  return at(sums, i) + at(heights, i) * (time - at(times, i));
}

/** Place of the last reading not later than an instant; −1 where there is none. It is looked for after `low` readings and before the place `high`. */
export function lastAtMost(times: Float64Array, time: number, low = 0, high = times.length): number {
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (at(times, middle) <= time) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/**
 * Least and greatest of each of the nested halves of the values: leaves from n on, parents before them. Values that
 * are not finite are left out.
 */
function treeOf(values: Float64Array, choose: (a: number, b: number) => number, none: number): Float64Array {
  const n = values.length;
  const tree = new Float64Array(2 * n).fill(none);
  for (let i = 0; i < n; i += 1) if (Number.isFinite(values[i])) tree[n + i] = at(values, i);
  for (let i = n - 1; i > 0; i -= 1) tree[i] = choose(at(tree, 2 * i), at(tree, 2 * i + 1));
  return tree;
}

/** The least or the greatest of the readings from one place to another, both included. */
export function chosenOf(
  tree: Float64Array,
  choose: (a: number, b: number) => number,
  none: number,
  first: number,
  last: number,
): number {
  const n = tree.length / 2;
  let found = none;
  for (let [low, high] = [first + n, last + n + 1]; low < high; low >>= 1, high >>= 1) {
    if (low % 2 === 1) found = choose(found, at(tree, low++));
    if (high % 2 === 1) found = choose(found, at(tree, --high));
  }
  return found;
}

const at = (array: Float64Array, i: number): number => array[i] ?? Number.NaN;
