/** Small records written out by hand: a shop in which everything is in order, to be spoilt by one thing at a time. */
import type {
  Adhesive,
  Assembly,
  Batch,
  Cut,
  Departure,
  Entry,
  Finish,
  HoldPoint,
  Inspection,
  JointSpec,
  Lot,
  Measurement,
  OpenItem,
  Person,
  Piece,
  PieceTest,
  Procedure,
  Quantity,
  Record,
} from "../../src/facts/types.ts";
import { celsius, d, epochOf, g, gcc, min, mm, moment, mpa, newton, pc, range } from "./quantities.ts";

const place = { file: "made.md", line: 1, column: 1 };
const FOR = { audience: "public" as const };

/** 2:1 by mass within 5 %, 30 min at 25 °C for 100 g, 15 to 30 °C, at most 70 %, 8 to 12 % moisture, shelf life 365 d. */
export const adhesive = (change: Partial<Adhesive> = {}): Adhesive => ({
  id: "resorcin",
  place,
  title: "Resorcin",
  sheet: "Resorcin data sheet, revision 4",
  kind: "two-part",
  byMass: { typed: "100 : 50", secondOverFirst: 0.5, tolerance: pc("5") },
  density: { resin: gcc("1.2"), hardener: gcc("1.0") },
  workingLife: [
    { temperature: celsius("25"), mass: g("100"), time: min("30") },
    { temperature: celsius("25"), mass: g("300"), time: min("20") },
  ],
  temperature: range("15 °C to 30 °C", 15, 30),
  humidity: range("at most 70 %", undefined, 0.7),
  cure: [],
  shelfLife: d("365"),
  woodMoisture: range("8 % to 12 %", 0.08, 0.12),
  body: [],
  ...change,
});

/** Three-leg pieces, 2 to 3 thicknesses, one piece, 3 d, 75 % wood failure, 6 MPa. */
export const procedure = (change: Partial<Procedure> = {}): Procedure => ({
  id: "legs",
  place,
  title: "Three legs",
  form: "three-leg",
  overlap: range("2 to 3 thicknesses", 2, 3),
  pieces: 1,
  leastCure: { time: d("3") },
  woodFailure: pc("75"),
  stress: mpa("6"),
  body: [],
  ...change,
});

export const lot = (id: string, change: Partial<Lot> = {}): Lot => ({
  id,
  place,
  title: id,
  material: "resin",
  adhesive: "resorcin",
  received: "2025-01-10",
  expiry: "2026-01-10",
  body: [],
  ...FOR,
  ...change,
});

/** Secondary, so that records without a logger may rest on an assumed climate. */
export const joint = (id: string, assembly = "wing"): JointSpec => ({
  id,
  place,
  title: id,
  assembly,
  structure: "secondary",
});
export const holdPoint = (id: string, change: Partial<HoldPoint> = {}): HoldPoint => ({
  id,
  place,
  title: id,
  kind: "close-up",
  assembly: "wing",
  ...change,
});
export const assembly = (id: string, change: Partial<Assembly> = {}): Assembly => ({
  id,
  place,
  title: id,
  joints: [],
  holdPoints: [],
  coats: [],
  tasks: [],
  body: [],
  ...change,
});

export const DAY = "2025-03-10";

/** One piece of 6 × 6 mm legs of spruce overlapping 15 mm. */
export const piece = (batch: string, n = 1, change: Partial<Piece> = {}): Piece => ({
  id: `${batch}/${n}`,
  place,
  batch,
  procedure: "legs",
  lot: "S-1",
  thickness: mm("6.0"),
  width: mm("6.0"),
  overlap: mm("15.0"),
  ...change,
});

/** 40.0 g to 20.0 g at 20 °C and 50 %, 20 minutes open, wood at 10 %, one piece, joint W-1. */
export const batch = (id: string, change: Partial<Batch> = {}, day = change.day ?? DAY): Batch => ({
  id,
  place,
  entry: `${day}-glue`,
  day,
  adhesive: "resorcin",
  resin: { lot: "R-1", mass: g("40.0") },
  hardener: { lot: "H-1", mass: g("20.0") },
  scale: g("0.1"),
  mixed: moment(day, "14:00"),
  closed: moment(day, "14:20"),
  temperature: celsius("20"),
  humidity: pc("50"),
  surface: celsius("20"),
  moisture: pc("10"),
  joints: ["W-1"],
  timber: ["S-1"],
  pieces: [piece(id)],
  ...change,
});

/** Broken in the wood at 7.0 MPa ten days after the batch. */
export const test = (of: string, change: Partial<PieceTest> = {}, day = change.day ?? "2025-03-20"): PieceTest => ({
  place,
  entry: `${day}-tests`,
  day,
  piece: of,
  at: moment(day, "19:00"),
  failure: "wood",
  woodFailure: pc("100"),
  load: newton("1260"),
  ...change,
});

export const entry = (id: string, change: Partial<Entry> = {}): Entry => {
  const day = id.slice(0, 10);
  return {
    id,
    place,
    file: `entries/${id}.md`,
    day,
    dayStart: epochOf(day),
    dayEnd: epochOf(day) + 86_399,
    title: id,
    assembly: "wing",
    hours: [],
    visits: [],
    cuts: [],
    remains: [],
    batches: [],
    tests: [],
    thermometer: [],
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
    recalls: [],
    reworks: [],
    stages: [],
    rejections: [],
    inspections: [],
    amendments: [],
    body: [],
    ...FOR,
    ...change,
  };
};

/** Sawn from S-1 on {@link DAY}. */
export const cut = (amount: Quantity, change: Partial<Cut> = {}): Cut => ({
  place,
  entry: `${change.day ?? DAY}-sawn`,
  day: DAY,
  lot: "S-1",
  amount,
  ...change,
});
export const departure = (id: string, change: Partial<Departure> = {}): Departure => ({
  id,
  place,
  entry: `${DAY}-other`,
  day: DAY,
  assembly: "wing",
  what: "another packer",
  why: "wider",
  ...FOR,
  ...change,
});
export const openItem = (id: string, change: Partial<OpenItem> = {}): OpenItem => ({
  id,
  place,
  entry: `${DAY}-other`,
  day: DAY,
  assembly: "wing",
  what: "corner block",
  ...FOR,
  ...change,
});
export const measurement = (change: Partial<Measurement> = {}): Measurement => ({
  place,
  entry: `${DAY}-other`,
  what: "rib height",
  assembly: "wing",
  dimension: "length",
  found: mm("62.0"),
  ...change,
});
export const inspection = (holdPoint: string, change: Partial<Inspection> = {}): Inspection => ({
  place,
  entry: `${DAY}-other`,
  day: DAY,
  holdPoint,
  by: "ins",
  result: "signed",
  reference: "form 1",
  ...change,
});

/** Signs and accepts, and works on nothing. */
const INSPECTOR: Person = {
  id: "ins",
  place,
  name: "Ada Invented",
  publicName: "the inspector",
  role: "inspector",
  audience: "public",
};

const byId = <T extends { readonly id: string }>(things: readonly T[]): Map<string, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

export interface Made {
  readonly adhesives?: readonly Adhesive[];
  readonly finishes?: readonly Finish[];
  readonly procedures?: readonly Procedure[];
  readonly lots?: readonly Lot[];
  readonly assemblies?: readonly Assembly[];
  readonly entries?: readonly Entry[];
  readonly units?: "metric" | "imperial";
}

export const LOTS = [
  lot("R-1"),
  lot("R-2"),
  lot("H-1", { material: "hardener" }),
  lot("H-2", { material: "hardener" }),
  lot("S-1", { material: "timber", adhesive: undefined, species: "Sitka spruce" }),
];
const WING = assembly("wing", { joints: [joint("W-1"), joint("W-2")] });

export const record = (made: Made): Record => {
  const entries = [...(made.entries ?? [])].sort((a, b) => (a.file < b.file ? -1 : 1));
  return {
    aircraft: {
      place,
      name: "Test",
      type: "Test",
      units: made.units ?? "metric",
      timeZone: "UTC",
      start: "2025-01-01",
      people: new Map([["ins", INSPECTOR]]),
      tasks: ["gluing"],
      publicShows: [],
      body: [],
    },
    assemblies: byId(made.assemblies ?? [WING]),
    adhesives: byId(made.adhesives ?? [adhesive()]),
    finishes: byId(made.finishes ?? []),
    procedures: byId(made.procedures ?? [procedure()]),
    lots: byId(made.lots ?? LOTS),
    trials: new Map(),
    entries,
    climate: [],
    earlier: [],
    day: entries.at(-1)?.day ?? "2025-01-01",
  };
};

/** An entry that glues the batches and one that holds the tests, in one record. */
export const glued = (batches: readonly Batch[], tests: readonly PieceTest[], made: Made = {}): Record => {
  const days = (things: readonly { entry: string }[]): string[] => [...new Set(things.map((thing) => thing.entry))];
  const entries = [
    ...days(batches).map((id) => entry(id, { batches: batches.filter((one) => one.entry === id) })),
    ...days(tests).map((id) => entry(id, { tests: tests.filter((one) => one.entry === id) })),
  ];
  return record({ ...made, entries: [...entries, ...(made.entries ?? [])] });
};
