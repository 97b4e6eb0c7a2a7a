/** A record that holds what the page was given and nothing else, for the rules of evidence to read. */
import type {
  Amendment,
  Batch,
  ClimateLog,
  Day,
  Entry,
  JointSpec,
  Lot,
  Person,
  Piece,
  Procedure,
  Recall,
  Record,
  Thermometer,
  Adhesive,
} from "../facts/types.ts";
import type { GivenBatch, GivenEntry, GivenLog, Snapshot } from "./snapshot.ts";

const PLACE = { file: "", line: 1, column: 1 };
const WITHOUT_PROSE = { place: PLACE, body: [] } as const;
const RECALLED = "It is recalled; the record says why";

export function restored(given: Snapshot): Record {
  const { unseconded, ...now } = given;
  const record = asGiven(now);
  if (unseconded === undefined) return record;
  const last = record.entries.at(-1);
  const amending = last && { ...last, amendments: unseconded.days.map(amendmentOf) };
  return {
    ...record,
    entries: [...record.entries.slice(0, -1), ...(amending ? [amending] : [])],
    before: unseconded.before.map((entries) => asGiven({ ...now, entries })),
  };
}

/** Told by its day: what it says is not given. */
function amendmentOf(day: Day): Amendment {
  const about = { kind: "entry", id: day } as const;
  const change = { place: PLACE, about, fact: "", needs: [], audience: "public" } as const;
  return { place: PLACE, entry: day, by: day, day, why: "", prose: false, changes: [change], withheld: false };
}

function asGiven(given: Omit<Snapshot, "unseconded">): Record {
  return {
    aircraft: {
      place: PLACE,
      name: "",
      type: "",
      units: given.units,
      timeZone: given.timeZone,
      start: given.start,
      people: byId(
        given.people.map((one): Person => ({ ...one, place: PLACE, name: one.publicName, audience: "public" })),
      ),
      tasks: given.tasks,
      publicShows: [],
      body: [],
    },
    assemblies: byId(
      given.assemblies.map((one) => ({
        ...one,
        ...WITHOUT_PROSE,
        joints: one.joints.map((joint): JointSpec => ({ ...joint, place: PLACE })),
        holdPoints: [],
        coats: [],
        tasks: [],
      })),
    ),
    adhesives: byId(given.adhesives.map((one): Adhesive => ({ ...one, ...WITHOUT_PROSE }))),
    procedures: byId(given.procedures.map((one): Procedure => ({ ...one, ...WITHOUT_PROSE }))),
    lots: byId(given.lots.map((one): Lot => ({ ...one, ...WITHOUT_PROSE, audience: "public" }))),
    entries: given.entries.map(entryIn),
    climate: given.climate.map(logIn),
    finishes: new Map(),
    trials: new Map(),
    earlier: [],
    day: given.day,
  };
}

const byId = <T extends { readonly id: string }>(things: readonly T[]): Map<string, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

function entryIn({ batches, thermometer, recalls, ...own }: GivenEntry): Entry {
  return {
    ...own,
    place: PLACE,
    file: `entries/${own.id}.md`,
    title: "",
    audience: "public",
    batches: batches.map(batchIn),
    thermometer: thermometer.map((one): Thermometer => ({ ...one, place: PLACE })),
    recalls: recalls.map((one): Recall => ({ ...one, place: PLACE, why: RECALLED })),
    ...NOTHING_ELSE,
  };
}

const NOTHING_ELSE = {
  hours: [],
  visits: [],
  cuts: [],
  remains: [],
  tests: [],
  postCures: [],
  measurements: [],
  weighed: [],
  fitted: [],
  coats: [],
  departures: [],
  raised: [],
  closed: [],
  photos: [],
  clips: [],
  attachments: [],
  reworks: [],
  stages: [],
  rejections: [],
  inspections: [],
  amendments: [],
  body: [],
} as const;

function batchIn({ pieces, parts, ...own }: GivenBatch): Batch {
  return {
    ...own,
    ...parts,
    place: PLACE,
    joints: [],
    pieces: pieces.map((piece): Piece => ({ ...piece, place: PLACE })),
  };
}

function logIn({ times, temperatures, humidities, ...own }: GivenLog): ClimateLog {
  const filled = (values: readonly (number | null)[]): Float64Array =>
    Float64Array.from(values, (value) => value ?? Number.NaN);
  return {
    ...own,
    ...WITHOUT_PROSE,
    file: "",
    audience: "public",
    title: "",
    times: Float64Array.from(times),
    temperatures: filled(temperatures),
    humidities: filled(humidities),
  };
}
