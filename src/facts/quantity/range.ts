/** Ranges, tolerances and ratios. */
import { defined } from "../../defined.ts";
import { type Fault, isFault, onlyYouKnow, type Reading, shown, writes, writesQuoted } from "../reading.ts";
import type { Dimension, Ends, MixRatio, Range, Tolerance } from "../values.ts";
import { hasTooManyDigits } from "../limits.ts";
import { tooManyDigits, type Wanted } from "./faults.ts";
import { numberAtHead, plain } from "./number.ts";
import { type Measured, readQuantity, tidied } from "./quantity.ts";

/** `15 °C to 30 °C`, `8 to 12 %`, `at least 15 °C`, `at most 70 %`. */
export function readRange(typed: string, wanted: Wanted): Reading<Range> {
  const range = rangeIn(typed, wanted);
  return isFault(range) ? { fault: { ...range.fault, expected: rangeExample(wanted), found: shown(typed) } } : range;
}

function rangeIn(typed: string, wanted: Wanted): Reading<Range> {
  const text = tidied(typed);
  const open = /^at (least|most)\s+(.+)$/i.exec(text);
  if (open) {
    const end = readQuantity(open[2] ?? "", wanted);
    if (isFault(end)) return within(end.fault, text, open[2] ?? "");
    return {
      value: open[1]?.toLowerCase() === "least" ? { typed, least: end.value.value } : { typed, most: end.value.value },
    };
  }
  const ends = /^(.+?)\s+to\s+(.+)$/i.exec(text);
  if (ends) return closed(typed, ends[1] ?? "", ends[2] ?? "", wanted);
  return noRange(text);
}

function closed(typed: string, from: string, to: string, wanted: Wanted): Reading<Range> {
  const ends = readEnds(typed, from, to, wanted);
  if (isFault(ends)) return ends;
  const [least, most] = ends.value;
  return { value: { typed, least: least.value, most: most.value } };
}

/** The lesser end may go without its unit. */
export function readEnds(
  typed: string,
  from: string,
  to: string,
  wanted: Wanted,
): Reading<readonly [least: Measured, most: Measured]> {
  const most = readQuantity(to, wanted);
  if (isFault(most)) return within(most.fault, tidied(typed), to);
  const bare = numberAtHead(from.replace(/^[+-]\s*/, ""));
  const unit = to.slice(to.length - restOf(to).length);
  const least = readQuantity(typeof bare !== "string" && bare.rest === "" ? `${from} ${unit}` : from, wanted);
  if (isFault(least)) return within(least.fault, tidied(typed), from);
  if (least.value.value > most.value.value) {
    return {
      fault: {
        code: "no-range",
        message: "this range runs downwards",
        mend: "write the lesser end first, each end with its unit",
      },
    };
  }
  return { value: [least.value, most.value] };
}

/** The fault of a part of a text: what mends the part is put into the whole, so that nothing else is lost. */
export function within(fault: Fault, text: string, part: string): { readonly fault: Fault } {
  const { instead, ...rest } = fault;
  if (instead === undefined) return { fault: { ...rest, found: shown(text) } };
  return { fault: { ...rest, ...writes(text.replace(part, () => instead)), found: shown(text) } };
}

function restOf(text: string): string {
  const number = numberAtHead(text.replace(/^[+-]\s*/, ""));
  return typeof number === "string" ? "" : number.rest;
}

function rangeExample(wanted: Wanted): string {
  return `a range, such as ${wanted.example ?? "8 % to 12 %"}`;
}

export function noRange(text: string): { readonly fault: Fault } {
  const dash = /^([\d./ ]+?)\s*([^\d\s-]\S*)?\s*[-–]\s*(\d[\d./]*)\s*(\D.*)$/.exec(text);
  const limit = /^([<>≤≥])=?\s*(.+)$/.exec(text);
  const mending = dash
    ? writes(`${dash[1]} ${dash[4]} to ${dash[3]} ${dash[4]}`)
    : limit
      ? writes(`${limit[1] === "<" || limit[1] === "≤" ? "at most" : "at least"} ${limit[2]}`)
      : onlyYouKnow(`give both ends, or one with "at least" or "at most" before it`);
  return { fault: { code: "no-range", message: "this is not a range", ...mending } };
}

/** `±5 %`, as a quantity that is the same to both sides. */
export function readPlusMinus(
  typed: string,
  dimensions: readonly Dimension[] | undefined,
  example: string,
): Reading<Measured> {
  const match = /^(?:±|\+\/-)\s*(.+)$/.exec(tidied(typed));
  if (!match) {
    return {
      fault: {
        code: "no-tolerance",
        message: "this is not a tolerance",
        expected: `a tolerance, such as ${example}`,
        found: shown(typed),
        mend: `put ± before it, as in ${example}`,
      },
    };
  }
  const size = readQuantity(match[1] ?? "", defined({ dimensions, sign: "not negative", example }));
  return isFault(size) ? ofTolerance(size.fault, typed, example, match[1] ?? "") : { value: { ...size.value, typed } };
}

function ofTolerance(fault: Fault, typed: string, example: string, part: string): { readonly fault: Fault } {
  return {
    fault: {
      ...within(fault, tidied(typed), part).fault,
      ...(fault.instead === undefined && { mend: fault.mend.replace(/(such as|write|mean|or) (?=\d)/g, "$1 ±") }),
      expected: `a tolerance, such as ${example}`,
      found: shown(typed),
    },
  };
}

export interface MeasuredTolerance extends Tolerance {
  readonly dimension: Dimension;
}

/** `±0.5 mm`, or `+0.5 mm -0 mm`, or `+0.5 -0 mm`. */
export function readTolerance(typed: string, example = "±0.5 mm"): Reading<MeasuredTolerance> {
  const text = tidied(typed);
  const two = /^\+\s*(?!\/)(.+?)\s+-\s*(.+)$/.exec(text);
  if (!two) {
    const same = readPlusMinus(typed, undefined, example);
    if (isFault(same)) return same;
    return {
      value: {
        typed,
        minus: same.value.value === 0 ? 0 : -same.value.value,
        plus: same.value.value,
        dimension: same.value.dimension,
      },
    };
  }
  const minus = readQuantity(two[2] ?? "", { sign: "not negative", example });
  if (isFault(minus)) return ofTolerance(minus.fault, typed, example, two[2] ?? "");
  const bare = numberAtHead(two[1] ?? "");
  const plus = readQuantity(
    typeof bare !== "string" && bare.rest === "" ? `${two[1]} ${restOf(two[2] ?? "")}` : (two[1] ?? ""),
    { dimensions: [minus.value.dimension], sign: "not negative", example },
  );
  if (isFault(plus)) return ofTolerance(plus.fault, typed, example, two[1] ?? "");
  return {
    value: {
      typed,
      minus: minus.value.value === 0 ? 0 : -minus.value.value,
      plus: plus.value.value,
      dimension: minus.value.dimension,
    },
  };
}

/** `100 : 83`, parts of resin to parts of hardener, or of powder to water. */
export function readRatio(typed: string): Reading<MixRatio> {
  const parts = partsOf(typed, /\s*:\s*/);
  if (parts) return { value: { typed, secondOverFirst: parts[1] / parts[0] } };
  if (hasTooManyDigits(typed)) return { fault: tooManyDigits(typed) };
  const point = typed.replace(/(\d),(\d)/g, "$1.$2");
  const comma =
    point !== typed && partsOf(point, /\s*:\s*/)
      ? writesQuoted(point)
      : onlyYouKnow('give it as in "100 : 83", resin first, in quotation marks');
  return {
    fault: {
      code: "no-ratio",
      message: "this is not a ratio",
      expected: 'resin to hardener, such as "100 : 83"',
      found: shown(typed),
      ...comma,
    },
  };
}

const SLOPE = /\s*:\s*|\s+in\s+/;

/** `1 : 18` or `1 in 18`. */
export function readSlope(typed: string): Reading<string> {
  const parts = partsOf(typed, SLOPE);
  if (parts && parts[0] <= parts[1]) return { value: typed };
  if (hasTooManyDigits(typed)) return { fault: tooManyDigits(typed) };
  const turned = parts
    ? { mend: `if it was meant the other way round, write "${plain(parts[1])} : ${plain(parts[0])}"` }
    : onlyYouKnow('give it as in "1 : 18", in quotation marks');
  return {
    fault: {
      code: "no-slope",
      message: "this is not a slope of grain",
      expected: 'rise to length, such as "1 : 18"',
      found: shown(typed),
      ...turned,
    },
  };
}

const SLOPES = /^\s*[\d.,]+(?:\s*:\s*|\s+in\s+)[\d.,]+(?:\s+to\s+[\d.,]+(?:\s*:\s*|\s+in\s+)[\d.,]+)?\s*$/;

/** `1 in 12`, `1:12`, or `1 in 11 to 1 in 13`, of which the steeper end counts; undefined of what is no slope at all. */
export function readScarf(typed: string): Reading<Measured & Ends> | undefined {
  if (!SLOPES.test(typed)) return undefined;
  const ends = typed.trim().split(/\s+to\s+/);
  for (const end of ends) {
    const slope = readSlope(end);
    if (isFault(slope)) return { fault: { ...within(slope.fault, typed, end).fault, message: "this is not a slope" } };
  }
  const all = ends.map((end) => 1 / runOf(end));
  const [least, most] = [Math.min(...all), Math.max(...all)];
  return { value: { typed, value: most, least, most, unit: "slope", step: 0, dimension: "slope" } };
}

/** Length to a rise of one, of a slope as it is read: 18 for `1 : 18`. */
export function runOf(slope: string): number {
  const [rise = Number.NaN, length = Number.NaN] = partsOf(slope, SLOPE) ?? [];
  return length / rise;
}

function partsOf(typed: string, between: RegExp): readonly [number, number] | undefined {
  const parts = tidied(typed)
    .split(between)
    .map((part) => (/^\d+(?:\.\d+)?$/.test(part) && !hasTooManyDigits(part) ? Number(part) : 0));
  const [first = 0, second = 0] = parts;
  return parts.length === 2 && first > 0 && second > 0 ? [first, second] : undefined;
}
