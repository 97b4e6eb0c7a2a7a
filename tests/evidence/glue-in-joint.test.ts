/** What a joint holds and what state that leaves it in: by its batches' verdicts, by recalls of what is in it, by its timber. */
import { describe, expect, it } from "vitest";
import { heldBy } from "../../src/evidence/held.ts";
import { jointFile } from "../../src/evidence/joint.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { BatchVerdict } from "../../src/evidence/types.ts";
import type { Batch, Entry, JointSpec, Rework } from "../../src/facts/types.ts";
import { batch, entry, joint, lot, LOTS, record } from "./make.ts";

const place = { file: "", line: 1, column: 1 };
const DAYS = { first: "2025-03-10", opened: "2025-04-01", again: "2025-04-05", recalled: "2025-05-01" };
const END = entry("2025-12-01-end");
const JOINT = { kind: "joint", id: "W-1" };
const woods = ["S-2", "S-3", "S-4"].map((id) => lot(id, { material: "timber", adhesive: undefined, species: "ash" }));
const glue = (day: string, ...batches: readonly Partial<Batch>[]): Entry =>
  entry(`${day}-glue`, {
    batches: batches.map(({ id = "B-1", ...more }) => batch(id, { entry: `${day}-glue`, ...more }, day)),
  });
const open = (replaced?: Rework["replaced"], day = DAYS.opened): Entry =>
  entry(`${day}-open`, { reworks: [{ place, entry: `${day}-open`, day, joints: ["W-1"], why: "a gap", replaced }] });
const recall = (...lots: readonly string[]): Entry =>
  entry(`${DAYS.recalled}-recall`, {
    recalls: lots.map((one) => ({
      place,
      entry: `${DAYS.recalled}-recall`,
      day: DAYS.recalled,
      lot: one,
      why: "soft",
    })),
  });

interface About {
  readonly verdicts?: { readonly [id: string]: BatchVerdict };
  readonly entries: readonly Entry[];
  readonly structure?: JointSpec["structure"];
  readonly lots?: typeof LOTS;
}
function fileOf({ verdicts = {}, entries, structure = "secondary", lots = [] }: About) {
  const index = recordIndexOf(record({ entries: [...entries, END], lots: [...LOTS, ...woods, ...lots] }));
  const files = new Map(
    [...index.batches.values()].map((one) => {
      const verdict = verdicts[one.id] ?? "shown";
      return [one.id, { batch: one, verdict, findings: [], pieces: [], recalls: [] }] as const;
    }),
  );
  return jointFile(index, { ...joint("W-1"), structure }, files);
}
const told = (about: About) => {
  const { state, findings } = fileOf(about);
  for (const one of findings) expect([one.about, one.restsOn[0]]).toEqual([JOINT, JOINT]);
  return [
    state,
    ...findings
      .filter(({ rule }) => rule !== "joint-cure")
      .map(({ severity, code, values, restsOn }) => [
        `${severity} ${code}`,
        values,
        restsOn.slice(1).map(({ kind, id }) => `${kind} ${id}`),
      ]),
  ];
};

describe("The state of a joint", () => {
  const FIRST = glue(DAYS.first, {});
  const rests = ["batch B-1", "entry 2025-03-10-glue"];

  it.each<[BatchVerdict, string, string]>([
    ["shown", "shown", "meets joint-glued/batch"],
    ["pending", "pending", "waits joint-glued/batch"],
    ["not shown", "not shown", "unproven joint-glued/batch"],
    ["in no joint", "not shown", "unproven joint-glued/batch"],
    ["thrown away", "not shown", "unproven joint-glued/batch"],
    ["rejected", "quarantined", "rejects joint-quarantine/batch"],
  ])("of a batch that is %s is %s", (verdict, state, code) => {
    expect(told({ entries: [FIRST], verdicts: { "B-1": verdict } })).toEqual([
      state,
      [code, { batch: "B-1", day: DAYS.first, verdict }, rests],
    ]);
  });

  it("is that of the worst of its batches", () => {
    const both = glue(DAYS.first, {}, { id: "B-2" });
    const of = (one: BatchVerdict, two: BatchVerdict) =>
      fileOf({ entries: [both], verdicts: { "B-1": one, "B-2": two } }).state;
    const order = [
      ["rejected", "quarantined"],
      ["not shown", "not shown"],
      ["pending", "pending"],
      ["shown", "shown"],
    ] as const;
    order.forEach(([worse, state], at) => {
      for (const [better] of order.slice(at)) expect([of(worse, better), of(better, worse)]).toEqual([state, state]);
    });
  });

  it("is that of nothing glued, or of nothing glued again", () => {
    expect(told({ entries: [] })).toEqual(["not glued", ["waits joint-glued/never", {}, []]]);
    expect(told({ entries: [FIRST, open()] })).toEqual([
      "opened",
      ["caution joint-glued/reworked", { day: DAYS.opened, why: "a gap" }, [`entry ${DAYS.opened}-open`]],
      ["waits joint-glued/not-again", {}, []],
    ]);
  });

  it("waits for its own cure, and is not shown where nothing shows that", () => {
    const young = (structure: JointSpec["structure"]) => {
      const index = recordIndexOf(record({ entries: [FIRST] }));
      const [one] = index.batches.values();
      const file = one && ({ batch: one, verdict: "shown", findings: [], pieces: [], recalls: [] } as const);
      return file && jointFile(index, { ...joint("W-1"), structure }, new Map([["B-1", file]])).state;
    };
    expect([young("secondary"), young("primary")]).toEqual(["pending", "pending"]);
    expect(fileOf({ entries: [FIRST], structure: "primary" }).state).toBe("not shown");
  });

  it("is not shown while its timber is not as it is asked, and tells it", () => {
    const steep = lot("S-9", { material: "timber", adhesive: undefined, species: "spruce", grainSlope: "1 : 10" });
    const straight = { ...steep, id: "S-8", grainSlope: "1 : 15" };
    const of = (id: string) => fileOf({ entries: [glue(DAYS.first, { timber: [id] })], lots: [steep, straight] });
    expect([of("S-9").state, of("S-8").state]).toEqual(["not shown", "shown"]);
    const grades = (id: string) => of(id).findings.flatMap(({ rule, code }) => (rule === "timber-grade" ? [code] : []));
    expect([grades("S-9"), grades("S-8")]).toEqual([["timber-grade/slope-steep"], []]);
  });
});

describe("A recalled lot", () => {
  const because = { day: DAYS.recalled, why: "soft" };
  const from = (id: string) => [`lot ${id}`, `entry ${DAYS.recalled}-recall`];
  const last = (entries: readonly Entry[]) => {
    const [state, ...rest] = told({ entries });
    return [state, ...rest.filter((one) => String(one[0]).startsWith("rejects"))];
  };

  it("is in the joint by each batch that brought it, and by no other", () => {
    const entries = [glue(DAYS.first, {}, { id: "B-2", timber: ["S-2"] }, { id: "B-3", resin: { lot: "R-2" } })];
    expect(last([...entries, recall("R-1")])).toEqual([
      "quarantined",
      [
        "rejects joint-quarantine/recalled",
        { lot: "R-1", batches: ["B-1", "B-2"], ...because },
        [...from("R-1"), "batch B-1", "entry 2025-03-10-glue", "batch B-2"],
      ],
    ]);
    expect(last([...entries, recall("S-4")])).toEqual(["shown"]);
  });

  it("of timber stays in it with glue that was taken out, by the batches that brought it", () => {
    const entries = [glue(DAYS.first, { timber: ["S-2"] }, { id: "B-2", timber: ["S-3"] }), open()];
    expect(last([...entries, recall("S-2")])).toEqual([
      "quarantined",
      [
        "rejects joint-quarantine/left-in",
        { lot: "S-2", batches: ["B-1"], ...because },
        [...from("S-2"), "batch B-1", "entry 2025-03-10-glue"],
      ],
    ]);
    expect(last([...entries, recall("R-1")])).toEqual(["opened"]);
    const other = open([{ lot: "S-3", with: "S-4" }], "2025-04-02");
    expect((last([...entries, other, recall("S-2")])[1] as readonly unknown[])[0]).toBe(
      "rejects joint-quarantine/left-in",
    );
  });

  it("is out once a rework says by what it was replaced, and what was put in is in", () => {
    const replaced = [
      { lot: "S-4", with: "S-1" },
      { lot: "S-2", with: "S-3" },
    ];
    const opened = [glue(DAYS.first, { timber: ["S-2"] }), open(replaced)];
    const entries = [...opened, glue(DAYS.again, { id: "B-2", timber: [] })];
    expect(last([...entries, recall("S-2")])).toEqual(["not shown"]);
    const named = glue(DAYS.again, { id: "B-2", timber: ["S-1", "S-3"] });
    expect(last([...opened, named, recall("S-2")])).toEqual(["shown"]);
    expect(last([...entries, recall("S-3")])).toEqual([
      "quarantined",
      [
        "rejects joint-quarantine/put-in",
        { lot: "S-3", put: DAYS.opened, ...because },
        [...from("S-3"), `entry ${DAYS.opened}-open`],
      ],
    ]);
    const [, found] = last([...entries, recall("S-2", "S-3")]);
    expect((found as readonly unknown[])[1]).toMatchObject({ lot: "S-3" });
  });

  it("put in twice is told of the last time, and one that a batch names is told of that", () => {
    const twice = [
      glue(DAYS.first, { timber: ["S-2"] }),
      open([{ lot: "S-2", with: "S-3" }]),
      open([{ lot: "S-3", with: "S-3" }], "2025-04-03"),
    ];
    expect(last([...twice, glue(DAYS.again, { id: "B-2", timber: [] }), recall("S-3")])[1]).toEqual([
      "rejects joint-quarantine/put-in",
      { lot: "S-3", put: "2025-04-03", ...because },
      [...from("S-3"), "entry 2025-04-03-open"],
    ]);
    const named = last([...twice, glue(DAYS.again, { id: "B-2", timber: ["S-3"] }), recall("S-3")])[1];
    expect((named as readonly unknown[])[0]).toBe("rejects joint-quarantine/recalled");
  });
});

it("A joint holds by an entry what stands up to and in that entry", () => {
  const entries = [
    glue(DAYS.first, {}),
    open([{ lot: "S-1", with: "S-2" }]),
    glue(DAYS.again, { id: "B-2", timber: [] }),
  ];
  const index = recordIndexOf(record({ entries, lots: [...LOTS, ...woods] }));
  const held = (until?: number) => {
    const { batches, superseded, reworks, lots } = heldBy(index, joint("W-1"), until);
    return [batches.map(({ id }) => id), superseded.map(({ id }) => id), reworks.length, lots];
  };
  expect([held(-1), held(0), held(1), held(2)]).toEqual([
    [[], [], 0, []],
    [["B-1"], [], 0, ["R-1", "H-1", "S-1"]],
    [[], ["B-1"], 1, ["S-2"]],
    [["B-2"], ["B-1"], 1, ["R-1", "H-1", "S-2"]],
  ]);
  expect(held()).toEqual(held(2));
  const { batches, superseded, state } = fileOf({ entries });
  expect([batches, superseded, state]).toEqual([["B-2"], ["B-1"], "not shown"]);
});

it("A joint that was opened and glued in one entry holds the batch of that entry", () => {
  const [{ batches: again = [] } = {}] = [glue(DAYS.opened, { id: "B-2" })];
  const both = { ...open(), batches: again.map((one) => ({ ...one, entry: `${DAYS.opened}-open` })) };
  const { batches, superseded } = fileOf({ entries: [glue(DAYS.first, {}), both] });
  expect([batches, superseded]).toEqual([["B-2"], ["B-1"]]);
});
