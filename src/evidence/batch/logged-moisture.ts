/** What the climate of the two weeks before made of the wood, by the logger. */
import { spanOf } from "../../reckoning/span-of-track.ts";
import type { Batch } from "../../record/types.ts";
import { must, type Book } from "../book.ts";

/** Two weeks, s: this program's measure of how long thin stock takes to follow its climate; common practice, no source. */
export const SETTLING = 14 * 86_400;

/** The earliest that it can have been mixed: as noted, else the start of its day. */
export const gluedFrom = (book: Book, batch: Batch): number =>
  batch.mixed?.epoch ?? must(book.entries, batch.entry, "entry").dayStart;

/** Time-weighted mean; undefined where readings are missing within for longer than the log allows. */
export function loggedMoisture(book: Book, batch: Batch): number | undefined {
  const until = gluedFrom(book, batch);
  const span = spanOf(book.shop.tracks.moisture, until - SETTLING, until);
  return span?.whole === true ? span.mean : undefined;
}
