/** Measures, weights and tenths as a builder types them, and the typed record of them. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isFault } from "../../src/facts/reading.ts";
import { readDrawn } from "../../src/facts/quantity/drawn.ts";
import { readQuantity } from "../../src/facts/quantity/quantity.ts";
import { readTolerance } from "../../src/facts/quantity/range.ts";
import { inTenths, readTenths } from "../../src/facts/quantity/tenths.ts";
import { readRecord } from "../../src/record/read.ts";
import type { Record } from "../../src/facts/types.ts";
import { TODAY, withSmall } from "../problems/cases.ts";

const DEGREE = Math.PI / 180;
const angle = (typed: string): number => {
  const read = readQuantity(typed, { sign: "any" });
  return isFault(read) || read.value.dimension !== "angle" ? Number.NaN : read.value.value / DEGREE;
};

describe("Angles", () => {
  it.each([
    ["2.5°", 2.5],
    ["2° 30'", 2.5],
    ["2°30′", 2.5],
    ["2 deg 30 arcmin", 2.5],
    ["-2° 30'", -2.5],
    ["−1° 06'", -1.1],
    ["0° 15'", 0.25],
    ["1/2°", 0.5],
    ["12° 30.5'", 12 + 30.5 / 60],
    ["30 arcmin", 0.5],
  ])("%s are %d degrees", (typed, degrees) => {
    expect(angle(typed)).toBeCloseTo(degrees, 12);
  });

  it.each(["2.5° 30'", "2 1/2° 30'", '2° 30"', "2° 30 mm", "30'"])("%s is no angle", (typed) => {
    expect(angle(typed)).toBeNaN();
  });

  it("with minutes are worth a minute to the last digit", () => {
    const read = readQuantity("2° 30'", {});
    expect(!isFault(read) && read.value.step / DEGREE).toBeCloseTo(1 / 60, 12);
  });

  it("have tolerances in minutes too", () => {
    const read = readTolerance("+0° 30' -0°");
    expect(!isFault(read) && [read.value.plus / DEGREE, read.value.minus, read.value.dimension]).toEqual([
      expect.closeTo(0.5, 12),
      0,
      "angle",
    ]);
  });
});

describe("What a drawing asks", () => {
  const drawn = (typed: string): unknown => {
    const read = readDrawn(typed);
    return isFault(read)
      ? read.fault.code
      : [read.value.dimension, read.value.nominal?.value, read.value.limits?.least, read.value.limits?.most];
  };

  it.each([
    ["62.0 mm", ["length", 0.062, undefined, undefined]],
    ["-3 mm", ["length", -0.003, undefined, undefined]],
    ["0 mm", ["length", 0, undefined, undefined]],
    ["at least 12 mm", ["length", undefined, 0.012, undefined]],
    ["At most 3 mm", ["length", undefined, undefined, 0.003]],
    ["8 mm to 10 mm", ["length", undefined, 0.008, 0.01]],
    ["8 to 10 mm", ["length", undefined, 0.008, 0.01]],
    ["-1 mm to 1 mm", ["length", undefined, -0.001, 0.001]],
    ["1/2 in to 5/8 in", ["length", undefined, 0.0127, 0.015875]],
    ["at least 24.5 kg", ["mass", undefined, 24.5, undefined]],
    [">12 mm", "no-range"],
    ["2 mm to 1 mm", "no-range"],
    ["2° to 3 mm", "wrong-dimension"],
    ["at least 12", "no-unit"],
    ["about 12 mm", "one-figure"],
    ["at least", "no-number"],
  ])("%s", (typed, asked) => {
    expect(drawn(typed)).toEqual(asked);
  });
});

describe("Tenths", () => {
  const tenths = (typed: string): unknown => {
    const read = readTenths(typed);
    return isFault(read) ? read.fault.mend : read.value.tenths;
  };

  it.each([
    ["0", 0],
    ["0.0", 0],
    ["0.3", 3],
    [".3", 3],
    ["0.30", 3],
    ["1", 10],
    ["1.0", 10],
    ["0.9", 9],
  ])("%s are %d", (typed, count) => {
    expect(tenths(typed)).toBe(count);
  });

  it.each([
    ["0.25", "give it to the nearest tenth, so that the four add up to 1"],
    ["0,3", "write 0.3"],
    ["1,0", "write 1.0"],
    ["30 %", "write 0.3"],
    ["100 %", "write 1"],
    ["0 %", "write one of them"],
    ["110 %", "write one of them"],
    ["35 %", "write one of them"],
    ["3", "write one of them"],
    ["1.1", "write one of them"],
    ["-0.1", "write one of them"],
    ["", "write one of them"],
    ["00.3", "write one of them"],
  ])("%s is none: %s", (typed, mend) => {
    expect(tenths(typed)).toBe(mend);
  });

  it("are said as decimals without noise", () => {
    expect([0, 1, 3, 10, 11, 27, 30].map(inTenths)).toEqual(["0", "0.1", "0.3", "1", "1.1", "2.7", "3"]);
  });
});

async function withFiles(files: { readonly [file: string]: string }): Promise<Record> {
  return withSmall(async (folder) => {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(join(folder, file, ".."), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) throw new Error(JSON.stringify(read.problems));
    return read.record;
  });
}

const SPAR = `---
date: 2025-04-01
title: Measured and weighed
assembly: spar
measurements:
  - { what: "Depth at rib 3, left", pair: rib-3, side: left, found: 61.2 mm, pair_tolerance: ±0.5 mm }
  - { what: "Depth at rib 3, right", pair: rib-3, side: right, found: 61.2 mm, pair_tolerance: ±0.05 cm, assembly: wing }
  - { what: Dihedral, drawing: 2° 30', tolerance: ±0° 15', found: 2.5° }
  - { what: Edge distance, drawing: at least 12 mm, found: 1/2 in }
  - { what: Pitch, drawing: 1 1/2 in, tolerance: +1/8 in -0 in, found: 1 9/16 in }
weighed:
  - { part: Spar, mass: 12.5 kg, arm: 1240 mm, assembly: wing }
  - { part: Hinge, mass: 3 1/2 oz }
  - { part: Wing, mass: 26 lb 3 oz, arm: -4 in, instead_of: [Spar, Hinge] }
scales: { what: All of it, left: 151.2 kg, right: 150.8 kg, nose: 0 kg, mains: -0.2 m, wheelbase: 4180 mm }
---
`;

const AIRCRAFT = `---
name: Dunlin
type: one-seat parasol of spruce
units: metric
time_zone: Europe/Lisbon
start: 2025-01-04
datum: Front face of the firewall
design_weight: 290 kg
people:
  - { id: builder, name: Mara Testwright, public: Mara, role: builder }
  - { id: helper, name: Odo Testwright, public: Odo, role: helper }
  - { id: looker, name: Ines Gauge, public: the inspector, role: inspector }
tasks: [gluing, shaping, testing]
---
`;

const WING = `---
title: Wing
tasks:
  - { id: W-1, title: Fabricate the ribs, applicable: yes, credit: { maker: .3, paid: 0.0, assembly: 0.30, fabrication: 0.4 } }
  - { id: W-2, title: Fit the flaps, applicable: no }
  - { id: W-3, title: Cover, credit: { assembly: 1.0 } }
---
`;

describe("The typed record", async () => {
  const record = await withFiles({
    "entries/2025-04-01-m.md": SPAR,
    "aircraft.md": AIRCRAFT,
    "assemblies/wing.md": WING,
    "entries/2025-04-02-t.md": SPAR.replace("2025-04-01", "2025-04-02")
      .replace(/measurements:\n(?: .*\n)+/, "")
      .replace("nose: 0 kg, ", "tail: 24 kg, ")
      .replace(/what: All of it, /, ""),
  });
  const entry = record.entries.find(({ id }) => id === "2025-04-01-m");

  it("has pairs with their sides and tolerance, limits apart from measures, and what was typed", () => {
    expect(
      entry?.measurements.map(({ assembly, drawing, limits, pair, side, pairTolerance }) => [
        assembly,
        drawing?.typed,
        limits,
        pair,
        side,
        pairTolerance?.value,
      ]),
    ).toEqual([
      ["spar", undefined, undefined, "rib-3", "left", 0.0005],
      ["wing", undefined, undefined, "rib-3", "right", 0.0005],
      ["spar", "2° 30'", undefined, undefined, undefined, undefined],
      ["spar", undefined, { typed: "at least 12 mm", least: 0.012 }, undefined, undefined, undefined],
      ["spar", "1 1/2 in", undefined, undefined, undefined, undefined],
    ]);
    expect(entry?.measurements[4]?.tolerance).toEqual({ typed: "+1/8 in -0 in", minus: 0, plus: 0.003175 });
  });

  it("has what was weighed, at which arm, of which assembly and in whose place", () => {
    expect(
      entry?.weighed.map(({ part, mass, arm, assembly, insteadOf, day, entry: id }) => [
        part,
        mass.value,
        arm?.value,
        assembly,
        insteadOf,
        day,
        id,
      ]),
    ).toEqual([
      ["Spar", 12.5, 1.24, "wing", [], "2025-04-01", "2025-04-01-m"],
      ["Hinge", expect.closeTo(0.0992, 4), undefined, "spar", [], "2025-04-01", "2025-04-01-m"],
      [
        "Wing",
        expect.closeTo(11.878, 3),
        expect.closeTo(-0.1016, 12),
        "spar",
        ["Spar", "Hinge"],
        "2025-04-01",
        "2025-04-01-m",
      ],
    ]);
  });

  it("has the scales with the third wheel where it is", () => {
    const told = record.entries.flatMap(({ scales }) =>
      scales === undefined
        ? []
        : [
            [
              scales.what,
              scales.left.value,
              scales.right.value,
              scales.third.value,
              scales.at,
              scales.mains.value,
              scales.wheelbase.value,
              scales.day,
            ],
          ],
    );
    expect(told).toEqual([
      ["All of it", 151.2, 150.8, 0, "nose", -0.2, 4.18, "2025-04-01"],
      [undefined, 151.2, 150.8, 24, "tail", -0.2, 4.18, "2025-04-02"],
    ]);
    expect(record.entries[0]).not.toHaveProperty("scales");
  });

  it("has the datum and the design weight", () => {
    expect([record.aircraft.datum, record.aircraft.designWeight?.value]).toEqual(["Front face of the firewall", 290]);
  });

  it("has tasks in whole tenths, and none of one that does not apply", () => {
    expect(record.assemblies.get("wing")?.tasks.map(({ id, assembly, credit }) => [id, assembly, credit])).toEqual([
      ["W-1", "wing", { maker: 3, paid: 0, assembly: 3, fabrication: 4 }],
      ["W-2", "wing", undefined],
      ["W-3", "wing", { maker: 0, paid: 0, assembly: 10, fabrication: 0 }],
    ]);
  });
});
