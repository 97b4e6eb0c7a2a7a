/**
 * Whether the grain of a lot of timber runs straight enough. A fault of the wood is none of the glue, but the joint that it stands in is not shown
 * until it is said to be out.
 */
import { runOf } from "../../facts/quantity/range.ts";
import type { Lot } from "../../facts/types.ts";
import { atLeast } from "../../reckoning/compare.ts";
import type { Finder } from "../finding.ts";
import { isSpruce } from "../piece/lots.ts";
import { AC_43_13_TIMBER } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Limit } from "../types/source.ts";

/** Length to a rise of one: AC 43.13-1B, Table 1-1 (seen). */
const LEAST_RUN = 15;

/** Of spruce, and of timber of which no species is noted: another species is held against its drawing alone. */
export const isGraded = (lot: Lot): boolean =>
  lot.material === "timber" && (lot.species === undefined || isSpruce(lot));

export function gradeOf(lot: Lot, find: Finder): Finding {
  const { id, grainSlope: slope } = lot;
  const limit: Limit = { code: "limit/grain-slope", values: { length: LEAST_RUN }, from: AC_43_13_TIMBER };
  const beside = { limit, alsoOn: [{ kind: "lot", id }] } as const;
  if (slope === undefined) return find("timber-grade/slope-not-noted", "caution", { lot: id }, beside);
  return atLeast(runOf(slope), LEAST_RUN)
    ? find("timber-grade/slope-within", "meets", { lot: id, slope }, beside)
    : find("timber-grade/slope-steep", "unproven", { lot: id, slope }, beside);
}
