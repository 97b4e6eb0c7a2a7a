import { describe, expect, it } from "vitest";
import { dateWords } from "../../src/words/dates.ts";
import type { SaidHoldPoint } from "./reckoned.ts";
import type { Piece } from "../../src/facts/types.ts";
import { departure, entry, measurement, openItem, piece, test } from "./make.ts";
import { mm } from "./quantities.ts";
import {
  SIGNED,
  LATER,
  sound,
  GLUED,
  TESTS,
  signing,
  pointOf,
  type Happens,
  amends,
  ref,
  recall,
  reject,
  rework,
  departs,
  raises,
  OUT,
  measures,
  glues,
  SIDES,
  inEntry,
  after,
  told,
} from "./signed.ts";

describe("A hold point that was signed", () => {
  it.each<[string, Happens, string[]]>([
    [
      "a batch glued into one of its joints",
      glues("W-2", "R-1", "F-1"),
      [
        `Batch B-9 was glued into joints W-2 and R-1 on ${dateWords(LATER)}.`,
        "Joint W-2 is pending.",
        "Joint R-1 is pending.",
      ],
    ],
    [
      "glue taken out of one",
      rework("W-1", "F-1"),
      [`Glue was taken out of joint W-1 on ${dateWords(LATER)}: gap.`, "Joint W-1 is opened."],
    ],
    [
      "a recall of a lot in them",
      recall("R-1"),
      [
        `Lot R-1, which is in joints W-1, W-2 and R-1, was recalled on ${dateWords(LATER)}: mislabelled.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    [
      "a recall of their timber",
      recall("S-1"),
      [
        `Lot S-1, which is in joints W-1, W-2 and R-1, was recalled on ${dateWords(LATER)}: mislabelled.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    [
      "a rejection of their batch",
      reject("B-1"),
      [
        `Batch B-1, which is in joints W-1, W-2 and R-1, was rejected on ${dateWords(LATER)}: doubt.`,
        "Joint W-1 is quarantined.",
        "Joint W-2 is quarantined.",
        "Joint R-1 is quarantined.",
      ],
    ],
    ["a departure on its assembly", departs(), [`Departure D-1 was noted on ${dateWords(LATER)}: another packer.`]],
    [
      "a departure within, accepted or not",
      departs({ assembly: "rib", acceptedBy: "ins", reference: "letter 4" }),
      [`Departure D-1 was noted on ${dateWords(LATER)}: another packer.`],
    ],
    [
      "an open item before it",
      raises({ before: "CLOSE", assembly: "fin" }),
      [`Open item O-1 was raised on ${dateWords(LATER)}, to be done before it: corner block.`],
    ],
    [
      "an open item before its kind from within, closed or not",
      raises({ before: "close-up", assembly: "rib", closedIn: `${LATER}-it` }),
      [`Open item O-1 was raised on ${dateWords(LATER)}, to be done before it: corner block.`],
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
      [`Amended on ${dateWords(LATER)}: Batch B-1, hardener mass: was 20.1 g, is 20.0 g, because: misread.`],
    ],
    [
      "an amendment of a test piece of it",
      amends(ref("piece", "B-1/1"), "2025-03-20-tests", {
        fact: "Test of B-1/1",
        value: "wood failure",
        was: ["90 %"],
        is: ["100 %"],
      }),
      [`Amended on ${dateWords(LATER)}: Test of B-1/1, wood failure: was 90 %, is 100 %, because: misread.`],
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
      `Test piece B-1/2, for joints W-1, W-2 and R-1, failed on ${dateWords(LATER)}.`,
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
});
