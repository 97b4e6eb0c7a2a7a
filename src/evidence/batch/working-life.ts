/** Whether the joint was closed within the working life of the adhesive. */
import { defined } from "../../defined.ts";
import { MADE } from "../../facts/build/adhesive-kind.ts";
import { saidEnds } from "../../facts/quantity/ends.ts";
import { atMost } from "../../reckoning/compare.ts";
import { sheetOf } from "../sources.ts";
import type { Moment, Quantity } from "../../facts/types.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { warmestOf, wholly } from "./witnesses.ts";

export function workingLifeRule(c: BatchCase): Finding[] {
  const {
    batch: { temperature },
    facts: { mass, open, life, lifeEstimates },
    find,
  } = c;
  const { workingLife, kind } = c.adhesive;
  const began = MADE[kind].mixed ? ("mixed" as const) : ("spread" as const);
  if (open === undefined) return [timeMissing(c, began)];
  const { mixed, closed, openFor } = open;
  const times = { began, mixed: mixed.typed, closed: closed.typed };
  if (openFor < 0) return [find("working-life/closed-first", "unproven", times)];
  const stood = { ...times, openFor };
  if (!temperature && !wholly(c.read.warmth)) return [find("working-life/no-temperature", "unproven", stood)];
  // The sheet of an adhesive that gets no warmer in a big cup names no mass.
  const isByMass = kind === "two-part" || workingLife.some((row) => row.mass !== undefined);
  if (mass === undefined && !life && isByMass) return [find("working-life/no-mass", "unproven", stood)];
  if (!life)
    return [find("working-life/no-row", "unproven", { ...stood, mass: mass?.most, temperature: warmestWords(c) })];
  const { row } = life;
  const limit: Limit = {
    code: "limit/working-life",
    values: defined({ life: row.time.typed, mass: row.mass?.typed, temperature: row.temperature.typed }),
    from: sheetOf(c.adhesive),
  };
  const values = { ...stood, life: row.time.typed };
  if (!atMost(openFor, life.time)) return [find("working-life/exceeded", "rejects", values, { limit })];
  const estimates = lifeEstimates.map(({ typed }) => typed);
  const held =
    estimates.length === 0
      ? find("working-life/within", "meets", values, { limit })
      : find("working-life/estimate", "unproven", { ...values, estimates }, { limit });
  return [held, ...clampedLater(c, began, open.mixed, life)];
}

/** It ends with the closing: how long what is closed may wait for pressure is the sheet's assembly time. */
function clampedLater(
  { batch, find }: BatchCase,
  began: "mixed" | "spread",
  { epoch }: Moment,
  { time, row }: { readonly time: number; readonly row: { readonly time: Quantity } },
): Finding[] {
  const on = batch.glueUp?.on;
  const waited = on ? on.epoch - epoch : 0;
  if (!on || atMost(waited, time)) return [];
  return [find("working-life/clamped-later", "caution", { began, on: on.typed, waited, life: row.time.typed })];
}

/** Whichever is warmest of the note, the logger, the resin, the surfaces and the wood, as by it the row was looked for. */
function warmestWords({ batch, read }: BatchCase): string {
  const logged = warmestOf(read, batch) ?? Number.NEGATIVE_INFINITY;
  const { temperature, glueUp, surface, wood } = batch;
  const air = Math.max(logged, temperature ? saidEnds(temperature).most : logged);
  const [warmer] = [
    { found: glueUp?.resin, as: "the resin was" },
    { found: surface, as: "the surfaces were" },
    { found: wood, as: "the wood was" },
  ]
    .flatMap(({ found, as }) =>
      found ? [{ most: saidEnds(found).most, words: `${found.typed}, as warm as ${as}` }] : [],
    )
    .filter(({ most }) => most > air)
    .sort((a, b) => b.most - a.most);
  if (warmer) return warmer.words;
  return temperature && saidEnds(temperature).most >= logged ? temperature.typed : "what the logger read";
}

function timeMissing({ batch: { mixed, closed }, find }: BatchCase, began: "mixed" | "spread"): Finding {
  if (!mixed && !closed) return find("working-life/no-times", "unproven", { began });
  return mixed
    ? find("working-life/no-closing", "unproven", {})
    : find("working-life/no-mixing", "unproven", { began });
}
