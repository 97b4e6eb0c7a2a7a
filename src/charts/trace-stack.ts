/** Lays out a trace from top to bottom for a narrow screen: all boxes in one stack, lines in lanes beside it. */
import { tenth } from "./frame.ts";
import type { TraceBox, TraceDrawing, TraceLine } from "./trace.ts";

/** `boxes` in the order of those given. */
export interface StackedTrace extends Omit<TraceDrawing, "columns"> {
  /** Foot of the words above each column's boxes. */
  readonly heads: ReadonlyMap<number, number>;
}

const WIDTH = 340;
const BOX = { height: 38, gap: 6 };
const HEAD = 26;
const EDGE = 2;
const LANE = { most: 8, all: 110 };
/** Lines leave a box below its middle and reach it above, so that one that comes and one that goes are told apart. */
const ASIDE = 7;
const BEND = 5;

/** `order`: how far down each box stands among those of its column, in the order of the boxes. */
export function stackedTrace(
  boxes: readonly TraceBox[],
  lines: readonly TraceLine[],
  order: readonly number[],
): StackedTrace {
  const { tops, heads, height } = stacked(boxes, order);
  const lanes = lanesOf(lines, tops);
  const count = Math.max(0, ...lanes.values()) + 1;
  const step = Math.min(LANE.most, LANE.all / count);
  const right = Math.floor(WIDTH - EDGE - count * step - BEND);
  const laneAt = (key: string): number => tenth(right + BEND + ((lanes.get(key) ?? 0) + 1) * step);
  return {
    width: WIDTH,
    height,
    heads,
    boxes: boxes.map(({ key }) => ({
      key,
      left: EDGE,
      top: tops.get(key) ?? 0,
      width: right - EDGE,
      height: BOX.height,
    })),
    paths: lines.map(({ from, to }) => beside(right, laneAt(to), leaves(tops, from), reaches(tops, to))),
  };
}

function stacked(
  boxes: readonly TraceBox[],
  order: readonly number[],
): { tops: Map<string, number>; heads: Map<number, number>; height: number } {
  const tops = new Map<string, number>();
  const heads = new Map<number, number>();
  const sorted = boxes
    .map((box, at) => ({ box, down: order[at] ?? 0 }))
    .sort((a, b) => a.box.column - b.box.column || a.down - b.down);
  let top = 0;
  for (const { box } of sorted) {
    if (!heads.has(box.column)) {
      top += HEAD;
      heads.set(box.column, top - BOX.gap);
    }
    tops.set(box.key, top);
    top += BOX.height + BOX.gap;
  }
  return { tops, heads, height: top };
}

const leaves = (tops: ReadonlyMap<string, number>, key: string): number => placeOf(tops, key) + BOX.height / 2 + ASIDE;
const reaches = (tops: ReadonlyMap<string, number>, key: string): number => placeOf(tops, key) + BOX.height / 2 - ASIDE;

function placeOf(tops: ReadonlyMap<string, number>, key: string): number {
  const top = tops.get(key);
  if (top === undefined) throw new Error("a line of a trace leads from or to a box that is not in it");
  return top;
}

/** All lines to one box share a lane; the shortest stand nearest to the boxes, and none lies on another. */
function lanesOf(lines: readonly TraceLine[], tops: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  const spans = new Map<string, { readonly to: string; from: number; readonly end: number }>();
  for (const { from, to } of lines) {
    const span = spans.get(to) ?? { to, from: Infinity, end: reaches(tops, to) };
    span.from = Math.min(span.from, leaves(tops, from));
    spans.set(to, span);
  }
  const taken: (readonly { readonly from: number; readonly end: number }[])[] = [];
  const lanes = new Map<string, number>();
  for (const span of [...spans.values()].sort((a, b) => a.end - a.from - (b.end - b.from) || a.end - b.end)) {
    const free = taken.findIndex((others) => others.every(({ from, end }) => end < span.from || span.end < from));
    const lane = free < 0 ? taken.length : free;
    taken[lane] = [...(taken[lane] ?? []), span];
    lanes.set(span.to, lane);
  }
  return lanes;
}

function beside(right: number, lane: number, from: number, to: number): string {
  return `M${right} ${from}H${tenth(lane - BEND)}Q${lane} ${from} ${lane} ${from + BEND}V${to - BEND}Q${lane} ${to} ${tenth(lane - BEND)} ${to}H${right}`;
}
