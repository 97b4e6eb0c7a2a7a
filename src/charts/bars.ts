import { defined } from "../defined.ts";
import { framed, tenth } from "./frame.ts";
import type { Domain, Frame, Room } from "./frame.ts";

export interface BarsInput {
  /** First days of the weeks, counted from 1970-01-01. */
  readonly weeks: readonly number[];
  /** Of each series its value in each week. */
  readonly series: readonly { readonly name: string; readonly values: readonly number[] }[];
  /** A level to hold the bars against. */
  readonly level?: number;
  /** What the frame reaches at least, where several are to be alike. */
  readonly most?: number;
}

interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface BarsDrawing {
  readonly frame: Frame;
  readonly domain: Domain;
  /** Of each series its bars, without those of no height. */
  readonly stacks: readonly { readonly name: string; readonly bars: readonly Bar[] }[];
  readonly level?: number;
}

const DAYS = 7;

/** Bars of a week each, one series standing on the other. */
export function barsDrawing(input: BarsInput, room: Room): BarsDrawing {
  const from = input.weeks[0] ?? 0;
  const to = (input.weeks[input.weeks.length - 1] ?? 0) + DAYS;
  const sums = input.weeks.map((_, week) => input.series.reduce((sum, { values }) => sum + (values[week] ?? 0), 0));
  const { x, y, frame, domain } = framed(room, from, to, Math.max(input.level ?? 0, input.most ?? 0, ...sums));
  const whole = (frame.right - frame.left) / Math.max(1, input.weeks.length);
  const width = tenth(Math.max(0.6, whole - Math.min(2, whole * 0.22)));
  const heights = new Array<number>(input.weeks.length).fill(0);
  const stacks = input.series.map(({ name, values }) => {
    const bars: Bar[] = [];
    input.weeks.forEach((day, week) => {
      const value = values[week] ?? 0;
      if (value <= 0) return;
      const below = heights[week] ?? 0;
      heights[week] = below + value;
      bars.push({ x: tenth(x(day)), y: tenth(y(below + value)), width, height: tenth(y(below) - y(below + value)) });
    });
    return { name, bars };
  });
  return defined({ frame, domain, stacks, level: input.level === undefined ? undefined : tenth(y(input.level)) });
}
