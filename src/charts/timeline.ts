import { scaleLinear } from "d3-scale";
import { monthTicks, tenth } from "./frame.ts";
import type { Tick } from "./frame.ts";

/** Something that happened on a day, in one of the rows of a timeline. */
export interface Event {
  readonly day: number;
  /** Which shape it takes; the page knows them. */
  readonly shape: string;
  readonly words: string;
  /** Path of the page it leads to, from the site's root. */
  readonly to?: string | undefined;
}

export interface TimelineInput {
  readonly from: number;
  readonly to: number;
  /** Work done on a day, in hours, drawn as posts on the line. */
  readonly work: readonly { readonly day: number; readonly hours: number }[];
  readonly rows: readonly { readonly name: string; readonly events: readonly Event[] }[];
}

interface PlacedEvent {
  readonly x: number;
  readonly y: number;
  readonly shape: string;
  readonly words: string;
  readonly to?: string | undefined;
}

export interface TimelineDrawing {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** The line of time, and the foot of its ticks. */
  readonly base: number;
  readonly ticks: readonly Tick[];
  readonly posts: readonly { readonly x: number; readonly height: number }[];
  readonly rows: readonly {
    readonly name: string;
    readonly y: number;
    readonly nameY: number;
    readonly events: readonly PlacedEvent[];
  }[];
}

/** `names`: room at the left for the names of rows; 0 puts them above their rows. */
export interface TimelineRoom {
  readonly width: number;
  readonly names: number;
}

const NAME_HEIGHT = 16;
const SHAPE_WIDTH = 15;
const SHAPE_HEIGHT = 12;
const ROW_GAP = 12;
const POST_MOST = 34;

/** Places events of one row so that none covers another: each goes to the first level that is free. */
function levels(xs: readonly number[]): number[] {
  const ends: number[] = [];
  return xs.map((x) => {
    const free = ends.findIndex((end) => x - end >= SHAPE_WIDTH);
    const level = free === -1 ? ends.length : free;
    ends[level] = x;
    return level;
  });
}

/** One line of time with the hours of each day upon it, and rows of events above. */
export function timelineDrawing(input: TimelineInput, { width, names }: TimelineRoom): TimelineDrawing {
  const above = names === 0 ? NAME_HEIGHT : 0;
  const left = names === 0 ? 4 : names;
  const right = width - 12;
  const x = scaleLinear([input.from, Math.max(input.to, input.from + 1)], [left + 8, right - 8]);
  let top = 4;
  const rows = input.rows
    .filter(({ events }) => events.length > 0)
    .map(({ name, events }) => {
      const sorted = [...events].sort((a, b) => a.day - b.day);
      const xs = sorted.map(({ day }) => x(day));
      const at = levels(xs);
      const deep = Math.max(0, ...at) + 1;
      const nameY = names === 0 ? top + NAME_HEIGHT - 5 : top + deep * SHAPE_HEIGHT - 2;
      top += above;
      const y = top + deep * SHAPE_HEIGHT - SHAPE_HEIGHT / 2;
      const placed = sorted.map(({ shape, words, to }, event) => ({
        x: tenth(xs[event] ?? 0),
        y: tenth(y - (at[event] ?? 0) * SHAPE_HEIGHT),
        shape,
        words,
        to,
      }));
      top += deep * SHAPE_HEIGHT + ROW_GAP;
      return { name, y: tenth(y), nameY: tenth(nameY), events: placed };
    });
  const most = Math.max(1, ...input.work.map(({ hours }) => hours));
  const base = top + POST_MOST + 2;
  return {
    width,
    height: base + 24,
    left,
    right,
    base,
    rows,
    posts: input.work.map(({ day, hours }) => ({
      x: tenth(x(day)),
      height: tenth(Math.max(3, (hours / most) * POST_MOST)),
    })),
    ticks: monthTicks(input.from, input.to, Math.floor((right - left) / 46)).map(({ day, label, strong }) => ({
      at: tenth(x(day)),
      label,
      strong,
    })),
  };
}
