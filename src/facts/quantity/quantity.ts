/** Text to a quantity. What was typed is kept; nothing is guessed. */
import { LIMITS } from "../limits.ts";
import { isFault, type Reading } from "../reading.ts";
import type { Dimension, Quantity } from "../values.ts";
import {
  decimalComma,
  noNumber,
  noUnit,
  notPositive,
  tooLarge,
  tooMuch,
  unknownUnit,
  type Wanted,
  wrongDimension,
} from "./faults.ts";
import { numberAtHead, type TypedNumber } from "./number.ts";
import { inBase, spanInBase, type Unit, unitOf } from "./units.ts";

export interface Measured extends Quantity {
  readonly dimension: Dimension;
}

/** Units that may follow a greater one: `5' 3 1/2"`, `1 h 30 min`, `2° 30'`. */
const FOLLOWS: { readonly [greater: string]: RegExp } = {
  ft: /^(?:in|inch|inches|"|″|”)$/,
  h: /^min$/,
  d: /^(?:h|hours?)$/,
  lb: /^(?:oz|ounces?)$/,
  min: /^s$/,
  "°": /^(?:'|′|’|arcmin)$/,
};
const GREATER = /^(?:(ft|feet|foot|'|′|’)|(h|hours?)|(d|days?)|(lbs?)|(min)|(°|deg|degrees?))\s*(?=[\d.])/;

/** One spelling for minus signs and accents. */
export function tidied(typed: string): string {
  return typed.normalize("NFC").replaceAll("−", "-").trim();
}

export function readQuantity(typed: string, wanted: Wanted): Reading<Measured> {
  const text = tidied(typed);
  const negative = /^[+-]/.exec(text)?.[0] === "-";
  const body = text.replace(/^[+-]\s*/, "");
  const number = numberAtHead(body);
  if (typeof number === "string") {
    return number === "decimal comma" ? decimalComma(typed, body, wanted) : noNumber(typed, number, wanted);
  }
  const size = sizeOf(number, typed, wanted);
  if (isFault(size)) return size;
  const { dimension } = size.value.unit;
  if (wanted.dimensions && !wanted.dimensions.includes(dimension))
    return wrongDimension(typed, number.text, number.rest, dimension, wanted);
  return bounded(typed, negative, size.value, wanted);
}

interface Size {
  readonly amount: number;
  readonly step: number;
  readonly unit: Unit;
}

function sizeOf(number: TypedNumber, typed: string, wanted: Wanted): Reading<Size> {
  if (number.rest === "") return noUnit(typed, number.text, wanted);
  const unit = unitOf(number.rest);
  if (unit) return { value: { amount: number.value, step: number.step, unit } };
  return composite(number) ?? unknownUnit(typed, number.text, number.rest, wanted);
}

function composite(number: TypedNumber): { readonly value: Size } | undefined {
  const head = GREATER.exec(number.rest);
  const kind =
    head && (["ft", "h", "d", "lb", "min", "°"] as const)[head.slice(1).findIndex((group) => group !== undefined)];
  const greater = kind && unitOf(kind);
  if (!greater || number.step === 0 || !Number.isInteger(number.value)) return undefined;
  const next = numberAtHead(number.rest.slice(head[0].length));
  const lesser =
    typeof next === "string" || !FOLLOWS[kind]?.test(next.rest)
      ? undefined
      : unitOf(kind === "°" ? "arcmin" : next.rest);
  if (typeof next === "string" || !lesser) return undefined;
  const ratio = greater.factor / lesser.factor;
  return { value: { amount: number.value * Math.round(ratio) + next.value, step: next.step, unit: lesser } };
}

function bounded(typed: string, negative: boolean, { amount, step, unit }: Size, wanted: Wanted): Reading<Measured> {
  const value = inBase(negative ? -amount : amount, unit);
  if (Math.abs(value) > LIMITS.magnitude) return tooLarge(typed, unit.base);
  const sign = wanted.sign ?? "positive";
  if ((sign === "positive" && value <= 0) || (sign === "not negative" && value < 0))
    return notPositive(typed, sign, wanted);
  if (wanted.most !== undefined && value > wanted.most) return tooMuch(typed, wanted);
  return { value: { typed, value, unit: unit.base, step: spanInBase(step, unit), dimension: unit.dimension } };
}
