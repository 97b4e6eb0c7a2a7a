/** The record with its indexes, made once, so that everything after it is one pass. */
import type {
  Assembly,
  Batch,
  Coat,
  Departure,
  Entry,
  Fitting,
  HoldPoint,
  Inspection,
  JointSpec,
  Measurement,
  OpenItem,
  Piece,
  PieceTest,
  Recall,
  Record,
  Ref,
  Rejection,
  Rework,
  Stage,
} from "../facts/types.ts";
import { dayNumber } from "../reckoning/time/calendar.ts";
import { LocalTime } from "../reckoning/time/local-time.ts";
import { Memo } from "../memo.ts";
import { Shop } from "./cure/shop.ts";

type Index<T> = ReadonlyMap<string, readonly T[]>;

/** That somebody worked on an assembly, or on who knows which, and where that is noted. */
interface WorkedOn {
  readonly who: string;
  readonly assembly: string | undefined;
  readonly noted: Ref;
}

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
  /** Stages of joints that are glued over several sessions. */
  readonly stages: Index<Stage>;
  readonly batchesOfJoint: Index<Batch>;
  readonly inspections: Index<Inspection>;
  readonly departuresOf: Index<Departure>;
  readonly openItemsOf: Index<OpenItem>;
  /** By what they come before: a hold point's id or a kind of hold point. */
  readonly openItemsBefore: Index<OpenItem>;
  readonly measurementsOf: Index<Measurement>;
  /** Measurements by the departure that they name. */
  readonly measurementsNaming: Index<Measurement>;
  /** Measurements by the joint that they were taken at. */
  readonly measurementsAt: Index<Measurement>;
  /** Parts bought in, by their assembly. */
  readonly fittedIn: Index<Fitting>;
  /** Coats, by their assembly. */
  readonly coatsOn: Index<Coat>;
  /** Measurements of a pair of sides, by the word that they share. */
  readonly pairs: Index<Measurement>;
  readonly children: Index<Assembly>;
  /** Where each worked. */
  readonly workOf: Index<WorkedOn>;
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
  const clock = new LocalTime(record.aircraft.timeZone);
  return {
    record,
    entries: byId(entries),
    order: new Map(entries.map((entry, i) => [entry.id, i])),
    joints: byId(assemblies.flatMap((assembly) => assembly.joints)),
    holdPoints: byId(assemblies.flatMap((assembly) => assembly.holdPoints)),
    children: indexBy(assemblies, (assembly) => assembly.parent),
    ...glueIn(entries),
    ...workIn(entries),
    workOf: indexBy(workedIn(record), ({ who }) => who),
    shop: new Shop(
      record.climate,
      entries.flatMap((entry) => entry.thermometer),
    ),
    clock,
    now: clock.midnight(dayNumber(record.day) ?? 0),
    memo: new Memo(),
  };
}

function glueIn(entries: readonly Entry[]) {
  const batches = entries.flatMap((entry) => entry.batches);
  const all = <T>(of: (entry: Entry) => readonly T[]): T[] => entries.flatMap(of);
  return {
    batches: byId(batches),
    pieces: byId(batches.flatMap((batch) => batch.pieces)),
    batchesOfJoint: indexBy(batches, (batch) => batch.joints),
    tests: indexBy(
      all(({ tests }) => tests),
      (test) => test.piece,
    ),
    recalls: indexBy(
      all(({ recalls }) => recalls),
      (recall) => recall.lot,
    ),
    rejections: indexBy(
      all(({ rejections }) => rejections),
      (rejection) => rejection.batch,
    ),
    reworks: indexBy(
      all(({ reworks }) => reworks),
      (rework) => rework.joints,
    ),
    stages: indexBy(
      all(({ stages }) => stages),
      ({ joint }) => joint,
    ),
  };
}

function workedIn({ entries, earlier }: Record): WorkedOn[] {
  const lines = [
    ...entries.map(({ id, hours }) => ({ noted: { kind: "entry", id } as const, hours })),
    ...earlier.map(({ id, lines }) => ({ noted: { kind: "earlier hours", id } as const, hours: lines })),
  ];
  return lines.flatMap(({ noted, hours }) => hours.map(({ who, assembly }) => ({ who, assembly, noted })));
}

function workIn(entries: readonly Entry[]) {
  const departures = entries.flatMap((entry) => entry.departures);
  const openItems = entries.flatMap((entry) => entry.raised);
  const measurements = entries.flatMap((entry) => entry.measurements);
  const inspections = entries.flatMap((entry) => entry.inspections);
  return {
    departures: byId(departures),
    openItems: byId(openItems),
    inspections: indexBy(inspections, ({ holdPoint }) => holdPoint),
    departuresOf: indexBy(departures, ({ assembly }) => assembly),
    openItemsOf: indexBy(openItems, ({ assembly }) => assembly),
    openItemsBefore: indexBy(openItems, ({ before }) => before),
    measurementsOf: indexBy(measurements, ({ assembly }) => assembly),
    measurementsNaming: indexBy(measurements, ({ departure }) => departure),
    measurementsAt: indexBy(measurements, ({ joint }) => joint),
    fittedIn: indexBy(
      entries.flatMap(({ fitted }) => fitted),
      ({ assembly }) => assembly,
    ),
    coatsOn: indexBy(
      entries.flatMap(({ coats }) => coats),
      ({ assembly }) => assembly,
    ),
    pairs: indexBy(measurements, ({ pair }) => pair),
  };
}

const byId = <T extends { readonly id: string }>(things: readonly T[]): Map<string, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

/** Things by each of their keys, in the order given; a key named twice by one thing counts once, one that is missing not at all. */
export function indexBy<T>(
  things: readonly T[],
  keysOf: (thing: T) => string | undefined | readonly (string | undefined)[],
): Map<string, T[]> {
  const map = new Map<string, T[]>();
  const add = (thing: T, key: string | undefined): void => {
    if (key === undefined) return;
    const list = map.get(key);
    if (list === undefined) map.set(key, [thing]);
    else list.push(thing);
  };
  for (const thing of things) {
    const keys = keysOf(thing);
    if (typeof keys !== "object") add(thing, keys);
    else for (const key of new Set(keys)) add(thing, key);
  }
  return map;
}

/** What a trusted record must hold; it is a mistake of this program if it does not. */
export function lookUp<T>(map: ReadonlyMap<string, T>, id: string): T {
  const thing = map.get(id);
  if (thing === undefined) throw new Error(`the record was not checked: it names ${id} and holds none`);
  return thing;
}

/** Place of an entry in the order of the record. */
export const orderOf = (index: RecordIndex, entry: string): number => lookUp(index.order, entry);
