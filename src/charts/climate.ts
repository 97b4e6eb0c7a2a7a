import { scaleLinear } from "d3-scale";
import { monthTicks, tenth } from "./frame.ts";
import type { Frame, Room } from "./frame.ts";

/** The least and the greatest of a day's readings; days are counted from 1970-01-01. */
export interface DayRange {
  readonly day: number;
  readonly least: number;
  readonly greatest: number;
}

export interface ClimateInput {
  /** In order; a day without readings is not among them. */
  readonly days: readonly DayRange[];
  /** Times without readings, in days and parts of days. */
  readonly gaps: readonly { readonly from: number; readonly to: number }[];
  /** What was noted on the spot, and when; without a value only the day is marked. */
  readonly marks: readonly { readonly day: number; readonly value?: number; readonly words: string }[];
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

export interface ClimateDrawing {
  readonly frame: Frame;
  /** Bands from least to greatest, one for each stretch of days with readings. */
  readonly band: string;
  readonly gaps: readonly { readonly x: number; readonly width: number }[];
  readonly marks: readonly {
    readonly x: number;
    readonly y: number;
    readonly noted: boolean;
    readonly words: string;
  }[];
}

/** How many columns a drawing can show at least a unit wide each. */
const BUCKETS = [1, 2, 7, 14, 28, 56] as const;

export function climateDrawing(input: ClimateInput, room: Room): ClimateDrawing {
  const [left, right, top, bottom] = [62, room.width - 8, 14, room.height - 26];
  const x = scaleLinear([input.from, Math.max(input.to, input.from + 1)], [left, right]);
  const bucket = BUCKETS.find((days) => (input.to - input.from) / days <= right - left) ?? 112;
  const columns = bucketed(input.days, input.from, bucket);
  const noted = input.marks.flatMap(({ value }) => (value === undefined ? [] : [value]));
  const y = scaleLinear(extent([...columns.flatMap(({ least, greatest }) => [least, greatest]), ...noted]), [
    bottom,
    top,
  ]).nice(5);
  const xTicks = monthTicks(input.from, input.to, Math.floor((right - left) / 46)).map(({ day, label, strong }) => ({
    at: tenth(x(day)),
    label,
    strong,
  }));
  const yTicks = y.ticks(5).map((value) => ({ at: tenth(y(value)), label: `${value} ${input.unit}`, strong: false }));
  return {
    frame: { width: room.width, height: room.height, left, right, top, bottom, xTicks, yTicks },
    band: stretches(columns, bucket)
      .map((run) => stepped(run, bucket, x, y))
      .join(""),
    gaps: input.gaps.map(({ from, to }) => ({ x: tenth(x(from)), width: Math.max(1.5, tenth(x(to) - x(from))) })),
    marks: input.marks.map(({ day, value, words }) => ({
      x: tenth(x(day)),
      y: value === undefined ? bottom : tenth(y(value)),
      noted: value !== undefined,
      words,
    })),
  };
}

function extent(values: readonly number[]): [number, number] {
  if (values.length === 0) return [0, 1];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return most > least ? [least, most] : [least - 1, most + 1];
}

/** Days put together, so that no column is too thin to be seen; a column is known where any of its days is. */
export function bucketed(days: readonly DayRange[], from: number, bucket: number): DayRange[] {
  const columns: DayRange[] = [];
  for (const { day, least, greatest } of days) {
    const start = from + Math.floor((day - from) / bucket) * bucket;
    const last = columns.at(-1);
    if (last?.day === start)
      columns[columns.length - 1] = {
        day: start,
        least: Math.min(last.least, least),
        greatest: Math.max(last.greatest, greatest),
      };
    else columns.push({ day: start, least, greatest });
  }
  return columns;
}

function stretches(columns: readonly DayRange[], bucket: number): DayRange[][] {
  const runs: DayRange[][] = [];
  for (const column of columns) {
    const run = runs.at(-1);
    if (run?.at(-1)?.day === column.day - bucket) run?.push(column);
    else runs.push([column]);
  }
  return runs;
}

/** Up the greatest from left to right and back along the least, in steps. */
function stepped(
  run: readonly DayRange[],
  bucket: number,
  x: (day: number) => number,
  y: (value: number) => number,
): string {
  const first = run[0];
  if (first === undefined) return "";
  const there = run.map(({ day, greatest }) => `V${tenth(y(greatest))}H${tenth(x(day + bucket))}`).join("");
  const back = [...run]
    .reverse()
    .map(({ day, least }) => `V${tenth(y(least))}H${tenth(x(day))}`)
    .join("");
  return `M${tenth(x(first.day))} ${tenth(y(first.least))}${there}${back}z`;
}
