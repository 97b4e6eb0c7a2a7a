import { defined } from "../defined.ts";
import { line } from "d3-shape";
import { apart, framed, tenth } from "./frame.ts";
import type { Domain, Frame, Room } from "./frame.ts";

/** A named line: days counted from 1970-01-01 against a value. */
interface Series {
  readonly name: string;
  readonly points: readonly (readonly [day: number, value: number])[];
}

export interface LinesInput {
  readonly series: readonly Series[];
  /** A line to hold the others against, drawn dashed. */
  readonly against?: Series;
  readonly from: number;
  readonly to: number;
  /** Whether the ground below the first line is filled. */
  readonly filled?: boolean;
  /** Stretches to be shaded, each by its first and last day. */
  readonly spans?: readonly (readonly [from: number, to: number])[] | undefined;
}

interface DrawnLine {
  readonly name: string;
  readonly path: string;
  /** Where its name stands, and the end of the line it belongs to. */
  readonly nameAt: { readonly x: number; readonly y: number };
  readonly end: { readonly x: number; readonly y: number };
}

export interface LinesDrawing {
  readonly frame: Frame;
  readonly domain: Domain;
  readonly lines: readonly DrawnLine[];
  readonly against?: DrawnLine;
  readonly area?: string;
  /** Shaded stretches, as far as they lie within the frame. */
  readonly bands: readonly { readonly x: number; readonly width: number }[];
}

const NAME_HEIGHT = 17;

/** Without points that lie within a level stretch: the line looks the same. */
function turns(points: Series["points"]): Series["points"] {
  return points.filter(([, value], at) => value !== points[at - 1]?.[1] || value !== points[at + 1]?.[1]);
}

/** Lines over time, each named at its end. */
export function linesDrawing(input: LinesInput, room: Room): LinesDrawing {
  const all = input.against === undefined ? input.series : [...input.series, input.against];
  const most = Math.max(0, ...all.flatMap(({ points }) => points.map(([, value]) => value)));
  const { x, y, frame, domain } = framed(room, input.from, input.to, most);
  const path = line<readonly [number, number]>()
    .x(([day]) => x(day))
    .y(([, value]) => y(value))
    .digits(1);
  const ends = all.map(({ points }) => points[points.length - 1] ?? ([input.from, 0] as const));
  const names = apart(
    ends.map(([, value]) => y(value)),
    NAME_HEIGHT,
    frame.bottom,
  );
  const drawn = all.map(({ name, points }, at): DrawnLine => {
    const [day, value] = ends[at] ?? [input.from, 0];
    const end = { x: tenth(x(day)), y: tenth(y(value)) };
    return { name, path: path(turns(points)) ?? "", end, nameAt: { x: frame.right + 10, y: names[at] ?? end.y } };
  });
  const first = input.series[0];
  // Down to the ground at its end, and back along it.
  const start = tenth(x(first?.points[0]?.[0] ?? input.from));
  const under = (top: string): string => (top === "" ? "" : `${top}V${tenth(y(0))}H${start}Z`);
  const against = input.against === undefined ? undefined : drawn[drawn.length - 1];
  const bands = (input.spans ?? []).flatMap(([from, to]) => {
    const [left, right] = [x(Math.max(from - 1, input.from)), x(Math.min(to, input.to))].map(tenth);
    return left === undefined || right === undefined || right <= left ? [] : [{ x: left, width: tenth(right - left) }];
  });
  return defined({
    frame,
    domain,
    bands,
    lines: drawn.slice(0, input.series.length),
    against,
    area: input.filled === true && first !== undefined ? under(path(turns(first.points)) ?? "") : undefined,
  });
}
