/** What the climate of the two weeks before made of the wood, by the logger. */
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import type { Batch } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import { wholly } from "./witnesses.ts";

/** Two weeks, s: this program's measure of how long thin stock takes to follow its climate; common practice, no source. */
export const SETTLING = 14 * DAY_SECONDS;

/** The earliest that it can have been mixed: as noted, else the start of its day. */
export const gluedFrom = (index: RecordIndex, batch: Batch): number =>
  batch.mixed?.epoch ?? lookUp(index.entries, batch.entry).dayStart;

/** Time-weighted mean; undefined where readings are missing within for longer than the log allows. */
export function loggedMoisture(index: RecordIndex, batch: Batch): number | undefined {
  const until = gluedFrom(index, batch);
  return wholly(spanOf(index.shop.tracks.moisture, until - SETTLING, until))?.mean;
}

/** The same of what is logged of them, where that is not all: a gap never makes the rest drier. */
export function partlyLogged(index: RecordIndex, batch: Batch): number | undefined {
  const until = gluedFrom(index, batch);
  return spanOf(index.shop.tracks.moisture, until - SETTLING, until)?.mean;
}
