import type { Place } from "../../problem.ts";
import type { Entry, FilePath, Record } from "../../facts/types.ts";

/** `picture`: shown on a page. `document`: offered for download. `clip`: played on a page. */
type Use = "picture" | "document" | "clip";

/** A file of the record that a site carries, and where the record names it first. */
export interface Wanted {
  readonly file: FilePath;
  readonly place: Place;
  readonly use: Use;
}

/**
 * Every file that a record (whole, or as an edition shows it) names, each once for each use, in the order of the
 * record.
 */
export function wantedFiles(record: Record): Wanted[] {
  const once = new Map<string, Wanted>();
  for (const wanted of named(record)) {
    const key = `${wanted.use} ${wanted.file}`;
    if (!once.has(key)) once.set(key, wanted);
  }
  return [...once.values()];
}

function* named(record: Record): Generator<Wanted> {
  const { aircraft } = record;
  if (aircraft.photo !== undefined) yield { file: aircraft.photo.file, place: aircraft.photo.place, use: "picture" };
  for (const { drawing, place } of record.assemblies.values())
    if (drawing !== undefined) yield { file: drawing.file, place, use: "picture" };
  for (const { sheetFile, place } of record.adhesives.values())
    if (sheetFile !== undefined) yield { file: sheetFile, place, use: "document" };
  for (const { sheetFile, place } of record.finishes.values())
    if (sheetFile !== undefined) yield { file: sheetFile, place, use: "document" };
  for (const { certificate, place } of record.lots.values())
    if (certificate !== undefined) yield { file: certificate, place, use: "document" };
  for (const entry of record.entries) yield* namedIn(entry);
}

function* namedIn(entry: Entry): Generator<Wanted> {
  for (const { file, place } of entry.photos) yield { file, place, use: "picture" };
  for (const { file, poster, place } of entry.clips) {
    yield { file, place, use: "clip" };
    yield { file: poster, place, use: "picture" };
  }
  for (const { photo, place } of entry.tests) if (photo !== undefined) yield { file: photo, place, use: "picture" };
  for (const { file, place } of entry.attachments) yield { file, place, use: "document" };
  for (const { scan, place } of entry.inspections) if (scan !== undefined) yield { file: scan, place, use: "document" };
}
