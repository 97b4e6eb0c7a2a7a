/** What there should still be of what was bought, and what is still to be glued with it. */
import { defined } from "../../defined.ts";
import { atMost } from "../../reckoning/compare.ts";
import { provenEnds } from "../../facts/quantity/ends.ts";
import { addDays } from "../../reckoning/time/calendar.ts";
import { massRatioOfVolumes } from "../../reckoning/mixing/mix-ratio.ts";
import { sessionAmount } from "../../reckoning/mixing/session-amount.ts";
import {
  type AdhesivePart,
  isLotPart,
  type LotPart,
  MADE,
  type PartPair,
  partsNoted,
} from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, Component, Cut, Lot, Material, Record, Ref } from "../../facts/types.ts";
import { indexBy } from "../record-index.ts";
import { finder } from "../finding.ts";
import { lastDay } from "./lot-life.ts";
import type { AdhesiveNeed, LotStock, Stock } from "../types/stock.ts";
import type { Source } from "../types/source.ts";
import type { Evidence, Finding } from "../types.ts";

/** What stays in the cup and is squeezed out, as a share of what is spread; and how long before its last day a lot is said to end soon, days. */
export const LOSS = 0.25;
export const LOSS_SOURCE: Source = { code: "source/loss", values: {}, known: "common practice" };
export const SOON = 60;

export function reckonStock(record: Record, evidence: Pick<Evidence, "joints">): Stock {
  const batches = record.entries.flatMap((entry) => entry.batches);
  const uses = indexBy(batches, (batch) => [
    ...partsNoted<Component>(batch).map(({ noted }) => noted.lot),
    ...batch.timber,
    ...batch.pieces.map(({ lot }) => lot),
  ]);
  const cuts = indexBy(
    record.entries.flatMap((entry) => entry.cuts),
    ({ lot }) => lot,
  );
  const recalled = new Set(record.entries.flatMap((entry) => entry.recalls).map(({ lot }) => lot));
  const lots = [...record.lots.values()].map((lot) =>
    lotStock(record, lot, { batches: uses.get(lot.id) ?? [], cuts: cuts.get(lot.id) ?? [] }, recalled.has(lot.id)),
  );
  const waiting = [...evidence.joints.values()]
    .filter(({ state }) => state === "not glued" || state === "opened")
    .map(({ joint }) => joint);
  const area = waiting.reduce((sum, joint) => sum + (joint.area?.value ?? 0), 0);
  return {
    lots,
    area,
    planned: waiting.filter((joint) => joint.area !== undefined).map(({ id }) => id),
    withoutArea: waiting.filter((joint) => joint.area === undefined).map(({ id }) => id),
    needs: [...record.adhesives.values()].flatMap((adhesive) => needOf(adhesive, area, lots)),
    findings: lots.flatMap((stock) => overdrawn(stock)),
  };
}

interface Took {
  readonly batches: readonly Batch[];
  readonly cuts: readonly Cut[];
}

type Use = Pick<LotStock, "used" | "unknown">;

function lotStock(record: Record, lot: Lot, took: Took, recalled: boolean): LotStock {
  const adhesive = lot.adhesive === undefined ? undefined : record.adhesives.get(lot.adhesive);
  const unit = lot.amount?.unit ?? took.cuts[0]?.amount.unit ?? "kg";
  const last = lastDay(lot, adhesive ?? record.finishes.get(lot.finish ?? ""));
  const { used, unknown } = isLotPart(lot.material) ? mixed(lot.material, took, unit, adhesive) : sawn(lot, took);
  const received = lot.amount?.value;
  const left =
    received === undefined || used === undefined || unknown.length > 0 ? undefined : Math.max(0, received - used);
  return {
    lot,
    unit,
    received,
    used,
    unknown,
    left,
    recalled,
    cuts: took.cuts,
    batches: took.batches.map(({ id }) => id),
    lastDay: last?.day,
    life: lifeOf(record.day, last?.day),
  };
}

function mixed(component: LotPart, { batches }: Took, unit: string, adhesive: Adhesive | undefined): Use {
  const takes = batches.map((batch) => ({
    batch,
    amount: taken(batch[component], unit, adhesive?.density?.[component]?.value),
  }));
  return {
    used: takes.reduce((sum, { amount }) => sum + (amount ?? 0), 0),
    unknown: takes.filter(({ amount }) => amount === undefined).map(({ batch }) => batch.id),
  };
}

/** Nothing notes how much of these was used, but cuts. */
const UNTOLD: readonly Material[] = ["other", "finish"];

/** Wood that was glued before anything was noted as cut from its lot was cut all the same: how much is never guessed. Of other things only cuts tell. */
function sawn({ material }: Lot, { batches, cuts }: Took): Use {
  const first = cuts[0]?.day;
  const unknown = batches.filter(({ day }) => first === undefined || day < first).map(({ id }) => id);
  const isTold = cuts.length > 0 || (batches.length === 0 && !UNTOLD.includes(material));
  return defined({ unknown, used: isTold ? cuts.reduce((sum, { amount }) => sum + amount.value, 0) : undefined });
}

/** What a batch took of a lot at the most, in the lot's unit; undefined where it is not noted, only estimated, or no density turns the one measure into the other. */
export function taken(component: Component | undefined, unit: string, density: number | undefined): number | undefined {
  const [mass, volume] = [component?.mass, component?.volume].map((noted) => noted && provenEnds(noted)?.most);
  if (unit === "kg") return mass ?? (volume !== undefined && density !== undefined ? volume * density : undefined);
  return volume ?? (mass !== undefined && density !== undefined ? mass / density : undefined);
}

function lifeOf(today: string, last: string | undefined): LotStock["life"] {
  if (last === undefined) return "no date";
  if (last < today) return "past";
  return last <= (addDays(today, SOON) ?? last) ? "soon" : "good";
}

/** More used than came: some amount or some lot is noted wrong, and nothing that rests on the lot is as the record has it. */
function overdrawn({ lot, unit, used, batches, cuts }: LotStock): Finding[] {
  if (lot.amount === undefined || used === undefined || atMost(used, lot.amount.value)) return [];
  const [by, refs] =
    cuts.length > 0
      ? (["cuts", cuts.map(({ entry }): Ref => ({ kind: "entry", id: entry }))] as const)
      : (["batches", batches.map((id): Ref => ({ kind: "batch", id }))] as const);
  const { value: amount, typed: came } = lot.amount;
  const values = { by, used, amount, unit, lot: lot.id, came };
  return [finder({ kind: "lot", id: lot.id }, refs)("stock/overdrawn", "caution", values)];
}

function needOf(adhesive: Adhesive, area: number, lots: readonly LotStock[]): AdhesiveNeed[] {
  // Nothing is needed where no area waits.
  const mixed = adhesive.spread && sessionAmount(area, adhesive.spread.value, LOSS);
  if (mixed === undefined) return [];
  const needed = partsNeeded(adhesive, mixed);
  if (needed === undefined) return [{ adhesive: adhesive.id, mixed }];
  const parts = needed.flatMap(([part, mass]) =>
    isLotPart(part) ? [{ part, needed: mass, usable: usableOf(adhesive, part, lots) }] : [],
  );
  return [{ adhesive: adhesive.id, mixed, parts }];
}

/** How much of each part makes so much mixed, kg; undefined where no ratio parts them. */
export function partsNeeded(adhesive: Adhesive, mixed: number): (readonly [AdhesivePart, number])[] | undefined {
  const { parts, pair } = MADE[adhesive.kind];
  if (pair === undefined) return parts.map((part) => [part, mixed]);
  const ratio = massRatio(adhesive, pair);
  if (ratio === undefined) return undefined;
  return [
    [pair[0], mixed / (1 + ratio)],
    [pair[1], (mixed * ratio) / (1 + ratio)],
  ];
}

/** The second part over the first by mass. */
function massRatio({ byMass, byVolume, density }: Adhesive, pair: PartPair): number | undefined {
  if (byMass) return byMass.secondOverFirst;
  const [first, second] = pair.map((part) => density?.[part]?.value);
  if (!byVolume || first === undefined || second === undefined) return undefined;
  return massRatioOfVolumes(byVolume.secondOverFirst, first, second);
}

/** What is in date and not recalled, kg; undefined where it cannot be told of one of these lots. */
function usableOf(adhesive: Adhesive, material: LotPart, lots: readonly LotStock[]): number | undefined {
  const density = adhesive.density?.[material]?.value;
  const ours = lots.filter(
    ({ lot, life, recalled }) =>
      lot.adhesive === adhesive.id && lot.material === material && life !== "past" && !recalled,
  );
  const masses = ours.map(({ left, unit }) =>
    left === undefined ? undefined : unit === "kg" ? left : density && left * density,
  );
  return masses.reduce<number | undefined>(
    (sum, mass) => (sum === undefined || mass === undefined ? undefined : sum + mass),
    0,
  );
}
