/** The slope of grain of timber, on the batch and on the joint that it is in. */
import { describe, expect, it } from "vitest";
import type { Lot } from "../../src/facts/types.ts";
import { runOf } from "../../src/facts/quantity/range.ts";
import { assembly, batch, entry, glued, holdPoint, joint, LOTS, lot, piece, test } from "./make.ts";
import { reckon } from "./reckoned.ts";

const place = { file: "", line: 1, column: 1 };
const wood = (change: Partial<Lot>): Lot =>
  lot("S-9", { material: "timber", adhesive: undefined, species: "Sitka spruce", ...change });
const evidenceOf = (change: Partial<Lot>, of: object = {}, more: Parameters<typeof glued>[2] = {}) =>
  reckon(
    glued([batch("B-1", { timber: ["S-9"], pieces: [piece("B-1", 1, { lot: "S-9" })], ...of })], [test("B-1/1")], {
      lots: [...LOTS, wood(change)],
      assemblies: [
        assembly("wing", {
          joints: [joint("W-1"), joint("W-2")],
          holdPoints: [holdPoint("CLOSE", { joints: ["W-1"] })],
        }),
      ],
      ...more,
    }),
  );
const told = (change: Partial<Lot>, of: object = {}) =>
  evidenceOf(change, of)
    .batches.get("B-1")
    ?.findings.filter(({ rule }) => rule === "timber-grade")
    .map(({ severity, sentence }) => `${severity}: ${sentence}`);

describe("The slope of grain of a lot of timber", () => {
  it("of spruce is no more than 1 in 15", () => {
    expect(told({ grainSlope: "1 : 15" })).toEqual(["meets: The grain of lot S-9 slopes 1 : 15."]);
    expect(told({ grainSlope: "1 in 18" })).toEqual(["meets: The grain of lot S-9 slopes 1 in 18."]);
    expect(told({ grainSlope: "1 : 14.9" })).toEqual([
      "unproven: The grain of lot S-9 slopes 1 : 14.9, steeper than is allowed.",
    ]);
    expect(told({ grainSlope: "2 : 30" })).toEqual(["meets: The grain of lot S-9 slopes 2 : 30."]);
    expect(runOf("1 : 18")).toBe(18);
    expect(runOf("2 in 9")).toBe(4.5);
  });

  it("that is not noted is a caution", () => {
    expect(told({})).toEqual([
      "caution: How steep the grain of lot S-9 is, is not noted, so nothing shows that it is fit for the part.",
    ]);
    expect(evidenceOf({}).batches.get("B-1")?.verdict).toBe(
      evidenceOf({ grainSlope: "1 : 15" }).batches.get("B-1")?.verdict,
    );
  });

  it("is held against spruce and wood of no noted species, and asks nothing of others, of plywood, or of a batch in no joint", () => {
    expect(told({ grainSlope: "1 : 10", species: undefined })?.[0]).toMatch(/^unproven: /u);
    expect(told({ grainSlope: "1 : 10", species: "Ash" })).toEqual([]);
    expect(told({ grainSlope: "1 : 10", material: "plywood" })).toEqual([]);
    expect(told({ grainSlope: "1 : 10", material: "plywood", species: undefined })).toEqual([]);
    expect(told({ grainSlope: "1 : 10" }, { joints: [] })).toEqual([]);
  });

  it("names the circular and the lot", () => {
    const finding = evidenceOf({ grainSlope: "1 : 10" })
      .batches.get("B-1")
      ?.findings.find(({ rule }) => rule === "timber-grade");
    expect(finding?.limit).toEqual({
      text: "slope of grain of spruce no more than 1 in 15",
      from: {
        text: "FAA AC 43.13-1B, Table 1-1: slope of grain of spruce no more than 1 in 15; this program's default, where the drawings may ask for more",
        known: "seen",
      },
    });
    expect(finding?.restsOn).toContainEqual({ kind: "lot", id: "S-9" });
  });

  it("that is too steep leaves batch and joint not shown, and its hold point blocked", () => {
    const evidence = evidenceOf({ grainSlope: "1 : 10" });
    expect(evidence.batches.get("B-1")?.verdict).toBe("not shown");
    const file = evidence.joints.get("W-1");
    expect(file?.state).toBe("not shown");
    expect(file?.findings.filter(({ rule }) => rule === "timber-grade").map(({ code }) => code)).toEqual([
      "timber-grade/slope-steep",
    ]);
    expect(evidence.holdPoints.get("CLOSE")?.needs[0]?.sentence).toContain("slopes 1 : 10, steeper than is allowed.");
    const fine = evidenceOf({ grainSlope: "1 : 15" }).joints.get("W-1");
    expect(fine?.findings.filter(({ rule }) => rule === "timber-grade")).toEqual([]);
  });

  it("counts for a lot that a rework put in", () => {
    const rework = {
      place,
      entry: "2025-03-25-again",
      day: "2025-03-25" as const,
      joints: ["W-1"],
      why: "cracked",
      replaced: [{ lot: "S-1", with: "S-9" }],
    };
    const again = entry("2025-03-25-again", {
      reworks: [rework],
      batches: [batch("B-2", { entry: "2025-03-25-again", joints: ["W-1"], timber: ["S-1"] }, "2025-03-25")],
    });
    const file = evidenceOf({ grainSlope: "1 : 10" }, { timber: ["S-1"] }, { entries: [again] }).joints.get("W-1");
    expect(file?.lots).toContain("S-9");
    expect(file?.findings.filter(({ rule }) => rule === "timber-grade").map(({ severity }) => severity)).toEqual([
      "unproven",
    ]);
    expect(file?.state).toBe("not shown");
  });
});

describe("What the drawings ask of a lot of timber", () => {
  const asks = (asked: Lot["asked"], change: Partial<Lot> = {}) => told({ grainSlope: "1 : 16", ...change, asked });
  const WITHIN = "meets: The grain of lot S-9 slopes 1 : 16.";

  it("of its slope stands above the circular, stricter or laxer, for any species", () => {
    expect(asks({ grainSlope: "1 : 16" })).toEqual([WITHIN]);
    expect(asks({ grainSlope: "1 : 16.1" })?.[0]).toMatch(/^unproven: /u);
    expect(asks({ grainSlope: "1 : 12" }, { grainSlope: "1 : 12" })?.[0]).toMatch(/^meets: /u);
    expect(asks({ grainSlope: "1 : 18" }, { species: "Ash" })?.[0]).toMatch(/^unproven: /u);
    expect(asks({ grainSlope: "1 : 18" }, { grainSlope: undefined })?.[0]).toMatch(/^unproven: How steep/u);
  });

  const rings = (value: number) => ({ typed: `${value} /m`, value, unit: "1/m", step: 1 });
  const share = (value: number) => ({ typed: `${Math.round(value * 100)} %`, value, unit: "1", step: 0.01 });
  const dense = (value: number) => ({ typed: `${value} kg/m³`, value, unit: "kg/m³", step: 1 });

  it("of rings, density and moisture holds up to its ends", () => {
    const asked = {
      rings: { typed: "at least 240 /m", least: 240 },
      density: { typed: "360 kg/m³ to 500 kg/m³", least: 360, most: 500 },
      moisture: { typed: "at most 14 %", most: 0.14 },
    };
    expect(asks(asked, { rings: rings(240), density: dense(360), moisture: share(0.14) })).toEqual([
      WITHIN,
      "meets: Of lot S-9 the rings are 240 /m.",
      "meets: Of lot S-9 the density is 360 kg/m³.",
      "meets: Of lot S-9 the moisture on arrival was 14 %.",
    ]);
    expect(asks(asked, { rings: rings(239), density: dense(501), moisture: share(0.15) })).toEqual([
      WITHIN,
      "unproven: Of lot S-9 the rings are 239 /m, outside what its drawings ask.",
      "unproven: Of lot S-9 the density is 501 kg/m³, outside what its drawings ask.",
      "unproven: Of lot S-9 the moisture on arrival was 15 %, outside what its drawings ask.",
    ]);
    expect(asks(asked, { density: dense(359) })).toEqual([
      WITHIN,
      "unproven: Of lot S-9 nothing is noted of rings, for which its drawings ask.",
      "unproven: Of lot S-9 the density is 359 kg/m³, outside what its drawings ask.",
      "unproven: Of lot S-9 nothing is noted of moisture, for which its drawings ask.",
    ]);
  });

  it("is named as the record's own limit", () => {
    const limits = evidenceOf({
      grainSlope: "1 : 18",
      rings: rings(300),
      asked: { grainSlope: "1 in 16", rings: { typed: "at least 240 /m", least: 240 } },
    })
      .batches.get("B-1")
      ?.findings.flatMap(({ rule, limit }) => (rule === "timber-grade" ? [limit?.text, limit?.from.known] : []));
    expect(limits).toEqual(["slope of grain no more than 1 in 16", "record", "rings at least 240 /m", "record"]);
  });
});

it("A lot is in each piece that has a leg of it, told once", () => {
  const legs = [{ lot: "S-9" }, { lot: "S-9" }, { lot: "S-1" }];
  const { lots } = evidenceOf({}, { pieces: [piece("B-1", 1, { lot: undefined, legs })] });
  expect([lots.get("S-9")?.pieces, lots.get("S-1")?.pieces, lots.get("R-2")?.pieces]).toEqual([
    ["B-1/1"],
    ["B-1/1"],
    [],
  ]);
});
