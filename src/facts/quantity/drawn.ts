/** What a drawing asks of a measure: a nominal value, or limits. */
import { isFault, onlyYouKnow, type Reading, shown } from "../reading.ts";
import type { Dimension, Range } from "../values.ts";
import { type Measured, readQuantity, tidied } from "./quantity.ts";
import { readRange, readScarf, within } from "./range.ts";

export interface Drawn {
  readonly typed: string;
  readonly dimension: Dimension;
  readonly nominal?: Measured;
  readonly limits?: Range;
}

/** `62.0 mm`, or the limits `at least 12 mm`, `at most 3 mm`, `8 mm to 10 mm`. */
export function readDrawn(typed: string, example = "62.0 mm"): Reading<Drawn> {
  const text = tidied(typed);
  const slope = readScarf(typed);
  if (slope !== undefined) return isFault(slope) ? slope : steepest(typed, slope.value);
  if (/^[<>≤≥]/.test(text)) return limits(typed, "1 mm");
  const end = /^at (?:least|most)\s+(.+)$/i.exec(text)?.[1] ?? /^.+\s+to\s+(.+)$/i.exec(text)?.[1];
  if (end !== undefined) return limits(typed, end);
  const nominal = readQuantity(typed, { sign: "any", example });
  return isFault(nominal) ? nominal : { value: { typed, dimension: nominal.value.dimension, nominal: nominal.value } };
}

/** Both ends are of the dimension of the last. */
function limits(typed: string, end: string): Reading<Drawn> {
  const wanted = { sign: "any", example: "at least 12 mm" } as const;
  const last = readQuantity(end, wanted);
  if (isFault(last)) return within(last.fault, typed, end);
  const { dimension } = last.value;
  const range = readRange(typed, { ...wanted, dimensions: [dimension] });
  return isFault(range) ? range : { value: { typed, dimension, limits: range.value } };
}

/** A drawing gives the steepest slope that it allows. */
function steepest(typed: string, { dimension, value }: Measured): Reading<Drawn> {
  if (!/\sto\s/.test(typed)) return { value: { typed, dimension, limits: { typed, most: value } } };
  return {
    fault: {
      code: "no-slope",
      message: "a drawing gives one slope, the steepest that it allows",
      expected: "rise to length, such as 1 in 12",
      found: shown(typed),
      ...onlyYouKnow("give the steepest slope that the drawing allows"),
    },
  };
}
