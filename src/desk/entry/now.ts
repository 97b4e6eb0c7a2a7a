/** What the record has on a day that an entry written then may want: told in comments, and stated as a fact nowhere. */
import { defined } from "../../defined.ts";
import type { Shown } from "../../editions/shown.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import { wholly } from "../../evidence/batch/witnesses.ts";
import { Shop } from "../../evidence/cure/shop.ts";
import { reckonStock } from "../../evidence/lots/stock.ts";
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import type { Batch, Lot, Record } from "../../facts/types.ts";
import { atMost } from "../../reckoning/compare.ts";
import { percent } from "../../words/numbers.ts";
import { temperatureText } from "../../words/quantities.ts";
import { dueOf } from "../due/due.ts";
import { nextBatches, nextId } from "./next-id.ts";

export interface Now {
  /** The batch that was mixed last. */
  readonly lastBatch?: Batch;
  /** Lots of adhesive that are not recalled, past their last day or used up. */
  readonly lots: readonly Lot[];
  /** Pieces that may be broken. */
  readonly pieces: readonly string[];
  /** Joints that no batch has gone into. */
  readonly joints: readonly string[];
  readonly nextBatch: string;
  readonly nextItem: string;
  readonly nextDeparture: string;
  /** What the logger read around this moment. */
  readonly climate?: string;
}

/** `moment` in seconds since 1970-01-01T00:00Z, where climate is asked for. */
export function nowOf(shown: Shown, moment: number | undefined): Now {
  const { record, evidence } = shown;
  const batches = record.entries.flatMap((entry) => entry.batches);
  return defined({
    lastBatch: batches.at(-1),
    lots: reckonStock(record, evidence)
      .lots.filter(({ lot, recalled, life, left }) => {
        const isGone = left !== undefined && atMost(left, 0);
        return isLotPart(lot.material) && !recalled && life !== "past" && !isGone;
      })
      .map(({ lot }) => lot),
    pieces: dueOf(shown).now.flatMap(({ pieces }) => pieces),
    joints: [...evidence.joints.values()].filter(({ state }) => state === "not glued").map(({ joint }) => joint.id),
    nextBatch: nextBatches(batches.map(({ id }) => id))[""],
    nextItem: nextId([...evidence.openItems.keys()], "O-01"),
    nextDeparture: nextId([...evidence.departures.keys()], "D-01"),
    climate: moment === undefined ? undefined : climateAt(record, moment),
  });
}

/** Only where readings stand on both sides of the moment, and no gap between them. */
function climateAt({ climate, aircraft }: Record, moment: number): string | undefined {
  const shop = new Shop(climate, []);
  // Of an instant nothing is known: it is no stretch of time.
  const [from, to] = [moment, moment + 1];
  const warmth = shop.warmth(from, to);
  if (warmth?.whole !== true) return undefined;
  const humidity = wholly(spanOf(shop.tracks.humidity, from, to));
  const damp = humidity && `, ${between(percent(humidity.least), percent(humidity.greatest))}`;
  const warm = between(temperatureText(warmth.least, aircraft.units), temperatureText(warmth.greatest, aircraft.units));
  return `${warm}${damp ?? ""}`;
}

const between = (least: string, greatest: string): string => (least === greatest ? least : `${least} to ${greatest}`);
