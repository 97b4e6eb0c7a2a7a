/** Figures for sentences: the same text on every machine, no locale. */
import { toFahrenheit } from "../facts/quantity/conversions.ts";
import { atMost } from "../reckoning/compare.ts";
import { PSI } from "../reckoning/units.ts";

const MINUS = "\u2212";

/** A number with a fixed count of decimals; the minus is a true minus and zero has none. */
export function figure(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  if (Number(text) === 0) return text.replace("-", "");
  return text.replace("-", MINUS);
}

/**
 * A number with as many decimals, from `decimals` up to 6, as it takes not to look as if it were on the other side of
 * `limit`:
 * 5.004 beside 5 reads 5.004 and not 5.0.
 */
export function apart(value: number, limit: number, decimals: number): string {
  for (let d = decimals; d < 6; d += 1) {
    const rounded = Number(value.toFixed(d));
    if (atMost(rounded, limit) === atMost(value, limit) && atMost(limit, rounded) === atMost(limit, value))
      return figure(value, d);
  }
  return figure(value, 6);
}

/** A share of one as a percentage: 0.0172 → `1.7 %`. */
export const percent = (share: number, decimals = 1): string => `${figure(share * 100, decimals)} %`;

/** As `percent`, but never rounded onto or over `limit`. */
export const percentApart = (share: number, limit: number, decimals = 1): string =>
  `${apart(share * 100, limit * 100, decimals)} %`;

/**
 * A length of time in whole days and hours, or hours and minutes, rounded down: what is shown is never more than what
 * there was.
 * 259,140 s → `2 d 23 h`; 3,900 s → `1 h 5 min`; 0 → `0 min`.
 */
export function span(seconds: number): string {
  const minutes = Math.floor(seconds / 60 + 1e-9);
  const hours = Math.floor(minutes / 60);
  if (hours >= 24) return twoParts(Math.floor(hours / 24), "d", hours % 24, "h");
  if (hours >= 1) return twoParts(hours, "h", minutes % 60, "min");
  return `${minutes} min`;
}

function twoParts(large: number, unit: string, small: number, smallUnit: string): string {
  return small === 0 ? `${large} ${unit}` : `${large} ${unit} ${small} ${smallUnit}`;
}

/** `1 piece`, `2 pieces`. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** `a`, `a and b`, `a, b and c`. */
export function list(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** Words of the builder at the end of a sentence: a full stop unless they bring their own. */
export const ended = (words: string): string =>
  /[.!?…]$/u.test(words.trimEnd()) ? words.trimEnd() : `${words.trimEnd()}.`;

export type Units = "metric" | "imperial";

/** A temperature in °C, or in °F where the aircraft is built in imperial units. */
export const temperatureText = (celsius: number, units: Units): string =>
  units === "metric" ? `${figure(celsius, 1)} °C` : `${figure(toFahrenheit(celsius), 0)} °F`;

/** A stress in MPa or psi, never rounded onto or over `limit` (all Pa). */
export function stressText(stress: number, limit: number, units: Units): string {
  return units === "metric"
    ? `${apart(stress / 1e6, limit / 1e6, 2)} MPa`
    : `${apart(stress / PSI, limit / PSI, 0)} psi`;
}
