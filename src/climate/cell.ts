/** What a logger's cell holds: a figure, with or without its unit, or a stamp made of figures. */
import { KELVIN, fromFahrenheit } from "../facts/quantity/conversions.ts";
import type { Mark, TemperatureUnit } from "./sidecar.ts";
import { unitOf } from "./header.ts";
import { type StampReader, hourOf, wallOf } from "../facts/time/stamp.ts";
import { offsetOf } from "../facts/time/wall-clock.ts";

export interface Figure {
  readonly value: number;
  readonly mark?: Mark;
  readonly unit?: TemperatureUnit | "%";
}

const FIGURE = /^([+\-−]?)(\d+)(?:([.,])(\d+))?(?:\s*([^\d\s].*))?$/u;
const EMPTY = /^(?:|[-–—]+|n\/?a|nan|null|none)$/iu;

/** Whether a cell is one in which loggers leave out a reading. */
export const isEmpty = (cell: string): boolean => EMPTY.test(cell);

/** The figure; undefined where the cell holds none, or one in thousands. */
export function figureOf(cell: string): Figure | undefined {
  const [, sign, whole = "", mark, part = "0", unit] = FIGURE.exec(cell) ?? [];
  if (sign === undefined) return undefined;
  const known = unit === undefined ? undefined : unitOf(unit);
  if (unit !== undefined && known === undefined) return undefined;
  const value = Number(`${sign === "−" ? "-" : sign}${whole}.${part}`);
  const isMarked = mark === "." || mark === ",";
  if (known === undefined) return isMarked ? { value, mark } : { value };
  return isMarked ? { value, mark, unit: known } : { value, unit: known };
}

/** °C from a temperature in another unit, or a share from percent. */
export function inReckoning(value: number, unit: TemperatureUnit | "%"): number {
  if (unit === "%") return value / 100;
  if (unit === "°F") return fromFahrenheit(value);
  return unit === "K" ? value - KELVIN : value;
}

export type Order = "YMD" | "DMY" | "MDY";
export type OrderFound =
  | { readonly order: Order; readonly mark: string }
  | "unclear"
  | "both"
  | "two-digit years"
  | "no stamp";

const PARTS =
  /^(\d{1,4})([-./])(\d{1,2})\2(\d{4}|\d{1,2})(?:T|[ ,]\s*)(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?(?:\s*([ap])\.?m\.?)?(?:\s*(Z|UTC|GMT|(?:UTC|GMT)?[+-]\d{2}(?::?\d{2})?))?$/iu;

export function numericReader(order: Order, mark: string): StampReader {
  return (typed) => {
    const [, first, found, second, third, hour, minute, seconds = "0", half, zone] = PARTS.exec(typed) ?? [];
    if (found !== mark || (order === "YMD" ? first : third)?.length !== 4) return undefined;
    const [year, month, day] =
      order === "YMD" ? [first, second, third] : order === "DMY" ? [third, second, first] : [third, first, second];
    const wall = wallOf(
      Number(year),
      Number(month),
      Number(day),
      hourOf(Number(hour), half),
      Number(minute),
      Number(seconds.replace(",", ".")),
    );
    if (wall === undefined || zone === undefined) return wall === undefined ? undefined : { wall };
    const offset = offsetOf(zone);
    return offset === undefined ? undefined : { wall, offset };
  };
}

/**
 * The order of day, month and year in a column of stamps, where it is certain: the year comes first; or points stand
 * between, which is
 * day, month, year wherever it is written; or one stamp has a figure over 12 that can only be a day, and none speaks
 * against it.
 */
export function orderOf(stamps: Iterable<string>): OrderFound {
  let mark: string | undefined;
  let dayFirst = false;
  let monthFirst = false;
  for (const typed of stamps) {
    const [, first = "", found, second = "", third = ""] = PARTS.exec(typed) ?? [];
    if (found === undefined) continue;
    if (first.length === 4) return { order: "YMD", mark: found };
    if (third.length !== 4) return "two-digit years";
    mark ??= found;
    dayFirst ||= Number(first) > 12;
    monthFirst ||= Number(second) > 12;
    if (found === ".") return { order: "DMY", mark: found };
  }
  if (mark === undefined) return "no stamp";
  if (dayFirst === monthFirst) return dayFirst ? "both" : "unclear";
  return { order: dayFirst ? "DMY" : "MDY", mark };
}
