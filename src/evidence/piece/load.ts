/** Whether the load that was read tried the glue faces as much as the procedure asks. */
import { atLeast } from "../../reckoning/compare.ts";
import { stressText } from "../../words/figure.ts";
import type { PieceTest, Quantity } from "../../facts/types.ts";
import { procedureOf } from "../sources.ts";
import type { Check, PieceCase } from "./case.ts";

export function pieceLoad(c: PieceCase, test: PieceTest): Check | undefined {
  const asked = c.procedure.stress;
  if (!asked) return undefined;
  const limit = { text: `at least ${asked.typed} on the glue faces`, from: procedureOf(c.procedure) };
  if (!test.load) {
    const sentence = `No load is noted, so the ${asked.typed} of the procedure could not be checked.`;
    return { finding: c.find("piece-load", "caution", { sentence, limit }) };
  }
  if (c.stress === undefined) return { ...unknown(c, test.load, limit), verdict: "inconclusive" };
  const shown = `${test.load.typed} put ${stressText(c.stress, asked.value, c.units)} on the glue faces`;
  if (atLeast(c.stress, asked.value))
    return { finding: c.find("piece-load", "meets", { sentence: `${shown}.`, limit }) };
  const sentence = `${shown}, less than ${asked.typed}: the wood gave way early and the glue line was not tried.`;
  return { finding: c.find("piece-load", "unproven", { sentence, limit }), verdict: "inconclusive" };
}

function unknown(c: PieceCase, load: Quantity, limit: { text: string; from: ReturnType<typeof procedureOf> }): Check {
  const missing = (["width", "overlap"] as const).filter((size) => c.piece[size] === undefined);
  const sentence = `${load.typed} was read, but without ${missing.length > 0 ? missing.join(" and ") : "usable sizes"} it gives no stress.`;
  return { finding: c.find("piece-load", "unproven", { sentence, limit }) };
}
