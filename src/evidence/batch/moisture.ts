/** Whether the wood was dry enough: by meter, else as estimated from the climate of the shop. */
import { against } from "../../reckoning/compare.ts";
import { percent } from "../../words/figure.ts";
import type { Range } from "../../facts/types.ts";
import type { Limit } from "../finding.ts";
import { HANDBOOK_MOISTURE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { gluedFrom, SETTLING } from "./logged-moisture.ts";

/** For want of a range in the data sheet. */
const HANDBOOK_RANGE: Range = { typed: "8 % to 12 %", least: 0.08, most: 0.12 };

export function woodMoisture(c: BatchCase): Finding[] {
  const own = c.adhesive.woodMoisture;
  const range = own ?? HANDBOOK_RANGE;
  const limit = { text: `wood moisture ${range.typed}`, from: own ? sheetOf(c.adhesive) : HANDBOOK_MOISTURE };
  const { moisture } = c.batch;
  if (!moisture) return [estimated(c, range, limit)];
  const where = against(moisture.value, range);
  if (where === "within")
    return [c.find("wood-moisture", "meets", { sentence: `The wood was at ${moisture.typed} by meter.`, limit })];
  return [
    c.find("wood-moisture", "rejects", {
      sentence: `The wood was at ${moisture.typed} by meter, ${where} ${range.typed}.`,
      limit,
    }),
  ];
}

function estimated(c: BatchCase, range: Range, limit: Limit): Finding {
  if (c.loggedMoisture !== undefined) return byLogger(c, c.loggedMoisture, range, limit);
  const {
    batch,
    facts: { moistureEstimate },
  } = c;
  if (!batch.temperature || !batch.humidity) {
    return c.find("wood-moisture", "unproven", {
      sentence: "No meter reading of the wood is noted, and no temperature and humidity to estimate one from.",
      limit,
    });
  }
  const climate = `at ${batch.temperature.typed} and ${batch.humidity.typed}`;
  if (moistureEstimate === undefined) {
    return c.find("wood-moisture", "unproven", {
      sentence: `No meter reading of the wood is noted, and ${climate} none can be estimated.`,
      limit,
    });
  }
  const where = against(moistureEstimate, range);
  const short = c.index.shop.isLogged ? ", the logger not having the two weeks before whole," : "";
  const sentence = `No meter reading of the wood is noted; ${climate}${short} wood settles at about ${percent(moistureEstimate)} (an estimate, for wood that has had time)`;
  if (where === "within") return c.find("wood-moisture", "caution", { sentence: `${sentence}.`, limit });
  return c.find("wood-moisture", "unproven", { sentence: `${sentence}, ${where} ${range.typed}.`, limit });
}

function byLogger(c: BatchCase, estimate: number, range: Range, limit: Limit): Finding {
  const before = gluedFrom(c.index, c.batch);
  const alsoOn = c.index.shop.logs(before - SETTLING, before);
  const where = against(estimate, range);
  const sentence = `No meter reading of the wood is noted; by the logger's two weeks before, wood in the shop settled at about ${percent(estimate)} (an estimate, for wood that has had time)`;
  if (where === "within") return c.find("wood-moisture", "caution", { sentence: `${sentence}.`, limit, alsoOn });
  return c.find("wood-moisture", "unproven", { sentence: `${sentence}, ${where} ${range.typed}.`, limit, alsoOn });
}
