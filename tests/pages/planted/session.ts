/** An entry on which something of everything was made. */
import type {
  Audience,
  Batch,
  Departure,
  Entry,
  GlueUp,
  HoursLine,
  InUse,
  Lot,
  Measurement,
  OpenItem,
  Piece,
  Quantity,
  Stage,
  PostCure,
  Thermometer,
} from "../../../src/facts/types.ts";
import { batch, cut, departure, entry, measurement, openItem, piece } from "../../evidence/make.ts";
import { celsius, g, ml, mm, moment, pc } from "../../evidence/quantities.ts";
import { methodWith } from "./asked.ts";
import { day, type Ground, narrowest, type Of, place, prose, worded } from "./ground.ts";

export interface Session {
  readonly entry: Entry;
  readonly audience: Audience;
  readonly batches: readonly Batch[];
  readonly raised: readonly OpenItem[];
  readonly departures: readonly Departure[];
}

export function session(ground: Ground, at: number): Session {
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
      note: say(narrowest(own, audience)),
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
      note: say(narrowest(own, audience)),
      audience: own,
      ...(pick(false, true) && {
        acceptedBy: pick(...people).id,
        acceptedIn: id,
        ...paper(ground, narrowest(own, audience)),
      }),
    });
  });
  const photo = anyone();
  const file = `photos/${say(narrowest(photo, audience))}`;
  const made = entry(id, {
    audience,
    title: say(audience),
    batches,
    stages: batches.map((one) => ({ ...stageOfAll(one, of), note: say(audience) })),
    raised,
    departures,
    cuts: lots
      .filter(({ material }) => material === "timber")
      .map(({ id: from, audience: seen }) => {
        const word = (): string => say(narrowest(audience, seen));
        return cut(worded(mm("900"), word()), { ...of, lot: from, note: word() });
      }),
    remains: lots
      .filter(({ material }) => material === "resin")
      .map(({ id: from, audience: seen }) => {
        const word = (): string => say(narrowest(audience, seen));
        return { ...of, place, lot: from, amount: worded(g("321"), word()), note: word() };
      }),
    hours: [hoursLine(ground, audience)],
    visits: [hoursLine(ground, audience)],
    inUse: inUse(ground, audience),
    thermometer: [thermometer(ground, audience, of)],
    postCures: [postCure(ground, audience, of, batches)],
    measurements: [
      measurement({
        ...of,
        what: say(audience),
        drawing: worded(mm("60.0"), say(audience)),
        found: worded(mm("62.0"), say(audience)),
        tolerance: { typed: say(audience), minus: -0.0001, plus: 0.0001 },
        departure: pick(undefined, departures[0]?.id),
        note: say(audience),
        joint: "W-1",
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
    fitted: fittings(ground, audience, of),
    coats: coats(ground, audience, of, pick(undefined, departures[0]?.id)),
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
    body: prose(ground, audience, [file, ...batches.map((one) => one.id)]),
  });
  return { entry: made, audience, batches, raised, departures };
}

/** One side of a pair that all sessions share, in whatever entries they are. */
function side({ say, pick }: Ground, audience: Audience, of: Of, at: number): Measurement {
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

/** A part, and what took its place after the day of the first: of its lot or of another. */
function fittings({ say, pick, lots }: Ground, audience: Audience, of: Of): Entry["fitted"] {
  const lot = (): Lot => pick(...lots.filter(({ material }) => material === "part"));
  const part = () => {
    const one = lot();
    const serial = say(narrowest(audience, one.audience));
    return { place, ...of, assembly: "wing", where: say(audience), lot: one.id, serial, count: 2 };
  };
  return [part(), { ...part(), replaces: lot().id, why: say(audience), note: say(audience) }];
}

/** Two coats of lots that may be hidden, the second after all that stood there was taken off. */
function coats({ say, pick, lots }: Ground, audience: Audience, of: Of, departure: string | undefined): Entry["coats"] {
  const at = (clock: string) => ({ ...moment(of.day, clock), typed: say(audience) });
  const first = {
    place,
    ...of,
    assembly: "wing",
    where: "W",
    finish: "clear",
    lots: [pick(...lots.filter(({ material }) => material === "finish")).id],
    coat: 1,
    at: at("10:00"),
    latest: moment(of.day, "10:00").epoch,
    dry: at("16:00"),
    temperature: worded(celsius(pick("20", "9")), say(audience)),
    humidity: worded(pc("50"), say(audience)),
    bare: say(audience),
    note: say(audience),
    ...(departure !== undefined && { departure }),
  };
  return [first, { ...first, coat: 2, at: at("14:00"), where: say(audience), stripped: say(audience) }];
}

function weights({ say }: Ground, audience: Audience, of: Of): Pick<Entry, "weighed" | "scales"> {
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
    note: say(audience),
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

/** An entry after the signature, in which what was signed changes. */ /** Of a whole lot, or of scraps. */
const madeOf = (n: number, lot: string, say: () => string): Pick<Piece, "lot" | "legs" | "scraps"> =>
  n === 1 ? { legs: [{ lot, thickness: worded(mm("6.0"), say()) }, { lot }], lot } : { scraps: true, lot };

/** A stage that is all of its joint. */
const stageOfAll = ({ id, joints }: Batch, of: Of): Stage => ({
  place,
  ...of,
  joint: joints[0] ?? "",
  stage: 1,
  of: 1,
  batches: [id],
  complete: true,
});

function glue({ say, pick, lots, trials }: Ground, audience: Audience, of: Of): Batch {
  const id = say(audience);
  const lotOf = (material: Lot["material"]): string => pick(...lots.filter((one) => one.material === material)).id;
  const some = (quantity: Quantity): Quantity => worded(quantity, say(audience));
  const pieces = [1, 2].map((n): Piece => {
    const trial = pick(undefined, undefined, ...trials);
    const own = narrowest(audience, trial?.audience ?? "public");
    return piece(id, n, {
      id: `${id}/${say(own)}`,
      note: say(own),
      ...madeOf(n, lotOf("timber"), () => say(own)),
      thickness: worded(mm("6.0"), say(own)),
      width: worded(mm("6.0"), say(own)),
      overlap: worded(mm("15.0"), say(own)),
      glued: { ...moment(of.day, "10:30"), typed: say(own) },
      ...(trial === undefined ? {} : { trial: trial.id, preparation: trial.preparations[0]?.id }),
    });
  });
  const resin = lotOf("resin");
  return batch(id, {
    ...of,
    byDefault: [
      { what: "lot of resin", lot: resin, entry: of.entry },
      ...pieces.map((one) => ({ what: "width", piece: one.id, entry: of.entry }) as const),
    ],
    joints: [pick("W-1", "W-2", "W-3")],
    timber: [lotOf("timber")],
    glueUp: glueUp(() => say(audience), some, lotOf("timber"), of),
    pieces,
    resin: { lot: resin, mass: some(g(pick("40.0", "49.0"))), volume: some(ml("40")) },
    hardener: { lot: lotOf("hardener"), mass: some(g("20.0")), volume: some(ml("20")) },
    glue: { lot: lotOf("glue"), [pick("mass", "volume")]: some(g("31")) },
    powder: { lot: lotOf("powder"), [pick("mass", "volume")]: some(g("32")) },
    water: { [pick("mass", "volume")]: some(g("33")) },
    scale: some(g("0.1")),
    mixed: { ...moment(of.day, "14:00"), typed: say(audience) },
    closed: { ...moment(of.day, "14:20"), typed: say(audience) },
    temperature: some(celsius("20")),
    humidity: some(pc("50")),
    surface: some(celsius("20")),
    wood: some(celsius("19")),
    moisture: some(pc("10")),
    waste: some(g("3")),
    discarded: say(audience),
    note: say(audience),
  });
}

const glueUp = (word: () => string, some: (of: Quantity) => Quantity, lot: string, of: Of): GlueUp => ({
  ...methodWith(word),
  by: "std",
  prepared: { ...moment(of.day, "09:30"), typed: word() },
  drop: [lot],
  beaded: [lot],
  overCured: ["washed"],
  fillerMass: some(g("1.0")),
  gap: some(mm("0.2")),
  spread: { ...moment(of.day, "14:05"), typed: word() },
  spreadTo: { ...moment(of.day, "14:15"), typed: word() },
  on: { ...moment(of.day, "14:25"), typed: word() },
  off: { ...moment(of.day, "18:00"), typed: word() },
  pressure: some({ typed: "1 MPa", value: 1e6, unit: "Pa", step: 1e6 }),
  squeezeOut: "in part",
  drySpots: word(),
  parts: [{ lot, moisture: some(pc("10")) }],
  resin: some(celsius("19")),
  mixedFor: some({ typed: "3 min", value: 180, unit: "s", step: 60 }),
});

function inUse({ say, pick, lots }: Ground, audience: Audience): InUse {
  const lotOf = (material: Lot["material"]): string => pick(...lots.filter((one) => one.material === material)).id;
  const length = (millimetres: string): Quantity => worded(mm(millimetres), say(audience));
  return {
    place,
    ended: true,
    adhesive: "resorcin",
    resin: lotOf("resin"),
    hardener: lotOf("hardener"),
    glue: lotOf("glue"),
    powder: lotOf("powder"),
    scale: worded(g("0.1"), say(audience)),
    pieces: [{ procedure: "legs", thickness: length("6.0"), width: length("6.0"), overlap: length("15.0") }],
  };
}

function hoursLine({ say, pick, people }: Ground, audience: Audience): HoursLine {
  return {
    place,
    who: pick(...people).id,
    task: say(audience),
    minutes: 30,
    typed: say(audience),
    from: say(audience),
    to: say(audience),
    hand: pick("paid", "unpaid"),
    where: say(audience),
    note: say(audience),
    assembly: "wing",
  };
}

function postCure(
  { say, pick }: Ground,
  audience: Audience,
  { entry: id, day: read }: Of,
  batches: readonly Batch[],
): PostCure {
  return {
    place,
    entry: id,
    joints: [pick("W-1", "W-2", "W-3")],
    pieces: batches.flatMap(({ pieces }) => pieces.map((one) => one.id)),
    temperature: worded(celsius("60"), say(audience)),
    from: { ...moment(read, "18:00"), typed: say(audience) },
    to: { ...moment(read, "22:00"), typed: say(audience) },
    note: say(audience),
  };
}

function thermometer({ say }: Ground, audience: Audience, { entry: id, day: read }: Of): Thermometer {
  return {
    place,
    entry: id,
    from: { ...moment(read, "08:00"), typed: say(audience) },
    to: { ...moment(read, "20:00"), typed: say(audience) },
    least: worded(celsius("18"), say(audience)),
    greatest: worded(celsius("22"), say(audience)),
    note: say(audience),
  };
}

/** On what paper something was accepted, and on what condition. */
const paper = ({ say }: Ground, audience: Audience): Pick<Departure, "reference" | "condition"> => ({
  reference: say(audience),
  condition: say(audience),
});
