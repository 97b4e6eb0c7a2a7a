/** Whether the wood was dry enough: by meter, else as estimated from the climate of the shop. */
import { against, standing } from "../../reckoning/compare.ts";
import { isEstimate } from "../../facts/quantity/ends.ts";
import type { Noted, Range } from "../../facts/types.ts";
import type { Limit } from "../types/source.ts";
import { HANDBOOK_MOISTURE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { gluedFrom, partlyLogged, SETTLING } from "./logged-moisture.ts";

/** For want of a range in the data sheet. */
const HANDBOOK_RANGE: Range = { typed: "8 % to 12 %", least: 0.08, most: 0.12 };

export function woodMoisture(c: BatchCase): Finding[] {
  const own = c.adhesive.woodMoisture;
  const range = own ?? HANDBOOK_RANGE;
  const limit: Limit = {
    code: "limit/wood-moisture",
    values: { asked: range.typed },
    from: own ? sheetOf(c.adhesive) : HANDBOOK_MOISTURE,
  };
  const { moisture } = c.batch;
  if (!moisture) return [estimated(c, range, limit)];
  const [found, where] = [moisture.typed, standing(moisture, range)];
  if (where === "estimate")
    return [c.find("wood-moisture/estimate", "caution", { found }, { limit }), estimated(c, range, limit)];
  if (where === "within") return [c.find("wood-moisture/by-meter", "meets", { found }, { limit })];
  return [c.find("wood-moisture/by-meter-outside", "rejects", { found, where, asked: range.typed }, { limit })];
}

const isRead = (noted: Noted | undefined): noted is Noted => noted !== undefined && !isEstimate(noted);

function estimated(c: BatchCase, range: Range, limit: Limit): Finding {
  if (c.loggedMoisture !== undefined) return byLogger(c, c.loggedMoisture, range, limit);
  const {
    batch,
    facts: { moistureEstimate },
  } = c;
  if (!isRead(batch.temperature) || !isRead(batch.humidity))
    return c.find("wood-moisture/no-climate", "unproven", {}, { limit });
  const climate = { temperature: batch.temperature.typed, humidity: batch.humidity.typed };
  if (moistureEstimate === undefined) return c.find("wood-moisture/no-estimate", "unproven", climate, { limit });
  const values = { ...climate, shortLog: c.index.shop.isLogged, estimate: moistureEstimate };
  const inPart = partlyLogged(c.index, batch);
  if (inPart !== undefined) {
    const where = against(inPart, range);
    const asked = range.typed;
    if (where !== "within")
      return c.find("wood-moisture/logged-in-part", "unproven", { estimate: inPart, where, asked }, { limit });
  }
  const where = against(moistureEstimate, range);
  if (where === "within") return c.find("wood-moisture/estimated", "unproven", values, { limit });
  const outside = { ...values, where, asked: range.typed };
  return c.find("wood-moisture/estimated-outside", "unproven", outside, { limit });
}

function byLogger(c: BatchCase, estimate: number, range: Range, limit: Limit): Finding {
  const before = gluedFrom(c.index, c.batch);
  const alsoOn = c.index.shop.restsOn(before - SETTLING, before);
  const where = against(estimate, range);
  if (where === "within") return c.find("wood-moisture/logged", "caution", { estimate }, { limit, alsoOn });
  const outside = { estimate, where, asked: range.typed };
  return c.find("wood-moisture/logged-outside", "unproven", outside, { limit, alsoOn });
}
