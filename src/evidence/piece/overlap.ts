/** Whether the piece has a shape in which a weak glue line would have shown. */
import { against, atLeast } from "../../reckoning/compare.ts";
import { USUAL_OVERLAP } from "../../reckoning/pieces/overlap.ts";
import type { Range } from "../../facts/types.ts";
import { procedureOf, USUAL_OVERLAP_SOURCE } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { FindingValues } from "../codes/findings.ts";
import type { Finding } from "../types.ts";
import type { Check, PieceCase } from "./case.ts";
import { floorOf, isBlock } from "./strength.ts";

interface OverlapLimit {
  readonly limit?: Limit;
  readonly range: Pick<Range, "least" | "most">;
}

type ShapeValues = FindingValues["overlap/within"];

/** Sizes are asked of every form. */
export function overlap(c: PieceCase): Check {
  const asked = limitOf(c);
  const { limit, range } = asked;
  const { piece, overlapRatio: ratio, find } = c;
  // Before it is broken a poor shape is only a caution: the piece has no verdict yet.
  const severity = c.test ? "unproven" : "caution";
  const inconclusive = (finding: Finding): Check => (c.test ? { finding, verdict: "inconclusive" } : { finding });
  if (ratio === undefined) {
    const missing = (["overlap", "thickness"] as const).filter((size) => ({ ...piece, ...c.legs })[size] === undefined);
    return inconclusive(find("overlap/not-noted", severity, { missing }, { limit }));
  }
  const { thickness, outer } = c.legs;
  const shape = { overlap: piece.overlap?.typed ?? "", thickness: thickness?.typed ?? "", ratio };
  // By equilibrium each outer leg carries half of what the middle one does.
  if (thickness && outer && !atLeast(outer.value, thickness.value / 2))
    return inconclusive(find("overlap/thin-outer", severity, { outer: outer.typed, thickness: thickness.typed }));
  const where = against(ratio, range);
  if (where === "within")
    return floored(c, shape, limit) ?? { finding: find("overlap/within", "meets", shape, { limit }) };
  const bound = (where === "above" ? range.most : range.least) ?? 0;
  return inconclusive(
    where === "above"
      ? find("overlap/too-long", severity, { ...shape, bound, lets: letsOf(c) }, { limit })
      : find("overlap/too-short", severity, { ...shape, bound }, { limit }),
  );
}

/** A procedure may ask for more than three thicknesses show, and not for less; where the wood is not known nothing is known of it. */
function floored(c: PieceCase, shape: ShapeValues, limit: Limit | undefined): Check | undefined {
  const { strengths, revealing, procedure, test, find } = c;
  if (isBlock(procedure.form, shape.ratio)) return undefined;
  const said = (finding: Finding): Check => (test ? { finding, verdict: "inconclusive" } : { finding });
  const severity = test ? "unproven" : "caution";
  if (!strengths || revealing === undefined) return said(find("overlap/wood-not-known", severity, shape, { limit }));
  const floor = floorOf(strengths);
  if (atLeast(revealing, floor)) return undefined;
  return said(find("overlap/below-floor", severity, { ...shape, revealing, floor, wood: strengths.from }, { limit }));
}

function letsOf({ revealing, strengths }: PieceCase) {
  return revealing === undefined || revealing >= 1 || !strengths
    ? undefined
    : { share: revealing, wood: strengths.from };
}

function limitOf({ procedure }: PieceCase): OverlapLimit {
  if (procedure.overlap) {
    const values = { asked: procedure.overlap.typed };
    return { range: procedure.overlap, limit: { code: "limit/overlap", values, from: procedureOf(procedure) } };
  }
  if (procedure.form !== "three-leg") return { range: {} };
  return {
    range: USUAL_OVERLAP,
    limit: { code: "limit/usual-overlap", values: USUAL_OVERLAP, from: USUAL_OVERLAP_SOURCE },
  };
}
