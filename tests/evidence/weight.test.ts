import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { creditOf } from "../../src/evidence/credit.ts";
import { weightOf, type WeightFile } from "../../src/evidence/measures/weight.ts";
import type { BuildTask, OnScales, Quantity, Weighing } from "../../src/facts/types.ts";
import { assembly, entry, record } from "./make.ts";
import { mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const kg = (value: number): Quantity => ({ typed: `${value} kg`, value, unit: "kg", step: 0.1 });
const part = (name: string, mass: number, change: Partial<Weighing> = {}): Weighing => ({
  place,
  entry: "",
  day: "",
  assembly: "wing",
  part: name,
  mass: kg(mass),
  insteadOf: [],
  ...change,
});
const scales: OnScales = {
  place,
  entry: "2025-05-01-w",
  day: "2025-05-01",
  left: kg(150),
  right: kg(150),
  third: kg(20),
  at: "tail",
  mains: mm("1000"),
  wheelbase: mm("4000"),
};

/** Weighings of each day, one entry a day. */
function weighed(
  days: readonly (readonly Weighing[])[],
  change: { readonly designWeight?: Quantity; readonly scales?: OnScales } = {},
): WeightFile {
  const entries = days.map((lines, at) => {
    const id = `2025-04-${String(at + 1).padStart(2, "0")}-w`;
    return entry(id, { weighed: lines.map((line) => ({ ...line, entry: id, day: id.slice(0, 10) })) });
  });
  const made = record({
    entries: [...entries, ...(change.scales ? [entry("2025-05-01-w", { scales: change.scales })] : [])],
  });
  return weightOf({
    ...made,
    aircraft: { ...made.aircraft, ...(change.designWeight && { designWeight: change.designWeight }) },
  });
}

const counting = ({ parts }: WeightFile): string[] =>
  parts
    .filter(({ replacedBy }) => replacedBy === undefined)
    .map(({ weighing }) => `${weighing.part} ${weighing.mass.value}`);

describe("What was weighed on the way", () => {
  it("adds up in mass, and in moment where an arm is noted", () => {
    const file = weighed(
      [[part("spar", 10, { arm: mm("2000") }), part("ribs", 30, { arm: mm("-1000") })], [part("hinge", 0.5)]],
      { designWeight: kg(270) },
    );
    expect(file).toMatchObject({
      mass: 40.5,
      massWithoutArm: 0.5,
      balance: { mass: 40, moment: -10, arm: -0.25 },
      share: 0.15,
    });
    expect(file.parts.map(({ moment }) => moment)).toEqual([20, -30, undefined]);
  });

  it("has no balance without an arm, no share without a design weight, and nothing of nothing", () => {
    expect(weighed([[part("hinge", 0.5)]])).toEqual({
      parts: [expect.objectContaining({ weighing: expect.objectContaining({ part: "hinge" }) })],
      mass: 0.5,
      massWithoutArm: 0.5,
      scales: [],
    });
    expect(weighed([])).toEqual({ parts: [], mass: 0, massWithoutArm: 0, scales: [] });
  });

  it("counts a part weighed again by its last weighing alone", () => {
    const file = weighed([[part("spar", 10)], [part("ribs", 3)], [part("spar", 12)], [part("spar", 11)]]);
    expect([counting(file), file.mass]).toEqual([["ribs 3", "spar 11"], 14]);
    expect(file.parts[0]?.replacedBy?.mass.value).toBe(12);
    expect(file.parts[2]?.replacedBy?.mass.value).toBe(11);
  });

  it("counts parts that are in another no more by themselves", () => {
    expect(
      counting(weighed([[part("spar", 10), part("ribs", 3)], [part("wing", 20, { insteadOf: ["spar", "ribs"] })]])),
    ).toEqual(["wing 20"]);
    expect(counting(weighed([[part("spar", 10), part("wing", 20, { insteadOf: ["spar"] })]]))).toEqual(["wing 20"]);
    expect(
      counting(weighed([[part("spar", 10)], [part("wing", 20, { insteadOf: ["spar"] })], [part("wing", 21)]])),
    ).toEqual(["wing 21"]);
    expect(
      counting(weighed([[part("spar", 10)], [part("wing", 20, { insteadOf: ["spar"] })], [part("spar", 11)]])),
    ).toEqual(["wing 20", "spar 11"]);
  });

  it("adds up to what counts, whatever takes the place of what, and never counts a part twice", () => {
    const names = ["a", "b", "c", "d"];
    const line = fc.record({
      name: fc.constantFrom(...names),
      mass: fc.integer({ min: 1, max: 50 }),
      insteadOf: fc.subarray(names),
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const file = weighed(
          lines.map(({ name, mass, insteadOf }) => [
            part(name, mass, { insteadOf: insteadOf.filter((one) => one !== name) }),
          ]),
        );
        const stands = lines.filter(({ name }, at) =>
          lines.slice(at + 1).every((later) => later.name !== name && !later.insteadOf.includes(name)),
        );
        expect(counting(file)).toEqual(stands.map(({ name, mass }) => `${name} ${mass}`));
        expect(file.mass).toBe(stands.reduce((sum, { mass }) => sum + mass, 0));
      }),
    );
  });
});

describe("The aircraft on its scales", () => {
  it("is balanced by its main and third wheels, beside what was weighed on the way", () => {
    const file = weighed([[part("spar", 10)]], { scales });
    expect(file.mass).toBe(10);
    expect(file.scales).toEqual([{ on: scales, balance: { mass: 320, moment: expect.closeTo(400, 9), arm: 1.25 } }]);
    expect(weighed([], { scales: { ...scales, at: "nose" } }).scales[0]?.balance?.arm).toBe(0.75);
  });

  it("is not balanced by readings that cannot be", () => {
    expect(weighed([], { scales: { ...scales, left: kg(0) } }).scales).toEqual([{ on: { ...scales, left: kg(0) } }]);
  });
});

describe("The two ledgers of who did the work", () => {
  const task = (id: string, credit?: BuildTask["credit"]): BuildTask => ({
    id,
    place,
    title: id,
    assembly: "wing",
    ...(credit && { credit }),
  });
  const own = { maker: 0, paid: 0, assembly: 3, fabrication: 7 };
  const bought = { maker: 8, paid: 2, assembly: 0, fabrication: 0 };
  const hours = (who: string, minutes: number) => ({
    place,
    who,
    task: "gluing",
    minutes,
    typed: "",
    assembly: "wing",
  });

  it("take tasks that apply alone, in the order of assemblies", () => {
    const file = creditOf(
      record({
        assemblies: [
          assembly("wing", { tasks: [task("W-1", own), task("W-2")] }),
          assembly("fin", { tasks: [task("F-1", bought)] }),
        ],
      }),
    );
    expect(file.tasks.map(({ id }) => id)).toEqual(["W-1", "F-1"]);
    expect(file.notApplicable.map(({ id }) => id)).toEqual(["W-2"]);
    expect(file.portion).toEqual({
      tasks: 2,
      sums: { maker: 8, paid: 2, assembly: 3, fabrication: 7 },
      share: 50,
      major: false,
    });
  });

  it("give no share without tasks, whatever the hours", () => {
    const file = creditOf(
      record({
        entries: [
          entry("2025-03-01-a", { hours: [hours("ann", 600), hours("bo", 30)] }),
          entry("2025-03-02-a", { hours: [hours("ann", 60)] }),
        ],
      }),
    );
    expect(file).not.toHaveProperty("portion");
    expect([...file.hours]).toEqual([
      ["ann", 660],
      ["bo", 30],
    ]);
  });

  it("are never mixed: hours change no share and tasks no hours", () => {
    const assemblies = [assembly("wing", { tasks: [task("W-1", own)] })];
    const idle = creditOf(record({ assemblies }));
    const busy = creditOf(
      record({ assemblies, entries: [entry("2025-03-01-a", { hours: [hours("paid-help", 60_000)] })] }),
    );
    expect(busy.portion).toEqual(idle.portion);
    expect(busy.portion?.share).toBe(100);
    expect(idle.hours.size).toBe(0);
  });
});
