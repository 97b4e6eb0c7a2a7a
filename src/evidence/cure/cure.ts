/** How far a piece's cure has got by what the record shows, and when it will have got far enough. */
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import { type CureClock, provenAge, reachedAt } from "../../reckoning/cure/proven-age.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import type { Batch, Procedure } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import type { Cure, StatedWarmth, Warmth } from "../types/cure.ts";
import { lawOf, referenceOf } from "./reference.ts";

/** The latest that the joint can have been closed: as noted, else the end of its day. */
export const closedAtLatest = (index: RecordIndex, batch: Batch): number =>
  batch.closed?.epoch ?? lookUp(index.entries, batch.entry).dayEnd;

interface Times {
  readonly glued: number | undefined;
  readonly brokenAt: number | undefined;
}

interface Known extends Times {
  readonly procedure: Procedure;
  readonly cure: Cure;
}

const noCures = (): Known[] => [];

/**
 * A piece without a time of its own was glued with the last joint of its cup. `brokenAt` is the earliest that the piece can have been broken;
 * undefined where it has not been. Pieces of one batch that were broken together share what is reckoned.
 */
export function cureOf(index: RecordIndex, batch: Batch, procedure: Procedure, times: Times): Cure {
  const { glued, brokenAt } = times;
  const known = index.memo.once(batch, noCures);
  const same = known.find((one) => one.procedure === procedure && one.glued === glued && one.brokenAt === brokenAt);
  if (same !== undefined) return same.cure;
  const cure = reckoned(index, batch, procedure, times);
  known.push({ procedure, glued, brokenAt, cure });
  return cure;
}

function reckoned(index: RecordIndex, batch: Batch, procedure: Procedure, { glued, brokenAt }: Times): Cure {
  const adhesive = lookUp(index.record.adhesives, batch.adhesive);
  const from = glued ?? closedAtLatest(index, batch);
  const least = procedure.leastCure?.time.value ?? USUAL_CURE;
  const { temperature: reference, from: referenceFrom } = referenceOf(procedure, adhesive);
  const law = index.memo.once(adhesive, lawOf);
  const stated = statedWarmth(batch, procedure);
  const assumed = stated ?? lastLogged(index, from);
  const clock = index.shop.clock(law, reference);
  const reached = reachedBy(index, clock, from, least, assumed?.temperature);
  const readyAt = reached === undefined ? undefined : Math.max(from + least, reached);
  return {
    from,
    least,
    reference,
    referenceFrom,
    law,
    stated,
    assumed,
    readyAt,
    readyBy:
      readyAt !== undefined
        ? warmthOf(index, from, readyAt, assumed !== undefined)
        : assumed && assumed.temperature < (law.least ?? Number.NEGATIVE_INFINITY)
          ? "too cold"
          : "unknown",
    restsOn: index.shop.restsOn(from, brokenAt ?? readyAt ?? from),
    ...(brokenAt === undefined
      ? {}
      : shown(
          warmthOf(index, from, brokenAt, stated !== undefined),
          provenAge(clock, from, brokenAt, stated?.temperature),
        )),
  };
}

const noneReached = (): Map<string, number | undefined> => new Map();

/** Pieces of one batch ask the same. */
function reachedBy(index: RecordIndex, clock: CureClock, from: number, least: number, assumed: number | undefined) {
  const known = index.memo.once(clock, noneReached);
  const key = `${from} ${least} ${assumed}`;
  if (!known.has(key)) known.set(key, reachedAt(clock, from, least, assumed));
  return known.get(key);
}

const shown = (warmth: Warmth, age: number): Pick<Cure, "age" | "warmth"> =>
  warmth === "unknown" ? { warmth } : { warmth, age };

function warmthOf(index: RecordIndex, from: number, to: number, assumed: boolean): Warmth {
  const span = spanOf(index.shop.tracks.temperature, from, to);
  if (span === undefined) return assumed ? "assumed" : "unknown";
  return span.whole ? "logged" : "logged in part";
}

/** A day, s: what the shop was like last is taken from so long. */
const LATELY = DAY_SECONDS;

/** As noted when it was glued; else the least that the procedure asks, or what was estimated where that is less. */
export function statedWarmth(
  { temperature }: Batch,
  procedure: Pick<Procedure, "leastTemperature"> | undefined,
): StatedWarmth | undefined {
  const asked = procedure?.leastTemperature;
  if (temperature) {
    const { least } = saidEnds(temperature);
    if (!isEstimate(temperature) || (asked !== undefined && least < asked.value))
      return { code: "warmth/noted", values: { temperature: temperature.typed }, temperature: least };
  }
  return asked && { code: "warmth/asked", values: { temperature: asked.typed }, temperature: asked.value };
}

/**
 * The coolest of the last day that was logged, of a last reading that stands alone its own: good enough to say when a piece may be broken, and
 * not to say that it had cured. Nothing where no reading comes after the joint was closed.
 */
export function lastLogged(index: RecordIndex, from: number): StatedWarmth | undefined {
  const track = index.shop.tracks.temperature;
  const end = track.times.at(-1);
  if (end === undefined || end < from) return undefined;
  const least = spanOf(track, Math.max(from, end - LATELY), end)?.least ?? track.values.at(-1);
  return least === undefined
    ? undefined
    : { code: "warmth/last-logged", values: { celsius: least }, temperature: least };
}
