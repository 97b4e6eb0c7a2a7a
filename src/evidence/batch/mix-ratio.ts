/** Whether both parts of a mix stand in the ratio of the data sheet, and whether the scale can show it. */
import { MADE, type PartPair } from "../../facts/build/adhesive-kind.ts";
import { atMost } from "../../reckoning/compare.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { GUARDED_ACCEPTANCE, sheetOf } from "../sources.ts";
import type { BatchCase } from "./case.ts";
import type { Ratio } from "./facts.ts";

export function mixRatioRule(c: BatchCase): Finding[] {
  const parts = ratioAsked(c);
  if (!parts) return c.adhesive.kind === "applied-apart" ? [c.find("mix-ratio/applied-apart", "caution", {})] : [];
  const { measuredBy: by, ratio } = c.facts;
  if (!by) return [notMeasured(c, parts)];
  if (!ratio) return [c.find("mix-ratio/no-usable-ratio", "unproven", { by })];
  const mix = mixOf(ratio);
  if (!ratio.tolerance) return [c.find("mix-ratio/no-tolerance", "unproven", mix)];
  const { value: tolerance, typed: asked } = ratio.tolerance;
  const limit: Limit = {
    code: "limit/mix-ratio",
    values: { parts, ratio: ratio.asTyped, tolerance: asked },
    from: sheetOf(c.adhesive),
  };
  const standing = mixStanding(ratio);
  if (standing === "outside") return [c.find("mix-ratio/outside", "rejects", { ...mix, tolerance, asked }, { limit })];
  if (standing === "estimate")
    return [c.find("mix-ratio/estimate", "unproven", { ...mix, tolerance, estimates: ratio.estimates }, { limit })];
  return [c.find("mix-ratio/within", "meets", { ...mix, tolerance }, { limit }), doubtOf(c, ratio, tolerance)];
}

type MixStanding = "no tolerance" | "outside" | "estimate" | "no step" | "within" | "too close" | "too coarse";

/**
 * How a mix stands to its sheet: `within` where the ratio holds with all the doubt of the scale, `too close` where only
 * without, `too coarse` where the scale could not show it of any mix of so much.
 */
export function mixStanding({ tolerance, error, doubt, step, estimates }: Ratio): MixStanding {
  if (!tolerance) return "no tolerance";
  if (!atMost(Math.abs(error), tolerance.value)) return "outside";
  if (estimates.length > 0) return "estimate";
  if (doubt === undefined || !step) return "no step";
  if (atMost(Math.abs(error) + doubt, tolerance.value)) return "within";
  return atMost(doubt, tolerance.value) ? "too close" : "too coarse";
}

/** Of one part there is none; of parts that are not mixed it is asked where their sheet gives one. */
function ratioAsked({ adhesive: { kind, byMass, byVolume } }: BatchCase): PartPair | undefined {
  const { pair, mixed } = MADE[kind];
  return mixed || byMass || byVolume ? pair : undefined;
}

function notMeasured({ batch, find }: BatchCase, parts: PartPair): Finding {
  const noted = parts.some((part) => batch[part]?.mass || batch[part]?.volume);
  return noted
    ? find("mix-ratio/not-in-one-measure", "unproven", { parts })
    : find("mix-ratio/not-noted", "unproven", { parts });
}

function mixOf({ by, parts, amounts, found, asTyped, nominal, converted, error }: Ratio) {
  return { parts, amounts, found, asTyped, nominal, convertedTo: converted ? by : undefined, error };
}

function doubtOf(c: BatchCase, ratio: Ratio, tolerance: number): Finding {
  const { error, doubt, step } = ratio;
  const limit: Limit = { code: "limit/mix-doubt", values: { tolerance }, from: GUARDED_ACCEPTANCE };
  if (doubt === undefined || !step) return c.find("mix-doubt/no-step", "unproven", {}, { limit });
  const values = { step: step.noted, doubt, sum: Math.abs(error) + doubt, tolerance };
  const standing = mixStanding(ratio);
  if (standing === "within") return c.find("mix-doubt/within", "meets", values, { limit });
  return standing === "too close"
    ? c.find("mix-doubt/too-close", "unproven", values, { limit })
    : c.find("mix-doubt/too-coarse", "unproven", values, { limit });
}
