/** Which of many spans of time meet one that is asked for, in logarithmic time and one step for each of those. From the definitions; no source. */

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Those that meet the time between two instants, their ends included, in the order given. */
export type SpansThatMeet<S extends Span> = (from: number, to: number) => S[];

/** A balanced tree by the beginnings: the middle of each stretch of the sorted spans is its root, which knows the last end of the stretch. */
export function spansThatMeet<S extends Span>(spans: readonly S[]): SpansThatMeet<S> {
  const sorted = spans.map((span, place) => ({ span, place })).sort((a, b) => a.span.from - b.span.from);
  const last = new Float64Array(sorted.length);
  lastEnd(sorted, last, 0, sorted.length);
  return (from, to) => {
    const met: (typeof sorted)[number][] = [];
    const look = (low: number, high: number): void => {
      const middle = (low + high) >>> 1;
      const one = sorted[middle];
      if (low >= high || !one || !((last[middle] ?? from) >= from)) return;
      look(low, middle);
      if (one.span.from > to) return;
      if (one.span.to >= from) met.push(one);
      look(middle + 1, high);
    };
    look(0, sorted.length);
    return met.sort((a, b) => a.place - b.place).map(({ span }) => span);
  };
}

function lastEnd(sorted: readonly { readonly span: Span }[], last: Float64Array, low: number, high: number): number {
  if (low >= high) return Number.NEGATIVE_INFINITY;
  const middle = (low + high) >>> 1;
  const own = sorted[middle]?.span.to ?? Number.NEGATIVE_INFINITY;
  last[middle] = Math.max(own, lastEnd(sorted, last, low, middle), lastEnd(sorted, last, middle + 1, high));
  return last[middle] ?? own;
}
