/** Lays out a trace from left to right: a column each for lots, batches, joints, assemblies and hold points. */
import { tenth } from "./frame.ts";
import { heightsOf } from "./trace-heights.ts";

export interface TraceBox {
  readonly key: string;
  /** Which column it stands in, from the left. */
  readonly column: number;
  readonly label: string;
  readonly word: string;
}

export interface TraceLine {
  readonly from: string;
  readonly to: string;
}

export interface PlacedBox {
  readonly key: string;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface TraceDrawing {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly PlacedBox[];
  /** In the order of the lines given. */
  readonly paths: readonly string[];
  /** Left edge of each column that holds a box. */
  readonly columns: ReadonlyMap<number, number>;
}

const BOX = { height: 40, gap: 12, least: 84, most: 176 };
const HEAD = 24;
const EDGE = 2;

/** Width in px of words in the site's plain type, erring to the wide side. */
export const widthOf = (words: string, size: number): number => words.length * size * 0.56;

/** Words short enough for a box so wide, if that is wider than the widest of a column. */
export function shortened(words: string, size: number, width = 0): string {
  const most = Math.floor((Math.max(width, BOX.most) - 46) / (size * 0.56));
  return words.length <= most ? words : `${words.slice(0, most - 1).trimEnd()}…`;
}

/** Lines lead from each column to the next; a key that no box has is a mistake of the caller. */
export function traceDrawing(boxes: readonly TraceBox[], lines: readonly TraceLine[]): TraceDrawing {
  const widths = columnWidths(boxes);
  const lefts = columnLefts(widths);
  const middles = middlesOf(boxes, lines);
  const placed = boxes.map(
    ({ key, column }, at): PlacedBox => ({
      key,
      left: lefts.get(column) ?? 0,
      top: tenth(HEAD + (middles[at] ?? 0) - BOX.height / 2),
      width: widths.get(column) ?? BOX.least,
      height: BOX.height,
    }),
  );
  const at = new Map(placed.map((box) => [box.key, box]));
  return {
    width: Math.max(0, ...placed.map(({ left, width }) => left + width)) + EDGE,
    height: Math.max(HEAD, ...placed.map(({ top, height }) => top + height)) + EDGE,
    boxes: placed,
    paths: lines.map(({ from, to }) => between(at.get(from), at.get(to))),
    columns: lefts,
  };
}

/** Middles of the boxes, from the head of the columns down. */
function middlesOf(boxes: readonly TraceBox[], lines: readonly TraceLine[]): readonly number[] {
  const number = new Map(boxes.map(({ key }, at) => [key, at]));
  const joined = lines.flatMap(({ from, to }) => {
    const ends = [number.get(from), number.get(to)] as const;
    return ends[0] === undefined || ends[1] === undefined ? [] : [[ends[0], ends[1]] as const];
  });
  const columns = boxes.map(({ column }) => column);
  return heightsOf(columns, joined, BOX.height + BOX.gap).map((height) => height + BOX.height / 2 + EDGE);
}

function columnWidths(boxes: readonly TraceBox[]): ReadonlyMap<number, number> {
  const widths = new Map<number, number>();
  for (const { column, label, word } of boxes) {
    const asked = 46 + Math.max(widthOf(label, 14), widthOf(word, 12));
    widths.set(column, Math.round(Math.min(BOX.most, Math.max(BOX.least, widths.get(column) ?? 0, asked))));
  }
  return new Map([...widths].sort(([a], [b]) => a - b));
}

/** Columns stand where their number says, whatever rank a box without lines was given. */
function columnLefts(widths: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  let left = EDGE;
  return new Map(
    [...widths].map(([column, width]) => {
      const here = left;
      left += width + 56;
      return [column, here];
    }),
  );
}

function between(from: PlacedBox | undefined, to: PlacedBox | undefined): string {
  if (!from || !to) throw new Error("a line of a trace leads from or to a box that is not in it");
  const [x1, y1, x2, y2] = [from.left + from.width, from.top + from.height / 2, to.left, to.top + to.height / 2];
  const bend = tenth((x1 + x2) / 2);
  return `M${x1} ${y1}C${bend} ${y1} ${bend} ${y2} ${x2} ${y2}`;
}
