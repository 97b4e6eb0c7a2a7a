/** Whether the wood was dry enough: by meter, else as estimated from the climate of the shop. */
import { against, standing } from "../../reckoning/compare.ts";
import { isEstimate } from "../../facts/quantity/ends.ts";
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";
import type { Day, Lot, Noted, Range, Ref } from "../../facts/types.ts";
import { dayNumber } from "../../reckoning/time/calendar.ts";
import { lookUp } from "../record-index.ts";
import type { Limit } from "../types/source.ts";
import { HANDBOOK_MOISTURE, sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import { type BatchCase, lotRef } from "./case.ts";
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
  const outside = outsideOf(c, range, limit);
  if (outside.length > 0) return outside;
  const { moisture } = c.batch;
  if (!moisture) return [estimated(c, range, limit)];
  const found = moisture.typed;
  if (isEstimate(moisture))
    return [c.find("wood-moisture/estimate", "caution", { found }, { limit }), estimated(c, range, limit)];
  return [c.find("wood-moisture/by-meter", "meets", { found }, { limit })];
}

/** Of what was read of the wood, and of each part by itself: one that is outside is not mended by another. */
function outsideOf({ batch: { moisture, glueUp }, find }: BatchCase, range: Range, limit: Limit): Finding[] {
  const asked = range.typed;
  const of = (noted: Noted): "above" | "below" | undefined => {
    const where = standing(noted, range);
    return where === "above" || where === "below" ? where : undefined;
  };
  const whole = moisture && of(moisture);
  const ofParts = (glueUp?.parts ?? []).flatMap(({ lot, moisture: own }) => {
    const [found, where] = [own.typed, of(own)];
    if (where === undefined) return [];
    const beside = { limit, alsoOn: [lotRef(lot)] };
    return [find("wood-moisture/part-outside", "rejects", { lot, found, where, asked }, beside)];
  });
  if (moisture === undefined || whole === undefined) return ofParts;
  const values = { found: moisture.typed, where: whole, asked };
  return [find("wood-moisture/by-meter-outside", "rejects", values, { limit }), ...ofParts];
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
  if (where === "within") return inShop(c, estimate, { limit, alsoOn });
  const outside = { estimate, where, asked: range.typed };
  return c.find("wood-moisture/logged-outside", "unproven", outside, { limit, alsoOn });
}

/** The logger's two weeks say something of wood that lay in the shop for them; of other wood they show nothing. */
function inShop(
  { batch, index, find }: BatchCase,
  estimate: number,
  beside: { readonly limit: Limit; readonly alsoOn: readonly Ref[] },
): Finding {
  const { timber, day, joints } = batch;
  if (timber.length === 0 && joints.length > 0)
    return find("wood-moisture/no-timber", "unproven", { estimate }, beside);
  const late = timber.filter((id) => !settled(lookUp(index.record.lots, id), day));
  if (late.length === 0) return find("wood-moisture/logged", "caution", { estimate }, beside);
  const alsoOn = [...beside.alsoOn, ...late.map(lotRef)];
  return find("wood-moisture/came-late", "unproven", { estimate, lots: late }, { ...beside, alsoOn });
}

/** By days: at what hour a lot came is not in the record. */
const settled = ({ received }: Lot, glued: Day): boolean => {
  const [came, used] = [dayNumber(received), dayNumber(glued)];
  return came !== undefined && used !== undefined && (used - came) * DAY_SECONDS >= SETTLING;
};
