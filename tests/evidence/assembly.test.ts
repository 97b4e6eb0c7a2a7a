import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { english, reckon } from "./reckoned.ts";
import { hoursOf } from "../../src/evidence/hours.ts";
import { toldRules } from "../../src/words/findings/told.ts";
import type { HoursLine, Record } from "../../src/facts/types.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import {
  assembly,
  batch,
  DAY,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  measurement,
  openItem,
  record,
  test,
} from "./make.ts";

const place = { file: "", line: 1, column: 1 };
const hours = (assembly: string, minutes: number, who = "ann", task = "gluing"): HoursLine => ({
  place,
  who,
  task,
  minutes,
  typed: `${minutes} min`,
  assembly,
});

const TREE = [
  assembly("aircraft", { holdPoints: [holdPoint("FLY", { assembly: "aircraft", kind: "flight" })] }),
  assembly("rib", {
    parent: "wing",
    joints: [joint("R-1", "rib")],
    holdPoints: [holdPoint("RIBS", { assembly: "rib" })],
  }),
  assembly("wing", {
    parent: "aircraft",
    joints: [joint("W-1"), joint("W-2")],
    holdPoints: [holdPoint("CLOSE", { joints: ["W-1"] }), holdPoint("COVER", { kind: "covering" })],
  }),
  assembly("fin", { parent: "aircraft" }),
];

describe("An assembly", () => {
  const entries = [
    entry(`${DAY}-glue`, {
      batches: [batch("B-1", { joints: ["W-1"] })],
      hours: [hours("wing", 90), hours("rib", 30), hours("fin", 5)],
    }),
    entry(`${DAY}-other`, {
      raised: [openItem("O-1", { assembly: "rib" }), openItem("O-2", { assembly: "fin" })],
      departures: [departure("D-1")],
      measurements: [measurement({ assembly: "rib" })],
      inspections: [inspection("CLOSE")],
    }),
    entry("2025-03-20-tests", { tests: [test("B-1/1")] }),
  ];
  it("gathers what it holds and what is within it, parents first", () => {
    const { assemblies } = reckon(record({ assemblies: TREE, entries }));
    expect(assemblies.get("wing")).toMatchObject({
      within: ["wing", "rib"],
      joints: ["W-1", "W-2", "R-1"],
      minutes: 120,
      holdPoints: ["CLOSE", "COVER", "RIBS"],
      nextHoldPoint: "CLOSE",
      jointCounts: { shown: 1, "not glued": 2, pending: 0, "not shown": 0, quarantined: 0, opened: 0 },
      openItems: [{ id: "O-1" }],
      departures: [{ id: "D-1" }],
      measurements: [{ verdict: "no tolerance" }],
    });
    expect(assemblies.get("aircraft")).toMatchObject({
      within: ["aircraft", "wing", "rib", "fin"],
      minutes: 125,
      openItems: [{ id: "O-1" }, { id: "O-2" }],
    });
    expect(assemblies.get("fin")).toMatchObject({ within: ["fin"], joints: [], minutes: 5, holdPoints: [] });
    expect(assemblies.get("fin")?.nextHoldPoint).toBeUndefined();
  });
});

describe("Hours", () => {
  const line = fc.record({
    assembly: fc.constantFrom("aircraft", "rib", "wing", "fin"),
    minutes: fc.integer({ min: 1, max: 600 }),
    who: fc.constantFrom("ann", "bo"),
    task: fc.constantFrom("gluing", "shaping"),
  });
  const someRecord = fc
    .array(
      fc.record({
        day: fc.integer({ min: 20_100, max: 20_400 }).map(dayText),
        lines: fc.array(line, { maxLength: 4 }),
      }),
      { maxLength: 20 },
    )
    .map(
      (days): Record =>
        record({
          assemblies: TREE,
          entries: days.map(({ day, lines }, i) =>
            entry(`${day}-e${i}`, { hours: lines.map((l) => hours(l.assembly, l.minutes, l.who, l.task)) }),
          ),
        }),
    );

  it("agree to the minute by every cut, for any record", () => {
    fc.assert(
      fc.property(someRecord, (made) => {
        const h = hoursOf(made);
        const all = made.entries.flatMap((one) => one.hours).reduce((sum, one) => sum + one.minutes, 0);
        const add = (minutes: Iterable<number>): number => [...minutes].reduce((a, b) => a + b, 0);
        expect(h.all.minutes).toBe(all);
        expect(add([...h.byAssembly.values()].map(({ own }) => own.minutes))).toBe(all);
        expect(h.byAssembly.get("aircraft")?.within.minutes).toBe(all);
        expect(add([...h.byPerson.values()].map((cut) => cut.minutes))).toBe(all);
        expect(add([...h.byTask.values()].map((cut) => cut.minutes))).toBe(all);
        expect(add(h.byMonth.values())).toBe(all);
        expect(add(h.byWeek.map((week) => week.minutes))).toBe(all);
        for (const cut of [
          h.all,
          ...h.byPerson.values(),
          ...h.byTask.values(),
          ...[...h.byAssembly.values()].flatMap(({ own, within }) => [own, within]),
        ]) {
          expect(cut.over.at(-1)?.sum ?? 0).toBe(cut.minutes);
        }
        expect(reckon(made).assemblies.get("aircraft")?.minutes).toBe(all);
      }),
      { numRuns: 50 },
    );
  });

  it("of an assembly are its own, and with those within it", () => {
    const made = record({
      assemblies: TREE,
      entries: [
        entry("2025-03-10-a", { hours: [hours("wing", 90), hours("rib", 30)] }),
        entry("2025-03-04-b", { hours: [hours("rib", 10, "bo", "shaping")] }),
      ],
    });
    const h = hoursOf(made);
    expect(h.byAssembly.get("wing")?.own).toEqual({ minutes: 90, over: [{ day: "2025-03-10", minutes: 90, sum: 90 }] });
    expect(h.byAssembly.get("wing")?.within).toEqual({
      minutes: 130,
      over: [
        { day: "2025-03-04", minutes: 10, sum: 10 },
        { day: "2025-03-10", minutes: 120, sum: 130 },
      ],
    });
    expect(h.byPerson.get("bo")?.minutes).toBe(10);
    expect(h.byTask.get("shaping")?.minutes).toBe(10);
    expect(h.lines[0]).toMatchObject({ day: "2025-03-04", entry: "2025-03-04-b", who: "bo" });
    expect(h.byWeek[0]?.day).toBe("2024-12-30");
    expect(h.byWeek.at(-1)).toEqual({ day: "2025-03-10", minutes: 120 });
    expect(h.byWeek).toHaveLength(11);
  });
});

describe("The rules", () => {
  it("have each an id of its own, a title, a saying and a source", () => {
    const rules = toldRules(english());
    expect(new Set(rules.map((one) => one.id)).size).toBe(rules.length);
    for (const one of rules) expect([one.title, one.says, one.source.text].every((text) => text.length > 3)).toBe(true);
  });
});
