/** What was noted of the shop at gluing and what its logger read then: of two witnesses the worse counts. */
import { isEstimate } from "../../facts/quantity/ends.ts";
import { spanOf, type TrackSpan } from "../../reckoning/climate/span-of-track.ts";
import type { Noted } from "../../facts/types.ts";
import type { Shop, Warm } from "../cure/shop.ts";
import type { Batch } from "../../facts/types.ts";

/** Between mixing and closing, or the minute around the one that is noted, s. */
const MOMENT = 60;

export function gluedAt({ mixed, closed }: Batch): { readonly from: number; readonly to: number } | undefined {
  const from = mixed?.epoch ?? closed?.epoch;
  const to = closed?.epoch ?? mixed?.epoch;
  if (from === undefined || to === undefined || to < from) return undefined;
  return { from: from - MOMENT / 2, to: to + MOMENT / 2 };
}

/** The logger's readings while it was glued, be that of a part of the time alone: what of them tells against it counts, and no more. */
export function warmthRead(shop: Shop, batch: Batch): Warm | undefined {
  const at = gluedAt(batch);
  return at && shop.warmth(at.from, at.to);
}

/** The same where they bracket that time. */
export function loggedWarmth(shop: Shop, batch: Batch): Warm | undefined {
  const warm = warmthRead(shop, batch);
  return warm?.whole === true ? warm : undefined;
}

/** The warmest that it read, °C: of a part of the time it stands beside what was read and noted, and never in its place. */
export function warmestRead(shop: Shop, batch: Batch): number | undefined {
  const read = warmthRead(shop, batch);
  const isNoted = batch.temperature !== undefined && !isEstimate(batch.temperature);
  return read?.whole === true || isNoted ? read?.greatest : undefined;
}

export function humidityRead(shop: Shop, batch: Batch): TrackSpan | undefined {
  const at = gluedAt(batch);
  return at && spanOf(shop.tracks.humidity, at.from, at.to);
}

export function loggedHumidity(shop: Shop, batch: Batch): ReturnType<Shop["humidity"]> {
  const at = gluedAt(batch);
  return at && shop.humidity(at.from, at.to);
}

/** Of what was noted of temperature, each with what it is of. */
export function noted({ temperature, surface, wood }: Batch) {
  const all: readonly (readonly [of: "shop" | "surfaces" | "wood", found: Noted | undefined])[] = [
    ["shop", temperature],
    ["surfaces", surface],
    ["wood", wood],
  ];
  return all.flatMap(([of, found]) => (found ? [{ of, found }] : []));
}
