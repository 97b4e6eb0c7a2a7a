/**
 * Whether as much adhesive was mixed as the joints it went into ask for. All that was mixed counts as spread but what is
 * noted as waste, so that less was too little for sure.
 */
import { defined } from "../../defined.ts";
import { atLeast } from "../../reckoning/compare.ts";
import { partsNoted } from "../../facts/build/adhesive-kind.ts";
import { figureRead, isEstimate } from "../../facts/quantity/ends.ts";
import type { Batch, Component } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import { FROM_RECORD, sheetOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { factsOf } from "./facts.ts";

/** A caution and no more: what is entered of a sheet is how much it tells to spread, not the least that it lets pass. */
export function spreadRule(c: BatchCase): Finding[] {
  const { adhesive, batch, index } = c;
  if (!adhesive.spread || batch.joints.length === 0) return [];
  const { value: asked, typed } = adhesive.spread;
  // A spread that no attached sheet gives is the builder's figure.
  const from = adhesive.sheetFile === undefined ? FROM_RECORD : sheetOf(adhesive);
  const limit: Limit = { code: "limit/spread", values: { asked: typed }, from };
  const cups = together(c);
  const joints = [...new Set(cups.flatMap((cup) => cup.joints))];
  const areas = joints.map((id) => areaOf(c, id));
  const facts = cups.map((cup) =>
    cup === batch ? c.facts : factsOf(cup, lookUp(index.record.adhesives, cup.adhesive)),
  );
  const [area, mass] = [sum(areas), sum(facts.map((one) => one.forSpread?.least))];
  if (area === undefined || mass === undefined || !(area > 0))
    return [c.find("spread/not-known", "caution", {}, { limit })];
  const wasted = facts.flatMap(({ waste }) => waste ?? []);
  const waste = wasted.length === 0 ? undefined : wasted.reduce((total, one) => total + one, 0);
  const spread = Math.max(0, mass - (waste ?? 0)) / area;
  const values = defined({ mass, waste, area, byWorseEnd: !cups.every(isFigures), spread, asked: typed, limit: asked });
  const beside = { limit, alsoOn: cups.map(({ id }) => ({ kind: "batch", id }) as const) };
  if (!atLeast(spread, asked)) return [c.find("spread/too-little", "caution", values, beside)];
  return facts.every(({ forSpread }) => forSpread?.isProven === true) && !cups.some((cup) => isEstimate(cup.waste))
    ? [c.find("spread/enough", "meets", values, beside)]
    : [c.find("spread/estimate", "caution", {}, beside)];
}

/** Of a joint that is glued in stages nothing says how much of it was glued that day. */
function areaOf({ index }: BatchCase, id: string): number | undefined {
  const { stages, area } = lookUp(index.joints, id);
  return stages === undefined && !index.stages.has(id) ? area?.value : undefined;
}

/** Whether all that was mixed and left of it is a figure, and no range or estimate. */
function isFigures(cup: Batch): boolean {
  const amounts = partsNoted<Component>(cup).flatMap(({ noted: { mass, volume } }) => [mass, volume]);
  return [...amounts, cup.waste].every((one) => one === undefined || figureRead(one) !== undefined);
}

/** The cups of one entry that went into the same joints. */
function together({ index, batch }: BatchCase): Batch[] {
  const all = batch.joints.flatMap((id) => index.batchesOfJoint.get(id) ?? []);
  return [...new Set([batch, ...all.filter(({ entry }) => entry === batch.entry)])];
}

const sum = (values: readonly (number | undefined)[]): number | undefined =>
  values.reduce((total, value) => (total === undefined || value === undefined ? undefined : total + value), 0);
