/** A record of random shape in which every text that a builder can type is a word of its own, and what is known of who may see each word. */
import type { Audience, Record, Withheld } from "../../src/facts/types.ts";
import { record } from "../evidence/make.ts";
import {
  aircraftOf,
  assembliesOf,
  climateOf,
  earlierOf,
  lotsOf,
  methodsOf,
  peopleOf,
  trialsOf,
} from "./planted/build.ts";
import { type Base, day, type Ground, type Pick, type Word } from "./planted/ground.ts";
import { afterwards, breaking } from "./planted/later.ts";
import { type Session, session } from "./planted/session.ts";

export type { Word } from "./planted/ground.ts";

export interface Planted {
  readonly record: Record;
  readonly words: readonly Word[];
}

export function planted(pick: Pick): Planted {
  const words: Word[] = [];
  const say = (audience: Audience, kind?: Withheld): string => {
    const text = `zq${words.length}qz`;
    words.push(kind === undefined ? { text, audience } : { text, audience, kind });
    return text;
  };
  const base: Base = { pick, say, anyone: () => pick<Audience>("public", "public", "inspector", "archive") };
  const ground: Ground = { ...base, lots: lotsOf(base), people: peopleOf(base), trials: trialsOf(base) };
  const made = record({
    lots: ground.lots,
    ...methodsOf(base),
    entries: entriesOf(ground),
    assemblies: assembliesOf(base),
  });
  return {
    words,
    record: {
      ...made,
      climate: climateOf(base),
      earlier: earlierOf(base, ground.people),
      trials: new Map(ground.trials.map((trial) => [trial.id, trial])),
      aircraft: aircraftOf(base, made, ground.people),
    },
  };
}

/** Some of what the first entries raised is closed in the one in which pieces are broken. */
function entriesOf(ground: Ground): Record["entries"] {
  const sessions = [0, 1, 2, 3].map((at) => session(ground, at));
  const audience = ground.anyone();
  const id = `${day(15)}-${ground.say(audience)}`;
  const closes = sessions.flatMap(({ raised }) => raised.slice(1)).map((item) => item.id);
  const closing = ({ entry }: Session): Record["entries"][number] => ({
    ...entry,
    raised: entry.raised.map((item) => (closes.includes(item.id) ? { ...item, closedIn: id } : item)),
  });
  return [...sessions.map(closing), breaking(ground, sessions, { id, audience, closes }), afterwards(ground)];
}
