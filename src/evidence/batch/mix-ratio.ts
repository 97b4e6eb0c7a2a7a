/** Whether hardener and resin stand in the ratio of the data sheet, and whether the scale can show it. */
import { atMost } from "../../reckoning/compare.ts";
import { figure, percent, percentApart } from "../../words/figure.ts";
import type { Finding } from "../types.ts";
import { GUARDED_ACCEPTANCE, sheetOf } from "../sources.ts";
import type { BatchCase } from "./case.ts";
import type { Measured, Ratio } from "./facts.ts";

export function mixRatioRule(c: BatchCase): Finding[] {
  const { measured, ratio } = c.facts;
  if (!measured) return [unproven(c, `${missing(c)}, so the ratio of the mix is not known.`)];
  if (!ratio)
    return [
      unproven(
        c,
        `The data sheet gives no usable ratio by ${measured.by}, and none that its densities could turn into one.`,
      ),
    ];
  if (!ratio.tolerance)
    return [
      unproven(
        c,
        `${mix(measured, ratio)}, ${off(ratio.error)}; the data sheet as entered gives no tolerance to hold that against.`,
      ),
    ];
  const tolerance = ratio.tolerance.value;
  const limit = { text: `hardener over resin ${ratio.asTyped}, ${ratio.tolerance.typed}`, from: sheetOf(c.adhesive) };
  const sentence = `${mix(measured, ratio)}, ${off(ratio.error, tolerance)}`;
  if (!atMost(Math.abs(ratio.error), tolerance))
    return [c.find("mix-ratio", "rejects", { sentence: `${sentence}; more than ${ratio.tolerance.typed}.`, limit })];
  return [c.find("mix-ratio", "meets", { sentence: `${sentence}.`, limit }), doubtOf(c, ratio, tolerance)];
}

const unproven = (c: BatchCase, sentence: string): Finding => c.find("mix-ratio", "unproven", { sentence });

function missing({ batch: { resin, hardener } }: BatchCase): string {
  const noted = (["mass", "volume"] as const).some((measure) => resin?.[measure] || hardener?.[measure]);
  return noted
    ? "The amounts of resin and hardener are not both noted in one measure"
    : "The amounts of resin and hardener are not noted";
}

function mix({ by, resin, hardener }: Measured, ratio: Ratio): string {
  const converted = ratio.converted ? `, turned into a ratio by ${by} with the sheet's densities` : "";
  return `${hardener.typed} of hardener to ${resin.typed} of resin is ${figure(ratio.found, 3)}, and the sheet's ${ratio.asTyped} is ${figure(ratio.nominal, 3)}${converted}`;
}

function off(error: number, tolerance?: number): string {
  const size = Math.abs(error);
  const shown = tolerance === undefined ? percent(size) : percentApart(size, tolerance);
  if (Number.parseFloat(shown) === 0) return "on the ratio";
  return `${shown} too ${error > 0 ? "much" : "little"} hardener`;
}

function doubtOf(c: BatchCase, { error, doubt, step }: Ratio, tolerance: number): Finding {
  const limit = {
    text: `error and doubt of the scale together at most ${percent(tolerance)}`,
    from: GUARDED_ACCEPTANCE,
  };
  if (doubt === undefined || !step) {
    return c.find("mix-doubt", "unproven", {
      sentence:
        "Neither the scale's reading step nor a last digit is noted, so nothing shows how far the amounts can be trusted.",
      limit,
    });
  }
  const from =
    step.noted === undefined
      ? "the last digit as typed, for want of a noted reading step,"
      : `the noted reading step of ${step.noted}`;
  const sum = Math.abs(error) + doubt;
  const sentence = `By ${from} the scale alone leaves ±${percentApart(doubt, tolerance)} of doubt, ${percentApart(sum, tolerance)} with the error`;
  if (atMost(sum, tolerance)) return c.find("mix-doubt", "meets", { sentence: `${sentence}.`, limit });
  const why = atMost(doubt, tolerance)
    ? "so close to the limit the scale cannot show that the mix was within it"
    : "the scale is too coarse for so little: it could not show any mix to be within the limit";
  return c.find("mix-doubt", "unproven", { sentence: `${sentence}; ${why}.`, limit });
}
