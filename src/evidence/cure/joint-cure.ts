/**
 * When the adhesive of a batch has cured for so long that its joint may be loaded: by the sheet, else for the least cure of its pieces. Both the days
 * and what they are worth at the sheet's temperature must reach it. Where the sheet limits the cure only what logger or thermometer shows counts,
 * unless the joint is said to be secondary.
 */
import { defined } from "../../defined.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import type { CureLaw } from "../../reckoning/cure/cure-rate.ts";
import { provenAge, reachedAt } from "../../reckoning/cure/proven-age.ts";
import type { Adhesive, Batch, JointSpec, Procedure, Quantity, Ref } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import { procedureOf, sheetOf, USUAL_CURE_SOURCE } from "../sources.ts";
import type { StatedWarmth } from "../types/cure.ts";
import type { Limit } from "../types/source.ts";
import { closedAtLatest, lastLogged, statedWarmth } from "./cure.ts";
import { lawOf, referenceOf } from "./reference.ts";

export interface JointCure {
  readonly batch: Batch;
  /** The latest that it can have been closed, s since 1970-01-01T00:00Z. */
  readonly from: number;
  /** How long, s; and what asks it. */
  readonly time: number;
  readonly limit: Limit;
  /** By when it is reached; undefined where the record does not show it. */
  readonly at?: number;
  /** The temperature that was assumed for that where no logger has readings; `days`: nothing is known of it, and the days alone count. */
  readonly assumed?: StatedWarmth | "days";
  /** By when it will be reached, if the shop stays as it was noted or last logged; undefined where nothing is known of that. */
  readonly expected?: number;
  /** What is shown of it by the day of the record, s. */
  readonly shown: number;
  readonly restsOn: readonly Ref[];
}

interface Asked {
  readonly time: number;
  /** °C */
  readonly reference: number;
  readonly law: CureLaw;
  readonly limit: Limit;
}

interface SheetCure extends Omit<Asked, "limit"> {
  /** As typed. */
  readonly row: { readonly time: string; readonly temperature: string };
}

const noCures = (): Map<string, JointCure> => new Map();

export function jointCure(index: RecordIndex, { structure }: JointSpec, batch: Batch): JointCure {
  const isSecondary = structure === "secondary";
  const cures = index.memo.once(index, noCures);
  const key = `${isSecondary} ${batch.id}`;
  const cure = cures.get(key) ?? reckoned(index, isSecondary, batch);
  cures.set(key, cure);
  return cure;
}

function reckoned(index: RecordIndex, isSecondary: boolean, batch: Batch): JointCure {
  const adhesive = lookUp(index.record.adhesives, batch.adhesive);
  const procedure = leastOf(index, batch);
  const { time, limit, law, reference } = askedOf(index, adhesive, procedure);
  const from = closedAtLatest(index, batch);
  const stated = statedWarmth(batch, procedure);
  const isLimited = adhesive.temperature !== undefined || adhesive.cure.length > 0;
  const believed = isLimited && !isSecondary ? undefined : stated?.temperature;
  const clock = index.shop.clock(law, reference);
  const isUnknown = !isLimited && stated === undefined && !index.shop.isLogged;
  const by = (assumed: number | undefined): number | undefined => {
    const reached = isUnknown ? from : reachedAt(clock, from, time, assumed);
    return reached === undefined ? undefined : Math.max(from + time, reached);
  };
  const age = isUnknown ? Number.POSITIVE_INFINITY : provenAge(clock, from, index.now, believed);
  const at = by(believed);
  const likely = (stated ?? lastLogged(index, from))?.temperature;
  const expected = likely === believed ? at : by(likely);
  const isShown = believed === undefined || by(undefined) === at;
  const assumed = isUnknown ? "days" : isShown ? undefined : stated;
  return defined({
    batch,
    from,
    time,
    limit,
    at,
    assumed,
    expected,
    shown: Math.max(0, Math.min(age, index.now - from)),
    restsOn: index.shop.restsOn(from, at ?? index.now),
  });
}

/** A sheet's cure at more than this is one by heating, °C. */
const HEATED = 30;

/** That of the sheet's rows nearest to room temperature, as pieces are counted; of a cure by heating only heat counts. */
export function sheetCure(adhesive: Adhesive): SheetCure | undefined {
  const rows = [...adhesive.cure].sort((a, b) => apart(a.temperature) - apart(b.temperature));
  const row = rows.find(({ temperature }) => temperature.value <= HEATED) ?? rows[0];
  if (row === undefined) return undefined;
  const reference = row.temperature.value;
  const law = lawOf(adhesive);
  return {
    time: row.time.value,
    reference,
    law: reference > HEATED ? { ...law, least: reference } : law,
    row: { time: row.time.typed, temperature: row.temperature.typed },
  };
}

/** By the sheet; without one, or where it says nothing of it, for the least cure of the pieces. */
function askedOf(index: RecordIndex, adhesive: Adhesive, procedure: Procedure | undefined): Asked {
  const sheet = index.memo.once(adhesive, sheetCure);
  if (sheet) return { ...sheet, limit: { code: "limit/joint-cure", values: sheet.row, from: sheetOf(adhesive) } };
  const { leastCure } = procedure ?? {};
  const values = { time: leastCure?.time.typed, temperature: leastCure?.temperature?.typed };
  const from = procedure && leastCure ? procedureOf(procedure) : USUAL_CURE_SOURCE;
  return {
    time: leastCure?.time.value ?? USUAL_CURE,
    reference: referenceOf(procedure, adhesive).temperature,
    law: index.memo.once(adhesive, lawOf),
    limit: { code: "limit/joint-cure", values, from },
  };
}

const ROOM = 20;
/** Of two as near the warmer. */
const apart = ({ value }: Quantity): number => Math.abs(value - ROOM) - (value > ROOM ? 1e-9 : 0);

/** The procedure of its pieces that asks for the longest least cure. */
function leastOf({ record }: RecordIndex, { pieces }: Batch): Procedure | undefined {
  const time = ({ leastCure }: Procedure): number => leastCure?.time.value ?? USUAL_CURE;
  let longest: Procedure | undefined;
  for (const { procedure } of pieces) {
    const one = lookUp(record.procedures, procedure);
    if (longest === undefined || time(one) > time(longest)) longest = one;
  }
  return longest;
}
