/** Tenths of a task, kept as whole numbers so that they add up exactly. */
import { type Mending, onlyYouKnow, type Reading, shown, writes } from "../reading.ts";
import { tidied } from "./quantity.ts";

export interface TypedTenths {
  readonly typed: string;
  /** 0 to 10 */
  readonly tenths: number;
}

/** `0.3`, `0`, `1`. */
export function readTenths(typed: string): Reading<TypedTenths> {
  const text = tidied(typed);
  const whole = /^([01])(?:\.0+)?$/.exec(text)?.[1];
  const tenth = /^0?\.(\d)0*$/.exec(text)?.[1];
  if (whole !== undefined || tenth !== undefined)
    return { value: { typed, tenths: whole === undefined ? Number(tenth) : Number(whole) * 10 } };
  return {
    fault: {
      code: "no-tenths",
      message: "this is not a number of tenths",
      expected: "0, 0.1, 0.2 and so on to 1",
      found: shown(typed),
      ...mendFor(text),
    },
  };
}

function mendFor(text: string): Mending {
  const comma = /^([01]),(\d)$/.exec(text);
  if (comma) return writes(`${comma[1]}.${comma[2]}`);
  const percent = /^(\d{1,2})0\s*%$/.exec(text);
  if (percent && Number(percent[1]) <= 10) return writes(inTenths(Number(percent[1])));
  return onlyYouKnow(
    /^0?\.\d+$/.test(text) ? "give it to the nearest tenth, so that the four add up to 1" : "write one of them",
  );
}

/** Whole tenths as decimals: 3 → `0.3`, 10 → `1`, 12 → `1.2`. */
export function inTenths(tenths: number): string {
  return tenths % 10 === 0 ? String(tenths / 10) : `${Math.floor(tenths / 10)}.${tenths % 10}`;
}
