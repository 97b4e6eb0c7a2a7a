/** Whether hardener and resin stand in the ratio of the data sheet, and whether the scale can show it. */
import { atMost } from "../../reckoning/compare.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { GUARDED_ACCEPTANCE, sheetOf } from "../sources.ts";
import type { BatchCase } from "./case.ts";
import type { Measured, Ratio } from "./facts.ts";

export function mixRatioRule(c: BatchCase): Finding[] {
  const { measured, ratio } = c.facts;
  if (!measured) return [notMeasured(c)];
  if (!ratio) return [c.find("mix-ratio/no-usable-ratio", "unproven", { by: measured.by })];
  const mix = mixOf(measured, ratio);
  if (!ratio.tolerance) return [c.find("mix-ratio/no-tolerance", "unproven", mix)];
  const { value: tolerance, typed: asked } = ratio.tolerance;
  const limit: Limit = {
    code: "limit/mix-ratio",
    values: { ratio: ratio.asTyped, tolerance: asked },
    from: sheetOf(c.adhesive),
  };
  if (!atMost(Math.abs(ratio.error), tolerance))
    return [c.find("mix-ratio/outside", "rejects", { ...mix, tolerance, asked }, { limit })];
  return [c.find("mix-ratio/within", "meets", { ...mix, tolerance }, { limit }), doubtOf(c, ratio, tolerance)];
}

function notMeasured({ batch: { resin, hardener }, find }: BatchCase): Finding {
  const noted = (["mass", "volume"] as const).some((measure) => resin?.[measure] || hardener?.[measure]);
  return noted ? find("mix-ratio/not-in-one-measure", "unproven", {}) : find("mix-ratio/not-noted", "unproven", {});
}

function mixOf({ by, resin, hardener }: Measured, { found, asTyped, nominal, converted, error }: Ratio) {
  const convertedTo = converted ? by : undefined;
  return { resin: resin.typed, hardener: hardener.typed, found, asTyped, nominal, convertedTo, error };
}

function doubtOf(c: BatchCase, { error, doubt, step }: Ratio, tolerance: number): Finding {
  const limit: Limit = { code: "limit/mix-doubt", values: { tolerance }, from: GUARDED_ACCEPTANCE };
  if (doubt === undefined || !step) return c.find("mix-doubt/no-step", "unproven", {}, { limit });
  const sum = Math.abs(error) + doubt;
  const values = { step: step.noted, doubt, sum, tolerance };
  if (atMost(sum, tolerance)) return c.find("mix-doubt/within", "meets", values, { limit });
  return atMost(doubt, tolerance)
    ? c.find("mix-doubt/too-close", "unproven", values, { limit })
    : c.find("mix-doubt/too-coarse", "unproven", values, { limit });
}
