/** Whether the shop was warm and dry enough, and the surfaces clear of the dew point. */
import { against, atLeast } from "../../reckoning/compare.ts";
import { figure, temperatureText } from "../../words/figure.ts";
import type { Quantity, Range } from "../../facts/types.ts";
import { PAINT_RULE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";

export function shopTemperature(c: BatchCase): Finding[] {
  const {
    batch: { temperature },
    adhesive: { temperature: limits },
  } = c;
  if (!temperature) {
    return [
      c.find("shop-temperature", "unproven", {
        sentence: "The temperature of the shop is not noted.",
        limit: limitOf(c, "shop", limits),
      }),
    ];
  }
  if (!limits)
    return [
      c.find("shop-temperature", "caution", {
        sentence: `The shop was at ${temperature.typed}; the data sheet as entered gives no limits.`,
      }),
    ];
  return [held(c, "shop-temperature", temperature, limits, "shop")];
}

export function shopHumidity(c: BatchCase): Finding[] {
  const {
    batch: { humidity },
    adhesive: { humidity: limits },
  } = c;
  const limit = limitOf(c, "humidity", limits);
  if (humidity && limits) return [held(c, "shop-humidity", humidity, limits, "humidity")];
  if (humidity)
    return [
      c.find("shop-humidity", "caution", {
        sentence: `Humidity was ${humidity.typed}; the data sheet as entered gives no limits.`,
      }),
    ];
  return [
    c.find("shop-humidity", limits ? "unproven" : "caution", {
      sentence: "The humidity of the shop is not noted.",
      limit,
    }),
  ];
}

function held(
  c: BatchCase,
  rule: "shop-temperature" | "shop-humidity",
  found: Quantity,
  limits: Range,
  word: string,
): Finding {
  const limit = limitOf(c, word, limits);
  const what = rule === "shop-temperature" ? "The shop was at" : "Humidity was";
  const where = against(found.value, limits);
  if (where === "within") return c.find(rule, "meets", { sentence: `${what} ${found.typed}.`, limit });
  return c.find(rule, "rejects", { sentence: `${what} ${found.typed}; the sheet asks ${limits.typed}.`, limit });
}

const limitOf = (c: BatchCase, word: string, limits: Range | undefined) =>
  limits && { text: `${word} ${limits.typed}`, from: sheetOf(c.adhesive) };

const LEAST_ABOVE = 3;

export function dewPointRule(c: BatchCase): Finding[] {
  const {
    batch,
    facts: { dewPoint },
    units,
  } = c;
  const surface = batch.surface ?? batch.temperature;
  if (dewPoint === undefined || !surface) return [];
  const limit = { text: "surfaces at least 3 K above the dew point", from: PAINT_RULE };
  const what = batch.surface ? "the surfaces were" : "the shop, for want of a reading of the surfaces, was";
  const sentence = `The dew point was ${temperatureText(dewPoint, units)} and ${what} at ${surface.typed}, ${figure(surface.value - dewPoint, 1)} K from it`;
  if (atLeast(surface.value - dewPoint, LEAST_ABOVE))
    return [c.find("dew-point", "meets", { sentence: `${sentence}.`, limit })];
  return [c.find("dew-point", "caution", { sentence: `${sentence}: water may have settled on them.`, limit })];
}
