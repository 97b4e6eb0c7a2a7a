/** Each kind of need by itself: when there is one, what it is about, whether it blocks and what it rests on. */
import { describe, expect, it } from "vitest";
import { pairFile } from "../../src/evidence/measures/pair.ts";
import * as need from "../../src/evidence/readiness/needs.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Finding, HoldPointFile, HoldState, JointFile, JointState, Severity } from "../../src/evidence/types.ts";
import type { Departure, Measurement } from "../../src/facts/types.ts";
import { DAY, departure, entry, holdPoint, inspection, joint, measurement, openItem, record } from "./make.ts";
import { mm } from "./quantities.ts";
import { OUT, ref } from "./signed.ts";

const found = (rule: "joint-glued" | "joint-cure", severity: Severity, on = "B-1"): Finding => {
  const rests = { severity, about: ref("joint", "W-1"), restsOn: [ref("joint", "W-1"), ref("batch", on)] };
  return rule === "joint-cure"
    ? { rule, code: "joint-cure/waits", values: { batch: on, until: undefined }, ...rests }
    : { rule, code: "joint-glued/batch", values: { batch: on, day: DAY, verdict: "pending" }, ...rests };
};
const fileOf = (state: JointState, ...findings: Finding[]): JointFile => ({
  joint: joint("W-1"),
  state,
  findings,
  batches: [],
  superseded: [],
  reworks: [],
  lots: [],
});

describe("A joint", () => {
  it("that is shown needs nothing, and each other state its own", () => {
    const needs = (state: JointState) =>
      need.jointNeed(fileOf(state)).map(({ takes, blocks, about }) => [takes.code, blocks, about]);
    const about = ref("joint", "W-1");
    expect(needs("shown")).toEqual([]);
    expect(needs("not glued")).toEqual([["take/glue", false, about]]);
    expect(needs("not shown")).toEqual([["take/complete", true, about]]);
    expect(needs("quarantined")).toEqual([["take/rework", true, about]]);
    expect(needs("opened")).toEqual([["take/glue-again", true, about]]);
  });

  it("tells what is found against it and rests on that, not on what was met or cautioned", () => {
    const all = (["meets", "caution", "waits", "unproven", "rejects"] as const).map((severity, i) =>
      found("joint-glued", severity, `B-${i}`),
    );
    expect(need.jointNeed(fileOf("not shown", ...all))).toEqual([
      {
        about: ref("joint", "W-1"),
        code: "need/joint",
        values: {
          joint: "W-1",
          state: "not shown",
          told: ["B-2", "B-3", "B-4"].map((batch) => ({
            code: "joint-glued/batch",
            values: { batch, day: DAY, verdict: "pending" },
          })),
        },
        takes: { code: "take/complete", values: {} },
        blocks: true,
        restsOn: [ref("joint", "W-1"), ref("batch", "B-2"), ref("batch", "B-3"), ref("batch", "B-4")],
      },
    ]);
  });

  it("tells nothing of what an edition withholds, and still rests on it", () => {
    const { rule, severity, about, restsOn } = found("joint-glued", "waits");
    const hidden: Finding = { rule, severity, about, restsOn, code: "withheld", values: {} };
    const [withheld] = need.jointNeed(fileOf("pending", hidden));
    expect([withheld?.values, withheld?.restsOn]).toEqual([
      { joint: "W-1", state: "pending", told: [] },
      [ref("joint", "W-1"), ref("batch", "B-1")],
    ]);
  });

  it("has only to cure where it is pending and nothing but its cure waits", () => {
    const takes = (state: JointState, ...findings: Finding[]) => {
      const [first] = need.jointNeed(fileOf(state, ...findings));
      return [first?.takes.code, first?.blocks];
    };
    const cure = found("joint-cure", "waits");
    const cured = ["take/let-cure", false];
    expect(takes("pending", cure)).toEqual(cured);
    expect(takes("pending", found("joint-glued", "meets"), found("joint-glued", "caution"), cure)).toEqual(cured);
    for (const severity of ["waits", "unproven", "rejects"] as const)
      expect(takes("pending", cure, found("joint-glued", severity))).toEqual(["take/break-pieces", false]);
    expect(takes("not shown", cure)).toEqual(["take/complete", true]);
  });
});

it("An open item is done and closed in an entry, and blocks", () => {
  expect(need.openItemNeed(openItem("O-1"))).toEqual({
    about: ref("open item", "O-1"),
    code: "need/open-item",
    values: { id: "O-1", day: DAY, what: "corner block" },
    takes: { code: "take/close-item", values: {} },
    blocks: true,
    restsOn: [ref("open item", "O-1"), ref("entry", `${DAY}-other`)],
  });
});

describe("A departure", () => {
  const of = (change: Partial<Departure>) => {
    const index = recordIndexOf(record({ entries: [entry(`${DAY}-other`), entry("2025-04-01-letter")] }));
    return need.departureNeed(index, departure("D-1", change));
  };
  const accepted = { acceptedBy: "ins", acceptedIn: "2025-04-01-letter" };

  it("that an inspector accepted on a paper without a condition needs nothing", () => {
    expect(of({ ...accepted, reference: "letter 4" })).toEqual([]);
  });

  it("needs an acceptance, an inspector or a paper, by what it has", () => {
    const needs = (change: Partial<Departure>) =>
      of(change).map(({ code, takes, blocks }) => [code, takes.code, blocks]);
    expect(needs({})).toEqual([["need/departure", "take/acceptance", true]]);
    expect(needs({ acceptedBy: "nobody", reference: "letter 4" })).toEqual([
      ["need/departure-role", "take/acceptance", true],
    ]);
    expect(needs({ acceptedBy: "ins" })).toEqual([["need/departure-told", "take/paper", true]]);
  });

  it("rests on its entry, and on the one that accepts it", () => {
    expect(of({})[0]).toMatchObject({
      about: ref("departure", "D-1"),
      values: { id: "D-1", day: DAY, what: "another packer" },
      restsOn: [ref("departure", "D-1"), ref("entry", `${DAY}-other`)],
    });
    expect(of(accepted)[0]?.restsOn).toEqual([
      ref("departure", "D-1"),
      ref("entry", `${DAY}-other`),
      ref("entry", "2025-04-01-letter"),
    ]);
  });

  it("accepted on a condition is open until that is met, and tells it", () => {
    expect(of({ ...accepted, reference: "letter 4", condition: "inspect yearly" })).toEqual([
      {
        about: ref("departure", "D-1"),
        code: "need/departure-condition",
        values: { id: "D-1", day: DAY, what: "another packer", condition: "inspect yearly" },
        takes: { code: "take/meet-condition", values: {} },
        blocks: true,
        restsOn: [ref("departure", "D-1"), ref("entry", `${DAY}-other`), ref("entry", "2025-04-01-letter")],
      },
    ]);
  });
});

describe("What is out", () => {
  const HERE = `${DAY}-other`;
  const THERE = "2025-03-11-other";
  const beside = [entry(HERE, { departures: [departure("D-1"), departure("D-2")] }), entry(THERE)];
  const of = (measurements: readonly Measurement[]) =>
    recordIndexOf(
      record({
        entries: beside.map((one) => ({ ...one, measurements: measurements.filter(({ entry: id }) => id === one.id) })),
      }),
    );

  it("of a measurement tells of the departures noted beside it, which do not count for it", () => {
    const out = measurement(OUT);
    expect(need.measurementNeed(of([out]), out)).toEqual([
      {
        about: ref("entry", HERE),
        code: "need/measure-out",
        values: { what: "rib height", found: "62.0 mm", asked: "61.0 mm ±0.5 mm", beside: ["D-1", "D-2"] },
        takes: { code: "take/mend-measure", values: {} },
        blocks: true,
        restsOn: [ref("entry", HERE), ref("departure", "D-1"), ref("departure", "D-2")],
      },
    ]);
    const again = measurement({ ...OUT, found: mm("61.0"), entry: THERE });
    expect(need.measurementNeed(of([out, again]), out)).toEqual([]);
    expect(need.measurementNeed(of([out]), { ...out, departure: "D-1" })).toEqual([]);
    expect(need.measurementNeed(of([again]), again)).toEqual([]);
  });

  const side = (which: "left" | "right", found: string, change: Partial<Measurement> = {}) =>
    measurement({ what: which, pair: "P", side: which, found: mm(found), pairTolerance: mm("0.5"), ...change });
  const pairNeeds = (...sides: Measurement[]) => need.pairNeed(of(sides), pairFile(of(sides), "P", sides));

  it("of a pair is told on the later of its sides, with the departures noted beside either", () => {
    const values = {
      pair: "P",
      sides: [
        { side: "left", found: "62.0 mm" },
        { side: "right", found: "63.0 mm" },
      ],
      tolerance: "0.5 mm",
      beside: ["D-1", "D-2"],
    };
    const told = (about: string, rests: readonly string[]) => [
      {
        about: ref("entry", about),
        code: "need/pair-out",
        values,
        takes: { code: "take/mend-measure", values: {} },
        blocks: true,
        restsOn: [...rests.map((id) => ref("entry", id)), ref("departure", "D-1"), ref("departure", "D-2")],
      },
    ];
    expect(pairNeeds(side("left", "62.0"), side("right", "63.0"))).toEqual(told(HERE, [HERE]));
    expect(pairNeeds(side("left", "62.0"), side("right", "63.0", { entry: THERE }))).toEqual(
      told(THERE, [HERE, THERE]),
    );
    expect(pairNeeds(side("right", "63.0"), side("left", "62.0", { entry: THERE }))).toEqual(
      told(THERE, [THERE, HERE]),
    );
  });

  it("of a measurement that is only estimated is still to be measured", () => {
    const { typed, value, unit, step } = mm("61.0");
    const about = { typed: `about ${typed}`, about: { least: value, most: value }, unit, step };
    const out = measurement({ ...OUT, found: about });
    expect(need.measurementNeed(of([out]), out)).toEqual([
      {
        about: ref("entry", HERE),
        code: "need/measure-estimated",
        values: { what: "rib height", found: "about 61.0 mm", asked: "61.0 mm ±0.5 mm" },
        takes: { code: "take/measure-estimated", values: {} },
        blocks: false,
        restsOn: [ref("entry", HERE)],
      },
    ]);
    expect(need.measurementNeed(of([out]), { ...out, drawing: undefined, tolerance: undefined })).toEqual([]);
  });

  describe("and names a departure that was accepted before it was noted", () => {
    const letter = departure("D-1", { acceptedBy: "ins", acceptedIn: HERE, reference: "letter 4" });
    const known = (measurements: readonly Measurement[]) =>
      recordIndexOf(
        record({
          entries: [
            entry(HERE, { departures: [letter], measurements: measurements.filter((one) => one.entry === HERE) }),
            entry(THERE, { measurements: measurements.filter((one) => one.entry === THERE) }),
          ],
        }),
      );

    it("of a measurement asks for that to be accepted again", () => {
      const later = measurement({ ...OUT, entry: THERE, departure: "D-1" });
      expect(need.measurementNeed(known([later]), later)).toMatchObject([
        {
          code: "need/measure-after",
          values: { departures: ["D-1"] },
          takes: { code: "take/accept-again" },
          blocks: true,
          restsOn: [ref("entry", THERE), ref("departure", "D-1")],
        },
      ]);
    });

    it("of a pair asks for it where one side came later, whichever names it, and not where both had been noted", () => {
      const two = (left: Partial<Measurement>, right: Partial<Measurement>) => {
        const sides = [side("left", "62.0", left), side("right", "63.0", right)];
        return need
          .pairNeed(known(sides), pairFile(known(sides), "P", sides))
          .map(({ code, values, takes, restsOn }) => [
            code,
            "departures" in values ? values.departures : undefined,
            takes.code,
            restsOn.map(({ id }) => id),
          ]);
      };
      const after = [["need/pair-after", ["D-1"], "take/accept-again", [HERE, THERE, "D-1"]]];
      expect(two({ departure: "D-1" }, { entry: THERE })).toEqual(after);
      expect(two({}, { entry: THERE, departure: "D-1" })).toEqual(after);
      expect(two({ departure: "D-1" }, {})).toEqual([]);
      expect(two({}, { entry: THERE })).toEqual([
        ["need/pair-out", undefined, "take/mend-measure", [HERE, THERE, "D-1"]],
      ]);
    });
  });

  it("of a pair is answered for by a departure that either side names", () => {
    expect(pairNeeds(side("left", "62.0", { departure: "D-1" }), side("right", "63.0"))).toEqual([]);
    expect(pairNeeds(side("left", "62.0"), side("right", "63.0", { departure: "D-1" }))).toEqual([]);
    expect(pairNeeds(side("left", "62.0", { departure: "D-1" }))).toEqual([]);
  });

  it("of a pair of one side is only not done yet", () => {
    expect(pairNeeds(side("right", "62.0"))).toEqual([
      {
        about: ref("entry", HERE),
        code: "need/pair-one-side",
        values: { pair: "P", side: "right" },
        takes: { code: "take/other-side", values: {} },
        blocks: false,
        restsOn: [ref("entry", HERE)],
      },
    ]);
    expect(pairNeeds(side("left", "62.0"), side("right", "62.5"))).toEqual([]);
  });
});

describe("A look", () => {
  const look = inspection("CLOSE", { remarks: "a gap" });
  const about = ref("hold point", "CLOSE");
  const restsOn = [about, ref("entry", `${DAY}-other`)];

  it("that was not signed has to be answered, at the point itself and at one within", () => {
    const refused = { ...look, result: "not signed" as const };
    const beside = { about, takes: { code: "take/answer", values: {} }, blocks: true, restsOn };
    expect(need.inspectionNeed(refused)).toEqual([
      { ...beside, code: "need/not-signed", values: { day: DAY, remarks: "a gap" } },
    ]);
    expect(need.withinNeed(refused)).toEqual([
      { ...beside, code: "need/within-not-signed", values: { holdPoint: "CLOSE", day: DAY } },
    ]);
    for (const of of [need.inspectionNeed, need.withinNeed]) expect([...of(look), ...of(undefined)]).toEqual([]);
  });

  it("that something has changed since, or that left things open, has to be had again", () => {
    const beside = {
      about,
      values: { day: DAY },
      takes: { code: "take/look-again", values: {} },
      blocks: true,
      restsOn,
    };
    expect(need.reopenedNeed(look)).toEqual({ ...beside, code: "need/reopened" });
    expect(need.signedOpenNeed(look)).toEqual({ ...beside, code: "need/signed-open" });
  });
});

it("A hold point that comes first is to be passed, and blocks unless it is only ready or ahead", () => {
  const of = (state: HoldState) => {
    const lists = { joints: [], needs: [], changes: [], remarks: [], inspections: [] };
    const file: HoldPointFile = { holdPoint: holdPoint("NEXT"), state, ...lists };
    return need.holdPointNeed(file);
  };
  expect(of("passed")).toEqual([]);
  for (const state of ["blocked", "reopened", "signed with things open", "ready", "ahead"] as const)
    expect(of(state)).toEqual([
      {
        about: ref("hold point", "NEXT"),
        code: "need/hold-point",
        values: { holdPoint: "NEXT", state },
        takes: { code: "take/pass-first", values: {} },
        blocks: state !== "ready" && state !== "ahead",
        restsOn: [ref("hold point", "NEXT")],
      },
    ]);
});
