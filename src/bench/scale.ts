/** Readings of an instrument: numbers that it can show, as they are typed. */

import { readNoted } from "../facts/quantity/noted.ts";
import { saidEnds } from "../facts/quantity/ends.ts";
import { isFault } from "../facts/reading.ts";

/** A number with its unit as typed; `decimals` as many as the instrument shows. */
export interface Shown {
  readonly value: number;
  readonly decimals: number;
  readonly unit: string;
}

/** Undefined for what is no plain number with a unit, such as a range. */
export function shownBy(typed: string | undefined): Shown | undefined {
  const [, number = "", unit = ""] = /^(\d+(?:\.\d+)?) *(\D.*)$/.exec(typed?.trim() ?? "") ?? [];
  if (number === "" || / to |\d/.test(unit.replace(/[²³]/g, ""))) return undefined;
  return { value: Number(number), decimals: (number.split(".")[1] ?? "").length, unit };
}

/** The number on as many decimals as the instrument has. */
export const typedBy = ({ decimals, unit }: Omit<Shown, "value">, value: number): string =>
  `${value.toFixed(decimals)} ${unit}`;

/** Readings around one, `step` apart, `each` of them to each side, as typed: what the instrument may well show now. */
export function ladder(around: Shown, step: number, each: number): readonly string[] {
  const first = Math.round(around.value / step) - each;
  return Array.from({ length: 2 * each + 1 }, (_, at) => typedBy(around, (first + at) * step)).filter(canBe);
}

/** Whether an entry takes it: a share of the whole at most, and nothing but a temperature below nought. */
function canBe(typed: string): boolean {
  const reading = readNoted(typed, { sign: "any" });
  if (isFault(reading)) return false;
  const { dimension } = reading.value;
  const { least, most } = saidEnds(reading.value);
  if (dimension === "temperature") return true;
  return dimension === "share" ? least >= 0 && most <= 1 : least > 0;
}

/** What a pad has typed, with a comma or a point, as a reading; undefined for what is no number, or cannot be. */
export function padded(typed: string, unit: string): string | undefined {
  const text = typed.replace(",", ".");
  if (!/^-?\d{1,6}(?:\.\d{1,4})?$/.test(text)) return undefined;
  const [, sign = "", whole = "", fraction = ""] = /^(-?)(\d+)(.*)$/.exec(text) ?? [];
  const read = `${sign}${Number(whole)}${fraction} ${unit}`;
  return canBe(read) ? read : undefined;
}

/** Of pieces there is no half, and a hundred of them are a slip. */
export function countPadded(typed: string): number | undefined {
  return /^\d{1,2}$/.test(typed) && Number(typed) > 0 ? Number(typed) : undefined;
}
