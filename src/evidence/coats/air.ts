/** Whether the air was warm and dry enough when a coat was put on: of a note and the logger the worse counts. */
import { saidEnds } from "../../facts/quantity/ends.ts";
import { against, standing } from "../../reckoning/compare.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import type { Range } from "../../facts/types.ts";
import type { AirOf } from "../codes/coats.ts";
import { isApart } from "../batch/climate.ts";
import type { Shop } from "../cure/shop.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Limit } from "../types/source.ts";
import { type CoatCase, putOn } from "./case.ts";

/** The minute around the one that is noted, s. */
const MOMENT = 60;

interface Ends {
  readonly least: number;
  readonly greatest: number;
}

export const airRule = (c: CoatCase): Finding[] => [...airOf(c, "temperature"), ...airOf(c, "humidity")];

function airOf(c: CoatCase, what: AirOf): Finding[] {
  const limits = c.finish[what];
  if (!limits) return [c.find("coat-air/no-limits", "caution", { what })];
  const limit: Limit = {
    code: what === "temperature" ? "limit/shop" : "limit/humidity",
    values: { asked: limits.typed },
    from: sheetOf(c.finish),
  };
  const noted = c.coat[what];
  const read = readOf(c, what);
  const logged = read?.whole === true ? read : undefined;
  const beside = { limit, alsoOn: read?.alsoOn ?? [] };
  const told =
    noted && logged && isApart(saidEnds(noted), logged, what)
      ? [c.find("coat-air/witnesses", "caution", { what, found: noted.typed, ...endsOf(logged) }, beside)]
      : [];
  const stands = noted && standing(noted, limits);
  if (noted && (stands === "below" || stands === "above"))
    return [
      c.find("coat-air/outside", "rejects", { what, found: noted.typed, asked: limits.typed }, { limit }),
      ...told,
    ];
  if (read && [read.least, read.greatest].some((value) => against(value, limits) !== "within"))
    return [
      c.find("coat-air/logged-outside", "rejects", { what, ...endsOf(read), asked: limits.typed }, beside),
      ...told,
    ];
  const day = noted && c.coat.at === undefined ? dayOf(c, what, limits) : undefined;
  if (noted && day) {
    const values = { what, found: noted.typed, ...endsOf(day), asked: limits.typed };
    return [c.find("coat-air/day-outside", "unproven", values, { limit, alsoOn: day.alsoOn })];
  }
  if (noted && stands === "within")
    return [c.find("coat-air/within", "meets", { what, found: noted.typed }, { limit }), ...told];
  if (logged) return [c.find("coat-air/logged", "meets", { what, ...endsOf(logged) }, beside), ...told];
  if (noted) return [c.find("coat-air/estimate", "unproven", { what, found: noted.typed }, { limit })];
  return [c.find("coat-air/not-noted", "unproven", { what }, { limit })];
}

const endsOf = ({ least, greatest }: Ends): Ends => ({ least, greatest });

/** What the logger read then, where a time is noted; where its readings do not bracket that, what of them tells against it counts, and no more. */
function readOf({ index, coat }: CoatCase, what: AirOf) {
  if (coat.at === undefined) return undefined;
  const { from, to } = putOn(index, coat);
  const [start, end] = [from - MOMENT / 2, to + MOMENT / 2];
  const { shop } = index;
  const found = readBetween(shop, what, start, end);
  return found && { ...endsOf(found), whole: found.whole, alsoOn: shop.restsOn(start, end) };
}

const readBetween = (shop: Shop, what: AirOf, from: number, to: number) =>
  what === "humidity" ? spanOf(shop.tracks.humidity, from, to) : shop.warmth(from, to);

/** What the logger read on its day, where no time is noted and that goes beyond the limits: a note of no time cannot be held against it. */
function dayOf({ index, coat }: CoatCase, what: AirOf, limits: Range) {
  const { from, to } = putOn(index, coat);
  const { shop } = index;
  const found = readBetween(shop, what, from, to);
  const isWithin = !found || [found.least, found.greatest].every((value) => against(value, limits) === "within");
  return isWithin ? undefined : { ...endsOf(found), alsoOn: shop.restsOn(from, to) };
}
