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

interface Point {
  readonly time: number;
  readonly value: number;
  readonly limit: number;
}

/** As close to a reading as a held value may begin, s, so that times rise. */
const NEXT = 1;

export function filled(readings: Readings, held: readonly Held[], worse: (a: number, b: number) => number): Readings {
  if (held.length === 0) return readings;
  const logged = pointsOf(readings);
  const added = emptyOf(logged).flatMap((empty) => pointsIn(empty, held, worse));
  return readingsOf([...logged, ...added].sort((a, b) => a.time - b.time));
}

function pointsOf({ times, values, limits }: Readings): Point[] {
  return Array.from(times, (time, i) => ({ time, value: values[i] ?? Number.NaN, limit: limits[i] ?? 0 }));
}

function readingsOf(points: readonly Point[]): Readings {
  return {
    times: Float64Array.from(points, ({ time }) => time),
    values: Float64Array.from(points, ({ value }) => value),
    limits: Float64Array.from(points, ({ limit }) => limit),
  };
}

type Stretch = readonly [from: number, to: number];

/** Times without readings: before the first, within each gap, after the last. */
function emptyOf(points: readonly Point[]): Stretch[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [[Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]];
  const gaps = points.flatMap((point, i): Stretch[] => {
    const next = points[i + 1];
    const isGap = next && next.time - point.time > Math.min(point.limit, next.limit);
    return isGap ? [[point.time + NEXT, next.time - NEXT]] : [];
  });
  return [[Number.NEGATIVE_INFINITY, first.time - NEXT], ...gaps, [last.time + NEXT, Number.POSITIVE_INFINITY]];
}

/**
 * Where several spans hold at once the worst of them counts; each stretch between their ends is joined within itself
 * alone.
 */
function pointsIn([from, to]: Stretch, held: readonly Held[], worse: (a: number, b: number) => number): Point[] {
  const within = held
    .map((span) => ({ ...span, from: Math.max(from, span.from), to: Math.min(to, span.to) }))
    .filter((span) => span.from < span.to);
  const edges = [...new Set(within.flatMap((span) => [span.from, span.to]))].sort((a, b) => a - b);
  return edges.flatMap((start, i): Point[] => {
    const end = edges[i + 1];
    if (end === undefined) return [];
    const holding = within.filter((span) => span.from <= start && span.to >= end).map(({ value }) => value);
    // Nothing is known between two spans that do not meet.
    if (holding.length === 0) return [{ time: (start + end) / 2, value: Number.NaN, limit: 0 }];
    const value = holding.reduce((a, b) => worse(a, b));
    const stop = end - (i + 2 < edges.length ? NEXT : 0);
    return [
      { time: start, value, limit: Number.POSITIVE_INFINITY },
      ...(stop > start ? [{ time: stop, value, limit: Number.POSITIVE_INFINITY }] : []),
    ];
  });
}
