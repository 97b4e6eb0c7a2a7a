/** A record with only what an edition shows in it. */
import type {
  Adhesive,
  Aircraft,
  Assembly,
  Batch,
  Component,
  Departure,
  Entry,
  Inspection,
  Lot,
  Measurement,
  OpenItem,
  Person,
  Piece,
  PieceTest,
  Procedure,
  Record,
  Trial,
} from "../facts/types.ts";
import { unchanged } from "./unchanged.ts";
import { UNNAMED, WITHHELD, type Visibility } from "./visibility.ts";
import { redactedAmendments } from "./redacted-amendments.ts";
import { resolved, redactedBody } from "./redacted-prose.ts";

export interface RedactedRecord {
  readonly record: Record;
  /** The same filters for things that evidence holds outside entries. */
  readonly facts: Facts;
}

type Facts = ReturnType<typeof factsOf>;

export function redactedRecord(whole: Record, visibility: Visibility): RedactedRecord {
  const facts = factsOf(visibility);
  const hides = hiddenTargets(whole, visibility);
  const bodied = <T extends { readonly body: Entry["body"] }>(thing: T, folder: string): T =>
    unchanged(thing, { ...thing, body: redactedBody(thing.body, visibility, (target) => hides(folder, target)) });
  const entries = whole.entries
    .filter((entry) => visibility.entries.has(entry.id))
    .map((entry) => bodied(redactedEntry(entry, visibility, facts), folderOf(entry.file)));
  return {
    facts,
    record: {
      aircraft: bodied(redactedAircraft(whole.aircraft, visibility), ""),
      assemblies: each(whole.assemblies, (assembly: Assembly) => bodied(assembly, "assemblies")),
      adhesives: each(whole.adhesives, (adhesive: Adhesive) =>
        bodied(without(adhesive, visibility.may("attachments") ? [] : ["sheetFile"]), "adhesives"),
      ),
      procedures: each(whole.procedures, (procedure: Procedure) => bodied(procedure, "procedures")),
      lots: each(only(whole.lots, visibility.lots), (lot: Lot) => bodied(facts.lot(lot), "lots")),
      trials: each(only(whole.trials, visibility.trials), (trial: Trial) => bodied(trial, "trials")),
      entries,
      climate: whole.climate.filter((log) => visibility.logs.has(log.id)).map((log) => bodied(log, "climate")),
      day: dayOf(whole, entries),
    },
  };
}

function factsOf(visibility: Visibility) {
  const person = (id: string): string => visibility.people.get(id) ?? UNNAMED;
  const lotId = (id: string | undefined): { lot?: string } =>
    id !== undefined && visibility.lots.has(id) ? { lot: id } : {};
  const component = (part: Component): Component => unchanged(part, { ...without(part, ["lot"]), ...lotId(part.lot) });
  const piece = (whole: Piece): Piece => unchanged(whole, { ...without(whole, ["lot"]), ...lotId(whole.lot) });
  return {
    person,
    piece,
    lot: (whole: Lot): Lot =>
      without(whole, [
        ...(visibility.may("suppliers") ? [] : ["supplier" as const]),
        ...(visibility.may("certificates") ? [] : ["certificate" as const]),
      ]),
    batch: (whole: Batch): Batch =>
      unchanged(whole, {
        ...whole,
        ...(whole.resin === undefined ? {} : { resin: component(whole.resin) }),
        ...(whole.hardener === undefined ? {} : { hardener: component(whole.hardener) }),
        timber: whole.timber.filter((id) => visibility.lots.has(id)),
        pieces: whole.pieces.filter((each) => visibility.pieces.has(each.id)).map(piece),
      }),
    test: (whole: PieceTest): PieceTest =>
      unchanged(whole, {
        ...without(whole, whole.photo !== undefined && visibility.hiddenFiles.has(whole.photo) ? ["photo"] : []),
        ...(whole.witness === undefined ? {} : { witness: person(whole.witness) }),
      }),
    departure: (whole: Departure): Departure =>
      unchanged(whole, {
        ...whole,
        ...(whole.acceptedBy === undefined ? {} : { acceptedBy: person(whole.acceptedBy) }),
        ...(whole.acceptedIn === undefined
          ? {}
          : { acceptedIn: visibility.entries.has(whole.acceptedIn) ? whole.acceptedIn : WITHHELD }),
      }),
    openItem: (whole: OpenItem): OpenItem =>
      unchanged(whole, {
        ...whole,
        ...(whole.closedIn === undefined
          ? {}
          : { closedIn: visibility.entries.has(whole.closedIn) ? whole.closedIn : WITHHELD }),
      }),
    measurement: (whole: Measurement): Measurement =>
      unchanged(whole, {
        ...whole,
        ...(whole.departure === undefined
          ? {}
          : { departure: visibility.departures.has(whole.departure) ? whole.departure : WITHHELD }),
      }),
    inspection: (whole: Inspection): Inspection =>
      unchanged(whole, { ...without(whole, visibility.may("attachments") ? [] : ["scan"]), by: person(whole.by) }),
  };
}

function redactedEntry(entry: Entry, visibility: Visibility, facts: Facts): Entry {
  return unchanged(entry, {
    ...entry,
    hours: entry.hours.map((line) => unchanged(line, { ...line, who: facts.person(line.who) })),
    cuts: entry.cuts.filter(({ lot }) => visibility.lots.has(lot)),
    batches: entry.batches.map(facts.batch),
    tests: entry.tests.filter((test) => visibility.pieces.has(test.piece)).map(facts.test),
    measurements: entry.measurements.map(facts.measurement),
    departures: entry.departures.filter((each) => visibility.departures.has(each.id)).map(facts.departure),
    raised: entry.raised.filter((each) => visibility.openItems.has(each.id)).map(facts.openItem),
    closed: entry.closed.filter((id) => visibility.openItems.has(id)),
    photos: entry.photos.filter((photo) => !visibility.hiddenFiles.has(photo.file)),
    clips: entry.clips.filter((clip) => !visibility.hiddenFiles.has(clip.file)),
    attachments: visibility.may("attachments")
      ? entry.attachments.filter((each) => !visibility.hiddenFiles.has(each.file))
      : [],
    recalls: entry.recalls.filter((each) => visibility.lots.has(each.lot)),
    rejections: entry.rejections.filter((each) => visibility.batches.has(each.batch)),
    inspections: entry.inspections.map(facts.inspection),
    amendments: redactedAmendments(entry.amendments, visibility, facts.person),
  });
}

function redactedAircraft(aircraft: Aircraft, visibility: Visibility): Aircraft {
  const people = [...aircraft.people.values()]
    .filter((person) => visibility.sees(person.audience))
    .map((person) => redactedPerson(person, visibility));
  const hidden = aircraft.photo !== undefined && visibility.hiddenFiles.has(aircraft.photo.file);
  return {
    ...without(aircraft, hidden ? ["photo"] : []),
    people: new Map(people.map((person) => [person.id, person])),
  };
}

/** An authority's number tells who someone is as well as a name does. */
function redactedPerson(person: Person, visibility: Visibility): Person {
  if (visibility.may("names")) return person;
  return {
    ...without(person, ["authority"]),
    id: visibility.people.get(person.id) ?? UNNAMED,
    name: person.publicName,
  };
}

/** The date of a record that is its last entry's would tell of that entry, were it hidden. */
function dayOf(whole: Record, shown: readonly Entry[]): string {
  if (whole.entries.at(-1)?.day !== whole.day) return whole.day;
  return shown.at(-1)?.day ?? whole.aircraft.start;
}

/** Whether a link's target names something that the edition hides: an entry's file, an id, a photograph or an attachment. */
function hiddenTargets(whole: Record, visibility: Visibility): (folder: string, target: string) => boolean {
  const ids = new Set<string>();
  const files = new Set<string>(visibility.hiddenFiles);
  const gone = (shown: ReadonlySet<string>, all: Iterable<{ readonly id: string }>): void => {
    for (const { id } of all) if (!shown.has(id)) ids.add(id);
  };
  for (const entry of whole.entries) {
    if (!visibility.entries.has(entry.id)) files.add(entry.file).add(entry.id).add(`${entry.id}.md`);
    gone(visibility.batches, entry.batches);
    gone(
      visibility.pieces,
      entry.batches.flatMap((batch) => batch.pieces),
    );
    gone(visibility.departures, entry.departures);
    gone(visibility.openItems, entry.raised);
  }
  gone(visibility.lots, whole.lots.values());
  gone(visibility.trials, whole.trials.values());
  gone(visibility.logs, whole.climate);
  return (folder, target) =>
    ids.has(resolved("", target)) || files.has(resolved("", target)) || files.has(resolved(folder, target));
}

function each<T>(map: ReadonlyMap<string, T>, make: (thing: T) => T): ReadonlyMap<string, T> {
  return new Map([...map].map(([id, thing]) => [id, make(thing)]));
}

function only<T>(map: ReadonlyMap<string, T>, ids: ReadonlySet<string>): ReadonlyMap<string, T> {
  return new Map([...map].filter(([id]) => ids.has(id)));
}

function folderOf(file: string): string {
  return file.slice(0, Math.max(0, file.lastIndexOf("/")));
}

function without<T extends object, K extends keyof T>(thing: T, keys: readonly K[]): T {
  if (keys.length === 0) return thing;
  const rest = { ...thing };
  for (const key of keys) delete rest[key];
  return rest;
}
