/**
 * Readings of a logger with what a thermometer of least and greatest tells of the times in which the logger has none.
 *
 * Such a thermometer says of a span only between which two temperatures it lay. Where the logger has a gap, or has
 * not begun or has ended, and the span covers it, the end of the span that is worse for what is asked stands all
 * along: its least for warmth that must be proven, its greatest for heat. Times in s since 1970-01-01T00:00Z. From
 * the definitions; no source.
 */

/** Readings as `trackOf` takes them: `limits` holds for each the longest step that is no gap. */
export interface Readings {
  readonly times: Float64Array;
  readonly values: Float64Array;
  readonly limits: Float64Array;
}

/** One value that stands for the time between two instants. */
export interface Held {
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

/** As close to a reading as a held value may begin, s, so that times rise. */
const NEXT = 1;

export function filled(readings: Readings, held: readonly Held[], worse: (a: number, b: number) => number): Readings {
  if (held.length === 0) return readings;
  const { times, values, limits } = readings;
  const steady = steadyStretches(held, worse);
  const points = new Points(times.length + steady.length + 1);
  fill(points, steady, Number.NEGATIVE_INFINITY, (times[0] ?? Number.POSITIVE_INFINITY) - NEXT);
  for (let i = 0; i < times.length; i += 1) {
    const [time, limit] = [times[i] ?? Number.NaN, limits[i] ?? 0];
    points.add(time, values[i] ?? Number.NaN, limit);
    const next = times[i + 1] ?? Number.POSITIVE_INFINITY;
    const isGap = next - time > Math.min(limit, limits[i + 1] ?? 0);
    if (isGap) fill(points, steady, time + NEXT, next - NEXT);
  }
  return points.readings();
}

/** Room for so many at first, and for twice as many whenever that is full. */
class Points {
  #held: Readings;
  #length = 0;

  constructor(room: number) {
    this.#held = roomFor(room);
  }

  add(time: number, value: number, limit: number): void {
    const at = this.#length;
    if (at === this.#held.times.length) this.#grow();
    const { times, values, limits } = this.#held;
    times[at] = time;
    values[at] = value;
    limits[at] = limit;
    this.#length = at + 1;
  }

  #grow(): void {
    const { times, values, limits } = this.#held;
    this.#held = roomFor(2 * times.length);
    this.#held.times.set(times);
    this.#held.values.set(values);
    this.#held.limits.set(limits);
  }

  readings(): Readings {
    const { times, values, limits } = this.#held;
    const all = (array: Float64Array): Float64Array => array.subarray(0, this.#length);
    return { times: all(times), values: all(values), limits: all(limits) };
  }
}

const roomFor = (room: number): Readings => ({
  times: new Float64Array(room),
  values: new Float64Array(room),
  limits: new Float64Array(room),
});

/** From one end of a span to the next of any. Where several spans hold at once the worst of them counts; where none does the value is NaN. */
function steadyStretches(held: readonly Held[], worse: (a: number, b: number) => number): Held[] {
  const spans = held.filter(({ from, to }) => from < to).sort((a, b) => a.from - b.from);
  const ends = new Float64Array(2 * spans.length);
  spans.forEach(({ from, to }, i) => ends.set([from, to], 2 * i));
  const edges = [...new Set(ends.sort())];
  const steady: Held[] = [];
  let holding: Held[] = [];
  let begun = 0;
  for (let i = 0; i + 1 < edges.length; i += 1) {
    const [from, to] = [edges[i] ?? Number.NaN, edges[i + 1] ?? Number.NaN];
    holding = holding.filter((span) => span.to > from);
    for (let next = spans[begun]; next !== undefined && next.from === from; next = spans[begun]) {
      holding.push(next);
      begun += 1;
    }
    const [first, ...others] = holding;
    const value = others.reduce((worst, one) => worse(worst, one.value), first?.value ?? Number.NaN);
    steady.push({ from, to, value });
  }
  return steady;
}

/** Each stretch is joined within itself alone; one without a value to nothing. */
function fill(points: Points, steady: readonly Held[], from: number, to: number): void {
  const within = clipped(steady, from, to);
  within.forEach((one, i) => {
    points.add(one.from, one.value, Number.POSITIVE_INFINITY);
    const stop = one.to - (i + 1 < within.length ? NEXT : 0);
    if (stop > one.from) points.add(stop, one.value, Number.POSITIVE_INFINITY);
  });
}

/** What of the stretches lies between two instants, from the first that has a value to the last. */
function clipped(steady: readonly Held[], from: number, to: number): Held[] {
  const within: Held[] = [];
  if (!(from < to)) return within;
  for (let i = firstAfter(steady, from); i < steady.length; i += 1) {
    const one = steady[i];
    if (!one || one.from >= to) break;
    if (within.length > 0 || !Number.isNaN(one.value))
      within.push({ from: Math.max(from, one.from), to: Math.min(to, one.to), value: one.value });
  }
  if (Number.isNaN(within.at(-1)?.value)) within.pop();
  return within;
}

/** Place of the first that ends after an instant. */
function firstAfter(steady: readonly Held[], instant: number): number {
  let [low, high] = [0, steady.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((steady[middle]?.to ?? instant) <= instant) low = middle + 1;
    else high = middle;
  }
  return low;
}
