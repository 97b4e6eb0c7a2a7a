import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { apart, tenth } from "./frame.ts";
import type { Frame, Room } from "./frame.ts";

/** A level across the whole chart that its points are held against. */
export interface Level {
  readonly name: string;
  readonly value: number;
  readonly form: "centre" | "limit";
}

export interface IndividualsInput {
  /** One value after the other, evenly spaced: it is their order that counts and not the days between them. */
  readonly points: readonly { readonly label: string; readonly value: number; readonly marked: boolean }[];
  readonly levels: readonly Level[];
  /** The unit of all values, named on the axis. */
  readonly unit: string;
}

export interface IndividualsDrawing {
  readonly frame: Frame;
  readonly path: string;
  readonly points: readonly PlacedPoint[];
  readonly levels: readonly {
    readonly name: string;
    readonly form: Level["form"];
    readonly y: number;
    readonly nameY: number;
  }[];
}

interface PlacedPoint {
  readonly x: number;
  readonly y: number;
  readonly marked: boolean;
  /** Of marked points, where there is room for it. */
  readonly label?: string;
}

const LABEL_WIDTH = 58;
const NAME_HEIGHT = 17;

/** Points in order, joined, with the levels they are held against, each named at its end. */
export function individualsDrawing({ points, levels, unit }: IndividualsInput, room: Room): IndividualsDrawing {
  const [left, right, top, bottom] = [62, room.width - room.names, 14, room.height - 26];
  const values = [...points.map(({ value }) => value), ...levels.map(({ value }) => value)];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const pad = most > least ? (most - least) * 0.08 : Math.max(Math.abs(most) * 0.1, 1e-3);
  const y = scaleLinear([least - pad, most + pad], [bottom, top]);
  const step = (right - left) / Math.max(1, points.length);
  const x = (at: number): number => left + (at + 0.5) * step;
  const placed = points.map(({ label, value, marked }, at) => ({ x: tenth(x(at)), y: tenth(y(value)), label, marked }));
  const figures = y.tickFormat(5);
  const every = Math.max(1, Math.ceil(LABEL_WIDTH / step));
  const names = apart(
    levels.map(({ value }) => y(value)),
    NAME_HEIGHT,
    bottom,
  );
  return {
    frame: {
      width: room.width,
      height: room.height,
      left,
      right,
      top,
      bottom,
      xTicks: placed.filter((_, at) => at % every === 0).map(({ x: at, label }) => ({ at, label, strong: false })),
      yTicks: y
        .ticks(5)
        .map((value) => ({ at: tenth(y(value)), label: `${figures(value)} ${unit}`, strong: value === 0 })),
    },
    path:
      line<(typeof placed)[number]>()
        .x((point) => point.x)
        .y((point) => point.y)
        .digits(1)(placed) ?? "",
    points: named(placed),
    levels: levels.map(({ name, form, value }, at) => ({ name, form, y: tenth(y(value)), nameY: names[at] ?? 0 })),
  };
}

/** Marked points keep their labels, which stand to their right, where no other marked point stands. */
function named(points: readonly (PlacedPoint & { readonly label: string })[]): PlacedPoint[] {
  const marked = points.filter((point) => point.marked).map(({ x }) => x);
  return points.map(({ label, ...point }) => {
    const free = !marked.some((x) => x > point.x && x < point.x + LABEL_WIDTH);
    return point.marked && free ? { ...point, label } : point;
  });
}
