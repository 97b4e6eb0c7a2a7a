/** Whether the load that was read tried the glue faces as much as the procedure asks. */
import { atLeast } from "../../reckoning/compare.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import { legCompression } from "../../reckoning/pieces/leg-compression.ts";
import type { PieceTest } from "../../facts/types.ts";
import { procedureOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Check, PieceCase } from "./case.ts";
import { isBlock } from "./strength.ts";

/** Single legs scatter about their mean by some 18 %: this program's own measure of what none can carry, and of what none gives way at. */
const MOST_OF_CRUSHING = 1.4;
const LEAST_OF_SHEAR = 0.5;

/** A load that cannot have been, or at which no sound wood gives way, proves nothing until it is explained. */
export function plausibleLoad(c: PieceCase, test: PieceTest): Check | undefined {
  const {
    strengths,
    stress,
    piece,
    legs: { thickness },
  } = c;
  if (!test.load || !strengths || stress === undefined) return undefined;
  const values = { load: test.load.typed, wood: strengths.from };
  const pressed =
    isBlock(c.procedure.form, c.overlapRatio) || !thickness || !piece.width
      ? undefined
      : legCompression(saidEnds(test.load).most, piece.width.value, thickness.value);
  if (pressed !== undefined && pressed > strengths.crushing * MOST_OF_CRUSHING) {
    const found = { ...values, stress: pressed, limit: strengths.crushing };
    return { finding: c.find("piece-load/cannot-be", "unproven", found), verdict: "inconclusive" };
  }
  if (test.failure === "glue line" || atLeast(stress, strengths.shear * LEAST_OF_SHEAR)) return undefined;
  const found = { ...values, stress, limit: strengths.shear };
  return { finding: c.find("piece-load/no-wood-so-weak", "unproven", found), verdict: "inconclusive" };
}

export function pieceLoad(c: PieceCase, test: PieceTest): Check | undefined {
  const { stress: asked } = c.procedure;
  if (!asked) return undefined;
  const limit: Limit = { code: "limit/stress", values: { asked: asked.typed }, from: procedureOf(c.procedure) };
  if (!test.load) {
    const finding = c.find("piece-load/not-read", "unproven", { asked: asked.typed }, { limit });
    return { finding, verdict: "inconclusive" };
  }
  const load = test.load.typed;
  if (c.stress === undefined) {
    const missing = (["width", "overlap"] as const).filter((size) => c.piece[size] === undefined);
    const finding = c.find("piece-load/no-stress", "unproven", { load, missing }, { limit });
    return { finding, verdict: "inconclusive" };
  }
  const values = { load, stress: c.stress, limit: asked.value };
  if (atLeast(c.stress, asked.value)) {
    if (!isEstimate(test.load)) return { finding: c.find("piece-load/reached", "meets", values, { limit }) };
    const finding = c.find("piece-load/estimate", "unproven", { load, asked: asked.typed }, { limit });
    return { finding, verdict: "inconclusive" };
  }
  const finding = c.find("piece-load/too-low", "unproven", { ...values, asked: asked.typed }, { limit });
  return { finding, verdict: "inconclusive" };
}
