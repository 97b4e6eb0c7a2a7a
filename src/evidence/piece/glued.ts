/** Whether a piece that was glued at a time of its own was glued while the cup could still be worked. */
import { MADE } from "../../facts/build/adhesive-kind.ts";
import { atMost } from "../../reckoning/compare.ts";
import { begunAt, factsOf } from "../batch/facts.ts";
import { readAt, warmestOf } from "../batch/witnesses.ts";
import { lookUp } from "../record-index.ts";
import { sheetOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Check, PieceCase } from "./case.ts";

/** Glued too late it is a sample of other glue than the joint's; where that cannot be told it shows nothing either. */
export function gluedInTime(c: PieceCase): Check | undefined {
  const { piece, batch, index, find } = c;
  if (piece.glued === undefined) return undefined;
  const adhesive = lookUp(index.record.adhesives, batch.adhesive);
  const { life, lifeEstimates } = factsOf(batch, adhesive, warmestOf(readAt(index.shop, batch), batch));
  const isMixed = MADE[adhesive.kind].mixed;
  const began = isMixed ? ("mixed" as const) : ("spread" as const);
  const begun = begunAt(batch, isMixed);
  const glued = piece.glued.typed;
  if (!begun || !life) return inconclusive(c, find("piece-glued/not-known", severityOf(c), { glued }));
  const { row } = life;
  const limit: Limit = {
    code: "limit/working-life",
    values: { life: row.time.typed, mass: row.mass?.typed, temperature: row.temperature.typed },
    from: sheetOf(adhesive),
  };
  const stood = piece.glued.epoch - begun.epoch;
  const values = { began, mixed: begun.typed, glued, stood, life: row.time.typed };
  if (!(stood >= 0 && atMost(stood, life.time)))
    return inconclusive(c, find("piece-glued/too-late", severityOf(c), values, { limit }));
  return lifeEstimates.length === 0
    ? { finding: find("piece-glued/within", "meets", values, { limit }) }
    : inconclusive(c, find("piece-glued/not-known", severityOf(c), { glued }, { limit }));
}

const severityOf = ({ test }: PieceCase) => (test ? "unproven" : "caution");

const inconclusive = ({ test }: PieceCase, finding: Check["finding"]): Check =>
  test ? { finding, verdict: "inconclusive" } : { finding };
