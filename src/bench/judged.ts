/** What the record would show with an entry that is still on the phone: by the forms, the typing and the rules of the build itself. */
import { reckon } from "../evidence/evidence.ts";
import type { BatchFile, Evidence, PieceFile } from "../evidence/types.ts";
import { entryOf } from "../facts/entry/entry.ts";
import { entrySchema } from "../facts/entry/entry-form.ts";
import { Zone } from "../facts/time/zone.ts";
import type { Entry, Record } from "../facts/types.ts";
import { ENGLISH } from "../words/findings/english.ts";
import { sayIn } from "../words/findings/catalogue.ts";
import { type ToldFinding, toldFinding } from "../words/findings/told.ts";
import type { DayFacts } from "./entry-facts.ts";

const LATER = { visitors: new Set<string>(), accepted: new Map(), closedIn: new Map(), amendments: new Map() };

export interface Foretold {
  readonly evidence: Evidence;
  /** Of the entries that were given, in their order. */
  readonly batches: readonly BatchFile[];
  readonly pieces: readonly PieceFile[];
  readonly told: (file: BatchFile | PieceFile) => readonly ToldFinding[];
}

/** @throws ZodError where the facts have not the form of an entry: a mistake of this program */
export function foretell(record: Record, days: readonly DayFacts[]): Foretold {
  const entries = days.map((one) => entryIn(one, record.aircraft.timeZone));
  const last = entries.at(-1)?.day ?? record.day;
  const day = last > record.day ? last : record.day;
  const withThem = (one: Record): Record => ({
    ...one,
    entries: [...one.entries, ...entries].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)),
    day,
  });
  const { before } = record;
  const evidence = reckon({ ...withThem(record), ...(before !== undefined && { before: before.map(withThem) }) });
  const say = sayIn(ENGLISH, record.aircraft.units);
  const batches = entries.flatMap((entry) => entry.batches);
  const tested = new Set(entries.flatMap((entry) => entry.tests).map(({ piece }) => piece));
  return {
    evidence,
    batches: batches.flatMap(({ id }) => evidence.batches.get(id) ?? []),
    pieces: [...evidence.pieces.values()].filter(({ piece }) => tested.has(piece.id)),
    told: ({ findings }) => findings.map((finding) => toldFinding(say, finding)),
  };
}

function entryIn({ facts, day, title }: DayFacts, timeZone: string): Entry {
  const id = `${day}-${title}`;
  const at = () => ({ file: `entries/${id}.md`, line: 1, column: 1 });
  const spec = entrySchema.parse(facts);
  const sound = { spec, file: at().file, id, body: [], at, usualFrom: () => undefined, path: (typed: string) => typed };
  return entryOf(sound, Zone.of(timeZone), LATER);
}
