/** The units that the record understands, and what each is in the unit of reckoning. */
import { FAHRENHEIT, FLUID_OUNCE_INCHES, KELVIN, POUND_OUNCES } from "./conversions.ts";
import { defined } from "../../defined.ts";
import Qty from "js-quantities";
import type { Dimension } from "../values.ts";

export interface Unit {
  readonly dimension: Dimension;
  /** The unit of reckoning. */
  readonly base: string;
  /** Value in the unit of reckoning = value × factor + offset. */
  readonly factor: number;
  /** The factor as a power of ten, where it is one: then the decimals are moved and 11.2 % is 0.112 exactly. */
  readonly shift?: number;
  readonly offset: number;
}

/** Unit of reckoning, one example, and what a builder would call the dimension. */
export const DIMENSIONS: {
  readonly [dimension in Dimension]: { readonly base: string; readonly example: string; readonly name: string };
} = {
  mass: { base: "kg", example: "42.0 g", name: "a mass" },
  length: { base: "m", example: "1/4 in", name: "a length" },
  area: { base: "m²", example: "320 cm²", name: "an area" },
  volume: { base: "m³", example: "40 ml", name: "a volume" },
  force: { base: "N", example: "310 lbf", name: "a force" },
  stress: { base: "Pa", example: "6 MPa", name: "a stress" },
  temperature: { base: "°C", example: "19.5 °C", name: "a temperature" },
  share: { base: "1", example: "52 %", name: "a percentage" },
  duration: { base: "s", example: "45 min", name: "a length of time" },
  density: { base: "kg/m³", example: "1.16 g/cm³", name: "a density" },
  spread: { base: "kg/m²", example: "250 g/m²", name: "a spread" },
  angle: { base: "rad", example: "1.5°", name: "an angle" },
  slope: { base: "slope", example: "1 in 12", name: "a slope" },
  "per length": { base: "1/m", example: "9 /in", name: "a count in each length" },
  thicknesses: { base: "1", example: "2.5 thicknesses", name: "a multiple of the thickness" },
};

/**
 * For each dimension: [words, what the unit is to the units library, times].
 * `lbf`, `kgf`, `psi` go by the pound, the inch and the standard acceleration `gee`, which the library has exactly;
 * its own `lbf` and `psi` are rounded. Pints and gallons are left out: they differ between countries.
 */
const TABLE: {
  readonly [dimension in Dimension]: readonly (readonly [words: string, expression: string, times?: number])[];
} = {
  mass: [
    ["g|gram|grams", "g"],
    ["kg", "kg"],
    ["mg", "mg"],
    ["oz|ounce|ounces", "lb", 1 / POUND_OUNCES],
    ["lb|lbs|pound|pounds", "lb"],
  ],
  length: [
    ["mm", "mm"],
    ["cm", "cm"],
    ["m", "m"],
    ['in|inch|inches|"|″|”', "in"],
    ["ft|foot|feet|'|′|’", "ft"],
    ["µm|μm", "um"],
  ],
  area: [
    ["mm²", "mm^2"],
    ["cm²", "cm^2"],
    ["dm²", "dm^2"],
    ["m²", "m^2"],
    ["in²|sq in", "in^2"],
    ["ft²|sq ft", "ft^2"],
  ],
  volume: [
    ["ml|mL|cm³|cc", "cm^3"],
    ["cl|cL", "cm^3", 10],
    ["l|L|dm³", "cm^3", 1000],
    ["mm³", "mm^3"],
    ["in³|cu in", "in^3"],
    ["US fl oz", "in^3", FLUID_OUNCE_INCHES],
  ],
  force: [
    ["N", "N"],
    ["kN", "kN"],
    ["daN", "N", 10],
    ["lbf", "lb*gee"],
    ["kgf", "kg*gee"],
    ["ozf", "lb*gee", 1 / POUND_OUNCES],
  ],
  stress: [
    ["MPa|N/mm²", "MPa"],
    ["kPa", "kPa"],
    ["Pa|N/m²", "Pa"],
    ["psi|lbf/in²", "lb*gee/in^2"],
    ["ksi", "lb*gee/in^2", 1000],
    ["kgf/cm²", "kg*gee/cm^2"],
  ],
  temperature: [],
  share: [["%|percent", "percent"]],
  duration: [
    ["s|sec|second|seconds", "s"],
    ["min|minute|minutes", "min"],
    ["h|hour|hours", "h"],
    ["d|day|days", "day"],
    ["week|weeks", "week"],
  ],
  density: [
    ["g/cm³|g/ml|g/mL|kg/l|kg/L|kg/dm³", "g/cm^3"],
    ["kg/m³", "kg/m^3"],
    ["lb/ft³", "lb/ft^3"],
    ["lb/in³", "lb/in^3"],
  ],
  spread: [
    ["g/m²", "g/m^2"],
    ["kg/m²", "kg/m^2"],
    ["oz/ft²", "lb/ft^2", 1 / POUND_OUNCES],
    ["lb/ft²", "lb/ft^2"],
    ["lb/1000 ft²", "lb/ft^2", 1 / 1000],
  ],
  angle: [
    ["°|deg|degree|degrees", "deg"],
    ["arcmin", "deg", 1 / 60],
    ["rad", "rad"],
  ],
  slope: [],
  "per length": [
    ["/in|per in|per inch", "1/in"],
    ["/cm|per cm", "1/cm"],
    ["/mm|per mm", "1/mm"],
    ["/m|per m", "1/m"],
  ],
  thicknesses: [["thicknesses|thickness", ""]],
};

const TEMPERATURES: readonly (readonly [words: string, factor: number, offset: number])[] = [
  ["°C|ºC|℃|deg C|degC", 1, 0],
  ["°F|ºF|℉|deg F|degF", 1 / FAHRENHEIT.each, -FAHRENHEIT.atZero / FAHRENHEIT.each],
  ["K", 1, -KELVIN],
];

const WORDS = new Map(
  (Object.entries(TABLE) as [Dimension, (typeof TABLE)[Dimension]][]).flatMap(([dimension, rows]) =>
    rows.flatMap(([words, expression, times = 1]) =>
      words.split("|").map((word) => [word, { dimension, expression, times }] as const),
    ),
  ),
);
const SCALES: ReadonlyMap<string, Unit> = new Map(
  TEMPERATURES.flatMap(([words, factor, offset]) =>
    words.split("|").map((word) => [word, { dimension: "temperature", base: "°C", factor, offset }] as const),
  ),
);
/** What the units library took long to say, of words of the table. */
const RECKONED = new Map<string, Unit>();

/** All words for units of a dimension, the usual ones first. */
export function wordsFor(dimension: Dimension): string[] {
  if (dimension === "temperature") return ["°C", "°F", "K"];
  return TABLE[dimension].flatMap(([words]) => words.split("|"));
}

/** The first word for each unit of a dimension. */
export function unitsFor(dimension: Dimension): string[] {
  return dimension === "temperature"
    ? wordsFor(dimension)
    : TABLE[dimension].map(([words]) => words.split("|")[0] ?? "");
}

/** One spelling of `cm2`, `cm^2` and `cm²`, of µ and of blanks. */
function spelled(word: string): string {
  return word
    .trim()
    .replace(/\s+/g, " ")
    .replace(/\s*\/\s*(?=\D)/g, "/")
    .replace(/\^?2(?!\d)$/, "²")
    .replace(/\^?3(?!\d)$/, "³");
}

/** The unit that a word means, reckoned once. */
export function unitOf(typed: string): Unit | undefined {
  const word = spelled(typed);
  const known = SCALES.get(word) ?? RECKONED.get(word);
  if (known) return known;
  const row = WORDS.get(word);
  if (!row) return undefined;
  const unit = reckoned(row.dimension, row.expression, row.times);
  RECKONED.set(word, unit);
  return unit;
}

function reckoned(dimension: Dimension, expression: string, times: number): Unit {
  const factor = (expression === "" ? 1 : Qty(1, expression).toBase().scalar) * times;
  const shift = Math.round(Math.log10(factor));
  const isPower = Math.abs(factor / 10 ** shift - 1) < 1e-12;
  return defined({
    dimension,
    base: DIMENSIONS[dimension].base,
    factor,
    shift: isPower ? shift : undefined,
    offset: 0,
  });
}

/** A value in a unit, turned into the unit of reckoning. */
export function inBase(value: number, unit: Unit): number {
  return unit.offset === 0 ? spanInBase(value, unit) : Number((value * unit.factor + unit.offset).toPrecision(14));
}

/** The size of a difference in a unit, turned into the unit of reckoning. */
export function spanInBase(value: number, unit: Unit): number {
  const decimals = unit.shift === undefined ? "e" : String(value);
  return decimals.includes("e") ? value * unit.factor : Number(`${decimals}e${unit.shift}`);
}
