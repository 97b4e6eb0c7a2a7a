/** What is told of a joint's own cure, and of what was done to it before that. */
import { describe, expect, it } from "vitest";
import type { Entry, Record } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import {
  adhesive,
  assembly,
  batch,
  entry,
  holdPoint,
  inspection,
  joint,
  type Made,
  piece,
  procedure,
  record,
  test,
} from "./make.ts";
import { jointCure } from "../../src/evidence/cure/joint-cure.ts";
import { caseOf } from "./one-rule.ts";
import { celsius, d, g, mm, min } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const place = { file: "", line: 1, column: 1 };
const SHEET = adhesive({ cure: [{ temperature: celsius("20"), time: d("20") }] });
const WING = assembly("wing", {
  joints: [{ ...joint("W-1"), structure: "primary" }, joint("W-2")],
  holdPoints: [holdPoint("CLOSE", { joints: ["W-1"] }), holdPoint("LOAD", { kind: "first load" })],
});
const GLUED = entry("2025-03-10-glue", { batches: [batch("B-1", { entry: "2025-03-10-glue" })] });
const TESTS = entry("2025-03-20-tests", { tests: [test("B-1/1")] });
const STEADY = log("shop", "2025-02-20", 24 * 60, () => ({ temperature: 20 }));

const recordOf = (more: readonly Entry[], made: Made = {}): Record => ({
  ...record({ assemblies: [WING], adhesives: [SHEET], ...made, entries: [GLUED, TESTS, ...more] }),
  climate: [STEADY],
});
const told = (of: Record) =>
  reckon(of)
    .joints.get("W-1")
    ?.findings.filter(({ rule }) => rule === "joint-cure")
    .map(({ severity, sentence }) => `${severity}: ${sentence}`);

describe("A joint's own cure", () => {
  it("is waited for from the closing of its batch on, by the sheet, and names the sheet", () => {
    expect(told(recordOf([]))).toEqual([
      "waits: Batch B-1 has not cured for so long yet. If the shop stays as it was it will have by 30 March 2025, 15:00; until then nothing may load the joint.",
    ]);
    const [finding] =
      reckon(recordOf([]))
        .joints.get("W-1")
        ?.findings.filter(({ rule }) => rule === "joint-cure") ?? [];
    expect(finding?.limit).toEqual({
      text: "20 d of cure at 20 °C before it may be loaded",
      from: { text: "Resorcin data sheet, revision 4", known: "record" },
    });
    expect(finding?.restsOn).toContainEqual({ kind: "climate log", id: "shop" });
  });

  it("is reached where the record's day begins after it", () => {
    expect(told(recordOf([entry("2025-03-31-later")]))).toEqual([
      "meets: The record shows that batch B-1 had cured by 30 March 2025, 15:00.",
    ]);
    expect(told(recordOf([entry("2025-03-30-later")]))?.[0]).toMatch(/^waits: /u);
  });

  it("is not shown where its days have passed and nothing tells how warm they were", () => {
    const short = { climate: [log("shop", "2025-02-20", 24 * 25, () => ({ temperature: 20 }))] };
    expect(told({ ...recordOf([entry("2025-05-31-later")]), ...short })).toEqual([
      "unproven: Of the 20 d that batch B-1 has to cure the record shows 6 d 9 h.",
    ]);
  });

  it("says that nothing tells when it will be, where no temperature is known", () => {
    const bare = entry("2025-03-10-glue", {
      batches: [batch("B-1", { entry: "2025-03-10-glue", temperature: undefined })],
    });
    const cold = adhesive({ cure: [{ temperature: celsius("60"), time: min("480") }] });
    const of = record({ assemblies: [WING], adhesives: [cold], entries: [bare] });
    expect(told(of)).toEqual([
      "waits: Batch B-1 has not cured for so long yet, and nothing says when it will have: nothing may load the joint.",
    ]);
  });

  it("is for the least cure of its pieces where the sheet gives none, and then three days", () => {
    const none = { adhesives: [adhesive()] };
    expect(told(recordOf([], none))).toEqual([
      "meets: The record shows that batch B-1 had cured by 13 March 2025, 15:00.",
    ]);
  });

  it("is for the longest of those that its pieces are to have, of two as long for that of the first piece", () => {
    const lasting = (id: string, days: string) =>
      procedure({ id, title: `Way ${id}`, leastCure: { time: d(days), temperature: celsius("20") } });
    const limitOf = (...ways: readonly [first: string, second: string, third: string]) => {
      const pieces = ways.map((way, n) => piece("B-1", n + 1, { procedure: way }));
      const of = record({
        assemblies: [WING],
        adhesives: [adhesive()],
        procedures: [lasting("A", "3"), lasting("B", "5"), lasting("C", "5")],
        entries: [entry("2025-03-10-glue", { batches: [batch("B-1", { entry: "2025-03-10-glue", pieces })] })],
      });
      return reckon(of)
        .joints.get("W-1")
        ?.findings.find(({ rule }) => rule === "joint-cure")?.limit;
    };
    expect(limitOf("A", "B", "C")).toMatchObject({
      text: "5 d of cure at 20 °C before it may be loaded",
      from: { text: "procedure: Way B" },
    });
    expect(limitOf("C", "A", "B")).toMatchObject({ from: { text: "procedure: Way C" } });
  });
});

describe("What comes before a joint has cured", () => {
  it("is told of a signature, with what may not happen before it", () => {
    const looked = (id: string, point: string) =>
      entry(id, { inspections: [inspection(point, { entry: id, day: id.slice(0, 10) })] });
    expect(
      told(
        recordOf([looked("2025-03-21-look", "CLOSE"), looked("2025-03-22-load", "LOAD"), entry("2025-03-31-later")]),
      ),
    ).toEqual([
      "meets: The record shows that batch B-1 had cured by 30 March 2025, 15:00.",
      "caution: CLOSE, before close-up, was signed on 21 March 2025, before batch B-1 had cured, by 30 March 2025, 15:00.",
      "caution: LOAD, before first load, was signed on 22 March 2025, before batch B-1 had cured, by 30 March 2025, 15:00.",
    ]);
    expect(told(recordOf([looked("2025-03-31-look", "CLOSE")]))).toHaveLength(1);
  });

  it("is told of a joint above it that was opened, and of no opening of its own", () => {
    const opened = (id: string, joints: string[]) =>
      entry(id, { reworks: [{ place, entry: id, day: id.slice(0, 10), joints, why: "a gap" }] });
    expect(told(recordOf([opened("2025-03-21-open", ["W-2"])]))?.slice(1)).toEqual([
      "caution: Joint W-2 above it was opened on 21 March 2025, before batch B-1 had cured, by 30 March 2025, 15:00.",
    ]);
    expect(told(recordOf([opened("2025-03-21-open", ["W-1"])]))).toEqual([]);
  });

  it("is told of a part that was weighed, and of the aircraft on its scales", () => {
    const id = "2025-03-21-weighed";
    const weighed = { place, entry: id, day: "2025-03-21", insteadOf: [], part: "Left wing", mass: g("18400") };
    const scales = { place, entry: id, day: "2025-03-21", left: g("100000"), right: g("100000"), third: g("20000") };
    const arms = { at: "tail" as const, mains: mm("1000"), wheelbase: mm("4000") };
    const of = (assemblyId: string) =>
      told(recordOf([entry(id, { weighed: [{ ...weighed, assembly: assemblyId }], scales: { ...scales, ...arms } })]));
    expect(of("wing")?.slice(1)).toEqual([
      "caution: It was weighed (Left wing) on 21 March 2025, before batch B-1 had cured, by 30 March 2025, 15:00.",
      "caution: The aircraft stood on the scales on 21 March 2025, before batch B-1 had cured, by 30 March 2025, 15:00.",
    ]);
    expect(of("fin")).toHaveLength(2);
  });

  it("leaves the hold point signed with things open, and says for which joint", () => {
    const looked = entry("2025-03-21-look", {
      inspections: [inspection("CLOSE", { entry: "2025-03-21-look", day: "2025-03-21" })],
    });
    const { state, needs } = reckon(recordOf([looked, entry("2025-03-31-later")])).holdPoints.get("CLOSE") ?? {};
    expect(state).toBe("signed with things open");
    expect(needs?.map(({ sentence }) => sentence)).toEqual([
      "Joint W-1 had not cured as its sheet asks yet when it was signed.",
      "It was signed on 21 March 2025 with things open.",
    ]);
  });

  it("leaves a hold point ahead while it cures, and says to let it cure", () => {
    const { state, needs } = reckon(recordOf([])).holdPoints.get("CLOSE") ?? {};
    expect([state, needs?.map((need) => need.needs)]).toEqual(["ahead", ["let it cure, and note how warm it was"]]);
  });
});

describe("How far a joint has cured", () => {
  const secondary = { ...joint("W-1"), structure: "secondary" as const };
  const cured = (about: Parameters<typeof caseOf>[0], of = secondary) => {
    const { index, batch: glue } = caseOf({ adhesives: [SHEET], ...about });
    return { index, ...jointCure(index, of, glue) };
  };

  it("is assumed of a secondary one only as far as the logger does not show the same", () => {
    expect(cured({ climate: [STEADY] }).assumed).toBeUndefined();
    expect(cured({}).assumed).toMatchObject({ temperature: 20 });
    const warmer = log("shop", "2025-02-20", 24 * 25, () => ({ temperature: 20 }));
    expect(cured({ climate: [warmer] }).assumed).toMatchObject({ temperature: 20 });
  });

  it("is by the days alone shown until the record's day, where nothing is known of the warmth and the sheet has no limit", () => {
    const sheet = adhesive({ cure: [], temperature: undefined });
    const { index, from, shown, assumed } = cured({
      adhesives: [sheet],
      batch: { temperature: undefined },
      entries: [entry("2025-03-12-last")],
    });
    expect([assumed, shown, shown > 86_400]).toEqual(["days", index.now - from, true]);
  });

  it("rests on what was logged until it had cured, or else until the record's day", () => {
    const after = log("after", "2025-04-15", 24, () => ({ temperature: 20 }));
    const rests = (climate: readonly ReturnType<typeof log>[]) =>
      cured({ climate, batch: { temperature: undefined }, entries: [entry("2025-05-01-last")] }).restsOn.map(
        ({ id }) => id,
      );
    expect(rests([STEADY, after])).toEqual(["shop"]);
    const short = log("short", "2025-03-10", 48, () => ({ temperature: 20 }));
    expect(rests([short, after])).toEqual(["short", "after"]);
  });
});
