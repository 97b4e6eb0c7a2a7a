/**
 * The frame of a chart over time: scales, ticks and room for words. Lengths are in units of the drawing's `viewBox`.
 */
import { DAY_MS } from "../facts/quantity/conversions.ts";
import { scaleLinear } from "d3-scale";
import type { ScaleLinear } from "d3-scale";

export interface Tick {
  readonly at: number;
  readonly label: string;
  /** A year's first tick, drawn stronger. */
  readonly strong: boolean;
}

export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
}

export interface Room {
  readonly width: number;
  readonly height: number;
  /** Space beside the plot for the names of lines. */
  readonly names: number;
}

/** Room for a wide page, and for a phone, where names stand in a key below. */
export const WIDE: Room = { width: 960, height: 360, names: 170 };
export const NARROW: Room = { width: 400, height: 280, names: 8 };

const MONTH_LABELS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
const MONTH_STEPS = [1, 2, 3, 6, 12, 24, 60] as const;

/** Rounds a length to a tenth, so that drawings are short and the same everywhere. */
export function tenth(length: number): number {
  const rounded = Math.round(length * 10) / 10;
  return rounded === 0 ? 0 : rounded;
}

function grouped(value: number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
}

function monthStart(month: number): number {
  return Date.UTC(Math.floor(month / 12), month % 12, 1) / DAY_MS;
}

function monthOf(day: number): number {
  const date = new Date(day * DAY_MS);
  return date.getUTCFullYear() * 12 + date.getUTCMonth();
}

/** First days of months between two days (counted from 1970-01-01), no more than `most` of them. */
export function monthTicks(
  from: number,
  to: number,
  most: number,
): { readonly day: number; readonly label: string; readonly strong: boolean }[] {
  const first = monthOf(from);
  const last = monthOf(to);
  const step = MONTH_STEPS.find((months) => (last - first + 1) / months <= most) ?? 120;
  const ticks = [];
  for (let month = Math.ceil(first / step) * step; month <= last; month += step) {
    const day = monthStart(month);
    if (day < from) continue;
    const january = month % 12 === 0;
    ticks.push({ day, label: january ? String(month / 12) : (MONTH_LABELS[month % 12] ?? ""), strong: january });
  }
  return ticks;
}

/** What a frame is a frame of: days across, a value upwards from 0. */
export interface Domain {
  readonly from: number;
  readonly to: number;
  readonly most: number;
}

export interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly frame: Frame;
  readonly domain: Domain;
}

/** Days `from` to `to` across, 0 to at least `most` upwards. */
export function framed(room: Room, from: number, to: number, most: number): Scales {
  const left = 46;
  const right = room.width - room.names;
  // Above the plot stands the unit.
  const top = 26;
  const bottom = room.height - 26;
  const x = scaleLinear([from, Math.max(to, from + 1)], [left, right]);
  const y = scaleLinear([0, most > 0 ? most : 1], [bottom, top]).nice(5);
  const xTicks = monthTicks(from, to, Math.floor((right - left) / 46)).map(({ day, label, strong }) => ({
    at: tenth(x(day)),
    label,
    strong,
  }));
  const yTicks = y.ticks(5).map((value) => ({ at: tenth(y(value)), label: grouped(value), strong: value === 0 }));
  const [, last = from + 1] = x.domain();
  const [, highest = 1] = y.domain();
  const frame = { width: room.width, height: room.height, left, right, top, bottom, xTicks, yTicks };
  return { x, y, frame, domain: { from, to: last, most: highest } };
}

/**
 * Moves heights apart until each pair is at least `gap` from the next, keeping their order and staying above
 * `lowest`.
 */
export function apart(heights: readonly number[], gap: number, lowest: number): number[] {
  const order = heights.map((height, at) => ({ height, at })).sort((a, b) => a.height - b.height);
  const placed: number[] = [];
  for (const { height } of order) placed.push(Math.max(height, (placed[placed.length - 1] ?? -Infinity) + gap));
  let limit = lowest;
  for (let at = placed.length - 1; at >= 0; at--) {
    placed[at] = Math.min(placed[at] ?? limit, limit);
    limit = (placed[at] ?? limit) - gap;
  }
  const result = new Array<number>(heights.length);
  order.forEach(({ at }, rank) => {
    result[at] = tenth(placed[rank] ?? 0);
  });
  return result;
}
