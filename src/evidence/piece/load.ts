/** Whether the load that was read tried the glue faces as much as the procedure asks. */
import { atLeast } from "../../reckoning/compare.ts";
import type { PieceTest } from "../../facts/types.ts";
import { procedureOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Check, PieceCase } from "./case.ts";

export function pieceLoad(c: PieceCase, test: PieceTest): Check | undefined {
  const { stress: asked } = c.procedure;
  if (!asked) return undefined;
  const limit: Limit = { code: "limit/stress", values: { asked: asked.typed }, from: procedureOf(c.procedure) };
  if (!test.load) return { finding: c.find("piece-load/not-read", "caution", { asked: asked.typed }, { limit }) };
  const load = test.load.typed;
  if (c.stress === undefined) {
    const missing = (["width", "overlap"] as const).filter((size) => c.piece[size] === undefined);
    const finding = c.find("piece-load/no-stress", "unproven", { load, missing }, { limit });
    return { finding, verdict: "inconclusive" };
  }
  const values = { load, stress: c.stress, limit: asked.value };
  if (atLeast(c.stress, asked.value)) return { finding: c.find("piece-load/reached", "meets", values, { limit }) };
  const finding = c.find("piece-load/too-low", "unproven", { ...values, asked: asked.typed }, { limit });
  return { finding, verdict: "inconclusive" };
}
