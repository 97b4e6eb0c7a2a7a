/** Joints that are glued over several sessions. */
import { describe, expect, it } from "vitest";
import type { Batch, Entry, Stage } from "../../src/facts/types.ts";
import { assembly, batch, entry, holdPoint, inspection, joint, record, test } from "./make.ts";
import { reckon } from "./reckoned.ts";

const place = { file: "", line: 1, column: 1 };
const [FIRST, SECOND] = ["2025-03-10-glue", "2025-04-10-glue"];

const stage = (entry: string, number: number, of?: number, change: Partial<Stage> = {}): Stage => ({
  place,
  entry,
  day: entry.slice(0, 10),
  joint: "W-1",
  stage: number,
  ...(of !== undefined && { of }),
  batches: [entry === FIRST ? "B-1" : "B-2"],
  ...change,
});
const LAST = { complete: true } as const;

function session(id: string, stages: readonly Stage[], change: Partial<Batch> = {}, more: Partial<Entry> = {}): Entry {
  const day = id.slice(0, 10);
  return entry(id, { stages, batches: [batch(id === FIRST ? "B-1" : "B-2", { ...change, entry: id }, day)], ...more });
}

const BROKEN = entry("2025-12-01-tests", { tests: ["B-1/1", "B-2/1"].map((piece) => test(piece, {}, "2025-12-01")) });

const fileOf = (entries: readonly Entry[], change = {}) =>
  reckon(
    record({
      entries: [...entries, BROKEN],
      assemblies: [assembly("wing", { joints: [{ ...joint("W-1"), ...change }], holdPoints: [holdPoint("H-1")] })],
    }),
  ).joints.get("W-1");

const told = (...given: Parameters<typeof fileOf>) =>
  fileOf(...given)
    ?.findings.filter(({ rule }) => rule === "joint-stages")
    .map(({ severity, sentence }) => `${severity}: ${sentence}`);

describe("A joint glued in stages", () => {
  const both = (first: readonly Stage[], second: readonly Stage[]) => [session(FIRST, first), session(SECOND, second)];

  it("is shown once every stage is, and it is said to be complete", () => {
    const whole = both([stage(FIRST, 1, 2)], [stage(SECOND, 2, 2, LAST)]);
    expect(fileOf(whole)).toMatchObject({ state: "shown", batches: ["B-1", "B-2"] });
    expect(told(whole)).toEqual(["meets: Glued in 2 stages, and said to be complete on 10 April 2025."]);
  });

  it("waits for a stage that is to come, and for being said to be complete", () => {
    const some = both([stage(FIRST, 1, 4)], [stage(SECOND, 2)]);
    expect(fileOf(some)?.state).toBe("pending");
    expect(told(some)).toEqual(["waits: Stages 3 and 4 of 4 are not glued, and it is not said to be complete."]);
    expect(told(both([stage(FIRST, 1)], [stage(SECOND, 2)]))).toEqual([
      "waits: All 2 stages said of it are glued, and it is not said to be complete.",
    ]);
    expect(told([session(FIRST, [stage(FIRST, 1)])])).toEqual([
      "waits: Its stage is glued, and it is not said to be complete.",
    ]);
  });

  it("is not shown where it is said to be complete and a stage holds no batch", () => {
    const left = both([stage(FIRST, 1)], [stage(SECOND, 3, 3, LAST)]);
    expect(fileOf(left)?.state).toBe("not shown");
    expect(told(left)).toEqual([
      "unproven: Stage 2 of 3 holds no batch, though it was said to be complete on 10 April 2025.",
    ]);
    const fewer = both([stage(FIRST, 1, 4)], [stage(SECOND, 2, 2, LAST)]);
    expect(told(fewer)).toEqual([
      "unproven: Stages 3 and 4 of 4 hold no batch, though it was said to be complete on 10 April 2025.",
    ]);
  });

  it("is not shown where a batch in it is of no stage, whatever the others are", () => {
    const unsaid = both([], [stage(SECOND, 1, 1, LAST)]);
    expect(fileOf(unsaid)?.state).toBe("not shown");
    expect(told(unsaid)).toEqual(["unproven: It is glued in stages, and nothing says of which B-1 is."]);
    expect(told([session(FIRST, [])], { stages: 2 })).toEqual([
      "unproven: It is glued in stages, and nothing says of which B-1 is.",
      "waits: Stages 1 and 2 of 2 are not glued, and it is not said to be complete.",
    ]);
    expect(told([], { stages: 2 })).toEqual([]);
  });

  it("counts as complete only what was said with its last glue or later", () => {
    const early = both([stage(FIRST, 1, 2, LAST)], [stage(SECOND, 2, 2)]);
    expect(fileOf(early)?.state).toBe("pending");
    const later = entry("2025-04-12-said", { stages: [stage("2025-04-12-said", 2, 2, LAST)] });
    expect(fileOf([...both([stage(FIRST, 1, 2)], [stage(SECOND, 2, 2)]), later])?.state).toBe("shown");
  });

  it("is as good as its worst stage", () => {
    const wet = session(FIRST, [stage(FIRST, 1, 2)], { moisture: undefined, humidity: undefined });
    expect(fileOf([wet, session(SECOND, [stage(SECOND, 2, 2, LAST)])])?.state).toBe("not shown");
  });

  it("tells what was too soon for the glue of each session", () => {
    const scales = { weighed: [{ ...place, place, day: "2025-03-11", entry: "2025-03-11-weighed", assembly: "wing" }] };
    const weighed = entry("2025-03-11-weighed", scales as unknown as Partial<Entry>);
    const file = fileOf([...both([stage(FIRST, 1, 2)], [stage(SECOND, 2, 2, LAST)]), weighed]);
    expect(file?.findings.flatMap(({ code, values }) => (code === "joint-cure/weighed" ? [values.batch] : []))).toEqual(
      ["B-1"],
    );
    expect(file?.findings.filter(({ code }) => code === "joint-cure/reached")).toHaveLength(2);
  });

  it("was open when its hold point was signed before it was said to be complete", () => {
    const look = entry("2025-12-02-look", {
      inspections: [inspection("H-1", { entry: "2025-12-02-look", day: "2025-12-02" })],
    });
    const stateOf = (...entries: readonly Entry[]) =>
      reckon(
        record({
          entries: [...entries, BROKEN, look],
          assemblies: [assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("H-1")] })],
        }),
      ).holdPoints.get("H-1")?.state;
    const late = entry("2025-12-03-said", { stages: [stage("2025-12-03-said", 2, 2, LAST)] });
    const glued = both([stage(FIRST, 1, 2)], [stage(SECOND, 2, 2)]);
    expect(stateOf(...glued, late)).toBe("signed with things open");
    expect(stateOf(...both([stage(FIRST, 1, 2)], [stage(SECOND, 2, 2, LAST)]))).toBe("passed");
  });
});

describe("A rework of some stages", () => {
  const opened = (stages: readonly number[] | undefined, id = "2025-04-20-opened"): Entry =>
    entry(id, {
      reworks: [
        {
          place,
          entry: id,
          day: id.slice(0, 10),
          joints: ["W-1"],
          why: "dry",
          ...(stages === undefined ? {} : { stages }),
        },
      ],
    });
  const glued = [session(FIRST, [stage(FIRST, 1, 2)]), session(SECOND, [stage(SECOND, 2, 2, LAST)])];

  it("takes out the glue that is of these alone", () => {
    expect(fileOf([...glued, opened([1])])).toMatchObject({ state: "pending", batches: ["B-2"], superseded: ["B-1"] });
    expect(fileOf([...glued, opened([1, 2])])).toMatchObject({ state: "opened", batches: [] });
    expect(fileOf([...glued, opened([3])])).toMatchObject({ batches: ["B-1", "B-2"] });
    const also = session(FIRST, [stage(FIRST, 1, 2), stage(FIRST, 2, 2)]);
    expect(fileOf([also, opened([1])])).toMatchObject({ batches: ["B-1"], superseded: [] });
    expect(fileOf([session(FIRST, []), opened([1])], { stages: 1 })).toMatchObject({ batches: ["B-1"] });
    expect(fileOf([...glued, opened([1])])?.findings[0]?.sentence).toBe(
      "Stage 1 opened for rework on 20 April 2025: dry.",
    );
  });

  it("leaves as many stages to be glued as were said before, and one of all of it does not", () => {
    const again = "2025-05-01-glue";
    const three = [session(FIRST, [stage(FIRST, 1, 3)])];
    const one = entry(again, {
      stages: [{ ...stage(again, 1, 1, LAST), batches: ["B-3"] }],
      batches: [batch("B-3", { entry: again, pieces: [] }, "2025-05-01")],
    });
    expect(told([...three, opened([1]), one])).toEqual([
      "unproven: Stages 2 and 3 of 3 hold no batch, though it was said to be complete on 1 May 2025.",
    ]);
    expect(told([...three, opened(undefined), one])).toEqual([
      "meets: Glued in 1 stage, and said to be complete on 1 May 2025.",
    ]);
  });
});
