import { hasTooManyDigits } from "../limits.ts";

/** Numbers as a carpenter writes them: `42.0`, `1/4`, `1 3/8`, `1-3/8`, `½`, `1½`. */

/**
 * A number at the head of a text. `step` is what its last digit is worth: 0.1 for `42.0`, 1 for `42`, 0 for a
 * fraction.
 */
export interface TypedNumber {
  readonly value: number;
  readonly step: number;
  /** The characters that were read, without blanks around them. */
  readonly text: string;
  readonly rest: string;
}

export type NumberFault = "no number" | "decimal comma" | "zero below" | "exponent" | "too many digits";

const FRACTION = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)/;
const DECIMAL = /^(?:\d+(?:\.\d+)?|\.\d+)/;
const GLYPH = /^(\d+)?\s*([¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/;

const GLYPHS: { readonly [glyph: string]: readonly [number, number] } = {
  "¼": [1, 4],
  "½": [1, 2],
  "¾": [3, 4],
  "⅐": [1, 7],
  "⅑": [1, 9],
  "⅒": [1, 10],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
};

/** Reads an unsigned number at the head of a text which begins without a blank. */
export function numberAtHead(text: string): TypedNumber | NumberFault {
  const number = anyNumberAtHead(text);
  return typeof number !== "string" && hasTooManyDigits(number.text) ? "too many digits" : number;
}

function anyNumberAtHead(text: string): TypedNumber | NumberFault {
  const glyph = GLYPH.exec(text);
  if (glyph) {
    const [over, under] = GLYPHS[glyph[2] ?? ""] ?? [0, 1];
    return taken(text, glyph[0], Number(glyph[1] ?? 0) + over / under, 0);
  }
  const fraction = FRACTION.exec(text);
  if (fraction) {
    if (Number(fraction[3]) === 0) return "zero below";
    return taken(text, fraction[0], Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]), 0);
  }
  const decimal = DECIMAL.exec(text);
  if (!decimal) return "no number";
  const rest = text.slice(decimal[0].length);
  if (/^,\d/.test(rest)) return "decimal comma";
  if (/^[eE][+-]?\d/.test(rest)) return "exponent";
  return taken(text, decimal[0], Number(decimal[0]), stepOf(decimal[0]));
}

function taken(text: string, read: string, value: number, step: number): TypedNumber {
  return { value, step, text: read.trim(), rest: text.slice(read.length).trimStart() };
}

function stepOf(decimal: string): number {
  const point = decimal.indexOf(".");
  return point < 0 ? 1 : Number(`1e-${decimal.length - point - 1}`);
}

/** A number as decimals with no noise of binary fractions, for texts that offer a mend. */
export function plain(value: number, decimals = 6): string {
  return String(Number(value.toFixed(decimals)));
}
