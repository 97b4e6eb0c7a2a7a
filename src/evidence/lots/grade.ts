/**
 * Whether a lot of timber is as its drawings ask, and its grain straight enough. A fault of the wood is none of the glue, but the joint that it stands in is not shown
 * until it is said to be out.
 */
import { runOf } from "../../facts/quantity/range.ts";
import type { Lot } from "../../facts/types.ts";
import { atLeast, atMost } from "../../reckoning/compare.ts";
import type { Finder } from "../finding.ts";
import { maybeSpruce } from "../piece/lots.ts";
import { AC_43_13_TIMBER, FROM_RECORD } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Limit } from "../types/source.ts";

/** Length to a rise of one: AC 43.13-1B, Table 1-1 (seen). */
const LEAST_RUN = 15;

const USUAL_SLOPE: Limit = { code: "limit/grain-slope", values: { length: LEAST_RUN }, from: AC_43_13_TIMBER };

/** Of timber alone, in this order: slope, rings, density, moisture. */
export function gradeOf(lot: Lot, find: Finder): Finding[] {
  if (lot.material !== "timber") return [];
  return [...slopeOf(lot, find), ...askedOf(lot, find)];
}

function slopeOf(lot: Lot, find: Finder): Finding[] {
  const { id, grainSlope: slope, asked } = lot;
  const steepest = asked?.grainSlope;
  // Another species is held against its drawing alone.
  if (steepest === undefined && !maybeSpruce(lot)) return [];
  const limit: Limit =
    steepest === undefined
      ? USUAL_SLOPE
      : { code: "limit/timber-asked", values: { what: "grain slope", asked: steepest }, from: FROM_RECORD };
  const beside = { limit, alsoOn: [{ kind: "lot", id }] } as const;
  if (slope === undefined)
    return [find("timber-grade/slope-not-noted", steepest === undefined ? "caution" : "unproven", { lot: id }, beside)];
  return atLeast(runOf(slope), steepest === undefined ? LEAST_RUN : runOf(steepest))
    ? [find("timber-grade/slope-within", "meets", { lot: id, slope }, beside)]
    : [find("timber-grade/slope-steep", "unproven", { lot: id, slope }, beside)];
}

function askedOf(lot: Lot, find: Finder): Finding[] {
  const { id } = lot;
  return (["rings", "density", "moisture"] as const).flatMap((what) => {
    const asked = lot.asked?.[what];
    if (asked === undefined) return [];
    const limit: Limit = { code: "limit/timber-asked", values: { what, asked: asked.typed }, from: FROM_RECORD };
    const beside = { limit, alsoOn: [{ kind: "lot", id }] } as const;
    const found = lot[what];
    if (found === undefined) return [find("timber-grade/not-noted", "unproven", { lot: id, what }, beside)];
    const values = { lot: id, what, found: found.typed };
    const isWithin =
      (asked.least === undefined || atLeast(found.value, asked.least)) &&
      (asked.most === undefined || atMost(found.value, asked.most));
    return isWithin
      ? [find("timber-grade/within", "meets", values, beside)]
      : [find("timber-grade/outside", "unproven", values, beside)];
  });
}
