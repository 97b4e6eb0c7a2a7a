/** Small questions that larger rules ask, each by itself. */
import { describe, expect, it } from "vitest";
import { amendedFinding, amendedValues, changesOf, restsOnChange, type Changed } from "../../src/evidence/amended.ts";
import { finder } from "../../src/evidence/finding.ts";
import { minutesByAssembly } from "../../src/evidence/hours.ts";
import { partsNeeded, taken } from "../../src/evidence/lots/stock.ts";
import { isUsualScarf, measurementFile } from "../../src/evidence/measures/measurement.ts";
import { entriesOf, pairFile, pairValues } from "../../src/evidence/measures/pair.ts";
import { pairNeed } from "../../src/evidence/readiness/needs.ts";
import { comesFirst, isAskedBy } from "../../src/evidence/readiness/order.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import { EARLIER_WORDS, RULES_VERSION } from "../../src/evidence/version.ts";
import type { Adhesive, Change, Measurement, Noted, Ref } from "../../src/facts/types.ts";
import { adhesive, entry, holdPoint, measurement, openItem, record } from "./make.ts";
import { g, gcc, ml, mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });

describe("A change by an amendment", () => {
  const changed = (change: Partial<Change>): Changed => ({
    amendment: {
      place,
      entry: "glued",
      by: "mended",
      day: "2025-04-01",
      why: "misread",
      prose: false,
      withheld: false,
      changes: [],
    },
    change: {
      place,
      about: ref("batch", "B-1"),
      fact: "Batch B-1",
      needs: [ref("lot", "R-1")],
      audience: "public",
      ...change,
    },
  });

  it("rests on both entries, on what it needs and on the things it names, and on nobody", () => {
    const of = changed({ was: ["lot ", ref("lot", "R-2")], is: ["by ", ref("person", "ins"), ref("lot", "R-3")] });
    expect(restsOnChange(of).map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      "entry glued",
      "entry mended",
      "lot R-1",
      "lot R-2",
      "lot R-3",
    ]);
    expect(restsOnChange(changed({})).map(({ id }) => id)).toEqual(["glued", "mended", "R-1"]);
  });

  it("is told in words in which a person is someone", () => {
    const of = changed({ value: "seen by", was: ["by ", ref("person", "ins")], is: ["lot ", ref("lot", "R-3")] });
    expect(amendedValues(of)).toEqual({
      day: "2025-04-01",
      why: "misread",
      fact: "Batch B-1",
      value: "seen by",
      was: "by someone",
      is: "lot R-3",
    });
    expect(amendedValues(changed({}))).toEqual({
      day: "2025-04-01",
      why: "misread",
      fact: "Batch B-1",
      value: undefined,
      was: undefined,
      is: undefined,
    });
  });

  it("is a caution by what it is: of what was fixed, of what worsens, and of any other", () => {
    const code = (change: Partial<Change>) => amendedFinding(changed(change), finder(ref("batch", "B-1"), [])).code;
    expect(code({})).toBe("amended/changed");
    expect(code({ worsens: true })).toBe("amended/worsens");
    expect(code({ fixed: true, worsens: true })).toBe("amended/fixed");
  });

  it("of a value that names somebody changes nothing that is reckoned, but a whole fact does", () => {
    const told = (change: Partial<Change>) => {
      const one = changed(change);
      const amends = entry("mended", { amendments: [{ ...one.amendment, changes: [one.change] }] });
      return changesOf(recordIndexOf(record({ entries: [entry("glued"), amends] })), ref("batch", "B-1")).length;
    };
    expect(told({ value: "seen by", is: [ref("person", "ins")] })).toBe(0);
    expect(told({ value: "seen by", was: [ref("person", "ins")] })).toBe(0);
    expect(told({ value: "lot", is: [ref("lot", "R-3")] })).toBe(1);
    expect(told({ is: [ref("person", "ins")] })).toBe(1);
    expect(told({ about: ref("batch", "B-2") })).toBe(0);
  });
});

describe("What a lot gave a batch, and what a mix needs", () => {
  const between = (least: number, most: number, unit: string): Noted => ({
    typed: "so",
    least,
    most,
    unit,
    step: 0.001,
  });

  it("is in the lot's unit, at the most, by density where it was measured otherwise", () => {
    expect(taken({ mass: g("40") }, "kg", undefined)).toBeCloseTo(0.04, 12);
    expect(taken({ mass: between(0.03, 0.05, "kg") }, "kg", undefined)).toBe(0.05);
    expect(taken({ volume: ml("40") }, "kg", 1200)).toBeCloseTo(0.048, 12);
    expect(taken({ volume: ml("40") }, "kg", undefined)).toBeUndefined();
    expect(taken({ mass: g("48") }, "m³", 1200)).toBeCloseTo(40e-6, 15);
    expect(taken({ mass: g("48") }, "m³", undefined)).toBeUndefined();
    expect(
      taken(
        { mass: { typed: "about 40 g", about: { least: 0.04, most: 0.04 }, unit: "kg", step: 0.001 } },
        "kg",
        undefined,
      ),
    ).toBeUndefined();
    expect(taken({}, "kg", 1200)).toBeUndefined();
    expect(taken(undefined, "kg", 1200)).toBeUndefined();
  });

  it("is parted by the sheet's ratio, by mass or by volume and both densities, and is one part's alone where there is one", () => {
    const needed = (change: Partial<{ [key in keyof Adhesive]: Adhesive[key] | undefined }>) =>
      partsNeeded(adhesive(change as Partial<Adhesive>), 0.06)?.map(([part, mass]) => [part, Number(mass.toFixed(9))]);
    expect(needed({})).toEqual([
      ["resin", 0.04],
      ["hardener", 0.02],
    ]);
    const byVolume = { byMass: undefined, byVolume: { typed: "1 : 1", secondOverFirst: 1 } };
    expect(needed({ ...byVolume, density: { resin: gcc("2.0"), hardener: gcc("1.0") } })).toEqual([
      ["resin", 0.04],
      ["hardener", 0.02],
    ]);
    for (const density of [undefined, { resin: gcc("2.0") }, { hardener: gcc("1.0") }])
      expect(needed({ ...byVolume, density })).toBeUndefined();
    expect(needed({ byMass: undefined })).toBeUndefined();
    expect(needed({ kind: "one-part", byMass: undefined })).toEqual([["glue", 0.06]]);
  });
});

describe("A measurement", () => {
  const about = (least: number, most: number): Noted => ({
    typed: "so",
    about: { least, most },
    unit: "m",
    step: 0.0001,
  });
  const index = recordIndexOf(record({ entries: [entry("2025-03-10-other")] }));
  const DRAWN = { drawing: mm("62.0"), tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 } };
  const file = (change: Partial<Measurement>) => measurementFile(index, measurement({ ...DRAWN, ...change }));

  it("is off by the end that is further from the drawing", () => {
    expect(file({ found: { typed: "so", least: 0.061, most: 0.0622, unit: "m", step: 0.0001 } }).off).toBeCloseTo(
      -0.001,
      12,
    );
    expect(file({ found: { typed: "so", least: 0.0618, most: 0.063, unit: "m", step: 0.0001 } }).off).toBeCloseTo(
      0.001,
      12,
    );
    expect(file({ found: mm("62.1") }).off).toBeCloseTo(0.0001, 12);
    const ends = {
      found: { typed: "so", least: 0.5, most: 1.5, unit: "m", step: 0.1 },
      drawing: { ...mm("1000"), value: 1 },
    };
    expect(file(ends).off).toBe(0.5);
  });

  it("that is only estimated to be within is no more than that, and out where it may be", () => {
    expect(file({ found: about(0.0619, 0.0621) }).verdict).toBe("estimated");
    expect(file({ found: about(0.0619, 0.0626) }).verdict).toBe("out");
  });

  it("is of a scarf held to the usual slope only at a joint and where the drawing gives none", () => {
    const slope = { dimension: "slope" as const, joint: "W-1" };
    expect(isUsualScarf(measurement(slope))).toBe(true);
    expect(isUsualScarf(measurement({ dimension: "slope" }))).toBe(false);
    expect(isUsualScarf(measurement({ ...slope, limits: { typed: "1 in 8", most: 1 / 8 } }))).toBe(false);
    expect(isUsualScarf(measurement({ joint: "W-1" }))).toBe(false);
  });

  it("of a pair differs by the most that both can, and by more where that is alike either way", () => {
    const apart = (left: readonly [number, number], right: readonly [number, number]) => {
      const found = ([least, most]: readonly [number, number]): Noted => ({
        typed: "so",
        least,
        most,
        unit: "m",
        step: 0.1,
      });
      const sides = [
        measurement({ side: "left", found: found(left) }),
        measurement({ side: "right", found: found(right) }),
      ];
      return pairFile(index, "P", sides).difference;
    };
    expect(apart([1, 2], [1.5, 1.75])).toBe(-0.75);
    expect(apart([1, 2], [1.25, 1.5])).toBe(0.75);
    expect(apart([1, 2], [1.25, 1.75])).toBe(0.75);
  });

  it("of a pair that is only estimated is to be measured, and waits", () => {
    const side = (at: "left" | "right", found: Noted, tolerance = true) =>
      measurement({
        pair: "P",
        side: at,
        found,
        entry: `2025-03-1${at === "left" ? 0 : 1}-other`,
        ...(tolerance && { pairTolerance: mm("1.0") }),
      });
    const both = recordIndexOf(record({ entries: [entry("2025-03-10-other"), entry("2025-03-11-other")] }));
    const pair = pairFile(both, "P", [side("left", mm("62.0")), side("right", about(0.0619, 0.0622))]);
    expect(pair.verdict).toBe("estimated");
    expect(pairNeed(both, pair)).toEqual([
      {
        about: ref("entry", "2025-03-11-other"),
        code: "need/pair-estimated",
        values: { pair: "P" },
        takes: { code: "take/measure-pair", values: {} },
        blocks: false,
        restsOn: [ref("entry", "2025-03-10-other"), ref("entry", "2025-03-11-other")],
      },
    ]);
    const untold = pairFile(both, "P", [side("left", mm("62.0"), false), side("right", mm("62.0"), false)]);
    expect(entriesOf(untold)).toEqual([ref("entry", "2025-03-10-other"), ref("entry", "2025-03-11-other")]);
    expect(pairValues(pairFile(both, "P", [side("left", mm("62.0"), false)]))).toEqual({
      pair: "P",
      sides: [{ side: "left", found: "62.0 mm" }],
      tolerance: undefined,
    });
  });
});

describe("The order of hold points", () => {
  const CLOSE = holdPoint("CLOSE");
  const own = new Set(["wing", "rib"]);

  it("is by their kinds, and of one kind those of assemblies within come first", () => {
    expect(comesFirst(holdPoint("SKIN", { kind: "next skin" }), CLOSE, own)).toBe(true);
    expect(comesFirst(holdPoint("COVER", { kind: "covering" }), CLOSE, own)).toBe(false);
    expect(comesFirst(holdPoint("RIB", { assembly: "rib" }), CLOSE, own)).toBe(true);
    expect(comesFirst(holdPoint("FIN", { assembly: "fin" }), CLOSE, own)).toBe(false);
    expect(comesFirst(holdPoint("ALSO"), CLOSE, own)).toBe(false);
    expect(comesFirst(holdPoint("CLOSE", { kind: "next skin" }), CLOSE, own)).toBe(false);
  });

  it("asks for open items before nothing, before its kind or an earlier one, and before such a hold point", () => {
    const points = new Map([
      ["FLY", holdPoint("FLY", { kind: "flight" })],
      ["SKIN", holdPoint("SKIN", { kind: "next skin" })],
    ]);
    const asked = (before?: string) =>
      isAskedBy(CLOSE, openItem("O-1", before === undefined ? {} : { before }), points);
    expect(asked()).toBe(true);
    expect(asked("close-up")).toBe(true);
    expect(asked("next skin")).toBe(true);
    expect(asked("flight")).toBe(false);
    expect(asked("SKIN")).toBe(true);
    expect(asked("FLY")).toBe(false);
    expect(asked("GONE")).toBe(true);
  });
});

describe("Rules of the program", () => {
  it("have a version, and the words that earlier ones used are known by what they are called now", () => {
    expect(RULES_VERSION).toBe(2);
    expect(EARLIER_WORDS).toEqual([
      { until: 1, word: "accepted", now: "shown" },
      { until: 1, word: "unproven", now: "not shown" },
    ]);
  });

  it("count hours of an assembly alone, and none that stand on no assembly", () => {
    const line = (minutes: number, of?: string) => ({
      place,
      who: "ins",
      task: "gluing",
      minutes,
      typed: "1:00",
      ...(of !== undefined && { assembly: of }),
    });
    const hours = [line(60, "wing"), line(30), line(15, "wing")];
    expect([...minutesByAssembly(record({ entries: [entry("2025-03-10-worked", { hours } as never)] }))]).toEqual([
      ["wing", 75],
    ]);
  });
});
