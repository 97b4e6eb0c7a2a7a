/** What was noted of the shop at gluing and what its logger read then: of two witnesses the worse counts. */
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

/** The logger's readings while it was glued, where they bracket that time. */
export function loggedWarmth(shop: Shop, batch: Batch): Warm | undefined {
  const at = gluedAt(batch);
  const warm = at && shop.warmth(at.from, at.to);
  return warm?.whole === true ? warm : undefined;
}

export function loggedHumidity(shop: Shop, batch: Batch) {
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
