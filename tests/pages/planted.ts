/** A record of random shape in which every text that a builder can type is a word of its own, and what is known of who may see each word. */
import type {
  Amendment,
  Audience,
  Batch,
  ClimateLog,
  Departure,
  Entry,
  Lot,
  Measurement,
  OpenItem,
  Passage,
  Person,
  Piece,
  PieceTest,
  Quantity,
  Record,
  Trial,
  Withheld,
} from "../../src/facts/types.ts";
import {
  assembly,
  batch,
  cut,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  lot,
  measurement,
  openItem,
  piece,
  record,
  test,
} from "../evidence/make.ts";
import { g, mm, newton } from "../evidence/quantities.ts";

export type Pick = <T>(...from: readonly T[]) => T;

/** A word, the narrowest audience it is marked for, and the kind of fact that public withholds, if it is one. */
export interface Word {
  readonly text: string;
  readonly audience: Audience;
  readonly kind?: Withheld;
}

export interface Planted {
  readonly record: Record;
  readonly words: readonly Word[];
}

const RANK: readonly Audience[] = ["public", "inspector", "archive"];
const narrowest = (...all: readonly Audience[]): Audience =>
  RANK[Math.max(...all.map((one) => RANK.indexOf(one)))] ?? "archive";

interface Ground {
  readonly pick: Pick;
  readonly anyone: () => Audience;
  readonly say: (audience: Audience, kind?: Withheld) => string;
  readonly lots: readonly Lot[];
  readonly people: readonly Person[];
  readonly trials: readonly Trial[];
}

const place = { file: "planted.md", line: 1, column: 1 };
const day = (at: number): string => `2025-03-${String(at + 10).padStart(2, "0")}`;

export function planted(pick: Pick): Planted {
  const words: Word[] = [];
  const say = (audience: Audience, kind?: Withheld): string => {
    const text = `zq${words.length}qz`;
    words.push(kind === undefined ? { text, audience } : { text, audience, kind });
    return text;
  };
  const anyone = (): Audience => pick<Audience>("public", "public", "inspector", "archive");
  const base = { pick, anyone, say };
  const climate = climateOf(base);
  const ground: Ground = { ...base, lots: lotsOf(base), people: peopleOf(base), trials: trialsOf(base) };
  const sessions = [0, 1, 2, 3].map((at) => session(ground, at));
  const later = breaking(
    ground,
    sessions.flatMap(({ batches }) => batches),
    sessions,
  );
  const made = record({
    lots: ground.lots,
    entries: [...sessions.map((one) => one.entry), later, afterwards(ground)],
    assemblies: [wing(say, ground.anyone)],
  });
  return {
    words,
    record: {
      ...made,
      climate,
      trials: new Map(ground.trials.map((trial) => [trial.id, trial])),
      aircraft: {
        ...made.aircraft,
        people: new Map(ground.people.map((person) => [person.id, person])),
        body: prose(say, ground.anyone, "public", []),
        datum: say("public"),
        designWeight: worded(g("900000"), say("public")),
        publicShows: (["names", "suppliers", "certificates", "attachments", "ledgers"] as const).filter(() =>
          pick(true, false, false),
        ),
      },
    },
  };
}

const wing = (say: Ground["say"], anyone: Ground["anyone"]) =>
  assembly("wing", {
    joints: [joint("W-1"), joint("W-2"), joint("W-3")],
    holdPoints: [holdPoint("H-1", { title: say("public") })],
    tasks: [{ maker: 2, paid: 1, assembly: 3, fabrication: 4 }, undefined].map((credit) => ({
      id: say("public"),
      place,
      title: say("public"),
      assembly: "wing",
      ...(credit && { credit }),
    })),
    body: prose(say, anyone, "public", []),
  });

function lotsOf({ anyone, say }: Pick4): Lot[] {
  return (["resin", "hardener", "timber"] as const).flatMap((material) =>
    [0, 1].map(() => {
      const audience = anyone();
      return lot(say(audience), {
        material,
        audience,
        title: say(audience),
        number: say(audience),
        amount: worded(material === "timber" ? mm("9000") : g("900"), say(audience)),
        supplier: say(audience, "suppliers"),
        certificate: say(audience, "certificates"),
        species: say(audience),
        ...(material === "timber" ? { adhesive: undefined } : {}),
        body: prose(say, anyone, audience, []),
      });
    }),
  );
}

/** The shop was as warm as the batches ask all along, by a logger of each audience that comes up, one after the other. */
function climateOf({ anyone, say }: Pick4): ClimateLog[] {
  return [0, 1, 2].map((at) => {
    const audience = anyone();
    const id = say(audience);
    const times = Float64Array.from({ length: 40 }, (_, i) => Date.UTC(2025, 1, 10 + 20 * at) / 1000 + 43_200 * i);
    return {
      id,
      place,
      file: `climate/${id}.csv`,
      audience,
      title: say(audience),
      times,
      temperatures: times.map(() => 21 + at),
      humidities: times.map(() => 0.5),
      gap: 43_200,
      gapIsDefault: false,
      body: prose(say, anyone, audience, [id]),
    };
  });
}

function peopleOf({ anyone, say }: Pick4): Person[] {
  return [0, 1, 2].map(() => {
    const audience = anyone();
    return {
      id: say(audience, "names"),
      place,
      audience,
      name: say(audience, "names"),
      publicName: say(audience),
      role: "helper" as const,
      authority: say(audience, "names"),
    };
  });
}

function trialsOf({ anyone, say }: Pick4): Trial[] {
  return [0, 1].map(() => {
    const audience = anyone();
    const id = say(audience);
    return {
      id,
      place,
      audience,
      title: say(audience),
      question: say(audience),
      stated: "2025-01-01",
      expectation: say(audience),
      preparations: [{ id: say(audience), what: say(audience) }],
      body: prose(say, anyone, audience, [id]),
    };
  });
}

type Pick4 = globalThis.Pick<Ground, "pick" | "anyone" | "say">;

/** A passage of every audience; all of them link to `linked`, which only the words around may outlive. */
function prose(say: Ground["say"], anyone: Ground["anyone"], owner: Audience, linked: readonly string[]): Passage[] {
  return ["public" as const, anyone(), "archive" as const].map((audience, at) => ({
    audience,
    line: at + 1,
    markdown: [
      say(narrowest(owner, audience)),
      ...linked.map((id) => `[${say(narrowest(owner, audience))}](${id}) and ![](../${id})`),
    ].join(" "),
  }));
}

interface Session {
  readonly entry: Entry;
  readonly audience: Audience;
  readonly batches: readonly Batch[];
  readonly raised: readonly OpenItem[];
  readonly departures: readonly Departure[];
}

function session(ground: Ground, at: number): Session {
  const { anyone, say, pick, people, lots } = ground;
  const audience = anyone();
  const id = `${day(at)}-${say(audience)}`;
  const of = { entry: id, day: day(at) };
  const batches = [0, 1].map(() => glue(ground, audience, of));
  const raised = [0, 1].map(() => {
    const own = anyone();
    return openItem(say(narrowest(own, audience)), {
      ...of,
      what: say(narrowest(own, audience)),
      audience: own,
      before: pick("H-1", "close-up"),
    });
  });
  const departures = [0, 1].map(() => {
    const own = anyone();
    return departure(say(narrowest(own, audience)), {
      ...of,
      what: say(narrowest(own, audience)),
      why: say(narrowest(own, audience)),
      audience: own,
      ...pick({}, { acceptedBy: pick(...people).id, acceptedIn: id }),
    });
  });
  const photo = anyone();
  const file = `photos/${say(narrowest(photo, audience))}`;
  const made = entry(id, {
    audience,
    title: say(audience),
    batches,
    raised,
    departures,
    cuts: lots
      .filter(({ material }) => material === "timber")
      .map((one) => cut(worded(mm("900"), say(narrowest(audience, one.audience))), { ...of, lot: one.id })),
    hours: [
      { place, who: pick(...people).id, task: say(audience), minutes: 30, typed: say(audience), assembly: "wing" },
    ],
    measurements: [
      measurement({
        ...of,
        what: say(audience),
        drawing: worded(mm("60.0"), say(audience)),
        found: worded(mm("62.0"), say(audience)),
        tolerance: { typed: say(audience), minus: -0.0001, plus: 0.0001 },
        departure: pick(undefined, departures[0]?.id),
      }),
      measurement({
        ...of,
        place: { ...place, line: 2 },
        what: say(audience),
        limits: { typed: say(audience), most: pick(0.01, 0.1) },
        pair: say(audience),
        side: "left",
        found: worded(mm("20.0"), say(audience)),
      }),
      side(ground, audience, of, at),
    ],
    ...weights(ground, audience, of),
    photos: [
      { place, file, alt: say(narrowest(photo, audience)), caption: say(narrowest(photo, audience)), audience: photo },
    ],
    clips: [0].map(() => {
      const own = anyone();
      const word = (): string => say(narrowest(own, audience));
      return {
        place,
        file: `clips/${word()}`,
        poster: `photos/${word()}`,
        alt: word(),
        caption: word(),
        audience: own,
      };
    }),
    attachments: [0].map(() => {
      const own = anyone();
      return {
        place,
        file: say(narrowest(own, audience), "attachments"),
        title: say(narrowest(own, audience), "attachments"),
        audience: own,
      };
    }),
    body: prose(say, anyone, audience, [file, ...batches.map((one) => one.id)]),
  });
  return { entry: made, audience, batches, raised, departures };
}

/** One side of a pair that all sessions share, in whatever entries they are. */
function side({ say, pick }: Ground, audience: Audience, of: { entry: string; day: string }, at: number): Measurement {
  return measurement({
    ...of,
    place: { ...place, line: 3 },
    what: say(audience),
    assembly: "wing",
    pair: "both",
    side: at % 2 === 0 ? "left" : "right",
    found: worded(mm(pick("20.0", "23.0")), say(audience)),
    ...(pick(false, true) && { pairTolerance: worded(mm("1.0"), say(audience)) }),
  });
}

function weights(
  { say }: Ground,
  audience: Audience,
  of: { entry: string; day: string },
): globalThis.Pick<Entry, "weighed" | "scales"> {
  const typed = (grams: string): Quantity => worded(g(grams), say(audience));
  const part = say(audience);
  const weighing = {
    place,
    ...of,
    assembly: "wing",
    part,
    mass: typed("400"),
    arm: worded(mm("100.0"), say(audience)),
    insteadOf: [],
  };
  return {
    weighed: [weighing, { ...weighing, part: say(audience), mass: typed("500"), insteadOf: [part] }],
    scales: {
      place,
      ...of,
      what: say(audience),
      left: typed("9000"),
      right: typed("9000"),
      third: typed("900"),
      at: "tail",
      mains: worded(mm("10.0"), say(audience)),
      wheelbase: worded(mm("4000.0"), say(audience)),
    },
  };
}

/** An entry after the signature, in which what was signed changes. */
function afterwards({ anyone, say }: Ground): Entry {
  const audience = anyone();
  const id = `${day(17)}-${say(audience)}`;
  const of = { entry: id, day: day(17) };
  const own = narrowest(anyone(), audience);
  return entry(id, {
    audience,
    title: say(audience),
    departures: [departure(say(own), { ...of, what: say(own), why: say(own), audience: own })],
    raised: [openItem(say(own), { ...of, what: say(own), audience: own, before: "H-1" })],
    measurements: [
      measurement({
        ...of,
        what: say(audience),
        limits: { typed: say(audience), least: 1 },
        found: worded(mm("62.0"), say(audience)),
      }),
    ],
  });
}

function glue({ say, pick, lots, trials }: Ground, audience: Audience, of: { entry: string; day: string }): Batch {
  const id = say(audience);
  const lotOf = (material: Lot["material"]): string => pick(...lots.filter((one) => one.material === material)).id;
  const pieces = [1, 2].map((n): Piece => {
    const trial = pick(undefined, undefined, ...trials);
    const own = narrowest(audience, trial?.audience ?? "public");
    return piece(id, n, {
      id: `${id}/${say(own)}`,
      lot: lotOf("timber"),
      thickness: worded(mm("6.0"), say(own)),
      ...(trial === undefined ? {} : { trial: trial.id, preparation: trial.preparations[0]?.id }),
    });
  });
  return batch(id, {
    ...of,
    joints: [pick("W-1", "W-2", "W-3")],
    timber: [lotOf("timber")],
    pieces,
    resin: { lot: lotOf("resin"), mass: worded(g(pick("40.0", "49.0")), say(audience)) },
    hardener: { lot: lotOf("hardener"), mass: worded(g("20.0"), say(audience)) },
  });
}

const worded = (quantity: Quantity, typed: string): Quantity => ({ ...quantity, typed });

/** A last entry in which pieces are broken, and what the others raised is closed, accepted, recalled, rejected, taken out, looked at. */
function breaking(ground: Ground, batches: readonly Batch[], sessions: readonly Session[]): Entry {
  const { anyone, say, pick, lots, trials, people } = ground;
  const audience = anyone();
  const id = `${day(15)}-${say(audience)}`;
  const of = { entry: id, day: day(15) };
  const audienceOf = (one: Batch): Audience =>
    sessions.find((each) => each.batches.includes(one))?.audience ?? "archive";
  const tests = batches.flatMap((one) =>
    one.pieces.map((each): PieceTest => {
      const own = narrowest(
        audience,
        audienceOf(one),
        trials.find((trial) => trial.id === each.trial)?.audience ?? "public",
      );
      return test(each.id, {
        ...of,
        failure: pick("wood", "glue line"),
        load: worded(newton("300"), say(own)),
        note: say(own),
        witness: pick(...people).id,
        photo: say(own),
      });
    }),
  );
  const recalled = pick(...lots);
  const rejected = pick(...batches);
  return entry(id, {
    audience,
    title: say(audience),
    tests,
    recalls: [
      {
        place,
        ...of,
        lot: recalled.id,
        why: say(narrowest(audience, recalled.audience)),
        reference: say(narrowest(audience, recalled.audience)),
      },
    ],
    rejections: [{ place, ...of, batch: rejected.id, why: say(narrowest(audience, audienceOf(rejected))) }],
    reworks: [{ place, ...of, joints: ["W-3"], why: say(audience) }],
    inspections: [
      inspection("H-1", {
        ...of,
        by: pick(...people).id,
        result: pick("signed", "not signed"),
        reference: say(audience),
        scan: say(audience, "attachments"),
        remarks: say(audience),
      }),
    ],
    amendments: sessions
      .filter((one) => RANK.indexOf(audience) <= RANK.indexOf(one.audience))
      .map((one) => amendment(ground, one, { by: id, day: of.day })),
    closed: [],
    body: prose(say, anyone, audience, [rejected.id]),
  });
}

/** Of a session that all its readers may see amended: a batch's lot, a departure's reason, who worked. */
function amendment(
  { say, pick, lots, people }: Ground,
  { entry: amended, audience, batches, departures }: Session,
  of: { by: string; day: string },
): Amendment {
  const [one] = batches;
  const [left] = departures;
  if (one === undefined || left === undefined) throw new Error("a session has a batch and a departure");
  const own = narrowest(audience, left.audience);
  const [was, is] = [pick(...lots), pick(...lots)];
  const by = (id: string, words: string): Amendment["changes"][number]["was"] => [{ kind: "person", id }, words];
  return {
    place,
    entry: amended.id,
    ...of,
    why: say(audience),
    prose: pick(true, false),
    withheld: false,
    changes: [
      {
        place,
        about: { kind: "batch", id: one.id },
        fact: `Batch ${one.id}`,
        value: "resin lot",
        was: [{ kind: "lot", id: was.id }, say(audience)],
        is: [{ kind: "lot", id: is.id }, say(audience)],
        needs: [],
        audience: "public",
      },
      {
        place,
        about: { kind: "departure", id: left.id },
        fact: `Departure ${left.id}`,
        value: say(own),
        was: [say(own)],
        is: [say(own)],
        needs: [],
        audience: left.audience,
      },
      {
        place,
        about: { kind: "entry", id: amended.id },
        fact: "Hours",
        was: by(pick(...people).id, say(audience)),
        is: by(pick(...people).id, say(audience)),
        needs: [],
        audience: "public",
      },
    ],
  };
}
