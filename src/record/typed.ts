/** All files, found without problems, as one record. */
import type { Filed, Files } from "./filed.ts";
import type { FileIndex } from "./file-index.ts";
import { Zone } from "../facts/time/zone.ts";
import type { Aircraft, Amendment, Day, Entry, Record } from "../facts/types.ts";
import { adhesiveOf } from "../facts/build/adhesive.ts";
import { aircraftOf } from "../facts/build/aircraft.ts";
import { assemblyOf } from "../facts/build/assembly.ts";
import { finishOf } from "../facts/build/finish.ts";
import { lotOf } from "../facts/build/lot.ts";
import { procedureOf } from "../facts/build/procedure.ts";
import { trialOf } from "../facts/build/trial.ts";
import { entryOf } from "../facts/entry/entry.ts";
import { isFault } from "../facts/reading.ts";
import type { Accepted, Later, SoundFile } from "../facts/typing.ts";

export function recordOf(
  files: Files,
  tables: Pick<Record, "climate" | "earlier">,
  amendments: ReadonlyMap<string, readonly Amendment[]>,
  fileIndex: FileIndex,
  day: Day | undefined,
): Record {
  const [aircraftFile] = sound(files.aircraft, fileIndex);
  if (!aircraftFile) throw new Error("a record without an aircraft is never put together");
  const aircraft = aircraftOf(aircraftFile);
  const entries = entriesOf(files, amendments, fileIndex, aircraft);
  return {
    aircraft,
    assemblies: byId(sound(files.assembly, fileIndex).map(assemblyOf)),
    adhesives: byId(sound(files.adhesive, fileIndex).map(adhesiveOf)),
    finishes: byId(sound(files.finish, fileIndex).map(finishOf)),
    procedures: byId(sound(files.procedure, fileIndex).map(procedureOf)),
    lots: byId(sound(files.lot, fileIndex).map(lotOf)),
    trials: byId(sound(files.trial, fileIndex).map(trialOf)),
    entries,
    ...tables,
    day: day ?? entries.at(-1)?.day ?? aircraft.start,
  };
}

function sound<S>(files: readonly Filed<S>[], fileIndex: FileIndex): SoundFile<S>[] {
  return files.map(({ spec, file, id, body, at, usualFrom }) => {
    if (spec === undefined) throw new Error(`${file} has problems and cannot be trusted`);
    const path = (typed: string): string => {
      const found = fileIndex.find(file, typed);
      return isFault(found) ? typed : found.value;
    };
    return { spec, file, id, body, at, usualFrom, path };
  });
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Map<string, T> {
  return new Map(things.map((thing) => [thing.id, thing]));
}

function entriesOf(
  files: Files,
  amendments: ReadonlyMap<string, readonly Amendment[]>,
  fileIndex: FileIndex,
  { timeZone, people }: Aircraft,
): Entry[] {
  const zone = Zone.of(timeZone);
  const specs = sound(files.entry, fileIndex);
  const visitors = new Set([...people.values()].filter(({ role }) => role === "visitor").map(({ id }) => id));
  const later = { ...laterOf(specs), amendments, visitors };
  return specs
    .map((filed) => entryOf(filed, zone, later))
    .sort((a, b) => (`${a.day} ${a.id}` < `${b.day} ${b.id}` ? -1 : 1));
}

function laterOf(
  entries: readonly SoundFile<NonNullable<Files["entry"][number]["spec"]>>[],
): Omit<Later, "amendments" | "visitors"> {
  const accepted = new Map<string, Accepted>();
  const closedIn = new Map<string, string>();
  for (const { spec, id } of entries) {
    for (const { departure, ...acceptance } of spec.accepts ?? [])
      accepted.set(departure, { ...acceptance, entry: id });
    for (const item of spec.open_items?.close ?? []) closedIn.set(item, id);
  }
  return { accepted, closedIn };
}
