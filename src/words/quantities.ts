/** Quantities in the aircraft's units. */
import {
  FAHRENHEIT,
  FLUID_OUNCE,
  FOOT,
  INCH,
  OUNCE,
  POUND,
  POUND_FORCE,
  PSI,
  toFahrenheit,
} from "../facts/quantity/conversions.ts";
import type { Noted } from "../facts/types.ts";
import { saidEnds } from "../facts/quantity/ends.ts";
import { apart, figure, grouped, percent } from "./numbers.ts";

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

type Conversion = readonly [factor: number, unit: string, decimals: number, offset?: number];

/** From the unit of reckoning to the one shown: value × factor + offset. */
const SHOWN_IN: { readonly [units in Units]: { readonly [unit: string]: Conversion } } = {
  metric: {
    kg: [1000, "g", 1],
    m: [1000, "mm", 2],
    "m²": [1e4, "cm²", 0],
    "m³": [1e6, "ml", 1],
    N: [1, "N", 0],
    Pa: [1e-6, "MPa", 1],
    "°C": [1, "°C", 1],
    "kg/m³": [1, "kg/m³", 0],
    "kg/m²": [1000, "g/m²", 0],
    "1/m": [0.01, "/cm", 1],
  },
  imperial: {
    kg: [1 / OUNCE, "oz", 2],
    m: [1 / INCH, "in", 3],
    "m²": [1 / INCH ** 2, "in²", 1],
    "m³": [1 / FLUID_OUNCE, "fl oz", 2],
    N: [1 / POUND_FORCE, "lbf", 0],
    Pa: [1 / PSI, "psi", 0],
    "°C": [FAHRENHEIT.each, "°F", 1, FAHRENHEIT.atZero],
    "kg/m³": [FOOT ** 3 / POUND, "lb/ft³", 1],
    "kg/m²": [FOOT ** 2 / POUND, "lb/ft²", 3],
    "1/m": [INCH, "/in", 1],
  },
};

const IMPERIAL_TYPED =
  /(?:\d|\s|\/)(?:in|inch|inches|ft|feet|lb|lbs|lbf|oz|psi|ksi|°F|degF|fl oz|in²|in2|sq in|ft²|ft2)\b|["'′″]|°F/;

/** As typed, and after it the converted figure, or both ends, where it was typed in the other system of units. */
export function quantityWords(quantity: Noted, units: Units, convert = inUnits): string {
  const conversion = SHOWN_IN[units][quantity.unit];
  const typedIn: Units = IMPERIAL_TYPED.test(quantity.typed) ? "imperial" : "metric";
  if (conversion === undefined || typedIn === units || quantity.unit === "rad") return quantity.typed;
  const about = "about" in quantity ? "about " : "";
  const { least, most } = saidEnds(quantity);
  const ends = [...new Set([least, most])].map((end) => convert(end, quantity.unit, units));
  return `${quantity.typed} (${about}${ends.join(" to ")})`;
}

/** A value in a unit of reckoning, shown in the aircraft's units; a bare number is a share. */
export function inUnits(value: number, unit: string, units: Units): string {
  if (unit === "rad") return `${grouped((value * 180) / Math.PI, 2)}°`;
  const conversion = SHOWN_IN[units][unit];
  if (unit === "1") return percent(value, 1);
  if (conversion === undefined) return `${grouped(value, 3)} ${unit}`;
  const [factor, shownUnit, decimals, offset = 0] = conversion;
  const shown = value * factor + offset;
  if (unit === "kg" && units === "metric" && Math.abs(shown) >= 1000) return `${grouped(value, 2)} kg`;
  return `${grouped(shown, Math.abs(shown) >= 100 ? 0 : decimals)} ${shownUnit}`;
}

const TIMBER_IN: typeof SHOWN_IN = {
  metric: { kg: [1, "kg", 2], m: [1, "m", 2], "m²": [1, "m²", 2], "m³": [1000, "dm³", 1] },
  imperial: {
    kg: [1 / POUND, "lb", 2],
    m: [1 / FOOT, "ft", 2],
    "m²": [1 / FOOT ** 2, "ft²", 2],
    "m³": [1 / INCH ** 3, "in³", 0],
  },
};

/** As {@link inUnits}, for amounts of timber: by the metre and not by the millimetre. */
export function timberInUnits(value: number, unit: string, units: Units): string {
  const [factor, shownUnit, decimals] = TIMBER_IN[units][unit] ?? [1, unit, 3];
  return `${grouped(value * factor, decimals)} ${shownUnit}`;
}
