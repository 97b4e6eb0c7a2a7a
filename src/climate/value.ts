/** A figure in a logger's cell, with or without its unit. */
import { fromFahrenheit, KELVIN } from "../facts/quantity/conversions.ts";
import type { Mark, TemperatureUnit } from "./form.ts";
import { unitOf } from "./header-words.ts";

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
