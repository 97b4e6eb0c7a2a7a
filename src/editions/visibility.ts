/** What one edition may see of a record: the sets and questions that `editionOf` filters by. */
import type {
  Audience,
  Departure,
  Entry,
  FilePath,
  OpenItem,
  Person,
  Piece,
  Record,
  Ref,
  Withheld,
} from "../facts/types.ts";
import { sees as isSeen } from "../facts/values.ts";
import { isShown, UNNAMED, type Visibility } from "../facts/visibility.ts";
import { hiddenTargets, redactedBody } from "./redacted-prose.ts";
import type { Edition } from "./shown.ts";

/** The widest edition that shows what is withheld by default. */
export const firstShowing = (kind: Withheld): Audience => (kind === "costs" ? "archive" : "inspector");

export function visibilityOf(record: Record, edition: Edition): Visibility {
  const sees = (audience: Audience): boolean => isSeen(edition, audience);
  const may = (kind: Withheld): boolean => record.aircraft.publicShows.includes(kind) || sees(firstShowing(kind));
  const entries = record.entries.filter((entry) => sees(entry.audience));
  const trials = idsOf([...record.trials.values()].filter((trial) => sees(trial.audience)));
  const pieces = idsOf(
    entries
      .flatMap((entry) => entry.batches)
      .flatMap((batch) => batch.pieces)
      .filter((piece) => isOf(piece, trials)),
  );
  const shown = idsOf(entries);
  const hiddenFiles = hiddenFilesOf(record, sees, may);
  const visibility: Omit<Visibility, "prose"> = {
    edition,
    sees,
    may,
    trials,
    pieces,
    entries: shown,
    batches: idsOf(entries.flatMap((entry) => entry.batches)),
    lots: idsOf([...record.lots.values()].filter((lot) => sees(lot.audience))),
    logs: idsOf(record.climate.filter((log) => sees(log.audience))),
    earlier: idsOf(record.earlier.filter((table) => sees(table.audience))),
    departures: idsOf(marked(entries, (entry) => entry.departures, sees)),
    openItems: idsOf(marked(entries, (entry) => entry.raised, sees)),
    hiddenFiles,
    blindPieces: new Set(
      record.entries.filter((entry) => !shown.has(entry.id)).flatMap((entry) => entry.tests.map((test) => test.piece)),
    ),
    people: peopleOf([...record.aircraft.people.values()], sees, may("names")),
  };
  const hides = hiddenTargets(record, visibility);
  return { ...visibility, prose: (body, folder) => redactedBody(body, visibility, (target) => hides(folder, target)) };
}

/**
 * Whether all that is told of a thing comes from what the edition shows. Stricter than being shown:
 * a piece may be shown while its test is not, a person while the name is not.
 */
export function tellsAll(visibility: Visibility, ref: Ref, record: Record): boolean {
  if (ref.kind === "person")
    return visibility.may("names") && visibility.sees(record.aircraft.people.get(ref.id)?.audience ?? "archive");
  return isShown(ref, visibility) && !(ref.kind === "piece" && visibility.blindPieces.has(ref.id));
}

function idsOf(things: readonly { readonly id: string }[]): ReadonlySet<string> {
  return new Set(things.map((thing) => thing.id));
}

function isOf(piece: Piece, trials: ReadonlySet<string>): boolean {
  return piece.trial === undefined || trials.has(piece.trial);
}

function marked<T extends Departure | OpenItem>(
  entries: readonly Entry[],
  of: (entry: Entry) => readonly T[],
  sees: Visibility["sees"],
): T[] {
  return entries.flatMap((entry) => of(entry).filter((thing) => sees(thing.audience)));
}

/** Ids are as telling as names (`id: rosa-lima`), so where names are withheld numbers stand for them. */
function peopleOf(people: readonly Person[], sees: Visibility["sees"], names: boolean): ReadonlyMap<string, string> {
  let count = 0;
  return new Map(
    people.map((person) => {
      if (!sees(person.audience)) return [person.id, UNNAMED];
      count += 1;
      return [person.id, names ? person.id : `person-${count}`];
    }),
  );
}

/** The narrowest mark that a file bears anywhere holds everywhere; and a file that only hidden things name is hidden with them. */
function hiddenFilesOf(record: Record, sees: Visibility["sees"], may: Visibility["may"]): ReadonlySet<FilePath> {
  const hidden = new Set<FilePath>();
  const shown = new Set<FilePath>();
  const named = new Set<FilePath>();
  const note = (file: FilePath | undefined, audience: Audience, within: boolean): void => {
    if (file === undefined) return;
    named.add(file);
    if (!sees(audience)) hidden.add(file);
    else if (within) shown.add(file);
  };
  const { photo } = record.aircraft;
  if (photo !== undefined) note(photo.file, photo.audience, true);
  for (const assembly of record.assemblies.values()) note(assembly.drawing?.file, "public", true);
  for (const adhesive of record.adhesives.values()) note(adhesive.sheetFile, "public", may("attachments"));
  for (const finish of record.finishes.values()) note(finish.sheetFile, "public", may("attachments"));
  for (const lot of record.lots.values()) note(lot.certificate, lot.audience, may("certificates"));
  for (const entry of record.entries) {
    const within = sees(entry.audience);
    for (const each of entry.photos) note(each.file, each.audience, within);
    for (const each of entry.attachments) note(each.file, each.audience, within && may("attachments"));
    for (const each of entry.inspections) note(each.scan, entry.audience, within && may("attachments"));
    for (const each of entry.tests) note(each.photo, "public", within);
    for (const each of entry.clips) note(each.file, each.audience, within);
  }
  // A poster is a frame of its clip: it goes with a clip that is hidden, and no clip is shown whose poster may not be.
  const clips = record.entries.flatMap((entry) =>
    entry.clips.map((clip) => ({ ...clip, within: sees(entry.audience) })),
  );
  for (const clip of clips) note(clip.poster, clip.audience, clip.within && !hidden.has(clip.file));
  for (const file of named) if (!shown.has(file)) hidden.add(file);
  for (const { file, poster } of clips) if (hidden.has(poster)) hidden.add(file);
  return hidden;
}
