/** Joints, recalls, reworks and the trace of lots. */
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Entry, Record } from "../../src/facts/types.ts";
import { assembly, batch, entry, holdPoint, joint, type Made, piece, record, test } from "./make.ts";
import { g } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const recallOf = (id: string, lot: string): Entry =>
  entry(id, { recalls: [{ place, entry: id, day: id.slice(0, 10), lot, why: "mislabelled" }] });
const reworkOf = (id: string, joints: string[], more: Partial<Entry> = {}): Entry =>
  entry(id, { reworks: [{ place, entry: id, day: id.slice(0, 10), joints, why: "glue taken out" }], ...more });
const glue = (id: string, ...batches: Entry["batches"]): Entry =>
  entry(id, { batches: batches.map((made) => ({ ...made, entry: id })) });
const broken = (...pieces: string[]): Entry =>
  entry("2025-12-01-tests", { tests: pieces.map((of) => test(of, {}, "2025-12-01")) });
const one = (id: string, day: string, change = {}) => batch(id, { joints: ["W-1"], ...change }, day);

const stateOf = (entries: readonly Entry[], made: Made = {}, id = "W-1") =>
  reckon(record({ ...made, entries })).joints.get(id);

describe("The state of a joint", () => {
  const FIRST = glue("2025-03-10-glue", one("B-1", "2025-03-10"));

  it("without a batch is not glued", () => {
    expect(stateOf([])).toMatchObject({ state: "not glued", batches: [], superseded: [], lots: [] });
    expect(stateOf([FIRST, broken("B-1/1")], {}, "W-2")?.state).toBe("not glued");
    expect(stateOf([])?.findings.map(({ severity, sentence }) => [severity, sentence])).toEqual([
      ["waits", "No batch has gone into it."],
    ]);
  });

  it("is that of its batch", () => {
    expect(stateOf([FIRST, broken("B-1/1")])).toMatchObject({
      state: "shown",
      batches: ["B-1"],
      lots: ["R-1", "H-1", "S-1"],
    });
    expect(stateOf([FIRST])).toMatchObject({
      state: "pending",
      findings: [
        { rule: "joint-glued", severity: "waits", sentence: "Batch B-1, glued on 10 March 2025, is pending." },
        {
          rule: "joint-cure",
          severity: "waits",
          sentence:
            "Batch B-1 has not cured for so long yet. If the shop stays as it was it will have by 13 March 2025, 15:00; until then nothing may load the joint.",
        },
      ],
    });
    expect(
      stateOf([
        glue("2025-03-10-glue", one("B-1", "2025-03-10", { moisture: undefined, humidity: undefined })),
        broken("B-1/1"),
      ])?.state,
    ).toBe("not shown");
    expect(
      stateOf([
        glue("2025-03-10-glue", one("B-1", "2025-03-10", { hardener: { lot: "H-1", mass: g("30.0") } })),
        broken("B-1/1"),
      ])?.state,
    ).toBe("quarantined");
  });

  it("is that of the worst of the batches made for it in one entry", () => {
    const second = (change = {}) => one("B-2", "2025-03-10", change);
    const of = (change: object, ...pieces: string[]) =>
      stateOf([glue("2025-03-10-glue", one("B-1", "2025-03-10"), second(change)), broken(...pieces)])?.state;
    expect(of({}, "B-1/1", "B-2/1")).toBe("shown");
    expect(of({}, "B-1/1")).toBe("pending");
    expect(of({}, "B-2/1")).toBe("pending");
    expect(of({ pieces: [] }, "B-1/1")).toBe("not shown");
    expect(of({ pieces: [] })).toBe("not shown");
    expect(of({ resin: { lot: "R-1", mass: g("90.0") } }, "B-1/1", "B-2/1")).toBe("quarantined");
  });

  it("is quarantined by the recall of a component or of timber, be it before or after gluing", () => {
    for (const lot of ["R-1", "H-1", "S-1"]) {
      expect(stateOf([FIRST, broken("B-1/1"), recallOf("2025-12-02-recall", lot)])?.state).toBe("quarantined");
      expect(stateOf([FIRST, broken("B-1/1"), recallOf("2025-03-01-recall", lot)])?.state).toBe("quarantined");
    }
    const file = stateOf([FIRST, broken("B-1/1"), recallOf("2025-12-02-recall", "R-1")]);
    expect(file?.findings.at(-1)).toMatchObject({
      rule: "joint-quarantine",
      severity: "rejects",
      sentence: "It holds lot R-1 by B-1, and that lot was recalled on 2 December 2025: mislabelled.",
    });
    expect(file?.findings.at(-1)?.restsOn).toEqual([
      { kind: "joint", id: "W-1" },
      { kind: "lot", id: "R-1" },
      { kind: "entry", id: "2025-12-02-recall" },
      { kind: "batch", id: "B-1" },
      { kind: "entry", id: "2025-03-10-glue" },
    ]);
  });

  it("names every batch by which a recalled lot is in it", () => {
    const both = glue("2025-03-10-glue", one("B-1", "2025-03-10"), one("B-2", "2025-03-10"));
    expect(stateOf([both, recallOf("2025-12-02-recall", "R-1")])?.findings.at(-1)?.sentence).toBe(
      "It holds lot R-1 by B-1, B-2, and that lot was recalled on 2 December 2025: mislabelled.",
    );
  });

  it("is not touched by the recall of another lot", () => {
    expect(stateOf([FIRST, broken("B-1/1"), recallOf("2025-12-02-recall", "R-2")])?.state).toBe("shown");
  });

  it("once reworked is opened, and counts only what is glued from then on", () => {
    const opened = stateOf([FIRST, broken("B-1/1"), reworkOf("2025-04-01-rework", ["W-1"])]);
    expect(opened).toMatchObject({ state: "opened", batches: [], superseded: ["B-1"], lots: ["S-1"] });
    expect(opened?.findings.map(({ severity, sentence }) => [severity, sentence])).toEqual([
      ["caution", "Opened for rework on 1 April 2025: glue taken out."],
      ["waits", "It has not been glued again since it was opened."],
    ]);
    const again = glue("2025-04-05-again", one("B-2", "2025-04-05"));
    expect(stateOf([FIRST, again, broken("B-2/1"), reworkOf("2025-04-01-rework", ["W-1"])])).toMatchObject({
      state: "shown",
      batches: ["B-2"],
      superseded: ["B-1"],
    });
    expect(stateOf([FIRST, again, broken("B-1/1"), reworkOf("2025-04-01-rework", ["W-1"])])?.state).toBe("pending");
    expect(stateOf([FIRST, broken("B-1/1"), reworkOf("2025-04-01-rework", ["W-2"])])?.state).toBe("shown");
  });

  it("reworked and glued in one entry holds the batch of that entry", () => {
    const entries = [
      FIRST,
      broken("B-1/1", "B-2/1"),
      reworkOf("2025-04-01-rework", ["W-1"], { batches: [one("B-2", "2025-04-01", { entry: "2025-04-01-rework" })] }),
    ];
    expect(stateOf(entries)).toMatchObject({ state: "shown", batches: ["B-2"], superseded: ["B-1"] });
  });

  it("reworked twice holds only what came after the last", () => {
    const entries = [
      FIRST,
      reworkOf("2025-04-01-rework", ["W-1"]),
      glue("2025-04-02-again", one("B-2", "2025-04-02")),
      reworkOf("2025-04-03-rework", ["W-1"]),
    ];
    expect(stateOf(entries)).toMatchObject({ state: "opened", superseded: ["B-1", "B-2"] });
    expect(stateOf([...entries, glue("2025-04-03-third", one("B-3", "2025-04-03"))])).toMatchObject({
      state: "pending",
      batches: ["B-3"],
    });
  });

  it("with nothing ever glued is not glued, reworked or not", () => {
    expect(stateOf([reworkOf("2025-04-01-rework", ["W-1"])])?.state).toBe("not glued");
  });

  it("comes back after recall and rework with a batch of its own that is accepted", () => {
    const story = [FIRST, broken("B-1/1", "B-2/1"), recallOf("2025-04-01-recall", "R-1")];
    const again = one("B-2", "2025-04-05", { resin: { lot: "R-2", mass: g("40.0") } });
    expect(stateOf(story)?.state).toBe("quarantined");
    expect(stateOf([...story, reworkOf("2025-04-04-rework", ["W-1"])])?.state).toBe("opened");
    expect(stateOf([...story, reworkOf("2025-04-04-rework", ["W-1"]), glue("2025-04-05-again", again)])?.state).toBe(
      "shown",
    );
    expect(
      stateOf([...story, reworkOf("2025-04-04-rework", ["W-1"]), glue("2025-04-05-again", one("B-2", "2025-04-05"))])
        ?.state,
    ).toBe("quarantined");
  });
});

describe("The trace of a lot", () => {
  const made: Made = {
    assemblies: [
      assembly("aircraft", { holdPoints: [holdPoint("FLY", { assembly: "aircraft", kind: "flight" })] }),
      assembly("wing", {
        parent: "aircraft",
        joints: [joint("W-1"), joint("W-2")],
        holdPoints: [holdPoint("CLOSE", { joints: ["W-2"] })],
      }),
      assembly("fin", { parent: "aircraft", joints: [joint("F-1", "fin")] }),
    ],
  };
  const entries = [
    glue(
      "2025-03-10-glue",
      batch("B-1", { joints: ["W-1", "F-1"], pieces: [piece("B-1", 1, { lot: "S-1" })] }, "2025-03-10"),
    ),
    glue("2025-03-11-glue", batch("B-2", { joints: ["W-2"], timber: [] }, "2025-03-11")),
    reworkOf("2025-04-01-rework", ["W-1"]),
    recallOf("2025-04-02-recall", "R-1"),
  ];
  const traced = () => reckon(record({ ...made, entries }));

  it("finds its batches, pieces, joints now and formerly, assemblies and hold points", () => {
    const evidence = traced();
    expect(evidence.lots.get("R-1")).toMatchObject({
      batches: ["B-1", "B-2"],
      pieces: [],
      joints: ["F-1", "W-2"],
      formerJoints: ["W-1"],
      assemblies: ["fin", "wing"],
      holdPoints: ["FLY", "CLOSE"],
      recalls: [{ lot: "R-1" }],
    });
    expect(evidence.lots.get("S-1")).toMatchObject({
      batches: ["B-1"],
      pieces: ["B-1/1", "B-2/1"],
      joints: ["W-1", "F-1"],
      formerJoints: [],
      assemblies: ["wing", "fin"],
      holdPoints: ["FLY"],
      recalls: [],
    });
    expect(evidence.lots.get("R-2")).toMatchObject({
      batches: [],
      pieces: [],
      joints: [],
      formerJoints: [],
      assemblies: [],
      holdPoints: [],
    });
  });

  it("puts findings in the order of ids, pieces with their batch, then joints", () => {
    const evidence = traced();
    const about = [...new Set(evidence.findings.map((one) => one.about.id))];
    expect(about).toEqual(["B-1", "B-1/1", "B-2", "B-2/1", "F-1", "W-1", "W-2"]);
    expect([...evidence.pieces.keys()]).toEqual(["B-1/1", "B-2/1"]);
  });

  it("refuses a record that was not checked", () => {
    const broken = (change: object): Record =>
      record({ entries: [glue("2025-03-10-glue", batch("B-1", change, "2025-03-10"))] });
    expect(() => reckon(broken({ adhesive: "nothing" }))).toThrow(
      "the record was not checked: it names nothing and holds none",
    );
    expect(() => reckon(broken({ resin: { lot: "R-9" } }))).toThrow("it names R-9");
  });
});
