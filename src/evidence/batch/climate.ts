/** Whether the shop was warm and dry enough, and the surfaces clear of the dew point. */
import { against, atLeast } from "../../reckoning/compare.ts";
import type { Limit } from "../types/source.ts";
import { PAINT_RULE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";

export function shopTemperature(c: BatchCase): Finding[] {
  const {
    batch: { temperature },
    adhesive: { temperature: limits },
  } = c;
  const limit: Limit | undefined = limits && {
    code: "limit/shop",
    values: { asked: limits.typed },
    from: sheetOf(c.adhesive),
  };
  if (!temperature) return [c.find("shop-temperature/not-noted", "unproven", {}, { limit })];
  const found = temperature.typed;
  if (!limits) return [c.find("shop-temperature/no-limits", "caution", { found })];
  if (against(temperature.value, limits) === "within")
    return [c.find("shop-temperature/within", "meets", { found }, { limit })];
  return [c.find("shop-temperature/outside", "rejects", { found, asked: limits.typed }, { limit })];
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
  if (!humidity) return [c.find("shop-humidity/not-noted", limits ? "unproven" : "caution", {}, { limit })];
  const found = humidity.typed;
  if (!limits) return [c.find("shop-humidity/no-limits", "caution", { found })];
  if (against(humidity.value, limits) === "within")
    return [c.find("shop-humidity/within", "meets", { found }, { limit })];
  return [c.find("shop-humidity/outside", "rejects", { found, asked: limits.typed }, { limit })];
}

/** K */
const LEAST_ABOVE = 3;

export function dewPointRule(c: BatchCase): Finding[] {
  const {
    batch,
    facts: { dewPoint },
  } = c;
  const surface = batch.surface ?? batch.temperature;
  if (dewPoint === undefined || !surface) return [];
  const limit: Limit = { code: "limit/dew-point", values: { least: LEAST_ABOVE }, from: PAINT_RULE };
  const apart = surface.value - dewPoint;
  const values = { dewPoint, warmth: surface.typed, of: batch.surface ? "surfaces" : "shop", apart } as const;
  return atLeast(apart, LEAST_ABOVE)
    ? [c.find("dew-point/clear", "meets", values, { limit })]
    : [c.find("dew-point/near", "caution", values, { limit })];
}
