/** Text to what was noted of a measure: one value, a range, or an estimate. */
import { type Fault, isFault, type Reading, shown } from "../reading.ts";
import type { Dimension, Ends, Noted } from "../values.ts";
import { saidEnds } from "./ends.ts";
import type { Wanted } from "./faults.ts";
import { readQuantity, tidied } from "./quantity.ts";
import { DIMENSIONS } from "./units.ts";
import { noRange, readEnds, readScarf, within } from "./range.ts";

export type MeasuredNoted = Noted & { readonly dimension: Dimension };

const ABOUT = /^about\s+(.+)$/i;
const FROM_TO = /^(.+?)\s+to\s+(.+)$/i;
const DASH = /\d\s*[-–]\s*\d/;

/** `10.5 %`, `9 to 11 %`, `about 20 °C`, `about 9 to 11 %`. */
export function readNoted(typed: string, wanted: Wanted): Reading<MeasuredNoted> {
  const text = tidied(typed);
  const about = ABOUT.exec(text)?.[1];
  if (about === undefined) return readSure(typed, text, wanted);
  const guess = readSure(about, about, wanted);
  if (isFault(guess)) return within(guess.fault, text, about);
  const { unit, step, dimension } = guess.value;
  const { least, most } = saidEnds(guess.value);
  return { value: { typed, unit, step, dimension, about: { least, most } } };
}

/** Of slopes as well: `1 in 12`, `1 in 11 to 1 in 13`. */
export function readNotedOrScarf(typed: string, wanted: Wanted): Reading<MeasuredNoted> {
  const about = ABOUT.exec(tidied(typed))?.[1];
  const slope = readScarf(about ?? typed);
  if (slope === undefined) return readNoted(typed, wanted);
  if (isFault(slope)) return within(slope.fault, tidied(typed), about ?? typed);
  const { least, most, ...rest } = slope.value;
  const ends: Ends = { least, most };
  if (about !== undefined) return { value: { ...rest, typed, about: ends } };
  return { value: least === most ? { ...rest, typed, value: most } : { ...rest, typed, ...ends } };
}

function readSure(typed: string, text: string, wanted: Wanted): Reading<MeasuredNoted> {
  const [, from, to] = FROM_TO.exec(text) ?? [];
  if (from === undefined || to === undefined) {
    const one = readQuantity(typed, wanted);
    return isFault(one) && one.fault.code === "unknown-unit" && DASH.test(text)
      ? asRange(noRange(text).fault, typed, wanted)
      : one;
  }
  const last = readQuantity(to, wanted);
  if (isFault(last)) return within(last.fault, text, to);
  const { unit, dimension } = last.value;
  const ends = readEnds(typed, from, to, { ...wanted, dimensions: [dimension] });
  if (isFault(ends)) return asRange(ends.fault, typed, wanted);
  const [{ value: least, step }, { value: most, step: other }] = ends.value;
  return { value: { typed, unit, step: Math.max(step, other), dimension, least, most } };
}

function asRange(fault: Fault, typed: string, { example, dimensions = [] }: Wanted): { readonly fault: Fault } {
  const one = example ?? (dimensions[0] && DIMENSIONS[dimensions[0]].example) ?? "62.3 mm";
  return { fault: { expected: `what was read, such as ${one}, or both ends of it`, ...fault, found: shown(typed) } };
}
