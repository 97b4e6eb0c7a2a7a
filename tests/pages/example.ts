/** A small record with one of everything that pages of evidence tell of. */
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Site } from "../../src/editions/shown.ts";
import type { Person, Record, Trial } from "../../src/facts/types.ts";
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
  procedure,
  record,
  test,
} from "../evidence/make.ts";
import { d, g, mm, mpa, newton, pc, range } from "../evidence/quantities.ts";

const place = { file: "example.md", line: 1, column: 1 };
const person = (id: string, name: string, role: Person["role"], audience: Person["audience"] = "public"): Person => ({
  id,
  place,
  name,
  publicName: name.split(" ")[0] ?? name,
  role,
  audience,
});

const people = [
  person("ada", "Ada Vollmer", "builder"),
  person("jo", "Jo Ferrand", "helper", "inspector"),
  { ...person("ins", "Piet Hallam", "inspector"), authority: "Inspector 0421" },
];

const metres = (typed: string) => ({ typed: `${typed} m`, value: Number(typed), unit: "m", step: 0.1 });
const squareCentimetres = (typed: string) => ({
  typed: `${typed} cm²`,
  value: Number(typed) / 1e4,
  unit: "m²",
  step: 1e-4,
});

const lots = [
  lot("R-1", {
    title: "Resin, first tin",
    number: "88-1204",
    supplier: "Kettle Lane Stores",
    certificate: "certificates/r-1.pdf",
  }),
  lot("R-2", { title: "Resin, second tin", number: "88-1377" }),
  lot("H-1", { title: "Hardener", material: "hardener", number: "51-0090" }),
  lot("S-1", {
    title: "Spruce plank",
    material: "timber",
    adhesive: undefined,
    species: "Sitka spruce",
    moisture: pc("11.2"),
    amount: metres("24"),
    audience: "inspector",
  }),
  lot("P-1", {
    title: "Birch ply, 1.5 mm",
    material: "plywood",
    adhesive: undefined,
    amount: { typed: "2 m²", value: 2, unit: "m²", step: 1 },
  }),
];

const fin = assembly("fin", {
  title: "Fin",
  joints: [
    { ...joint("F-J1", "fin"), title: "Front post to lower rib" },
    { ...joint("F-J2", "fin"), title: "Rear post to lower rib" },
    { ...joint("F-J3", "fin"), title: "Skin, left face" },
  ],
  holdPoints: [holdPoint("F-H1", { title: "Before the left skin goes on", assembly: "fin", joints: ["F-J1", "F-J2"] })],
  tasks: [
    {
      id: "T-1",
      place,
      title: "Make the ribs",
      assembly: "fin",
      credit: { maker: 0, paid: 1, assembly: 2, fabrication: 7 },
    },
    {
      id: "T-2",
      place,
      title: "Make the fittings",
      assembly: "fin",
      credit: { maker: 10, paid: 0, assembly: 0, fabrication: 0 },
    },
    { id: "T-3", place, title: "Fit the floats", assembly: "fin" },
  ],
});

const kg = (typed: string) => ({ typed: `${typed} kg`, value: Number(typed), unit: "kg", step: 0.001 });
const weighing = (day: string, part: string, mass: string, change: object = {}) => ({
  place,
  entry: `${day}-tests`,
  day,
  assembly: "fin",
  part,
  mass: kg(mass),
  insteadOf: [],
  ...change,
});
const height = (entry: string, side: "left" | "right", found: string, change: object = {}) =>
  measurement({
    place: { ...place, line: side === "left" ? 2 : 3 },
    entry,
    what: `Height at the skin, ${side}`,
    assembly: "fin",
    pair: "skin-height",
    side,
    found: mm(found),
    ...change,
  });

const trial: Trial = {
  id: "sanding",
  place,
  title: "Sanded or scraped",
  question: "Does sanding before gluing change where the pieces break?",
  stated: "2025-03-01",
  expectation: "No difference.",
  preparations: [
    { id: "sanded", what: "80 grit, dusted" },
    { id: "scraped", what: "cabinet scraper" },
  ],
  audience: "public",
  body: [],
};

const legs = procedure({ title: "Three-leg pieces, quarter inch", pieces: 2, stress: mpa("5") });
const trialPiece = (n: number, preparation: string) => piece("B-001", n, { trial: "sanding", preparation });

const good = batch(
  "B-001",
  {
    joints: ["F-J1"],
    pieces: [piece("B-001", 1), piece("B-001", 2, { lot: "S-1" }), trialPiece(3, "sanded"), trialPiece(4, "scraped")],
  },
  "2025-03-10",
);
const offRatio = batch(
  "B-002",
  {
    joints: ["F-J2"],
    resin: { lot: "R-1", mass: g("40.0") },
    hardener: { lot: "H-1", mass: g("22.6") },
    pieces: [piece("B-002", 1, { overlap: mm("30.0") }), piece("B-002", 2)],
  },
  "2025-03-12",
);
const again = batch(
  "B-003",
  { joints: ["F-J2"], resin: { lot: "R-2", mass: g("40.0") }, pieces: [piece("B-003", 1), piece("B-003", 2)] },
  "2025-03-25",
);
const hidden = batch(
  "B-004",
  {
    joints: ["F-J3"],
    temperature: undefined,
    resin: { mass: g("30.0") },
    hardener: { lot: "H-1", mass: g("15.0") },
    pieces: [],
  },
  "2025-03-28",
);

const entries = [
  entry("2025-03-10-glue", {
    title: "Lower rib",
    assembly: "fin",
    cuts: [
      cut(metres("1.2"), { entry: "2025-03-10-glue" }),
      cut(squareCentimetres("4500"), { entry: "2025-03-10-glue", lot: "P-1" }),
    ],
    batches: [good],
    hours: [
      { place, who: "ada", task: "gluing", minutes: 150, typed: "2:30", assembly: "fin" },
      { place, who: "jo", task: "gluing", minutes: 60, typed: "1:00", assembly: "fin" },
    ],
    photos: [
      { place, file: "photos/rib.jpg", alt: "The lower rib in its clamps", audience: "public" },
      { place, file: "photos/jo.jpg", alt: "Jo holding the clamps", audience: "inspector" },
    ],
    raised: [
      openItem("O-1", {
        entry: "2025-03-10-glue",
        day: "2025-03-10",
        assembly: "fin",
        what: "Seal the end grain of the posts",
        before: "F-H1",
      }),
    ],
  }),
  entry("2025-03-12-glue", { title: "Rear post", assembly: "fin", batches: [offRatio] }),
  entry("2025-03-20-tests", {
    title: "Breaking the first pieces",
    assembly: "fin",
    tests: [
      test("B-001/1", { load: newton("980"), photo: "photos/b001-1.jpg", witness: "jo" }),
      test("B-001/2", { load: newton("1010"), note: "Fibres on both sides" }),
      test("B-001/3"),
      test("B-001/4", { failure: "mixed", woodFailure: pc("60") }),
      test("B-002/1"),
      test("B-002/2", { failure: "glue line", woodFailure: pc("10") }),
    ],
    measurements: [
      measurement({
        entry: "2025-03-20-tests",
        what: "Post spacing at the top",
        assembly: "fin",
        drawing: mm("212.0"),
        tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 },
        found: mm("213.1"),
        departure: "D-1",
      }),
      height("2025-03-20-tests", "left", "402.0"),
    ],
    weighed: [
      weighing("2025-03-20", "Front post", "0.42", { arm: mm("-120.0") }),
      weighing("2025-03-20", "Front post, shaped", "0.39", { arm: mm("-118.0"), insteadOf: ["Front post"] }),
      weighing("2025-03-20", "Hinge", "0.051"),
    ],
    departures: [
      departure("D-1", {
        entry: "2025-03-20-tests",
        day: "2025-03-20",
        assembly: "fin",
        what: "Posts 1.1 mm too far apart at the top",
        why: "The jig had moved",
        audience: "inspector",
      }),
    ],
  }),
  entry("2025-03-25-glue", {
    title: "Rear post again",
    assembly: "fin",
    batches: [again],
    reworks: [
      { place, entry: "2025-03-25-glue", day: "2025-03-25", joints: ["F-J2"], why: "B-002 failed in the glue line" },
    ],
  }),
  entry("2025-03-28-glue", {
    title: "Left skin",
    assembly: "fin",
    cuts: [cut(squareCentimetres("3700"), { entry: "2025-03-28-glue", day: "2025-03-28", lot: "P-1" })],
    batches: [hidden],
    audience: "inspector",
    hours: [{ place, who: "ada", task: "gluing", minutes: 90, typed: "1:30", assembly: "fin" }],
    measurements: [height("2025-03-28-glue", "right", "403.5", { pairTolerance: mm("1.0") })],
    weighed: [{ ...weighing("2025-03-28", "Skin", "0.9", { arm: mm("20.0") }), entry: "2025-03-28-glue" }],
    scales: {
      place,
      entry: "2025-03-28-glue",
      day: "2025-03-28",
      what: "Fin in its cradle",
      left: kg("0.8"),
      right: kg("0.8"),
      third: kg("0.4"),
      at: "tail",
      mains: mm("100.0"),
      wheelbase: mm("500.0"),
    },
  }),
  entry("2025-04-02-look", {
    title: "A visit",
    assembly: "fin",
    recalls: [
      {
        place,
        entry: "2025-04-02-look",
        day: "2025-04-02",
        lot: "R-2",
        why: "The maker found the tin under strength",
        reference: "Notice 7",
      },
    ],
    inspections: [
      inspection("F-H1", {
        entry: "2025-04-02-look",
        day: "2025-04-02",
        by: "ins",
        result: "not signed",
        remarks: "Rear post to be done again",
        scan: "scans/visit.pdf",
      }),
    ],
  }),
];

export function exampleRecord(): Record {
  const made = record({
    lots,
    assemblies: [fin],
    entries,
    procedures: [{ ...legs, leastCure: { time: d("3") }, overlap: range("2 to 3 thicknesses", 2, 3) }],
  });
  return {
    ...made,
    trials: new Map([[trial.id, trial]]),
    aircraft: {
      ...made.aircraft,
      name: "Bulrush",
      type: "two-seat low wing",
      datum: "Rear face of the front post",
      designWeight: kg("3.0"),
      people: new Map(people.map((one) => [one.id, one])),
    },
  };
}

/** The example as a site, without pictures or files; prose is shown as it was typed. */
export function exampleSite(edition: Edition, made: Record = exampleRecord()): Site {
  return {
    shown: editionOf(made, reckon(made), edition),
    pictures: new Map(),
    clips: new Map(),
    files: new Map(),
    prose: ({ markdown }) => `<p>${markdown}</p>`,
  };
}
