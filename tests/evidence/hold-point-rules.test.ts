/** Small questions of a hold point, and of what it looks at, each by itself. */
import { describe, expect, it } from "vitest";
import { looksOf } from "../../src/evidence/readiness/looks.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import { reckonTrials } from "../../src/evidence/trials.ts";
import { jointNeed } from "../../src/evidence/readiness/needs.ts";
import type { JointFile, PieceFile, PieceVerdict } from "../../src/evidence/types.ts";
import type { Entry, Noted, PieceTest } from "../../src/facts/types.ts";
import { assembly, departure, entry, holdPoint, inspection, joint, piece, record, test } from "./make.ts";
import { mm } from "./quantities.ts";
import { reckon } from "./reckoned.ts";
import {
  GLUED,
  LATER,
  pointOf,
  SIGNED,
  SIDES,
  amends,
  inEntry,
  measures,
  ref,
  signing,
  TESTS,
  told,
} from "./signed.ts";

describe("What a joint that is not shown takes", () => {
  const needed = (state: JointFile["state"], ...rules: readonly string[]) => {
    const findings = rules.map((rule) => ({ rule, code: `${rule}/x`, severity: "waits", values: {}, restsOn: [] }));
    return jointNeed({ joint: joint("W-1"), state, findings } as unknown as JointFile).map(({ takes, blocks }) => [
      takes.code,
      blocks,
    ]);
  };

  it("while it is pending is a stage before pieces, and these before its own cure", () => {
    expect(needed("pending", "joint-stages")).toEqual([["take/glue-stages", false]]);
    expect(needed("pending", "joint-glued", "joint-stages", "joint-cure")).toEqual([["take/glue-stages", false]]);
    expect(needed("pending", "joint-glued", "joint-cure")).toEqual([["take/break-pieces", false]]);
    expect(needed("pending", "joint-cure")).toEqual([["take/let-cure", false]]);
  });

  it("is one thing in every other state, and nothing where it is shown", () => {
    expect(needed("not glued", "joint-stages")).toEqual([["take/glue", false]]);
    expect(needed("not shown", "joint-stages")).toEqual([["take/complete", true]]);
    expect(needed("quarantined")).toEqual([["take/rework", true]]);
    expect(needed("opened")).toEqual([["take/glue-again", true]]);
    expect(needed("shown", "joint-cure")).toEqual([]);
  });
});

describe("A hold point that is signed", () => {
  it("has seen what its own entry amends: that is a remark and no change", () => {
    const id = `${SIGNED}-look`;
    const own = amends(ref("batch", "B-1"), GLUED.id)(id, SIGNED);
    const seen = pointOf([GLUED, TESTS, signing(own)]);
    expect([seen.state, seen.remarks.length, told(seen)]).toEqual(["passed", 1, []]);
    const later = pointOf([GLUED, TESTS, signing(), inEntry(amends(ref("batch", "B-1"), GLUED.id), LATER)]);
    expect([later.state, later.remarks.length, later.changes[0]?.code]).toEqual(["reopened", 0, "change/amended"]);
  });

  it("is told of a piece that failed later, and of none that held", () => {
    const broken = (change: Partial<PieceTest>): readonly Entry[] => [
      GLUED,
      entry("2025-03-20-tests", { tests: [test("B-2/1")] }),
      signing(),
      entry(`${LATER}-tests`, { tests: [test("B-1/1", change, LATER)] }),
    ];
    expect(pointOf(broken({})).changes).toEqual([]);
    const { changes } = pointOf(broken({ failure: "glue line", woodFailure: undefined } as unknown as PieceTest));
    expect(changes.filter(({ code }) => code === "change/failed").map(({ values }) => values)).toEqual([
      { piece: "B-1/1", joints: ["W-1", "W-2", "R-1"], day: LATER },
    ]);
  });

  it("on a pair that was only estimated was signed with that open, though it was measured since", () => {
    const about: Noted = { typed: "about 62 mm", about: { least: 0.0619, most: 0.0621 }, unit: "m", step: 0.0001 };
    const sides = (found: Noted) => measures({ ...SIDES[0], found }, { ...SIDES[1], found: mm("62.2") });
    const early = inEntry(sides(about), "2025-04-01");
    const open = pointOf([GLUED, TESTS, early, signing()]);
    expect([open.state, open.needs.map(({ code }) => code)]).toEqual([
      "signed with things open",
      ["need/pair-estimated", "need/signed-open"],
    ]);
    const settled = pointOf([GLUED, TESTS, early, signing(), inEntry(sides(mm("62.0")), LATER)]);
    expect([settled.state, settled.needs.map(({ code }) => code)]).toEqual([
      "signed with things open",
      ["then/pair", "need/signed-open"],
    ]);
  });
});

describe("A return to service", () => {
  it("that is signed by somebody whom the record does not know, as a record not yet amended may be, counts for nothing", () => {
    const point = holdPoint("RETURN", { kind: "return to service" });
    const look = inspection("RETURN", { by: "nobody" });
    const index = recordIndexOf(record({ entries: [entry(look.entry, { inspections: [look] })] }));
    const { counted, needs } = looksOf(index, point, new Set(["wing"]));
    expect([counted, needs.map(({ code }) => code)]).toEqual([[], ["need/signed-role"]]);
  });
});

describe("What is gathered of the record", () => {
  it("is the first hold point of an assembly that is not passed", () => {
    const next = (...signed: readonly string[]) => {
      const id = `${SIGNED}-looks`;
      const holdPoints = ["FIRST", "SECOND"].map((one) => holdPoint(one));
      const looks = signed.map((one) => inspection(one, { entry: id, day: SIGNED }));
      const made = record({
        assemblies: [assembly("wing", { holdPoints })],
        entries: [entry(id, { inspections: looks })],
      });
      return reckon(made).assemblies.get("wing")?.nextHoldPoint;
    };
    expect(next()).toBe("FIRST");
    expect(next("FIRST")).toBe("SECOND");
    expect(next("SECOND")).toBe("FIRST");
    expect(next("FIRST", "SECOND")).toBeUndefined();
  });

  it("is how far each departure is accepted", () => {
    const id = "2025-03-10-other";
    const departures = [departure("D-1"), departure("D-2", { acceptedBy: "ins", reference: "letter 1" })];
    expect([...reckon(record({ entries: [entry(id, { departures })] })).standings]).toEqual([
      ["D-1", "not accepted"],
      ["D-2", "accepted"],
    ]);
  });
});

describe("A trial", () => {
  const compared = (preparations: number, verdicts: readonly PieceVerdict[]) => {
    const ids = Array.from({ length: preparations }, (_, n) => `P-${n}`);
    const files = ids.flatMap((preparation) =>
      verdicts.map((verdict, n) => {
        const one = piece("B-1", 1, { id: `${preparation}/${n}`, trial: "T", preparation });
        return [one.id, { piece: one, verdict, findings: [] } as unknown as PieceFile] as const;
      }),
    );
    const trial = { id: "T", preparations: ids.map((id) => ({ id, what: id })) };
    const made = { ...record({}), trials: new Map([["T", trial as never]]) };
    return reckonTrials(made, new Map(files)).get("T");
  };

  it("of more tables than can be gone through is not compared, though each preparation could have shown something", () => {
    expect(compared(2, ["pass", "pass", "fail"])?.comparison?.p).toBeCloseTo(1, 12);
    const many = compared(24, ["pass", "fail"]);
    expect(many && "comparison" in many).toBe(false);
    expect(many?.outcomes).toHaveLength(24);
  });
});
