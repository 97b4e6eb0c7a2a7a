/** What the shop's logger says of how the lots of a batch were kept, and of how warm the glue has been since it cured. */
import { atLeast, atMost } from "../../reckoning/compare.ts";
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";
import type { Lot } from "../../facts/types.ts";
import { dayNumber } from "../../reckoning/time/calendar.ts";
import { closedAtLatest } from "../cure/cure.ts";
import { sheetOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { type BatchCase, componentLots, lotRef } from "./case.ts";

/** A caution and no more: where a lot stood is not in the record, and the logger hangs where it hangs. */
export function lotStorage(c: BatchCase): Finding[] {
  const { adhesive, batch } = c;
  const asked = adhesive.storage;
  const lots = componentLots(c).flatMap(({ lot }) => lot ?? []);
  if (asked === undefined || batch.joints.length === 0) return [];
  const limit: Limit = { code: "limit/storage", values: { asked: asked.typed }, from: sheetOf(adhesive) };
  return lots.map((lot) => storageOf(c, lot, limit));
}

function storageOf({ index, adhesive, batch, find }: BatchCase, lot: Lot, limit: Limit): Finding {
  const { least, most } = adhesive.storage ?? {};
  const to = batch.mixed?.epoch ?? closedAtLatest(index, batch);
  // By no zone: at what hour of that day it came is not in the record either.
  const from = (dayNumber(lot.received) ?? Number.POSITIVE_INFINITY) * DAY_SECONDS;
  const known = index.shop.warmth(from, to);
  if (!known) return find("lot-storage/not-known", "caution", { lot: lot.id }, { limit, alsoOn: [lotRef(lot.id)] });
  const alsoOn = [lotRef(lot.id), ...index.shop.restsOn(from, to)];
  const values = { lot: lot.id, least: known.least, greatest: known.greatest };
  const outside = (where: "below" | "above", found: number, asked: number): Finding =>
    find("lot-storage/outside", "caution", { lot: lot.id, where, found, limit: asked }, { limit, alsoOn });
  if (least !== undefined && !atLeast(known.least, least)) return outside("below", known.least, least);
  if (most !== undefined && !atMost(known.greatest, most)) return outside("above", known.greatest, most);
  return known.whole
    ? find("lot-storage/kept", "meets", values, { limit, alsoOn })
    : find("lot-storage/kept-in-part", "caution", values, { limit, alsoOn });
}

/** Heat after the cure, up to the day before the record's last. A caution: the part may have stood elsewhere. */
export function serviceHeat(c: BatchCase): Finding[] {
  const { index, adhesive, batch, find } = c;
  const asked = adhesive.service;
  if (asked === undefined || batch.joints.length === 0) return [];
  const limit: Limit = { code: "limit/service", values: { asked: asked.typed }, from: sheetOf(adhesive) };
  const from = closedAtLatest(index, batch);
  const to = index.record.entries.at(-1)?.dayStart ?? from;
  const known = index.shop.warmth(from, to);
  if (!known) return [];
  const beside = { limit, alsoOn: index.shop.restsOn(from, to) };
  const values = { greatest: known.greatest, asked: asked.typed };
  if (!atMost(known.greatest, asked.value))
    return [find("service-heat/above", "caution", { ...values, limit: asked.value }, beside)];
  return [
    find(
      known.whole ? "service-heat/below" : "service-heat/below-in-part",
      known.whole ? "meets" : "caution",
      values,
      beside,
    ),
  ];
}
