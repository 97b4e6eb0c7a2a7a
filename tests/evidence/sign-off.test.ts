/** What reopens a hold point that was signed, and what does not. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { SaidHoldPoint } from "./reckoned.ts";
import type { Entry, HoldPoint, Measurement, Piece, Ref } from "../../src/facts/types.ts";
import {
  assembly,
  batch,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  measurement,
  openItem,
  piece,
  record,
  test,
} from "./make.ts";
import { mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const SIGNED = "2025-05-01";
const LATER = "2025-05-02";

/** Two joints of the wing and one of its rib, glued and accepted; the fin's joint is no part of it. */
const TREE = (change: Partial<HoldPoint> = {}) => [
  assembly("wing", { joints: [joint("W-1"), joint("W-2")], holdPoints: [holdPoint("CLOSE", change)] }),
  assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] }),
  assembly("fin", { joints: [joint("F-1", "fin")] }),
];

const sound = (id: string, joints: string[], day: string, change: object = {}) =>
  batch(id, { entry: `${day}-glue`, joints, ...change }, day);
const GLUED = entry("2025-03-10-glue", {
  batches: [
    sound("B-1", ["W-1", "W-2", "R-1"], "2025-03-10"),
    sound("B-2", ["F-1"], "2025-03-10", {
      resin: { lot: "R-2", mass: { typed: "40.0 g", value: 0.04, unit: "kg", step: 0.0001 } },
    }),
  ],
});
const TESTS = entry("2025-03-20-tests", { tests: [test("B-1/1"), test("B-2/1")] });

const signing = (change: Partial<Entry> = {}, day = SIGNED): Entry =>
  entry(`${day}-look`, { inspections: [inspection("CLOSE", { entry: `${day}-look`, day })], ...change });
const pointOf = (entries: readonly Entry[], change: Partial<HoldPoint> = {}): SaidHoldPoint => {
  const file = reckon(record({ assemblies: TREE(change), entries })).holdPoints.get("CLOSE");
  if (!file) throw new Error("no hold point");
  return file;
};

/** What an entry of a day holds, made for that day. */
type Happens = (id: string, day: string) => Partial<Entry>;

const amends =
  (about: Ref, entry_: string, change: object = {}): Happens =>
  (id, day) => ({
    amendments: [
      {
        place,
        entry: entry_,
        by: id,
        day,
        why: "misread",
        prose: false,
        withheld: false,
        changes: [
          {
            place,
            about,
            fact: "Batch B-1",
            value: "hardener mass",
            was: ["20.1 g"],
            is: ["20.0 g"],
            needs: [],
            audience: "public" as const,
            ...change,
          },
        ],
      },
    ],
  });
const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
const recall =
  (lot: string): Happens =>
  (id, day) => ({ recalls: [{ place, entry: id, day, lot, why: "mislabelled" }] });
const reject =
  (of: string): Happens =>
  (id, day) => ({ rejections: [{ place, entry: id, day, batch: of, why: "doubt" }] });
const rework =
  (...joints: string[]): Happens =>
  (id, day) => ({ reworks: [{ place, entry: id, day, joints, why: "gap" }] });
const departs =
  (change: object = {}): Happens =>
  (id, day) => ({ departures: [departure("D-1", { entry: id, day, ...change })] });
const raises =
  (change: object = {}): Happens =>
  (id, day) => ({ raised: [openItem("O-1", { entry: id, day, ...change })] });
const OUT = { drawing: mm("61.0"), tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 } };
const measures =
  (...all: Partial<Measurement>[]): Happens =>
  (id) => ({ measurements: all.map((change) => measurement({ entry: id, ...change })) });
const glues =
  (...joints: string[]): Happens =>
  (id, day) => ({ batches: [batch("B-9", { entry: id, joints }, day)] });
const SIDES = [
  { what: "left", pair: "P", side: "left" as const, found: mm("62.0"), pairTolerance: mm("0.5") },
  { what: "right", pair: "P", side: "right" as const, found: mm("63.0") },
];

const inEntry = (happens: Happens, day: string): Entry => entry(`${day}-it`, happens(`${day}-it`, day));
const after = (happens: Happens, change: Partial<HoldPoint> = {}): SaidHoldPoint =>
  pointOf([GLUED, TESTS, signing(), inEntry(happens, LATER)], change);
const told = (file: SaidHoldPoint): string[] => file.changes.map(({ sentence }) => sentence);

describe("A hold point that was signed", () => {
  it.each<[string, Happens, string[]]>([
    [
      "a batch glued into one of its joints",
      glues("W-2", "R-1", "F-1"),
      [`Batch B-9 was glued into joints W-2 and R-1 on ${LATER}.`, "Joint W-2 is pending.", "Joint R-1 is pending."],
    ],
    [
      "glue taken out of one",
      rework("W-1", "F-1"),
      [`Glue was taken out of joint W-1 on ${LATER}: gap.`, "Joint W-1 is opened."],
    ],
    [
      "a recall of a lot in them",
      recall("R-1"),
      [
        `Lot R-1, which is in joints W-1, W-2 and R-1, was recalled on ${LATER}: mislabelled.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    [
      "a recall of their timber",
      recall("S-1"),
      [
        `Lot S-1, which is in joints W-1, W-2 and R-1, was recalled on ${LATER}: mislabelled.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    [
      "a rejection of their batch",
      reject("B-1"),
      [
        `Batch B-1, which is in joints W-1, W-2 and R-1, was rejected on ${LATER}: doubt.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    ["a departure on its assembly", departs(), [`Departure D-1 was noted on ${LATER}: another packer.`]],
    [
      "a departure within, accepted or not",
      departs({ assembly: "rib", acceptedBy: "ins", reference: "letter 4" }),
      [`Departure D-1 was noted on ${LATER}: another packer.`],
    ],
    [
      "an open item before it",
      raises({ before: "CLOSE", assembly: "fin" }),
      [`Open item O-1 was raised on ${LATER}, to be done before it: corner block.`],
    ],
    [
      "an open item before its kind from within, closed or not",
      raises({ before: "close-up", assembly: "rib", closedIn: `${LATER}-it` }),
      [`Open item O-1 was raised on ${LATER}, to be done before it: corner block.`],
    ],
    [
      "a measurement out of tolerance, with a departure or not",
      measures({ ...OUT, departure: "D-7" }),
      ["rib height was measured as 62.0 mm, outside 61.0 mm ±0.5 mm."],
    ],
    [
      "a measurement out of its limits within",
      measures({ limits: { typed: "at most 61 mm", most: 0.061 }, assembly: "rib" }),
      ["rib height was measured as 62.0 mm, outside at most 61 mm."],
    ],
    [
      "an amendment of its batch, though nothing comes of it",
      amends(ref("batch", "B-1"), "2025-03-10-glue"),
      [`Amended on ${LATER}: Batch B-1, hardener mass: was 20.1 g, is 20.0 g, because: misread.`],
    ],
    [
      "an amendment of a test piece of it",
      amends(ref("piece", "B-1/1"), "2025-03-20-tests", {
        fact: "Test of B-1/1",
        value: "wood failure",
        was: ["90 %"],
        is: ["100 %"],
      }),
      [`Amended on ${LATER}: Test of B-1/1, wood failure: was 90 %, is 100 %, because: misread.`],
    ],
    [
      "a pair whose sides differ",
      measures(...SIDES),
      ["The sides of P differ by more than they may: left 62.0 mm, right 63.0 mm, where 0.5 mm is allowed."],
    ],
  ])("is reopened by %s", (_, happens, sentences) => {
    const file = after(happens);
    expect([file.state, told(file)]).toEqual(["reopened", sentences]);
    expect(file.signed).toMatchObject({ day: SIGNED });
  });

  it.each<[string, Happens]>([
    ["an amendment of another batch", amends(ref("batch", "B-2"), "2025-03-10-glue")],
    ["an amendment of who watched", amends(ref("piece", "B-1/1"), "2025-03-20-tests", { was: [ref("person", "ann")] })],
    ["a batch in another joint", glues("F-1")],
    ["glue taken out of another", rework("F-1")],
    ["a recall of a lot that is in none of them", recall("R-2")],
    ["a rejection of another batch", reject("B-2")],
    ["a departure elsewhere", departs({ assembly: "fin" })],
    ["an open item before nothing that was closed", raises({ closedIn: `${LATER}-it` })],
    ["one before another kind", raises({ before: "flight" })],
    ["one before its kind elsewhere", raises({ before: "close-up", assembly: "fin" })],
    ["a measurement out elsewhere", measures({ ...OUT, assembly: "fin" })],
    ["one within its tolerance", measures({ ...OUT, found: mm("61.2") })],
    ["one without a tolerance", measures({})],
    ["a pair within its tolerance", measures(...SIDES.map((side) => ({ ...side, found: mm("62.0") })))],
    ["a pair out elsewhere", measures(...SIDES.map((side) => ({ ...side, assembly: "fin" })))],
  ])("stays passed after %s", (_, happens) => {
    expect(after(happens)).toMatchObject({ state: "passed", changes: [] });
  });

  it("stays passed after what happens to joints that it does not name", () => {
    for (const happens of [glues("W-2"), rework("W-2", "R-1")])
      expect(after(happens, { joints: ["W-1"] })).toMatchObject({ state: "passed", changes: [] });
    expect(after(glues("W-2"), { joints: ["W-2"] }).state).toBe("reopened");
  });

  it("is reopened by amendments of what it rested on besides glue: departures, open items before it, measurements", () => {
    const before = entry("2025-04-01-m", {
      departures: [departure("D-1", { entry: "2025-04-01-m", acceptedBy: "ins", reference: "letter 4" })],
      raised: [openItem("O-1", { entry: "2025-04-01-m", before: "CLOSE", closedIn: "2025-04-01-m" })],
      measurements: [
        measurement({ entry: "2025-04-01-m", what: "depth" }),
        measurement({ entry: "2025-04-01-m", what: "mass", assembly: "fin" }),
      ],
    });
    const state = (happens: Happens): string =>
      pointOf([GLUED, TESTS, before, signing(), inEntry(happens, LATER)]).state;
    expect(state(amends(ref("departure", "D-1"), "2025-04-01-m"))).toBe("reopened");
    expect(state(amends(ref("open item", "O-1"), "2025-04-01-m"))).toBe("reopened");
    expect(state(amends(ref("entry", "2025-04-01-m"), "2025-04-01-m", { fact: "Measurement: depth" }))).toBe(
      "reopened",
    );
    expect(state(amends(ref("entry", "2025-04-01-m"), "2025-04-01-m", { fact: "Measurement: mass" }))).toBe("passed");
    expect(state(amends(ref("entry", "2025-04-01-m"), "2025-04-01-m", { fact: "Hours" }))).toBe("passed");
    expect(
      pointOf([GLUED, TESTS, before, inEntry(amends(ref("departure", "D-1"), "2025-04-01-m"), "2025-04-30"), signing()])
        .state,
    ).toBe("passed");
    expect(
      pointOf([GLUED, TESTS, before, signing(), inEntry(amends(ref("departure", "D-1"), "2025-04-01-m"), LATER)])
        .changes[0]?.restsOn,
    ).toEqual([ref("departure", "D-1"), ref("entry", `${LATER}-it`), ref("entry", "2025-04-01-m")]);
  });

  it("counts what stands in the entry of the signature or before it as seen", () => {
    for (const happens of [
      departs(),
      raises({ before: "CLOSE" }),
      measures({ ...OUT, departure: "D-7" }),
      measures(...SIDES),
    ]) {
      for (const file of [
        pointOf([GLUED, TESTS, inEntry(happens, "2025-04-30"), signing()]),
        pointOf([GLUED, TESTS, signing(happens(`${SIGNED}-look`, SIGNED))]),
      ])
        expect([file.state === "reopened", file.changes]).toEqual([false, []]);
      expect(pointOf([GLUED, TESTS, inEntry(happens, LATER), signing()]).state).toBe("reopened");
    }
  });

  it("goes by the order of entries on the day of the signature", () => {
    const accepted = departs({ acceptedBy: "ins", reference: "letter 4" });
    const early = entry(`${SIGNED}-a`, accepted(`${SIGNED}-a`, SIGNED));
    const late = entry(`${SIGNED}-z`, accepted(`${SIGNED}-z`, SIGNED));
    expect(pointOf([GLUED, TESTS, early, signing()]).state).toBe("passed");
    expect(pointOf([GLUED, TESTS, late, signing()]).state).toBe("reopened");
  });

  it("was signed with things open where a counting piece of its batches was broken only later, and tells of one that failed", () => {
    const whole = [piece("B-1", 1), piece("B-1", 2), piece("B-1", 3, { trial: "T" })];
    const gluedOf = (pieces: Piece[]) =>
      entry("2025-03-10-glue", {
        batches: [
          sound("B-1", ["W-1", "W-2", "R-1"], "2025-03-10", { pieces }),
          sound("B-2", ["F-1"], "2025-03-10", { pieces: [piece("B-2", 1), piece("B-2", 2)] }),
        ],
      });
    const breaks = (of: string, change: object = {}, pieces = whole): SaidHoldPoint =>
      pointOf([
        gluedOf(pieces),
        TESTS,
        signing(),
        entry(`${LATER}-tests`, { tests: [test(of, { entry: `${LATER}-tests`, ...change }, LATER)] }),
      ]);
    const noneWaits = whole.filter((one) => one.id !== "B-1/2");
    const file = breaks("B-1/2", { failure: "glue line" });
    expect([file.state, told(file)[0]]).toEqual([
      "signed with things open",
      `Test piece B-1/2, for joints W-1, W-2 and R-1, failed on ${LATER}.`,
    ]);
    expect(file.changes[0]).toEqual({
      about: { kind: "piece", id: "B-1/2" },
      sentence: told(file)[0],
      restsOn: [
        { kind: "piece", id: "B-1/2" },
        { kind: "entry", id: `${LATER}-tests` },
      ],
    });
    expect(breaks("B-1/2").state).toBe("signed with things open");
    expect(breaks("B-1/3", { failure: "glue line" }, noneWaits).state).toBe("passed");
    expect(breaks("B-2/2", { failure: "glue line" }, noneWaits).state).toBe("passed");
  });

  it("tells of recalls, rejections and failures before the signature only by the state that its joints are left in", () => {
    const pieces = [piece("B-1", 1), piece("B-1", 2)];
    const glued = entry("2025-03-10-glue", { batches: [sound("B-1", ["W-1"], "2025-03-10", { pieces })] });
    const failed = entry("2025-03-21-tests", {
      tests: [
        test("B-1/1", { entry: "2025-03-21-tests" }, "2025-03-21"),
        test("B-1/2", { entry: "2025-03-21-tests", failure: "glue line" }, "2025-03-21"),
      ],
    });
    for (const file of [
      pointOf([glued, failed, signing()], { joints: ["W-1"] }),
      ...[recall("R-1"), reject("B-1")].map((happens) =>
        pointOf([GLUED, TESTS, inEntry(happens, "2025-04-30"), signing()], { joints: ["W-1"] }),
      ),
    ])
      expect([file.state, file.changes]).toEqual(["signed with things open", []]);
  });

  it("leads from each change to what it is about, and rests on it, on its entry and on whatever else it speaks of", () => {
    const later = ref("entry", `${LATER}-it`);
    const first = (happens: Happens): unknown => {
      const [change] = after(happens, { joints: ["W-1"] }).changes;
      return [change?.about, ...(change?.restsOn ?? [])];
    };
    expect(first(glues("W-1"))).toEqual([ref("batch", "B-9"), ref("batch", "B-9"), later]);
    expect(first(rework("W-1"))).toEqual([later, later]);
    expect(first(reject("B-1"))).toEqual([ref("batch", "B-1"), ref("batch", "B-1"), later]);
    expect(first(departs())).toEqual([ref("departure", "D-1"), ref("departure", "D-1"), later]);
    expect(first(raises({ before: "CLOSE" }))).toEqual([ref("open item", "O-1"), ref("open item", "O-1"), later]);
    expect(first(measures(OUT))).toEqual([later, later]);
    expect(pointOf([signing()], { joints: ["W-1"] }).changes).toEqual([]);
  });

  it("rests what a recall changes on the batches that brought the lot, and on no others", () => {
    const day = "2025-03-10";
    const two = entry(`${day}-glue`, {
      batches: [
        sound("B-1", ["W-1"], day),
        sound("B-2", ["W-1"], day, { resin: { lot: "R-2" }, hardener: undefined }),
        sound("B-3", ["W-1"], day, { resin: undefined }),
      ],
    });
    const brought = (of: string): unknown[] =>
      pointOf([two, signing(), inEntry(recall(of), LATER)], { joints: ["W-1"] }).changes[0]?.restsOn.slice(2) ?? [];
    expect(brought("R-1")).toEqual([ref("batch", "B-1")]);
    expect(brought("H-1")).toEqual([ref("batch", "B-1"), ref("batch", "B-3")]);
    expect(brought("R-2")).toEqual([ref("batch", "B-2")]);
    expect(brought("S-1")).toEqual([ref("batch", "B-1"), ref("batch", "B-2"), ref("batch", "B-3")]);
  });

  it("is reopened by a pair from the day its last side was measured, whichever that was", () => {
    const [left, right] = SIDES.map((side) => measures(side));
    const tolerance = measures({ what: "left", pair: "P", side: "left", found: mm("62.0"), pairTolerance: mm("0.5") });
    if (!left || !right) throw new Error("two sides");
    for (const [before, then] of [
      [left, right],
      [right, left],
    ] as const) {
      const file = pointOf([GLUED, TESTS, inEntry(before, "2025-04-30"), signing(), inEntry(then, LATER)]);
      expect([file.state, file.changes.length, file.changes[0]?.about]).toEqual([
        "signed with things open",
        1,
        ref("entry", `${LATER}-it`),
      ]);
    }
    const thrice = pointOf([
      GLUED,
      TESTS,
      inEntry(tolerance, "2025-04-20"),
      inEntry(measures({ what: "left", pair: "P", side: "left", found: mm("62.0") }), "2025-04-30"),
      signing(),
      inEntry(right, LATER),
    ]);
    expect(thrice.changes[0]?.restsOn).toEqual(
      [`${LATER}-it`, "2025-04-30-it", "2025-04-20-it"].map((id) => ref("entry", id)),
    );
  });

  it("is signed with things open while one of its joints is not shown, though no later entry says why", () => {
    for (const [entries, sentence] of [
      [[GLUED, signing()], "Joint W-1 is pending."],
      [[GLUED, TESTS, inEntry(rework("W-1"), "2025-04-30"), signing()], "Joint W-1 is opened."],
      [[signing()], "Joint W-1 is not glued."],
    ] as const) {
      const file = pointOf(entries, { joints: ["W-1"] });
      expect(file).toMatchObject({ state: "signed with things open", changes: [] });
      expect(file.needs[0]?.sentence).toContain(sentence);
    }
  });

  it("tells what changed in the order of the record, and asks for another look as something that blocks", () => {
    const file = pointOf([
      GLUED,
      TESTS,
      signing(),
      inEntry(departs(), "2025-05-03"),
      entry("2025-05-02-x", recall("R-1")("2025-05-02-x", "2025-05-02")),
    ]);
    expect(
      told(file)
        .slice(0, 2)
        .map((sentence) => sentence.slice(0, 10)),
    ).toEqual(["Lot R-1, w", "Departure "]);
    const turned = pointOf([
      GLUED,
      TESTS,
      signing(),
      inEntry(measures(OUT), "2025-05-02"),
      inEntry(departs(), "2025-05-03"),
      inEntry(rework("W-1"), "2025-05-04"),
    ]);
    expect(
      told(turned)
        .slice(0, 3)
        .map((sentence) => sentence.slice(0, 4)),
    ).toEqual(["rib ", "Depa", "Glue"]);
    expect(file.needs.at(-1)).toEqual({
      about: { kind: "hold point", id: "CLOSE" },
      sentence: `It was signed on ${SIGNED}, and what was looked at has changed since.`,
      needs: "have it looked at again, with what has changed or was open",
      blocks: true,
      restsOn: [
        { kind: "hold point", id: "CLOSE" },
        { kind: "entry", id: `${SIGNED}-look` },
      ],
    });
    expect(file.changes[0]?.restsOn).toEqual([
      { kind: "lot", id: "R-1" },
      { kind: "entry", id: "2025-05-02-x" },
      { kind: "batch", id: "B-1" },
    ]);
  });

  it("is passed again once it is signed again, and blocked where the next look was not signed", () => {
    const again = (result: "signed" | "not signed"): Entry =>
      entry("2025-05-09-look", {
        inspections: [inspection("CLOSE", { entry: "2025-05-09-look", day: "2025-05-09", result })],
      });
    expect(
      pointOf([
        GLUED,
        TESTS,
        signing(),
        inEntry(departs({ acceptedBy: "ins", reference: "letter 4" }), LATER),
        again("signed"),
      ]),
    ).toMatchObject({ state: "passed", changes: [], needs: [] });
    expect(
      pointOf([
        GLUED,
        TESTS,
        signing(),
        inEntry(departs({ acceptedBy: "ins", reference: "letter 4" }), LATER),
        again("not signed"),
      ]),
    ).toMatchObject({ state: "blocked", changes: [] });
  });

  it("is reopened exactly where something later touches it, whatever else happens", () => {
    const touching: Happens[] = [
      glues("W-1"),
      rework("R-1"),
      recall("H-1"),
      reject("B-1"),
      departs(),
      raises({ before: "close-up" }),
      measures(OUT),
    ];
    const beside: Happens[] = [
      glues("F-1"),
      rework("F-1"),
      recall("R-2"),
      departs({ assembly: "fin" }),
      raises({ before: "flight" }),
      measures({ found: mm("61.2") }),
    ];
    fc.assert(
      fc.property(
        fc.subarray(beside),
        fc.option(fc.constantFrom(...touching), { nil: undefined }),
        fc.nat(6),
        (around, it, at) => {
          const all = [...around.slice(0, at), ...(it ? [it] : []), ...around.slice(at)].map((happens, n): Entry => {
            const id = `2025-05-${String(n + 2).padStart(2, "0")}-it`;
            return entry(id, happens(id, id.slice(0, 10)));
          });
          expect(pointOf([GLUED, TESTS, signing(), ...all]).state).toBe(it ? "reopened" : "passed");
        },
      ),
      { numRuns: 150 },
    );
  });
});
