/** Traces as pages draw them, against a search of the record itself. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "node-html-parser";
import { Lot } from "../../layouts/evidence/lot.tsx";
import { html } from "../../layouts/shell/page.tsx";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { madeOf, MOST, whereUsed, type Trace } from "../../src/pages/evidence/trace.ts";
import type { Batch, Entry, Record } from "../../src/facts/types.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import { assembly, batch, entry, holdPoint, joint, LOTS, record } from "../evidence/make.ts";
import { g } from "../evidence/quantities.ts";
import { exampleSite } from "./example.ts";

const shownOf = (made: Record): Shown => editionOf(made, reckon(made), "archive");
const lotOf = (shown: Shown, id: string) => {
  const file = shown.evidence.lots.get(id);
  if (!file) throw new Error(id);
  return file;
};
const jointOf = (shown: Shown, id: string) => {
  const file = shown.evidence.joints.get(id);
  if (!file) throw new Error(id);
  return file;
};
const keys = ({ nodes }: Trace): string[] => nodes.map(({ key }) => key);
const lines = ({ edges }: Trace): string[] => edges.map(({ from, to, gone }) => `${from} ${gone ? "-×-" : "→"} ${to}`);

describe("where a lot was used", () => {
  const { shown } = exampleSite("archive");

  test("goes over every batch and joint to the assemblies and hold points that it reaches", () => {
    const trace = whereUsed(shown, lotOf(shown, "R-2"));
    expect(lines(trace)).toEqual([
      "lot R-2 → batch B-003",
      "batch B-003 → joint F-J2",
      "joint F-J2 → assembly fin",
      "assembly fin → hold point F-H1",
    ]);
    expect(trace.nodes.map(({ label, word, mark }) => [label, word, mark])).toEqual([
      ["R-2", "recalled", "recall"],
      ["B-003", "pending, recalled", "recall"],
      ["F-J2", "quarantined", "quarantined"],
      ["Fin", "", undefined],
      ["F-H1", "blocked", "blocked"],
    ]);
    expect(trace.says).toBe("It went into 1 batch; it is in 1 joint of 1 assembly now and reaches 1 hold point.");
  });

  test("ends with a broken line where its glue was taken out, and reaches no hold point by it", () => {
    const trace = whereUsed(shown, lotOf(shown, "R-1"));
    expect(lines(trace)).toContain("batch B-002 -×- joint F-J2");
    expect(lines(trace)).toContain("joint F-J2 -×- assembly fin");
    expect(lines(trace)).toContain("batch B-001 → joint F-J1");
    expect(trace.says).toBe(
      "It went into 2 batches; it is in 1 joint of 1 assembly now and reaches 1 hold point. It was taken out of 1 joint.",
    );
    expect(trace.nodes.find(({ key }) => key === "joint F-J2")?.word).toBe("not in it, quarantined");
  });

  test("shows in an edition only what the edition shows", () => {
    const open = exampleSite("public").shown;
    expect(keys(whereUsed(open, lotOf(open, "H-1")))).not.toContain("batch B-004");
    expect(keys(whereUsed(open, lotOf(open, "H-1")))).not.toContain("joint F-J3");
    expect(keys(whereUsed(shown, lotOf(shown, "H-1")))).toEqual(expect.arrayContaining(["batch B-004", "joint F-J3"]));
  });

  test("holds each of several lots across a refill apart: only the lot that a batch names is traced to it", () => {
    const before = whereUsed(shown, lotOf(shown, "R-1"));
    expect(keys(before)).not.toContain("batch B-003");
    expect(keys(whereUsed(shown, lotOf(shown, "R-2")))).not.toContain("batch B-001");
    expect(keys(whereUsed(shown, lotOf(shown, "H-1"))).filter((key) => key.startsWith("batch"))).toEqual([
      "batch B-001",
      "batch B-002",
      "batch B-003",
      "batch B-004",
    ]);
  });
});

describe("what a joint is made of", () => {
  const { shown } = exampleSite("archive");

  test("goes back over its batches to their lots, those taken out with a broken line, and on to its hold points", () => {
    const trace = madeOf(shown, jointOf(shown, "F-J2"));
    expect(lines(trace).filter((line) => line.includes("joint F-J2"))).toEqual([
      "batch B-003 → joint F-J2",
      "batch B-002 -×- joint F-J2",
      "joint F-J2 → assembly fin",
    ]);
    expect(lines(trace)).toEqual(
      expect.arrayContaining([
        "lot R-2 → batch B-003",
        "lot R-1 → batch B-002",
        "lot H-1 → batch B-003",
        "lot H-1 → batch B-002",
        "assembly fin → hold point F-H1",
      ]),
    );
    expect(trace.says).toBe("It holds 1 batch of 3 lots, and 1 hold point asks for it. Taken out again: 1 batch.");
  });

  test("names the stage of each batch, where it is glued in stages", () => {
    const at = { place: { file: "entries/x.md", line: 1, column: 1 }, entry: "2025-03-10-glue", day: "2025-03-10" };
    const two = entry("2025-03-10-glue", {
      batches: [batch("B-1"), batch("B-2"), batch("B-3", { joints: ["W-2"] })],
      stages: [
        { ...at, joint: "W-1", stage: 1, of: 2, batches: ["B-1", "B-2"] },
        { ...at, joint: "W-1", stage: 2, of: 2, batches: ["B-2"], complete: true },
      ],
    });
    const wing = assembly("wing", { joints: [joint("W-1"), joint("W-2")] });
    const glued = shownOf(record({ assemblies: [wing], entries: [two] }));
    const labels = (id: string) =>
      madeOf(glued, jointOf(glued, id)).nodes.flatMap(({ key, label }) => (key.startsWith("batch") ? [label] : []));
    expect(labels("W-1")).toEqual(["B-1, stage 1", "B-2, stages 1 and 2"]);
    expect(madeOf(glued, jointOf(glued, "W-1")).says).toMatch(/^It holds 2 batches in 2 stages of /u);
    expect(labels("W-2")).toEqual(["B-3"]);
  });

  test("of two batches shows both, and a joint that is opened still leads to its hold points", () => {
    const two = entry("2025-03-10-glue", {
      batches: [batch("B-1"), batch("B-2", { resin: { lot: "R-2", mass: g("40.0") } })],
    });
    const wing = assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("H")] });
    const glued = shownOf(record({ assemblies: [wing], entries: [two] }));
    expect(lines(madeOf(glued, jointOf(glued, "W-1"))).filter((line) => line.startsWith("batch"))).toEqual([
      "batch B-1 → joint W-1",
      "batch B-2 → joint W-1",
    ]);
    const rework = entry("2025-04-10-open", {
      reworks: [
        {
          place: { file: "", line: 1, column: 1 },
          entry: "2025-04-10-open",
          day: "2025-04-10",
          joints: ["W-1"],
          why: "gap",
        },
      ],
    });
    const opened = shownOf(record({ assemblies: [wing], entries: [two, rework] }));
    expect(lines(madeOf(opened, jointOf(opened, "W-1"))).slice(-2)).toEqual([
      "joint W-1 → assembly wing",
      "assembly wing → hold point H",
    ]);
  });
});

describe("a trace", () => {
  const JOINTS = ["J-0", "J-1", "J-2", "J-3"];
  const tree = [
    assembly("a", {
      joints: JOINTS.slice(0, 2).map((id) => joint(id, "a")),
      holdPoints: [holdPoint("H-A", { assembly: "a" })],
    }),
    assembly("b", {
      parent: "a",
      joints: JOINTS.slice(2).map((id) => joint(id, "b")),
      holdPoints: [holdPoint("H-B", { assembly: "b", joints: ["J-3"] })],
    }),
  ];
  const act = fc.record({
    joints: fc.subarray(JOINTS, { minLength: 1 }),
    resin: fc.constantFrom("R-1", "R-2"),
    hardener: fc.constantFrom("H-1", "H-2"),
    timber: fc.boolean(),
    rework: fc.boolean(),
  });

  test("drawn from a lot reaches exactly what a search of the record reaches, batch by batch and joint by joint", () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 6 }), (acts) => {
        const entries = acts.map(({ joints, resin, hardener, timber, rework }, at): Entry => {
          const day = dayText(20_160 + at * 10);
          const id = `${day}-act`;
          return entry(id, {
            batches: [
              batch(
                `B-${at}`,
                {
                  entry: id,
                  joints,
                  resin: { lot: resin, mass: g("40.0") },
                  hardener: { lot: hardener, mass: g("20.0") },
                  timber: timber ? ["S-1"] : [],
                },
                day,
              ),
            ],
            reworks: rework ? [{ place: { file: "", line: 1, column: 1 }, entry: id, day, joints, why: "gap" }] : [],
          });
        });
        const shown = shownOf(record({ assemblies: tree, entries }));
        for (const { id } of LOTS) {
          const trace = whereUsed(shown, lotOf(shown, id));
          expect([...keys(trace)].sort()).toEqual([...searched(entries, id)].sort());
        }
      }),
      { numRuns: 120 },
    );
  });

  /** By going through all entries once a batch, with nothing kept in between. */
  function searched(entries: readonly Entry[], lot: string): Set<string> {
    const found = new Set([`lot ${lot}`]);
    const holds = ({ resin, hardener, timber }: Batch): boolean => [resin?.lot, hardener?.lot, ...timber].includes(lot);
    entries.forEach((one, at) =>
      one.batches.filter(holds).forEach((each) => {
        found.add(`batch ${each.id}`);
        for (const id of each.joints) {
          const home = JOINTS.indexOf(id) < 2 ? "a" : "b";
          found.add(`joint ${id}`).add(`assembly ${home}`);
          const opened = entries.slice(at + 1).some(({ reworks }) => reworks.some(({ joints }) => joints.includes(id)));
          if (opened && !each.timber.includes(lot)) continue;
          found.add("hold point H-A");
          if (id === "J-3") found.add("hold point H-B");
        }
      }),
    );
    return found;
  }

  test("too large to be drawn is drawn as far as there is room, the gravest first, says what is left out, and the list has all", () => {
    const many = Array.from({ length: 40 }, (_, at) => `J-${String(at + 10)}`);
    const made = many.map((id, at) =>
      batch(`B-${at + 10}`, {
        joints: [id],
        pieces:
          at === 35 ? [] : batch("x").pieces.map((one) => ({ ...one, id: `B-${at + 10}/1`, batch: `B-${at + 10}` })),
      }),
    );
    const shown = shownOf(
      record({
        assemblies: [assembly("wing", { joints: many.map((id) => joint(id)) })],
        entries: [entry("2025-03-10-glue", { batches: made })],
      }),
    );
    const trace = whereUsed(shown, lotOf(shown, "R-1"));
    const of = (column: string): string[] => keys(trace).filter((key) => key.startsWith(column));
    expect([of("batch").length, of("joint").length]).toEqual([MOST.batch, MOST.joint]);
    expect([of("batch").at(-1), of("joint").at(-1)]).toEqual(["batch B-45", "joint J-45"]);
    expect(trace.undrawn).toBe("30 batches and 24 joints");
    expect(trace.edges.every(({ from, to }) => keys(trace).includes(from) && keys(trace).includes(to))).toBe(true);
    const page = parse(
      html(
        Lot({
          site: { shown, pictures: new Map(), clips: new Map(), files: new Map(), prose: ({ markdown }) => markdown },
          file: lotOf(shown, "R-1"),
        }),
      ),
    );
    expect(page.querySelectorAll("#where-used-list tbody tr").length).toBe(40);
    expect(page.querySelector(".trace figcaption")?.text).toContain(
      "Not drawn for want of room: 30 batches and 24 joints.",
    );
  });

  test("is named and told in words, and each of its boxes is a link but the one of its own page", () => {
    const site = exampleSite("inspector");
    const page = parse(html(Lot({ site, file: lotOf(site.shown, "R-2") })));
    const svg = page.querySelector(".trace svg");
    expect(svg?.getAttribute("aria-labelledby")).toBe("trace-title trace-desc");
    expect(page.querySelector("#trace-title")?.text).toBe("Where lot R-2 was used");
    expect(page.querySelector(".trace .scroll")?.getAttribute("tabindex")).toBe("0");
    expect(svg?.querySelectorAll("a").map((a) => a.getAttribute("href"))).toEqual([
      "../batch/B-003.html",
      "../joint/F-J2.html",
      "../assembly/fin.html",
      "../hold-point/F-H1.html",
    ]);
    expect(svg?.querySelectorAll(".trace__box--here").length).toBe(1);
  });
});
