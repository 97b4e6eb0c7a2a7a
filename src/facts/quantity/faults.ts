/** What is said of a quantity that cannot be read. */
import type { ProblemCode } from "../../problems/codes.ts";
import { beyond, LIMITS } from "../limits.ts";
import { nearest } from "../nearest.ts";
import { type Fault, meaning, type Mending, onlyYouKnow, shown, writes } from "../reading.ts";
import type { Dimension } from "../values.ts";
import type { NumberFault } from "./number.ts";
import { DIMENSIONS, unitsFor, wordsFor } from "./units.ts";

/** What may stand in a field. Without dimensions any will do. */
export interface Wanted {
  readonly dimensions?: readonly Dimension[];
  /** `any` lets zero and negative values through, `not negative` lets zero through. */
  readonly sign?: "positive" | "not negative" | "any";
  /** Greatest value in the unit of reckoning, 1 for a percentage that cannot pass 100 %. */
  readonly most?: number;
  readonly example?: string;
}

type Failed = { readonly fault: Fault };

function failed(code: ProblemCode, message: string, typed: string, wanted: Wanted, mend: string | Mending): Failed {
  const mending = typeof mend === "string" ? onlyYouKnow(mend) : mend;
  return { fault: { code, message, expected: expectation(wanted), found: shown(typed), ...mending } };
}

/** `a mass with its unit, such as 42.0 g` */
function expectation(wanted: Wanted): string {
  const example = wanted.example ?? (wanted.dimensions?.[0] && DIMENSIONS[wanted.dimensions[0]].example) ?? "62.3 mm";
  return `${namesOf(wanted.dimensions)} with its unit, such as ${example}`;
}

/** `a mass`, `a mass or a volume`, `a number` */
function namesOf(dimensions: readonly Dimension[] | undefined): string {
  const names = dimensions?.map((dimension) => DIMENSIONS[dimension].name) ?? ["a number"];
  return names.length === 1 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
}

function unitsOf(dimensions: readonly Dimension[] | undefined): string {
  return (dimensions ?? (["length", "mass", "force", "angle"] as const)).flatMap(unitsFor).slice(0, 10).join(", ");
}

/** Of what is decided, drawn or bought, not read. */
function oneFigure(typed: string, is: "a range" | "an estimate", wanted: Wanted): Failed {
  const mend = "write the one figure that it is, or leave it out if it is not known";
  return failed("one-figure", `this is ${is}; one figure belongs here`, typed, wanted, mend);
}

export function noNumber(typed: string, why: NumberFault, wanted: Wanted): Failed {
  if (/^about\s/i.test(typed.trim())) return oneFigure(typed, "an estimate", wanted);
  if (why === "zero below")
    return failed("no-number", "nothing can be divided by zero", typed, wanted, "write the fraction as it was meant");
  if (why === "too many digits") return { fault: tooManyDigits(typed) };
  if (why === "exponent")
    return failed("no-number", "powers of ten are not read", typed, wanted, "write the number out");
  return failed(
    "no-number",
    "this does not begin with a number",
    typed,
    wanted,
    "write a number and its unit; words belong in the prose",
  );
}

export function tooManyDigits(typed: string): Fault {
  return beyond(
    "a number here has more digits than can be kept",
    `${LIMITS.digits} digits`,
    "write the digits that were measured; of a very large or small measure, in another unit",
    typed,
  );
}

/** `unit` is the unit of reckoning. */
export function tooLarge(typed: string, unit: string): Failed {
  const most = `${LIMITS.magnitude.toExponential().replace("e+", " × 10^")} ${unit}`;
  return {
    fault: beyond(
      "nothing in a build is as large as this",
      most.replace("1 × ", ""),
      "look at the number and its unit",
      typed,
    ),
  };
}

export function decimalComma(typed: string, body: string, wanted: Wanted): Failed {
  const thousands = /^\d{1,3}(?:,\d{3})+(?!\d)/.test(body);
  const point = body.replace(",", ".");
  const whole = body.replaceAll(",", "");
  const mend = !thousands
    ? writes(signed(typed, point))
    : /,.*[,.]/.test(body)
      ? writes(signed(typed, whole))
      : `write ${whole} or ${point}, as it was meant`;
  return failed("decimal-comma", "a comma in a number can mean two things", typed, wanted, mend);
}

/** A body of which the sign has been read, with it. */
function signed(typed: string, body: string): string {
  return /^[−-]/.test(typed.trim()) ? `-${body}` : body;
}

export function noUnit(typed: string, number: string, wanted: Wanted): Failed {
  const [dimension = "length"] = wanted.dimensions ?? [];
  const fraction = dimension === "share" && /^0?\.\d+$/.test(number);
  const unit = dimension === "length" && /[/¼½¾⅓⅔⅛⅜⅝⅞]/.test(number) ? "in" : (unitsFor(dimension)[0] ?? "");
  const mend = fraction
    ? `write ${Number((Number(number) * 100).toPrecision(12))} % or ${number} %, as it was meant`
    : `write the unit after the number, such as ${joined(number, unit)}`;
  return failed("no-unit", `${number} has no unit`, typed, wanted, mend);
}

function joined(number: string, unit: string): string {
  return unit === "°" ? `${number}${unit}` : `${number} ${unit}`;
}

export function unknownUnit(typed: string, number: string, rest: string, wanted: Wanted): Failed {
  if (/^(?:\S+\s+)?to\s+[\d.+-]/i.test(rest)) return oneFigure(typed, "a range", wanted);
  const words = (wanted.dimensions ?? (Object.keys(DIMENSIONS) as Dimension[])).flatMap(wordsFor);
  const meant = nearUnit(rest, words);
  const mend =
    meant === undefined
      ? `use one of the units ${unitsOf(wanted.dimensions)}`
      : meaning(signed(typed, joined(number, meant)));
  return failed("unknown-unit", `"${shown(rest)}" is not a unit that is known here`, typed, wanted, mend);
}

const OFTEN_MEANT: { readonly [typed: string]: string } = { C: "°C", F: "°F", "fl oz": "US fl oz", inch: "in" };

/** Short units are never a slip apart from each other, only in the size of letters or a plural. */
function nearUnit(typed: string, words: readonly string[]): string | undefined {
  const often = OFTEN_MEANT[typed];
  if (often !== undefined && words.includes(often)) return often;
  const lower = typed.toLowerCase().replace(/\.$/, "");
  const same = words.find((word) => word.toLowerCase() === lower || `${word.toLowerCase()}s` === lower);
  return same ?? (typed.length > 3 ? nearest(typed, words) : undefined);
}

export function wrongDimension(typed: string, number: string, unit: string, is: Dimension, wanted: Wanted): Failed {
  const names = namesOf(wanted.dimensions);
  const forced =
    wanted.dimensions?.includes("force") && is === "mass" ? { lb: "lbf", lbs: "lbf", kg: "kgf" }[unit] : undefined;
  const mend =
    forced !== undefined
      ? `if a load of ${number} ${unit} was read, write ${number} ${forced}`
      : wanted.dimensions?.includes("thicknesses")
        ? `divide it by the thickness of the piece, and write ${wanted.example ?? DIMENSIONS.thicknesses.example}`
        : `write ${names}, in ${unitsOf(wanted.dimensions)}`;
  return failed("wrong-dimension", `this is ${DIMENSIONS[is].name}; ${names} belongs here`, typed, wanted, mend);
}

export function notPositive(typed: string, sign: "positive" | "not negative", wanted: Wanted): Failed {
  const message = sign === "positive" ? "this must be more than zero" : "this cannot be less than zero";
  return failed("out-of-bounds", message, typed, wanted, "write what was measured, or leave it out if it is not known");
}

export function tooMuch(typed: string, wanted: Wanted): Failed {
  return failed("out-of-bounds", "this cannot be more than 100 %", typed, wanted, "write what was read");
}
