/** Whether the piece had cured for long enough, and in a shop warm enough, when it was broken. */
import { atLeast } from "../../reckoning/compare.ts";
import { USUAL_CURE } from "../../reckoning/cure-time.ts";
import { span } from "../../reckoning/figure.ts";
import type { PieceTest } from "../../record/types.ts";
import type { Limit } from "../finding.ts";
import { procedureOf, USUAL_CURE_SOURCE } from "../sources.ts";
import type { Check, PieceCase } from "./case.ts";

export function fullCure(c: PieceCase, test: PieceTest): Check {
  const least = c.procedure.leastCure?.time.value ?? USUAL_CURE;
  const cured = c.curedFor ?? 0;
  const shown = `The record shows ${span(cured)} of cure${assumed(c, test)}`;
  const limit = limitOf(c);
  if (atLeast(cured, least)) return { finding: c.find("full-cure", "meets", { sentence: `${shown}.`, limit }) };
  const sentence = `${shown}, and ${span(least)} are asked: broken too early, it proves nothing.`;
  return { finding: c.find("full-cure", "unproven", { sentence, limit }), verdict: "too early" };
}

function assumed(c: PieceCase, test: PieceTest): string {
  if (c.batch.closed && test.at) return "";
  if (c.batch.closed) return ", counted to the start of the day on which it was broken since no time is noted";
  if (test.at) return ", counted from the end of the day on which it was glued since no time is noted";
  return ", counted from the end of the day on which it was glued to the start of the day on which it was broken since no times are noted";
}

function limitOf({ procedure }: PieceCase): Limit {
  const { leastCure } = procedure;
  if (!leastCure) return { text: "at least 3 d of cure", from: USUAL_CURE_SOURCE };
  const at = leastCure.temperature ? ` at ${leastCure.temperature.typed}` : "";
  return { text: `at least ${leastCure.time.typed} of cure${at}`, from: procedureOf(procedure) };
}

/** A caution where the shop was cooler than the least cure is stated for; days are counted as they passed. */
export function cureWarmth(c: PieceCase): Check | undefined {
  const stated = c.procedure.leastCure?.temperature;
  const shop = c.batch.temperature;
  if (!stated || !shop || atLeast(shop.value, stated.value)) return undefined;
  const sentence = `The shop was at ${shop.typed} and the least cure is stated for ${stated.typed}: in the cool it takes longer than the days counted.`;
  return { finding: c.find("cure-warmth", "caution", { sentence, limit: { text: `least cure stated for ${stated.typed}`, from: procedureOf(c.procedure) } }) };
}
