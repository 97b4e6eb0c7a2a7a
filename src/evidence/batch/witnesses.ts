/** What was noted of the shop at gluing and what its logger read then: of two witnesses the worse counts. */
import { defined } from "../../defined.ts";
import { isEstimate } from "../../facts/quantity/ends.ts";
import { spanOf, type TrackSpan } from "../../reckoning/climate/span-of-track.ts";
import type { Noted } from "../../facts/types.ts";
import type { Shop, Warm } from "../cure/shop.ts";
import type { Batch } from "../../facts/types.ts";

/** Between mixing and closing, or the minute around the one that is noted, s. */
const MOMENT = 60;

export function gluedAt({ mixed, closed }: Batch): { readonly from: number; readonly to: number } | undefined {
  const from = mixed?.epoch ?? closed?.epoch ?? Number.NaN;
  const to = closed?.epoch ?? from;
  if (!(from <= to)) return undefined;
  return { from: from - MOMENT / 2, to: to + MOMENT / 2 };
}

/** The logger's readings while it was glued, be that of a part of the time alone: what of them tells against it counts, and no more. */
export interface Read {
  readonly warmth?: Warm;
  readonly humidity?: TrackSpan;
}

export function readAt(shop: Shop, batch: Batch): Read {
  const at = gluedAt(batch);
  if (at === undefined) return {};
  return defined({ warmth: shop.warmth(at.from, at.to), humidity: spanOf(shop.tracks.humidity, at.from, at.to) });
}

/** The same where they bracket that time. */
export const wholly = <T extends { readonly whole: boolean }>(read: T | undefined): T | undefined =>
  read?.whole === true ? read : undefined;

/** The warmest that it read, °C: of a part of the time it stands beside what was read and noted, and never in its place. */
export function warmestOf({ warmth }: Read, { temperature }: Batch): number | undefined {
  const isNoted = temperature !== undefined && !isEstimate(temperature);
  return warmth?.whole === true || isNoted ? warmth?.greatest : undefined;
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
