/** Takes out of a record what the page at the bench is given of it. */
import { defined } from "../defined.ts";
import { nextBatches } from "../desk/entry/next-id.ts";
import type { Shown } from "../editions/shown.ts";
import { lastUsed } from "./last-used.ts";
import { DAY_SECONDS } from "../facts/quantity/conversions.ts";
import { partsNoted } from "../facts/build/adhesive-kind.ts";
import { isSeconded } from "../facts/entry/amendment.ts";
import type { Batch, ClimateLog, Entry, JointSpec, Record } from "../facts/types.ts";
import {
  ADHESIVE,
  type Due,
  ENTRY,
  type Given,
  type GivenBatch,
  type GivenEntry,
  type GivenLog,
  JOINT,
  LOT,
  PERSON,
  PIECE,
  PROCEDURE,
  RECALL,
  type Snapshot,
  THERMOMETER,
  type Unseconded,
  WAITING,
} from "./snapshot.ts";

/** The time before a session of which the climate is asked for its wood, s, and a day more. */
const CLIMATE_BEFORE = 15 * DAY_SECONDS;

/** `made` in s since 1970-01-01T00:00Z; `before` is of the record itself, since no edition holds it. */
export function snapshotOf(shown: Shown, made: number, before: Record["before"]): Snapshot {
  const { record } = shown;
  const { aircraft } = record;
  const joints = waitingJoints(shown);
  const due = dueIn(shown);
  const pieces = new Set(due.map(({ piece }) => piece));
  const glued = record.entries.flatMap((entry) => entry.batches).filter((batch) => hasAny(batch, pieces));
  const since = Math.min(made, ...glued.map(({ mixed, closed }) => (mixed ?? closed)?.epoch ?? made)) - CLIMATE_BEFORE;
  const entries = givenEntries(record.entries, pieces, since);
  const next = nextBatches(record.entries.flatMap(({ batches }) => batches.map(({ id }) => id)));
  return defined({
    day: record.day,
    made,
    start: aircraft.start,
    units: aircraft.units,
    timeZone: aircraft.timeZone,
    tasks: aircraft.tasks,
    people: [...aircraft.people.values()]
      .filter(({ role }) => role === "builder" || role === "helper")
      .map((person) => picked(person, PERSON)),
    adhesives: [...record.adhesives.values()].map((adhesive) => picked(adhesive, ADHESIVE)),
    lots: [...record.lots.values()]
      .filter(({ material }) => !["part", "finish", "other"].includes(material))
      .map((lot) => picked(lot, LOT)),
    procedures: [...record.procedures.values()]
      .filter(({ form }) => form !== "glue-up")
      .map((procedure) => picked(procedure, PROCEDURE)),
    assemblies: [...record.assemblies.values()].flatMap(({ id, title }) => {
      const own = joints.whole.filter((joint) => joint.assembly === id);
      return own.length === 0 ? [] : [{ id, title, joints: own.map((joint) => picked(joint, JOINT)) }];
    }),
    staged: joints.staged,
    entries,
    unseconded: unsecondedIn(
      record,
      entries,
      (before ?? []).map((one) => givenEntries(one.entries, pieces, since)),
    ),
    climate: record.climate.map((log, at) => givenLog(log, `log-${at + 1}`, since)),
    due,
    nextBatch: next[""],
    nextByLetter: next,
    ...lastUsed(record),
  });
}

const givenEntries = (entries: readonly Entry[], due: ReadonlySet<string>, since: number): GivenEntry[] =>
  entries.flatMap((entry, at) => givenEntry(entry, at, due, since, at === entries.length - 1));

function unsecondedIn(
  { entries, aircraft }: Record,
  now: readonly GivenEntry[],
  before: readonly (readonly GivenEntry[])[],
): Unseconded | undefined {
  const others = new Map(before.map((one) => [JSON.stringify(one), one]));
  others.delete(JSON.stringify(now));
  const people = [...aircraft.people.values()];
  const days = entries
    .flatMap(({ amendments }) => amendments)
    .filter((one) => one.changes.length > 0 && !isSeconded(one, people))
    .map(({ day }) => day);
  return others.size === 0 ? undefined : { days: [...new Set(days)], before: [...others.values()] };
}

/** Only the keys that are named, and of those only what holds something. */
function picked<T extends object, const K extends readonly (keyof T)[]>(thing: T, keys: K): Given<T, K> {
  const held = keys.filter((key) => thing[key] !== undefined).map((key) => [key, thing[key]]);
  return Object.fromEntries(held) as Given<T, K>;
}

const hasAny = ({ pieces }: Batch, ids: ReadonlySet<string>): boolean => pieces.some(({ id }) => ids.has(id));

/** Joints that no batch is in, those opened again, and those glued in stages of which some is still to come. */
function waitingJoints({ evidence, record }: Shown): {
  readonly whole: readonly JointSpec[];
  readonly staged: readonly string[];
} {
  const stages = record.entries.flatMap((entry) => entry.stages);
  const begun = new Set(stages.map(({ joint }) => joint));
  const complete = new Set(stages.filter((stage) => stage.complete === true).map(({ joint }) => joint));
  const isStaged = ({ id, stages: planned }: JointSpec): boolean => planned !== undefined || begun.has(id);
  const files = [...evidence.joints.values()];
  return {
    whole: files
      .filter(({ state, joint }) => (state === "not glued" || state === "opened") && !isStaged(joint))
      .map(({ joint }) => joint),
    staged: files.filter(({ joint }) => isStaged(joint) && !complete.has(joint.id)).map(({ joint }) => joint.id),
  };
}

function dueIn({ record, evidence }: Shown): readonly Due[] {
  const assemblyOf = new Map(record.entries.map((entry) => [entry.id, entry.assembly]));
  return [...evidence.batches.values()].flatMap(({ batch, pieces }) =>
    pieces
      .filter(({ verdict, test }) => verdict === "not broken" && test === undefined)
      .map(({ piece, cure: { readyAt, readyBy, from, least } }): Due => {
        const byDaysAlone = readyBy === "unknown" || readyBy === "too cold";
        const assembly = assemblyOf.get(batch.entry);
        return defined({ piece: piece.id, assembly, from: readyAt ?? from + least, byDaysAlone });
      }),
  );
}

/** By numbers in place of names, which are words of a story. */
function givenEntry(entry: Entry, at: number, due: ReadonlySet<string>, since: number, isLast: boolean): GivenEntry[] {
  const named = { entry: `entry-${at + 1}` };
  const batches = entry.batches
    .filter((batch) => hasAny(batch, due))
    .map((batch) => ({ ...givenBatch(batch, due), ...named }));
  const thermometer = entry.thermometer
    .filter(({ to }) => to.epoch >= since)
    .map((one) => ({ ...picked(one, THERMOMETER), ...named }));
  const recalls = entry.recalls.map((recall) => ({ ...picked(recall, RECALL), ...named }));
  if (!isLast && batches.length + thermometer.length + recalls.length === 0) return [];
  return [{ ...picked(entry, ENTRY), id: named.entry, batches, thermometer, recalls }];
}

function givenBatch(batch: Batch, due: ReadonlySet<string>): GivenBatch {
  const pieces = batch.pieces.filter(({ id }) => due.has(id));
  const hasOwnTime = pieces.some(({ glued }) => glued !== undefined);
  const parts = Object.fromEntries(
    partsNoted(batch).map(({ part, noted: { mass, volume } }) => [part, defined({ mass, volume })]),
  );
  return {
    ...picked(batch, WAITING),
    pieces: pieces.map((piece) => picked(piece, PIECE)),
    ...(hasOwnTime && { parts }),
  };
}

/** What was read since, and the last reading whenever it was. */
function givenLog(log: ClimateLog, id: string, since: number): GivenLog {
  const { gap, gapIsDefault } = log;
  const at = log.times.findIndex((time) => time >= since);
  const first = Math.max(0, (at < 0 ? log.times.length : at) - 1);
  const orNull = (values: Float64Array): (number | null)[] =>
    Array.from(values.subarray(first), (value) => (Number.isNaN(value) ? null : value));
  return {
    id,
    gap,
    gapIsDefault,
    times: Array.from(log.times.subarray(first)),
    temperatures: orNull(log.temperatures),
    humidities: orNull(log.humidities),
  };
}
