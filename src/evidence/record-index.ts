/** The record with its indexes, made once, so that everything after it is one pass. */
import type {
  Assembly,
  Batch,
  Departure,
  Entry,
  HoldPoint,
  HoursLine,
  Inspection,
  JointSpec,
  Measurement,
  OpenItem,
  Piece,
  PieceTest,
  Recall,
  Record,
  Rejection,
  Rework,
} from "../facts/types.ts";
import { dayNumber } from "../reckoning/time/calendar.ts";
import { LocalTime } from "../reckoning/time/local-time.ts";
import { Memo } from "../memo.ts";
import { Shop } from "./cure/shop.ts";

type Index<T> = ReadonlyMap<string, readonly T[]>;

export interface RecordIndex {
  readonly record: Record;
  readonly entries: ReadonlyMap<string, Entry>;
  /** Place of an entry in the order of the record. */
  readonly order: ReadonlyMap<string, number>;
  readonly batches: ReadonlyMap<string, Batch>;
  readonly pieces: ReadonlyMap<string, Piece>;
  readonly joints: ReadonlyMap<string, JointSpec>;
  readonly holdPoints: ReadonlyMap<string, HoldPoint>;
  readonly departures: ReadonlyMap<string, Departure>;
  readonly openItems: ReadonlyMap<string, OpenItem>;
  readonly tests: Index<PieceTest>;
  readonly recalls: Index<Recall>;
  readonly rejections: Index<Rejection>;
  readonly reworks: Index<Rework>;
  readonly batchesOfJoint: Index<Batch>;
  readonly inspections: Index<Inspection>;
  readonly departuresOf: Index<Departure>;
  readonly openItemsOf: Index<OpenItem>;
  /** By what they come before: a hold point's id or a kind of hold point. */
  readonly openItemsBefore: Index<OpenItem>;
  readonly measurementsOf: Index<Measurement>;
  /** Measurements by the departure that they name. */
  readonly measurementsNaming: Index<Measurement>;
  /** Measurements of a pair of sides, by the word that they share. */
  readonly pairs: Index<Measurement>;
  readonly children: Index<Assembly>;
  /** Where inspectors worked themselves. */
  readonly workOfInspectors: Index<Pick<HoursLine, "who" | "assembly"> & { readonly entry: string }>;
  readonly shop: Shop;
  readonly clock: LocalTime;
  /** When the day of the record begins, s since 1970-01-01T00:00Z: what lies before has passed. */
  readonly now: number;
  /** What rules make of all this once for all of them. */
  readonly memo: Memo;
}

export function recordIndexOf(record: Record): RecordIndex {
  const { entries } = record;
  const assemblies = [...record.assemblies.values()];
  const batches = entries.flatMap((entry) => entry.batches);
  const departures = entries.flatMap((entry) => entry.departures);
  const openItems = entries.flatMap((entry) => entry.raised);
  const clock = new LocalTime(record.aircraft.timeZone);
  return {
    record,
    entries: byId(entries),
    order: new Map(entries.map((entry, i) => [entry.id, i])),
    batches: byId(batches),
    pieces: byId(batches.flatMap((batch) => batch.pieces)),
    joints: byId(assemblies.flatMap((assembly) => assembly.joints)),
    holdPoints: byId(assemblies.flatMap((assembly) => assembly.holdPoints)),
    departures: byId(departures),
    openItems: byId(openItems),
    tests: indexBy(
      entries.flatMap((entry) => entry.tests),
      (test) => [test.piece],
    ),
    recalls: indexBy(
      entries.flatMap((entry) => entry.recalls),
      (recall) => [recall.lot],
    ),
    rejections: indexBy(
      entries.flatMap((entry) => entry.rejections),
      (rejection) => [rejection.batch],
    ),
    reworks: indexBy(
      entries.flatMap((entry) => entry.reworks),
      (rework) => rework.joints,
    ),
    batchesOfJoint: indexBy(batches, (batch) => batch.joints),
    inspections: indexBy(
      entries.flatMap((entry) => entry.inspections),
      (inspection) => [inspection.holdPoint],
    ),
    departuresOf: indexBy(departures, (departure) => [departure.assembly]),
    openItemsOf: indexBy(openItems, (item) => [item.assembly]),
    openItemsBefore: indexBy(openItems, (item) => [item.before]),
    measurementsOf: indexBy(
      entries.flatMap((entry) => entry.measurements),
      (measurement) => [measurement.assembly],
    ),
    measurementsNaming: indexBy(
      entries.flatMap((entry) => entry.measurements),
      ({ departure }) => [departure],
    ),
    pairs: indexBy(
      entries.flatMap((entry) => entry.measurements),
      ({ pair }) => [pair],
    ),
    children: indexBy(assemblies, (assembly) => [assembly.parent]),
    workOfInspectors: indexBy(
      entries.flatMap(({ id, hours }) => hours.map(({ who, assembly }) => ({ who, assembly, entry: id }))),
      ({ who }) => (record.aircraft.people.get(who)?.role === "inspector" ? [who] : []),
    ),
    shop: new Shop(
      record.climate,
      entries.flatMap((entry) => entry.thermometer),
    ),
    clock,
    now: clock.midnight(dayNumber(record.day) ?? 0),
    memo: new Memo(),
  };
}

const byId = <T extends { readonly id: string }>(things: readonly T[]): Map<string, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

/** Things by each of their keys, in the order given; a key named twice by one thing counts once, one that is missing not at all. */
export function indexBy<T>(
  things: readonly T[],
  keysOf: (thing: T) => readonly (string | undefined)[],
): Map<string, T[]> {
  const map = new Map<string, T[]>();
  for (const thing of things) {
    for (const key of new Set(keysOf(thing))) {
      if (key === undefined) continue;
      const list = map.get(key);
      if (list === undefined) map.set(key, [thing]);
      else list.push(thing);
    }
  }
  return map;
}

/** What a trusted record must hold; it is a mistake of this program if it does not. */
export function lookUp<T>(map: ReadonlyMap<string, T>, id: string, kind: string): T {
  const thing = map.get(id);
  if (thing === undefined) throw new Error(`the record was not checked: it names the ${kind} ${id} and holds none`);
  return thing;
}

/** Place of an entry in the order of the record. */
export const orderOf = (index: RecordIndex, entry: string): number => lookUp(index.order, entry, "entry");
