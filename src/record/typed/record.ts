/** All files, found without problems, as one record. */
import type { Filed, Files } from "../filed.ts";
import type { FileIndex } from "../file-index.ts";
import { Zone } from "../../facts/time/zone.ts";
import type { Amendment, ClimateLog, Day, Entry, Record } from "../../facts/types.ts";
import { EntryTyper, type Later } from "./entry.ts";
import { adhesiveOf, aircraftOf, assemblyOf, lotOf, procedureOf, type Sound, trialOf } from "./settings.ts";

export function recordOf(
  files: Files,
  climate: readonly ClimateLog[],
  amendments: ReadonlyMap<string, readonly Amendment[]>,
  fileIndex: FileIndex,
  day: Day | undefined,
): Record {
  const [aircraftFile] = sound(files.aircraft);
  if (!aircraftFile) throw new Error("a record without an aircraft is never put together");
  const aircraft = aircraftOf(aircraftFile, fileIndex);
  const entries = entriesOf(files, amendments, fileIndex, aircraft.timeZone);
  return {
    aircraft,
    assemblies: byId(sound(files.assembly).map((filed) => assemblyOf(filed, fileIndex))),
    adhesives: byId(sound(files.adhesive).map((filed) => adhesiveOf(filed, fileIndex))),
    procedures: byId(sound(files.procedure).map(procedureOf)),
    lots: byId(sound(files.lot).map((filed) => lotOf(filed, fileIndex))),
    trials: byId(sound(files.trial).map(trialOf)),
    entries,
    climate,
    day: day ?? entries.at(-1)?.day ?? aircraft.start,
  };
}

function sound<S>(files: readonly Filed<S>[]): Sound<S>[] {
  return files.map((filed) => {
    if (filed.spec === undefined) throw new Error(`${filed.file} has problems and cannot be trusted`);
    return { ...filed, spec: filed.spec };
  });
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Map<string, T> {
  return new Map(things.map((thing) => [thing.id, thing]));
}

function entriesOf(
  files: Files,
  amendments: ReadonlyMap<string, readonly Amendment[]>,
  fileIndex: FileIndex,
  timeZone: string,
): Entry[] {
  const zone = Zone.of(timeZone);
  const specs = sound(files.entry);
  const later = { ...laterOf(specs), amendments };
  return specs
    .map((filed) => new EntryTyper(filed, fileIndex, zone, later).entry())
    .sort((a, b) => (`${a.day} ${a.id}` < `${b.day} ${b.id}` ? -1 : 1));
}

function laterOf(entries: readonly Sound<NonNullable<Files["entry"][number]["spec"]>>[]): Omit<Later, "amendments"> {
  const accepted = new Map<string, { by: string; entry: string }>();
  const closedIn = new Map<string, string>();
  for (const { spec, id } of entries) {
    for (const { departure, by } of spec.accepts ?? []) accepted.set(departure, { by, entry: id });
    for (const item of spec.open_items?.close ?? []) closedIn.set(item, id);
  }
  return { accepted, closedIn };
}
