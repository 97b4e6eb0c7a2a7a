import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import { reckon } from "./reckoned.ts";
import { askedOf, measurementFile } from "../../src/evidence/measures/measurement.ts";
import type { MeasurementFile, PairFile } from "../../src/evidence/types.ts";
import type { Entry, Measurement, Noted, Side } from "../../src/facts/types.ts";
import { assembly, batch, departure, entry, holdPoint, joint, measurement, record } from "./make.ts";
import { inches, mm } from "./quantities.ts";

const about = { typed: "+0.5 mm −0.2 mm", minus: -0.0002, plus: 0.0005 };
const of = (change: Partial<Measurement>): MeasurementFile =>
  measurementFile(recordIndexOf(record({})), measurement(change));

describe("A measurement", () => {
  it("is within its tolerance up to both limits and out beyond them", () => {
    const held = (found: string): MeasurementFile => of({ drawing: mm("62.0"), tolerance: about, found: mm(found) });
    expect(["61.7", "61.8", "62.0", "62.5", "62.6"].map((found) => held(found).verdict)).toEqual([
      "out",
      "within",
      "within",
      "within",
      "out",
    ]);
    expect(held("62.3").off).toBeCloseTo(0.0003, 12);
    expect(held("61.7").off).toBeCloseTo(-0.0003, 12);
  });

  it("has no verdict without a drawing or a tolerance", () => {
    expect(of({})).toEqual({ measurement: measurement({}), verdict: "no tolerance" });
    expect(of({ drawing: mm("61.0") })).toMatchObject({ verdict: "no tolerance", off: expect.closeTo(0.001, 12) });
  });

  it("is held against the limits of the drawing, one-sided or two-sided, and is then not off by anything", () => {
    const verdict = (least: number | undefined, most: number | undefined, found: string): string => {
      const file = of({
        limits: { typed: "limits", ...(least !== undefined && { least }), ...(most !== undefined && { most }) },
        found: mm(found),
      });
      expect(file).not.toHaveProperty("off");
      return file.verdict;
    };
    expect(["11.9", "12.0", "99"].map((found) => verdict(0.012, undefined, found))).toEqual([
      "out",
      "within",
      "within",
    ]);
    expect(["0", "3.0", "3.1"].map((found) => verdict(undefined, 0.003, found))).toEqual(["within", "within", "out"]);
    expect(["7.9", "8.0", "10.0", "10.1"].map((found) => verdict(0.008, 0.01, found))).toEqual([
      "out",
      "within",
      "within",
      "out",
    ]);
  });

  it("may be typed in fractions of an inch against a limit in millimetres", () => {
    expect(of({ limits: { typed: "at least 12.7 mm", least: 0.0127 }, found: inches(1, 2) }).verdict).toBe("within");
    expect(of({ limits: { typed: "at least 12.8 mm", least: 0.0128 }, found: inches(1, 2) }).verdict).toBe("out");
  });

  it("says what was asked as it was typed", () => {
    expect(askedOf(measurement({ drawing: mm("62.0"), tolerance: about }))).toBe("62.0 mm +0.5 mm −0.2 mm");
    expect(askedOf(measurement({ limits: { typed: "at least 12 mm", least: 0.012 } }))).toBe("at least 12 mm");
    expect(askedOf(measurement({ drawing: mm("62.0") }))).toBe("62.0 mm");
  });
});

const OUT = {
  what: "rib 3",
  drawing: mm("62.0"),
  tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 },
  found: mm("63.0"),
};
const IN = { ...OUT, found: mm("62.1") };

/** Measurements, each in an entry of its own, a day apart. */
function measured(...changes: Partial<Measurement>[]) {
  const entries = changes.map((change, at) => {
    const id = `2025-04-${String(at + 1).padStart(2, "0")}-m`;
    return entry(id, { measurements: [measurement({ ...change, entry: id })] });
  });
  const wing = assembly("wing", { holdPoints: [holdPoint("H")] });
  return reckon(
    record({
      assemblies: [wing, assembly("rib", { parent: "wing" }), assembly("fin")],
      entries: [
        ...entries,
        entry("2025-03-01-d", {
          departures: [departure("D-1", { entry: "2025-03-01-d", acceptedBy: "ins", reference: "letter 1" })],
        }),
      ],
    }),
  );
}

const standing = (...changes: Partial<Measurement>[]): unknown[] => {
  const file = measured(...changes).holdPoints.get("H");
  return [file?.state, ...(file?.needs ?? []).map(({ sentence }) => sentence)];
};

describe("A measurement that was out", () => {
  it("is answered for by a later one of the same in the same words, within the same limits", () => {
    expect(standing(OUT)).toEqual(["blocked", "rib 3 measures 63.0 mm, outside 62.0 mm ±0.5 mm."]);
    expect(standing(OUT, IN)).toEqual(["ready"]);
    expect(standing(OUT, { ...OUT, found: mm("64.0") }, IN)).toEqual(["ready"]);
    expect(
      measured(OUT, IN)
        .assemblies.get("wing")
        ?.measurements.map(({ verdict, again }) => [verdict, again?.found.typed]),
    ).toEqual([
      ["out", "62.1 mm"],
      ["within", undefined],
    ]);
  });

  it("is not answered for by one before it, of other words, on another assembly, against other limits, or out as well", () => {
    const blocked = (change: Partial<Measurement>): void =>
      expect(standing(OUT, { ...IN, ...change })).toContain("rib 3 measures 63.0 mm, outside 62.0 mm ±0.5 mm.");
    expect(standing(IN, OUT)[0]).toBe("blocked");
    blocked({ what: "rib 4" });
    blocked({ assembly: "rib" });
    blocked({ tolerance: { typed: "±2 mm", minus: -0.002, plus: 0.002 } });
    blocked({ tolerance: { typed: "+0.5 mm −0.4 mm", minus: -0.0004, plus: 0.0005 } });
    blocked({ drawing: mm("61.9") });
    blocked({ drawing: undefined, tolerance: undefined });
    blocked({ tolerance: { typed: "+0.4 mm −0.5 mm", minus: -0.0005, plus: 0.0004 } });
    blocked({ found: mm("64.0") });
  });

  it("of one side of a pair is answered for by that side alone", () => {
    const left: Partial<Measurement> = { pair: "rib-3", side: "left" };
    const first = (change: Partial<Measurement>): unknown =>
      measured({ ...OUT, ...left }, { ...IN, ...change }).assemblies.get("wing")?.measurements[0]?.again?.found.typed;
    expect(first(left)).toBe("62.1 mm");
    expect(first({ ...left, side: "right" })).toBeUndefined();
    expect(first({ ...left, pair: "rib-4" })).toBeUndefined();
    expect(first({})).toBeUndefined();
  });

  it("at a joint that is glued is answered for only where that was opened after the one and by the other", () => {
    const [first, last] = ["2025-04-02-m", "2025-04-06-m"];
    const of = (id: string, change: Partial<Measurement>) => measurement({ ...change, joint: "W-1", entry: id });
    const opened = (at: string, ...more: string[]) => {
      const rework = (id: string) => ({
        place: { file: "", line: 1, column: 1 },
        entry: id,
        day: id.slice(0, 10),
        joints: ["W-1"],
        why: "steep",
      });
      const holding: Entry[] = [entry("2025-03-10-glue", { batches: [batch("B-1")] })];
      const ids = [...new Set([first, last, at, ...more])];
      const all = ids.map((id) =>
        entry(id, {
          measurements: [...(id === first ? [of(first, OUT)] : []), ...(id === last ? [of(last, IN)] : [])],
          reworks: id === at ? [rework(at)] : more.includes(id) ? [rework(id)] : [],
          batches: id === at ? [batch("B-2", { entry: at }, at.slice(0, 10))] : [],
        }),
      );
      const made = record({
        assemblies: [assembly("wing", { joints: [joint("W-1")] })],
        entries: [...holding, ...all],
      });
      return reckon(made).assemblies.get("wing")?.measurements[0]?.again?.found.typed;
    };
    expect(opened("2025-04-01-o")).toBeUndefined();
    expect(opened(first)).toBeUndefined();
    expect(opened("2025-04-04-o")).toBe("62.1 mm");
    expect(opened("2025-04-04-o", "2025-04-08-o")).toBe("62.1 mm");
    expect(opened(last)).toBe("62.1 mm");
    expect(opened("2025-04-07-o")).toBeUndefined();
  });

  it("at a joint that holds nothing yet is answered for, also where that is glued by the same entry, and of an estimate too", () => {
    const of = (found: Measurement["found"], glued: string) => {
      const at = (id: string, change: Partial<Measurement>) =>
        entry(id, {
          measurements: [measurement({ ...OUT, ...change, joint: "W-1", entry: id })],
          batches: id === glued ? [batch("B-1", { entry: id }, id.slice(0, 10))] : [],
        });
      const entries = [at("2025-04-02-m", { found }), at("2025-04-06-m", IN)];
      const made = record({ assemblies: [assembly("wing", { joints: [joint("W-1")] })], entries });
      return reckon(made).assemblies.get("wing")?.measurements[0]?.again?.found.typed;
    };
    expect(of(OUT.found, "none")).toBe("62.1 mm");
    expect(of(OUT.found, "2025-04-06-m")).toBe("62.1 mm");
    expect(of(OUT.found, "2025-04-02-m")).toBeUndefined();
    expect(of(roughly("62.1"), "none")).toBe("62.1 mm");
  });

  it("is not answered for within the entry that it stands in, nor by a later one without the limit that it broke", () => {
    const id = "2025-04-01-m";
    const wing = assembly("wing", { holdPoints: [holdPoint("H")] });
    const sameDay = reckon(
      record({
        assemblies: [wing],
        entries: [entry(id, { measurements: [OUT, IN].map((change) => measurement({ ...change, entry: id })) })],
      }),
    );
    expect(sameDay.holdPoints.get("H")?.state).toBe("blocked");
    const thick = { what: "gap", limits: { typed: "at most 3 mm", most: 0.003 }, found: mm("4.0") };
    expect(standing(thick, { what: "gap", found: mm("2.0") })).toEqual([
      "blocked",
      "gap measures 4.0 mm, outside at most 3 mm.",
    ]);
    expect(standing(thick, { ...thick, found: mm("2.0") })).toEqual(["ready"]);
  });

  it("alone is answered for: one that was within has nothing to be answered", () => {
    expect(
      measured(IN, IN)
        .assemblies.get("wing")
        ?.measurements.map((file) => "again" in file),
    ).toEqual([false, false]);
  });
});

const SIDE = (side: Side, found: string, change: Partial<Measurement> = {}): Partial<Measurement> => ({
  what: `rib 3, ${side}`,
  pair: "rib-3",
  side,
  found: mm(found),
  ...change,
});
const roughly = (found: string): Noted => {
  const { typed, value, unit, step } = mm(found);
  return { typed: `about ${typed}`, about: { least: value, most: value }, unit, step };
};
const half = { pairTolerance: mm("0.5") };
const pair = (...changes: Partial<Measurement>[]): PairFile => {
  const file = measured(...changes).pairs.get("rib-3");
  if (!file) throw new Error("no pair");
  return file;
};

describe("A pair of sides", () => {
  it("is within its tolerance up to it, to either side, and out beyond", () => {
    const verdict = (left: string, right: string): string =>
      pair(SIDE("left", left, half), SIDE("right", right)).verdict;
    expect(
      [
        ["62.0", "62.0"],
        ["62.5", "62.0"],
        ["62.0", "62.5"],
        ["62.6", "62.0"],
        ["62.0", "62.6"],
      ].map(([left = "", right = ""]) => verdict(left, right)),
    ).toEqual(["within", "within", "within", "out", "out"]);
  });

  it("differs by left minus right, front minus back, upper minus lower, whichever was measured first", () => {
    for (const [first, second] of [
      ["left", "right"],
      ["front", "back"],
      ["upper", "lower"],
    ] as const) {
      for (const order of [
        [SIDE(first, "62.3"), SIDE(second, "62.0")],
        [SIDE(second, "62.0"), SIDE(first, "62.3")],
      ]) {
        const file = pair(...order);
        expect(file.difference).toBeCloseTo(0.0003, 12);
        expect(file.now.map(({ side }) => side)).toEqual([first, second]);
      }
    }
  });

  it("takes its tolerance from whichever side states it, and has no verdict without", () => {
    expect(pair(SIDE("left", "62.0"), SIDE("right", "63.0", half))).toMatchObject({
      verdict: "out",
      tolerance: { typed: "0.5 mm", entry: "2025-04-02-m" },
    });
    expect(pair(SIDE("left", "62.0", half), SIDE("right", "63.0"), SIDE("left", "62.9"))).toMatchObject({
      verdict: "within",
      tolerance: { entry: "2025-04-01-m" },
    });
    expect(pair(SIDE("left", "62.0"), SIDE("right", "63.0")).verdict).toBe("no tolerance");
  });

  it("of which one side is measured waits for the other", () => {
    const file = pair(SIDE("right", "62.0", half));
    expect(file.verdict).toBe("one side");
    expect(file).not.toHaveProperty("difference");
    expect(standing(SIDE("right", "62.0", half))).toEqual(["ahead", "Of rib-3 only the right side is measured."]);
  });

  it("counts of each side the last measurement of the same", () => {
    const file = pair(SIDE("left", "63.0", half), SIDE("right", "62.0"), SIDE("left", "62.2"));
    expect([
      file.verdict,
      file.now.map(({ found }) => found.typed),
      file.before.map(({ found }) => found.typed),
    ]).toEqual(["within", ["62.2 mm", "62.0 mm"], ["63.0 mm"]]);
    expect(pair(SIDE("left", "62.2", half), SIDE("right", "62.0"), SIDE("left", "63.0")).verdict).toBe("out");
  });

  it("counts what a later day gave of other words, on another part or by estimate beside what stood, and the worst of it", () => {
    const [left, right] = [SIDE("left", "63.0", half), SIDE("right", "62.0")];
    const with_ = (change: Partial<Measurement>) => pair(left, right, SIDE("left", "62.2", change));
    expect(with_({}).verdict).toBe("within");
    for (const change of [
      { what: "rib 3, shimmed" },
      { assembly: "fin" },
      { joint: "J-1" },
      { found: roughly("62.2") },
    ]) {
      const file = with_(change);
      expect([file.verdict, file.now.length, file.before]).toEqual(["out", 3, []]);
      expect(file.difference).toBeCloseTo(0.001, 12);
    }
    expect(pair(right, left, SIDE("right", "62.9", { what: "other" })).difference).toBeCloseTo(0.001, 12);
    expect(pair(SIDE("left", "62.2", half), right, SIDE("left", "63.0", { what: "other" })).difference).toBeCloseTo(
      0.001,
      12,
    );
    expect(pair(SIDE("left", "62.5", half), right, SIDE("left", "61.5", { what: "other" })).difference).toBeCloseTo(
      0.0005,
      12,
    );
    expect(pair(SIDE("left", "62.2", half), right, SIDE("left", "62.2", { found: roughly("62.2") })).verdict).toBe(
      "estimated",
    );
  });

  it("blocks a hold point while it is out and neither side names a departure", () => {
    const sentence =
      "The sides of rib-3 differ by more than they may: left 63.0 mm, right 62.0 mm, where 0.5 mm is allowed.";
    expect(standing(SIDE("left", "63.0", half), SIDE("right", "62.0"))).toEqual(["blocked", sentence]);
    expect(standing(SIDE("left", "63.0", half), SIDE("right", "62.0", { assembly: "fin" }))).toEqual([
      "blocked",
      sentence,
    ]);
    expect(
      standing(SIDE("left", "63.0", { ...half, assembly: "fin" }), SIDE("right", "62.0", { assembly: "fin" })),
    ).toEqual(["ready"]);
    expect(standing(SIDE("left", "63.0", half), SIDE("right", "62.0", { departure: "D-1" }))).toEqual(["ready"]);
    expect(standing(SIDE("left", "63.0", { ...half, departure: "D-1" }), SIDE("right", "62.0"))).toEqual(["ready"]);
    expect(
      standing(SIDE("left", "63.0", { ...half, departure: "D-1" }), SIDE("right", "62.0"), SIDE("left", "63.1"))[0],
    ).toBe("blocked");
    expect(measured(SIDE("left", "63.0", half), SIDE("right", "62.0")).holdPoints.get("H")?.needs[0]).toMatchObject({
      about: { kind: "entry", id: "2025-04-02-m" },
      blocks: true,
      restsOn: [
        { kind: "entry", id: "2025-04-01-m" },
        { kind: "entry", id: "2025-04-02-m" },
      ],
    });
  });

  it("is within exactly where the difference of the last of each side is no more than its tolerance", () => {
    const found = fc.integer({ min: 610, max: 630 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom("upper" as const, "lower" as const), found), { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 0, max: 12 }),
        (all, within) => {
          const file = pair(
            ...all.map(([side, tenths]) =>
              SIDE(side, (tenths / 10).toFixed(1), { pairTolerance: mm((within / 10).toFixed(1)) }),
            ),
          );
          const last = (side: Side): number | undefined => all.findLast(([one]) => one === side)?.[1];
          const [upper, lower] = [last("upper"), last("lower")];
          expect(file.verdict).toBe(
            upper === undefined || lower === undefined
              ? "one side"
              : Math.abs(upper - lower) <= within
                ? "within"
                : "out",
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
