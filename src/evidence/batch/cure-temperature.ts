/** Whether the shop stayed warm enough while the adhesive cured, by the logger. */
import { atLeast } from "../../reckoning/compare.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import type { Limit } from "../types/source.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { closedAtLatest } from "../cure/cure.ts";

export function cureTemperature(c: BatchCase): Finding[] {
  const { index, batch, adhesive, pieces, find } = c;
  if (!index.shop.isLogged) return [];
  const leastCure = Math.max(...pieces.map(({ cure }) => cure.least), pieces.length === 0 ? USUAL_CURE : 0);
  const closed = closedAtLatest(index, batch);
  const [from, to] = [batch.mixed?.epoch ?? closed, closed + leastCure];
  const over = to - from;
  const logged = spanOf(index.shop.tracks.temperature, from, to);
  const asked = adhesive.temperature;
  const limit: Limit | undefined = asked && {
    code: "limit/shop",
    values: { asked: asked.typed },
    from: sheetOf(adhesive),
  };
  if (!logged) return [find("cure-temperature/no-readings", "caution", { over }, { limit })];
  const { least, greatest, whole } = logged;
  const values = { over, least, greatest, known: whole ? undefined : logged.known, limit: asked?.least };
  const beside = { limit, alsoOn: index.shop.logs(from, to) };
  if (asked?.least === undefined) return [find("cure-temperature/no-limit", "caution", values, beside)];
  if (!atLeast(least, asked.least))
    return [find("cure-temperature/below", "rejects", { ...values, asked: asked.typed }, beside)];
  return whole
    ? [find("cure-temperature/within", "meets", values, beside)]
    : [find("cure-temperature/within-in-part", "caution", values, beside)];
}
