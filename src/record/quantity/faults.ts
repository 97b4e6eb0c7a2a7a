/** What is said of a quantity that cannot be read. */
import { nearest } from "../nearest.ts";
import { type Fault, shown } from "../reading.ts";
import type { Dimension } from "../types.ts";
import type { NumberFault } from "./number.ts";
import type { Wanted } from "./quantity.ts";
import { DIMENSIONS, wordsFor } from "./units.ts";

type Failed = { readonly fault: Fault };

/** `a mass with its unit, such as 42.0 g` */
export function expectation(wanted: Wanted): string {
  if (wanted.dimension === undefined) return `a number with its unit, such as ${wanted.example ?? "62.3 mm"}`;
  const { name, example } = DIMENSIONS[wanted.dimension];
  return `${name} with its unit, such as ${wanted.example ?? example}`;
}

function failed(code: string, message: string, typed: string, wanted: Wanted, mend: string): Failed {
  return { fault: { code, message, expected: expectation(wanted), found: shown(typed), mend } };
}

export function noNumber(typed: string, why: NumberFault, wanted: Wanted): Failed {
  if (why === "zero below") return failed("quantity", "nothing can be divided by zero", typed, wanted, "write the fraction as it was meant");
  if (why === "exponent") return failed("quantity", "powers of ten are not read", typed, wanted, "write the number out");
  return failed("quantity", "this does not begin with a number", typed, wanted, "write a number and its unit, and put words into `note` or the prose");
}

export function decimalComma(typed: string, body: string, wanted: Wanted): Failed {
  const thousands = /^\d{1,3}(?:,\d{3})+(?!\d)/.test(body);
  const point = body.replace(",", ".");
  const whole = body.replaceAll(",", "");
  const mend = !thousands ? `write ${point}` : /,.*[,.]/.test(body) ? `write ${whole}` : `write ${whole} or ${point}, as it was meant`;
  return failed("decimal-comma", "a comma in a number can mean two things", typed, wanted, mend);
}

export function noUnit(typed: string, number: string, wanted: Wanted): Failed {
  const unit = wanted.dimension === undefined ? "mm" : (wordsFor(wanted.dimension)[0] ?? "");
  return failed("no-unit", `${number} has no unit`, typed, wanted, `write the unit after the number, such as ${joined(number, unit)}`);
}

function joined(number: string, unit: string): string {
  return unit === "°" ? `${number}${unit}` : `${number} ${unit}`;
}

export function unknownUnit(typed: string, number: string, rest: string, wanted: Wanted): Failed {
  const words = wanted.dimension === undefined ? Object.keys(DIMENSIONS).flatMap((d) => wordsFor(d as Dimension)) : wordsFor(wanted.dimension);
  const degree = /^[CF]$/.test(rest) && (wanted.dimension ?? "temperature") === "temperature" ? `°${rest}` : undefined;
  const meant = degree ?? nearUnit(rest, words);
  const few = words.filter((word) => word.length > 1 || /[a-zA-Z%°]/.test(word)).slice(0, 8).join(", ");
  const mend = meant === undefined ? `use one of the units ${few}` : `did you mean ${joined(number, meant)}?`;
  return failed("unknown-unit", `"${shown(rest)}" is not a unit that is known here`, typed, wanted, mend);
}

/** Short units are never a slip apart from each other, only in the size of letters or a plural. */
function nearUnit(typed: string, words: readonly string[]): string | undefined {
  const lower = typed.toLowerCase().replace(/\.$/, "");
  const same = words.filter((word) => word.toLowerCase() === lower || `${word.toLowerCase()}s` === lower);
  return same.length > 0 ? same[0] : typed.length > 3 ? nearest(typed, words) : undefined;
}

export function wrongDimension(typed: string, number: string, unit: string, is: Dimension, wants: Dimension, wanted: Wanted): Failed {
  const message = `this is ${DIMENSIONS[is].name}; ${DIMENSIONS[wants].name} belongs here`;
  const forced = wants === "force" && is === "mass" ? { lb: "lbf", lbs: "lbf", kg: "kgf" }[unit] : undefined;
  const mend = forced === undefined ? `write ${DIMENSIONS[wants].name}, in ${wordsFor(wants).slice(0, 3).join(", ")} or the like` : `if a load of ${number} ${unit} was read, write ${number} ${forced}`;
  return failed("wrong-dimension", message, typed, wanted, mend);
}

export function notPositive(typed: string, sign: "positive" | "not negative", wanted: Wanted): Failed {
  const message = sign === "positive" ? "this must be more than nothing" : "this cannot be less than nothing";
  return failed("out-of-bounds", message, typed, wanted, "write what was measured, or leave the line out if it is not known");
}

export function tooMuch(typed: string, wanted: Wanted): Failed {
  return failed("out-of-bounds", "a percentage cannot pass 100 % here", typed, wanted, "write what was read, at most 100 %");
}

