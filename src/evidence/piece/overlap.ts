/** Whether the piece has a shape in which a weak glue line would have shown. */
import { against } from "../../reckoning/compare.ts";
import { apart, figure, percent } from "../../words/figure.ts";
import { USUAL_OVERLAP } from "../../reckoning/pieces/overlap.ts";
import type { Range } from "../../facts/types.ts";
import type { Limit } from "../finding.ts";
import { procedureOf, USUAL_OVERLAP_SOURCE } from "../sources.ts";
import { woodOf, type Check, type PieceCase } from "./case.ts";

interface OverlapLimit extends Limit {
  readonly range: Pick<Range, "least" | "most">;
}

export function overlap(c: PieceCase): Check | undefined {
  const limit = limitOf(c);
  if (!limit) return undefined;
  const said = (sentence: string) => ({ sentence, limit: { text: limit.text, from: limit.from } });
  const missing = (["overlap", "thickness"] as const).filter((size) => c.piece[size] === undefined);
  if (c.overlapRatio === undefined) {
    const sentence = `No ${missing.length > 0 ? missing.join(" and no ") : "usable overlap"} is noted, so nothing shows that a weak glue line would have been seen.`;
    return inconclusive(c, said(sentence));
  }
  const where = against(c.overlapRatio, limit.range);
  if (where === "within")
    return { finding: c.find("overlap", "meets", said(`${sizes(c)} is ${figure(c.overlapRatio, 2)} thicknesses.`)) };
  const bound = (where === "above" ? limit.range.most : limit.range.least) ?? 0;
  const ratio = `${sizes(c)} is ${apart(c.overlapRatio, bound, 2)} thicknesses`;
  return inconclusive(
    c,
    said(
      where === "above"
        ? `${ratio}, too long to show a weak glue line${lets(c)}.`
        : `${ratio}, shorter than the procedure allows.`,
    ),
  );
}

// Before it is broken a poor shape is only a caution: the piece has no verdict yet.
function inconclusive(c: PieceCase, said: { sentence: string; limit: Limit }): Check {
  if (!c.test) return { finding: c.find("overlap", "caution", said) };
  return { finding: c.find("overlap", "unproven", said), verdict: "inconclusive" };
}

const sizes = ({ piece }: PieceCase): string =>
  `An overlap of ${piece.overlap?.typed ?? ""} at a thickness of ${piece.thickness?.typed ?? ""}`;

function lets({ revealing, procedure }: PieceCase): string {
  if (revealing === undefined || revealing >= 1) return "";
  return `: by statics it would let pass one with ${percent(revealing, 0)} of the wood's own shear strength (strengths of the wood: ${woodOf(procedure).from.text})`;
}

function limitOf({ procedure }: PieceCase): OverlapLimit | undefined {
  if (procedure.overlap)
    return { range: procedure.overlap, text: `overlap ${procedure.overlap.typed}`, from: procedureOf(procedure) };
  if (procedure.form === "three-leg")
    return { range: USUAL_OVERLAP, text: "overlap 2 to 3 thicknesses", from: USUAL_OVERLAP_SOURCE };
  return undefined;
}
