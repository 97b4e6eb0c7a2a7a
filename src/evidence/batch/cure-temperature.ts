/** Whether the shop kept within the sheet's temperatures while the adhesive cured, by logger and thermometer. */
import { atLeast, atMost } from "../../reckoning/compare.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import type { Limit } from "../types/source.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { closedAtLatest } from "../cure/cure.ts";

/** Where every joint is said to be secondary, an assumed climate may stand. */
const isSecondary = ({ joints }: RecordIndex, ids: readonly string[]): boolean =>
  ids.length > 0 && ids.every((id) => lookUp(joints, id, "joint").structure === "secondary");

export function cureTemperature(c: BatchCase): Finding[] {
  const { index, batch, adhesive, pieces, find } = c;
  const isLimited = adhesive.temperature !== undefined || adhesive.cure.length > 0;
  if (batch.joints.length === 0 || (!index.shop.isLogged && !isLimited)) return [];
  const leastCure = Math.max(...pieces.map(({ cure }) => cure.least), pieces.length === 0 ? USUAL_CURE : 0);
  const closed = closedAtLatest(index, batch);
  const [from, to] = [batch.mixed?.epoch ?? closed, closed + leastCure];
  const over = to - from;
  // Nothing can be known of what is to come: there the time ends with the day before the record's last.
  const until = Math.min(to, index.record.entries.at(-1)?.dayStart ?? to);
  const asked = adhesive.temperature;
  const limit: Limit | undefined = asked && {
    code: "limit/shop",
    values: { asked: asked.typed },
    from: sheetOf(adhesive),
  };
  const beside = { limit, alsoOn: index.shop.restsOn(from, to) };
  const lacking = isLimited && !isSecondary(index, batch.joints) ? "unproven" : "caution";
  if (until <= from) return [find("cure-temperature/to-come", "waits", { over }, { limit })];
  const known = index.shop.warmth(from, until);
  if (!known) return [find("cure-temperature/assumed", lacking, { over }, { limit })];
  const { least, greatest, whole } = known;
  const isDone = whole && until === to;
  const values = { over, least, greatest, known: isDone ? undefined : known.known, limit: asked?.least };
  if (asked?.least !== undefined && !atLeast(least, asked.least))
    return [find("cure-temperature/below", "rejects", { ...values, asked: asked.typed }, beside)];
  if (asked?.most !== undefined && !atMost(greatest, asked.most))
    return [find("cure-temperature/above", "rejects", { ...values, asked: asked.typed }, beside)];
  if (!whole) return [find("cure-temperature/within-in-part", lacking, values, beside)];
  if (!isDone) return [find("cure-temperature/so-far", "waits", values, beside)];
  return asked === undefined
    ? [find("cure-temperature/no-limit", "caution", values, beside)]
    : [find("cure-temperature/within", "meets", values, beside)];
}
