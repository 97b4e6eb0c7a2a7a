import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { SaidHoldPoint } from "./reckoned.ts";
import type { Entry, HoldPoint, Inspection } from "../../src/facts/types.ts";
import {
  assembly,
  batch,
  DAY,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  measurement,
  openItem,
  record,
  test,
} from "./make.ts";
import { mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const TESTS = entry("2025-03-20-tests", { tests: [test("B-1/1")] });
const GLUED = entry(`${DAY}-glue`, { batches: [batch("B-1", { joints: ["W-1", "W-2", "R-1"] })] });
const other = (change: Partial<Entry>): Entry => entry(`${DAY}-other`, change);
const looked = (...results: Inspection["result"][]): Entry[] =>
  results.map((result, i) =>
    entry(`2025-05-0${i + 1}-look`, {
      inspections: [
        inspection("CLOSE", {
          result,
          entry: `2025-05-0${i + 1}-look`,
          day: `2025-05-0${i + 1}`,
          remarks: "gap at rib 4",
        }),
      ],
    }),
  );

function fileOf(entries: readonly Entry[], change: Partial<HoldPoint> = {}): SaidHoldPoint {
  const assemblies = [
    assembly("aircraft", { holdPoints: [holdPoint("FLY", { assembly: "aircraft", kind: "flight" })] }),
    assembly("wing", {
      parent: "aircraft",
      joints: [joint("W-1"), joint("W-2")],
      holdPoints: [holdPoint("CLOSE", change)],
    }),
    assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] }),
    assembly("fin", { parent: "aircraft" }),
  ];
  const file = reckon(record({ assemblies, entries })).holdPoints.get("CLOSE");
  if (!file) throw new Error("no hold point");
  return file;
}

const brief = ({ state, needs }: SaidHoldPoint) => [
  state,
  ...needs.map((need) => `${need.about.id}${need.blocks ? " blocks" : ""}`),
];

describe("A hold point", () => {
  it("with every joint accepted and nothing open is ready", () => {
    const file = fileOf([GLUED, TESTS]);
    expect(brief(file)).toEqual(["ready"]);
    expect(file.joints).toEqual(["W-1", "W-2", "R-1"]);
    expect(file.signed).toBeUndefined();
    expect(file.inspections).toEqual([]);
  });

  it("is ahead while joints are not glued or their pieces not broken", () => {
    expect(brief(fileOf([]))).toEqual(["ahead", "W-1", "W-2", "R-1"]);
    expect(brief(fileOf([GLUED]))).toEqual(["ahead", "W-1", "W-2", "R-1"]);
    expect(fileOf([GLUED]).needs[0]).toMatchObject({
      sentence:
        "Joint W-1 is pending. Batch B-1, glued on 10 March 2025, is pending. Batch B-1 has not cured for so long yet. If the shop stays as it was it will have by 13 March 2025, 15:00; until then nothing may load the joint.",
      needs: "break the test pieces of its batches",
    });
  });

  it("asks only for the joints that it names", () => {
    expect(brief(fileOf([], { joints: ["W-2"] }))).toEqual(["ahead", "W-2"]);
  });

  it("is blocked by a joint that is unproven, quarantined or opened", () => {
    const unproven = entry(`${DAY}-glue`, { batches: [batch("B-1", { joints: ["W-1"], pieces: [] })] });
    expect(brief(fileOf([unproven], { joints: ["W-1"] }))).toEqual(["blocked", "W-1 blocks"]);
    const recall = entry("2025-04-01-recall", {
      recalls: [{ place, entry: "2025-04-01-recall", day: "2025-04-01", lot: "R-1", why: "mislabelled" }],
    });
    expect(brief(fileOf([GLUED, TESTS, recall], { joints: ["W-1"] }))).toEqual(["blocked", "W-1 blocks"]);
    const rework = entry("2025-04-01-rework", {
      reworks: [{ place, entry: "2025-04-01-rework", day: "2025-04-01", joints: ["W-1"], why: "gap" }],
    });
    const file = fileOf([GLUED, TESTS, rework], { joints: ["W-1", "W-2"] });
    expect(brief(file)).toEqual(["blocked", "W-1 blocks"]);
    expect(file.needs[0]).toMatchObject({
      sentence: "Joint W-1 is opened. It has not been glued again since it was opened.",
      needs: "glue it again",
    });
  });

  it("is blocked by open items before it, by its id or by its kind from its assembly or from within, until they are closed", () => {
    const raised = (change: object): Entry[] => [GLUED, TESTS, other({ raised: [openItem("O-1", change)] })];
    expect(brief(fileOf(raised({ before: "CLOSE" })))).toEqual(["blocked", "O-1 blocks"]);
    expect(brief(fileOf(raised({ before: "CLOSE", assembly: "fin" })))).toEqual(["blocked", "O-1 blocks"]);
    expect(brief(fileOf(raised({ before: "close-up" })))).toEqual(["blocked", "O-1 blocks"]);
    expect(brief(fileOf(raised({ before: "close-up", assembly: "rib" })))).toEqual(["blocked", "O-1 blocks"]);
    expect(brief(fileOf(raised({ before: "close-up", assembly: "fin" })))).toEqual(["ready"]);
    expect(brief(fileOf(raised({ before: "close-up", assembly: "aircraft" })))).toEqual(["ready"]);
    expect(brief(fileOf(raised({ before: "flight" })))).toEqual(["ready"]);
    expect(brief(fileOf(raised({ before: "FLY" })))).toEqual(["ready"]);
    expect(brief(fileOf(raised({})))).toEqual(["blocked", "O-1 blocks"]);
    expect(brief(fileOf(raised({ assembly: "fin" })))).toEqual(["ready"]);
    expect(brief(fileOf(raised({ before: "CLOSE", closedIn: "2025-03-20-tests" })))).toEqual(["ready"]);
    expect(fileOf(raised({ before: "CLOSE" })).needs[0]).toMatchObject({
      sentence: "O-1 is open since 10 March 2025: corner block.",
      restsOn: [
        { kind: "open item", id: "O-1" },
        { kind: "entry", id: "2025-03-10-other" },
      ],
    });
  });

  it("is blocked by departures of its assembly and within that nobody has accepted", () => {
    const departs = (change: object): Entry[] => [GLUED, TESTS, other({ departures: [departure("D-1", change)] })];
    expect(brief(fileOf(departs({})))).toEqual(["blocked", "D-1 blocks"]);
    expect(brief(fileOf(departs({ assembly: "rib" })))).toEqual(["blocked", "D-1 blocks"]);
    expect(brief(fileOf(departs({ assembly: "fin" })))).toEqual(["ready"]);
    expect(brief(fileOf(departs({ acceptedBy: "ins", reference: "letter 4" })))).toEqual(["ready"]);
  });

  it("is blocked by measurements out of tolerance, unless a departure answers for them, and then by that until it is accepted", () => {
    const out = { drawing: mm("61.0"), tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 } };
    const measured = (change: object, departures: Entry["departures"] = []): Entry[] => [
      GLUED,
      TESTS,
      other({ measurements: [measurement({ ...out, ...change })], departures }),
    ];
    expect(brief(fileOf(measured({})))).toEqual(["blocked", "2025-03-10-other blocks"]);
    expect(fileOf(measured({})).needs[0]?.sentence).toBe("rib height measures 62.0 mm, outside 61.0 mm ±0.5 mm.");
    expect(brief(fileOf(measured({ assembly: "rib" })))).toEqual(["blocked", "2025-03-10-other blocks"]);
    expect(brief(fileOf(measured({ assembly: "fin" })))).toEqual(["ready"]);
    expect(brief(fileOf(measured({ found: mm("61.5") })))).toEqual(["ready"]);
    expect(brief(fileOf(measured({ departure: "D-1" }, [departure("D-1", { assembly: "fin" })])))).toEqual([
      "blocked",
      "D-1 blocks",
    ]);
    expect(brief(fileOf(measured({ departure: "D-1" }, [departure("D-1")])))).toEqual(["blocked", "D-1 blocks"]);
    expect(
      brief(fileOf(measured({ departure: "D-1" }, [departure("D-1", { acceptedBy: "ins", reference: "letter 4" })]))),
    ).toEqual(["ready"]);
  });

  it("is passed once the last look at it was signed with nothing open", () => {
    expect(brief(fileOf([GLUED, TESTS, ...looked("signed")]))).toEqual(["passed"]);
    expect(fileOf([GLUED, TESTS, ...looked("not signed", "signed")])).toMatchObject({
      state: "passed",
      signed: { result: "signed", day: "2025-05-02" },
      inspections: [{}, {}],
    });
    const open = other({ raised: [openItem("O-1", { before: "CLOSE" })] });
    expect(brief(fileOf([GLUED, TESTS, open, ...looked("signed")]))).toEqual([
      "signed with things open",
      "O-1 blocks",
      "CLOSE blocks",
    ]);
  });

  it("is blocked where the last look at it was not signed", () => {
    const file = fileOf([GLUED, TESTS, ...looked("signed", "not signed")]);
    expect(brief(file)).toEqual(["blocked", "CLOSE blocks"]);
    expect(file.signed).toBeUndefined();
    expect(file.needs[0]?.sentence).toBe("It was looked at on 2 May 2025 and not signed: gap at rib 4.");
  });

  it("is not passed by a signature that the builder tells of: on a paper, by its number or as a scan, it is", () => {
    const signed = (change: object, ...more: Entry[]) =>
      fileOf([
        GLUED,
        TESTS,
        entry("2025-05-02-look", {
          inspections: [inspection("CLOSE", { entry: "2025-05-02-look", day: "2025-05-02", ...change })],
        }),
        ...more,
      ]);
    const told = signed({ reference: undefined });
    expect(brief(told)).toEqual(["ready", "CLOSE"]);
    expect(told.signed).toBeUndefined();
    expect(told.remarks).toEqual([]);
    expect(told.needs).toMatchObject([
      {
        about: { kind: "hold point", id: "CLOSE" },
        sentence:
          "It is said to have been signed on 2 May 2025, on no paper that is named or scanned: the builder's word does not count.",
        needs: "have it signed on a paper, and note its number or add a scan of it",
        restsOn: [
          { kind: "hold point", id: "CLOSE" },
          { kind: "entry", id: "2025-05-02-look" },
        ],
      },
    ]);
    expect(brief(signed({ reference: undefined, scan: "papers/form-1.pdf" }))).toEqual(["passed"]);
    expect(brief(signed({ scan: "papers/form-1.pdf" }))).toEqual(["passed"]);
    const later = entry("2025-05-03-look", {
      inspections: [inspection("CLOSE", { entry: "2025-05-03-look", day: "2025-05-03", reference: undefined })],
    });
    expect(brief(signed({ result: "not signed", reference: undefined }, later))).toEqual([
      "blocked",
      "CLOSE blocks",
      "CLOSE",
    ]);
    expect(brief(signed({}, later))).toEqual(["passed", "CLOSE"]);
    expect(signed({ reference: undefined, by: "a" }).needs.map(({ sentence }) => sentence)).toEqual([
      "It was signed on 2 May 2025 by someone who is no inspector: that signature does not count.",
    ]);
  });
});
