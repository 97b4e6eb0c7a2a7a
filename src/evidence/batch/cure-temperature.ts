/** Whether the shop kept within the sheet's temperatures while the adhesive cured, by logger and thermometer. */
import { atLeast, atMost } from "../../reckoning/compare.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import type { Limit } from "../types/source.ts";
import { sheetOf } from "../sources.ts";
import type { Warm } from "../cure/shop.ts";
import type { Finding, Severity } from "../types.ts";
import type { Adhesive } from "../../facts/types.ts";
import { jointCure } from "../cure/joint-cure.ts";
import type { BatchCase, GlueCase } from "./case.ts";
import { closedAtLatest } from "../cure/cure.ts";

/** Where every joint is said to be secondary, an assumed climate may stand. */
const isSecondary = ({ joints }: RecordIndex, ids: readonly string[]): boolean =>
  ids.length > 0 && ids.every((id) => lookUp(joints, id).structure === "secondary");

interface CureTime {
  readonly from: number;
  readonly to: number;
  /** How far anything can be known: nothing of what is to come, so at most until the record's last day begins. */
  readonly until: number;
  /** When the shop's temperature was last read, where the cure still runs and a later reading may not have been noted yet. */
  readonly read?: number;
}

/** From mixing to the longest least cure of its pieces. */
function cureTime({ index, batch, pieces }: BatchCase): CureTime {
  const leastCure = Math.max(...pieces.map(({ cure }) => cure.least), pieces.length === 0 ? USUAL_CURE : 0);
  const closed = closedAtLatest(index, batch);
  const [from, to] = [batch.mixed?.epoch ?? closed, closed + leastCure];
  const until = Math.min(to, index.record.entries.at(-1)?.dayStart ?? to);
  const last = index.shop.lastRead;
  return { from, to, until, ...(until < to && last !== undefined && last < until && { read: last }) };
}

export function cureTemperature(c: BatchCase): Finding[] {
  const ofLeast = ofLeastCure(c);
  return ofLeast.some(({ severity }) => severity === "rejects") ? ofLeast : [...ofLeast, ...laterHeat(c)];
}

/**
 * What is above the sheet's temperatures after the least cure of the pieces, up to the cure of the joints that is
 * shown, else for as long as the sheet asks. What is below only slows that cure, and the joint waits for it.
 */
function laterHeat(c: BatchCase): Finding[] {
  const { index, batch, adhesive, find } = c;
  const asked = adhesive.temperature;
  const most = mostOfCure(adhesive);
  if (asked === undefined || most === undefined || batch.joints.length === 0) return [];
  const { from, to } = cureTime(c);
  const end = Math.max(...batch.joints.map((id) => curedBy(c, id)));
  const until = Math.min(end, index.record.entries.at(-1)?.dayStart ?? end);
  const known = until > to ? index.shop.warmth(to, until) : undefined;
  if (known === undefined || atMost(known.greatest, most)) return [];
  const values = { over: to - from, greatest: known.greatest, limit: most, asked: asked.typed };
  const beside = { limit: limitOf(c), alsoOn: index.shop.restsOn(to, until) };
  return [find("cure-temperature/above-later", "rejects", values, beside)];
}

/** By when a joint of it had cured as far as that is shown, else after as long as it takes. */
export function curedBy({ index, batch }: GlueCase, joint: string): number {
  const { at, from, time } = jointCure(index, lookUp(index.joints, joint), batch);
  return at ?? from + time;
}

/** The most that the sheet allows, or has it cure or be heated at; undefined where it names no end. */
export function mostOfCure({ temperature, cure, postCure }: Adhesive): number | undefined {
  const heated = postCure ? (postCure.temperature.most ?? Number.POSITIVE_INFINITY) : Number.NEGATIVE_INFINITY;
  const most = temperature?.most;
  return most === undefined ? undefined : Math.max(most, heated, ...cure.map((row) => row.temperature.value));
}

function ofLeastCure(c: BatchCase): Finding[] {
  const { index, batch, adhesive, find } = c;
  const isLimited = adhesive.temperature !== undefined || adhesive.cure.length > 0;
  if (batch.joints.length === 0 || (!index.shop.isLogged && !isLimited)) return [];
  const time = cureTime(c);
  const { from, to, until, read } = time;
  const over = to - from;
  const limit = limitOf(c);
  const lacking = isLimited && !isSecondary(index, batch.joints) ? "unproven" : "caution";
  if (until <= from) return [find("cure-temperature/to-come", "waits", { over }, { limit })];
  const known = index.shop.warmth(from, until);
  if (known) return [judged(c, time, known, lacking)];
  if (read === undefined || read > from) return [find("cure-temperature/assumed", lacking, { over }, { limit })];
  return [find("cure-temperature/to-come", "waits", { over }, { limit, alsoOn: index.shop.restsOn(read, to) })];
}

export function limitOf({ adhesive }: GlueCase): Limit | undefined {
  const asked = adhesive.temperature;
  return asked && { code: "limit/shop", values: { asked: asked.typed }, from: sheetOf(adhesive) };
}

function judged(c: BatchCase, time: CureTime, known: Warm, lacking: Severity): Finding {
  const { index, adhesive, find } = c;
  const { from, to, until, read } = time;
  const { least, greatest, whole } = known;
  const asked = adhesive.temperature;
  const beside = { limit: limitOf(c), alsoOn: index.shop.restsOn(from, to) };
  const isDone = whole && until === to;
  const values = { over: to - from, least, greatest, known: isDone ? undefined : known.known, limit: asked?.least };
  if (asked?.least !== undefined && !atLeast(least, asked.least))
    return find("cure-temperature/below", "rejects", { ...values, asked: asked.typed }, beside);
  if (asked?.most !== undefined && !atMost(greatest, asked.most))
    return find("cure-temperature/above", "rejects", { ...values, asked: asked.typed }, beside);
  if (isDone && asked === undefined) return find("cure-temperature/no-limit", "caution", values, beside);
  if (isDone) return find("cure-temperature/within", "meets", values, beside);
  // What lacks after the last reading may only not have been read out yet; what lacks before it is a gap.
  return whole || (read !== undefined && index.shop.warmth(from, read)?.whole === true)
    ? find("cure-temperature/so-far", "waits", values, beside)
    : find("cure-temperature/within-in-part", lacking, values, beside);
}
