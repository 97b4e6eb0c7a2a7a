/** Whether the piece has a shape in which a weak glue line would have shown. */
import { against } from "../../reckoning/compare.ts";
import { USUAL_OVERLAP } from "../../reckoning/pieces/overlap.ts";
import type { Range } from "../../facts/types.ts";
import { procedureOf, USUAL_OVERLAP_SOURCE } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { woodOf, type Check, type PieceCase } from "./case.ts";

interface OverlapLimit {
  readonly limit: Limit;
  readonly range: Pick<Range, "least" | "most">;
}

export function overlap(c: PieceCase): Check | undefined {
  const asked = limitOf(c);
  if (!asked) return undefined;
  const { limit, range } = asked;
  const { piece, overlapRatio: ratio, find } = c;
  // Before it is broken a poor shape is only a caution: the piece has no verdict yet.
  const severity = c.test ? "unproven" : "caution";
  const inconclusive = (finding: Finding): Check => (c.test ? { finding, verdict: "inconclusive" } : { finding });
  if (ratio === undefined) {
    const missing = (["overlap", "thickness"] as const).filter((size) => piece[size] === undefined);
    return inconclusive(find("overlap/not-noted", severity, { missing }, { limit }));
  }
  const shape = { overlap: piece.overlap?.typed ?? "", thickness: piece.thickness?.typed ?? "", ratio };
  const where = against(ratio, range);
  if (where === "within") return { finding: find("overlap/within", "meets", shape, { limit }) };
  const bound = (where === "above" ? range.most : range.least) ?? 0;
  return inconclusive(
    where === "above"
      ? find("overlap/too-long", severity, { ...shape, bound, lets: letsOf(c) }, { limit })
      : find("overlap/too-short", severity, { ...shape, bound }, { limit }),
  );
}

function letsOf({ revealing, procedure }: PieceCase) {
  return revealing === undefined || revealing >= 1 ? undefined : { share: revealing, wood: woodOf(procedure).from };
}

function limitOf({ procedure }: PieceCase): OverlapLimit | undefined {
  if (procedure.overlap) {
    const values = { asked: procedure.overlap.typed };
    return { range: procedure.overlap, limit: { code: "limit/overlap", values, from: procedureOf(procedure) } };
  }
  if (procedure.form !== "three-leg") return undefined;
  return {
    range: USUAL_OVERLAP,
    limit: { code: "limit/usual-overlap", values: USUAL_OVERLAP, from: USUAL_OVERLAP_SOURCE },
  };
}
