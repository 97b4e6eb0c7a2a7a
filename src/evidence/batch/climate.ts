/** Whether the shop was warm and dry enough, and the surfaces clear of the dew point. */
import { against, atLeast, standing } from "../../reckoning/compare.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import type { Limit } from "../types/source.ts";
import { PAINT_RULE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Ends as Said, Noted, Range, Ref } from "../../facts/types.ts";
import type { BatchCase } from "./case.ts";
import { gluedAt, noted, wholly } from "./witnesses.ts";

/** How far a note and the logger may lie apart, K and shares: this program's own measure of what two instruments explain; common practice, no source. */
const EXPLAINED = { temperature: 2, humidity: 0.1 };

interface Ends {
  readonly least: number;
  readonly greatest: number;
}

/** The coldest of air, surfaces, wood and logger is held against the sheet's least, the warmest against its most. */
export function shopTemperature(c: BatchCase): Finding[] {
  const {
    batch,
    adhesive: { temperature: limits },
    read: { warmth: read },
  } = c;
  const limit: Limit | undefined = limits && {
    code: "limit/shop",
    values: { asked: limits.typed },
    from: sheetOf(c.adhesive),
  };
  const logged = wholly(read);
  const air = batch.temperature;
  const beside = () => ({ limit, alsoOn: logsAt(c) });
  const witnesses =
    air && logged && isApart(saidEnds(air), logged, "temperature")
      ? [c.find("shop-temperature/witnesses", "caution", { found: air.typed, ...ends(logged) }, beside())]
      : [];
  const outside = outsideOf(c, limit);
  if (outside.length > 0) return [...outside, ...witnesses];
  if (limits && read && [read.least, read.greatest].some((value) => against(value, limits) !== "within"))
    return [c.find("shop-temperature/logged-outside", "rejects", { ...ends(read), asked: limits.typed }, beside())];
  if (air && !isEstimate(air))
    return limits
      ? [c.find("shop-temperature/within", "meets", { found: air.typed }, { limit }), ...witnesses]
      : [c.find("shop-temperature/no-limits", "caution", { found: air.typed }), ...witnesses];
  if (!logged)
    return air
      ? [c.find("shop-temperature/estimate", "unproven", { found: air.typed }, { limit })]
      : [c.find("shop-temperature/not-noted", "unproven", {}, { limit })];
  return limits
    ? [c.find("shop-temperature/logged", "meets", { ...ends(logged), estimate: air?.typed }, beside()), ...witnesses]
    : witnesses;
}

const isOutside = (found: Noted, limits: Range): boolean => ["below", "above"].includes(standing(found, limits));

/** Of what was noted, air or not. */
function outsideOf(c: BatchCase, limit: Limit | undefined): Finding[] {
  const limits = c.adhesive.temperature;
  if (!limits) return [];
  return noted(c.batch)
    .filter(({ found }) => isOutside(found, limits))
    .map(({ of, found }) => {
      const values = { found: found.typed, asked: limits.typed };
      return of === "shop"
        ? c.find("shop-temperature/outside", "rejects", values, { limit })
        : c.find("shop-temperature/part-outside", "rejects", { ...values, of }, { limit });
    });
}

const ends = ({ least, greatest }: Ends): Ends => ({ least, greatest });

function logsAt({ index, batch }: BatchCase): readonly Ref[] {
  const at = gluedAt(batch);
  return at ? index.shop.restsOn(at.from, at.to) : [];
}

/** Whether a note and the logger differ by more than both instruments explain. */
export function isApart(found: Said, { least, greatest }: Ends, of: keyof typeof EXPLAINED): boolean {
  const most = EXPLAINED[of];
  return found.least < least - most - 1e-9 || found.most > greatest + most + 1e-9;
}

export function shopHumidity(c: BatchCase): Finding[] {
  const {
    batch: { humidity },
    adhesive: { humidity: limits },
  } = c;
  const limit: Limit | undefined = limits && {
    code: "limit/humidity",
    values: { asked: limits.typed },
    from: sheetOf(c.adhesive),
  };
  const read = c.read.humidity;
  const logged = wholly(read);
  const beside = () => ({ limit, alsoOn: logsAt(c) });
  const witnesses =
    humidity && logged && isApart(saidEnds(humidity), logged, "humidity")
      ? [c.find("shop-humidity/witnesses", "caution", { found: humidity.typed, ...ends(logged) }, beside())]
      : [];
  const isRead = humidity && !isEstimate(humidity);
  if (humidity) {
    if (!limits && isRead)
      return [c.find("shop-humidity/no-limits", "caution", { found: humidity.typed }), ...witnesses];
    if (limits && isOutside(humidity, limits))
      return [c.find("shop-humidity/outside", "rejects", { found: humidity.typed, asked: limits.typed }, { limit })];
  }
  if (limits && read && [read.least, read.greatest].some((value) => against(value, limits) !== "within"))
    return [c.find("shop-humidity/logged-outside", "rejects", { ...ends(read), asked: limits.typed }, beside())];
  if (isRead) return [c.find("shop-humidity/within", "meets", { found: humidity.typed }, { limit }), ...witnesses];
  const lacking = limits ? "unproven" : "caution";
  if (!logged)
    return humidity
      ? [c.find("shop-humidity/estimate", lacking, { found: humidity.typed }, { limit })]
      : [c.find("shop-humidity/not-noted", lacking, {}, { limit })];
  return limits
    ? [c.find("shop-humidity/logged", "meets", { ...ends(logged), estimate: humidity?.typed }, beside()), ...witnesses]
    : witnesses;
}

/** K */
const LEAST_ABOVE = 3;

export function dewPointRule(c: BatchCase): Finding[] {
  const {
    batch,
    facts: { aboveDew },
  } = c;
  const surface = batch.surface ?? batch.temperature;
  if (aboveDew === undefined || !surface) return [];
  const { dewPoint, apart, isProven } = aboveDew;
  const limit: Limit = { code: "limit/dew-point", values: { least: LEAST_ABOVE }, from: PAINT_RULE };
  const values = { dewPoint, warmth: surface.typed, of: batch.surface ? "surfaces" : "shop", apart } as const;
  if (!atLeast(apart, LEAST_ABOVE)) return [c.find("dew-point/near", "caution", values, { limit })];
  return isProven ? [c.find("dew-point/clear", "meets", values, { limit })] : [];
}
