/** Hours of a record by every cut, and what lines from before it was kept add to which of them. */
import { describe, expect, it } from "vitest";
import { creditOf } from "../../src/evidence/credit.ts";
import { earlierLinesOf, hoursOf, linesOf, minutesByAssembly } from "../../src/evidence/hours.ts";
import type { Record } from "../../src/facts/types.ts";
import { assembly, entry, record } from "./make.ts";

const place = { file: "made.md", line: 1, column: 1 };
const line = (who: string, task: string, minutes: number, on?: string) => ({
  ...{ place, who, task, minutes, typed: `${minutes}` },
  ...(on !== undefined && { assembly: on }),
});
const SPAN = { typed: "2024-11", from: "2024-11-01", to: "2024-11-30" };
const BEFORE = [
  { ...line("me", "gluing", 600, "rib"), span: SPAN, source: "old log" },
  { ...line("eve", "shop", 60), span: SPAN, source: "old log" },
];
const RECORD: Record = {
  ...record({
    assemblies: [assembly("wing"), assembly("rib", { parent: "wing" }), assembly("fin")],
    entries: [
      entry("2025-03-10-a", { hours: [line("me", "gluing", 30, "wing"), line("eve", "gluing", 45, "rib")] }),
      entry("2025-03-20-b", { hours: [line("me", "shop", 10)] }),
    ],
  }),
  earlier: [
    { id: "before", place, file: "before.md", audience: "public", title: "", lines: BEFORE, setAside: 0, body: [] },
  ],
};

describe("Hours of a record", () => {
  it("are each line of its entries with its day and entry; those of before have the first day of their span", () => {
    expect(linesOf(RECORD).map(({ day, entry: id, minutes }) => [day, id, minutes])).toEqual([
      ["2025-03-10", "2025-03-10-a", 30],
      ["2025-03-10", "2025-03-10-a", 45],
      ["2025-03-20", "2025-03-20-b", 10],
    ]);
    expect(earlierLinesOf(RECORD).map(({ day, minutes, who }) => [day, minutes, who])).toEqual([
      ["2024-11-01", 600, "me"],
      ["2024-11-01", 60, "eve"],
    ]);
  });

  it("add up to the same by every cut, what is on no assembly apart", () => {
    const hours = hoursOf(RECORD);
    const minutes = (map: ReadonlyMap<string, { readonly minutes: number }>) =>
      [...map].map(([key, cut]) => [key, cut.minutes]);
    expect(hours.all.minutes).toBe(85);
    expect(hours.lines).toHaveLength(3);
    expect([...hours.byAssembly].map(([id, { own, within }]) => [id, own.minutes, within.minutes])).toEqual([
      ["wing", 30, 75],
      ["rib", 45, 45],
      ["fin", 0, 0],
    ]);
    expect(hours.ofNone).toEqual({ minutes: 10, over: [{ day: "2025-03-20", minutes: 10, sum: 10 }] });
    expect(minutes(hours.byPerson)).toEqual([
      ["me", 40],
      ["eve", 45],
    ]);
    expect(minutes(hours.byTask)).toEqual([
      ["gluing", 75],
      ["shop", 10],
    ]);
    expect([...hours.byMonth]).toEqual([["2025-03", 85]]);
    expect(hours.byWeek.reduce((sum, week) => sum + week.minutes, 0)).toBe(85);
    expect(hours.byWeek[0]?.day).toBe("2024-12-30");
    expect(hours.all.over).toEqual([
      { day: "2025-03-10", minutes: 75, sum: 75 },
      { day: "2025-03-20", minutes: 10, sum: 85 },
    ]);
  });

  it("of each assembly count those of before with them, and of each person in the ledger of credit", () => {
    expect([...minutesByAssembly(RECORD)]).toEqual([
      ["wing", 30],
      ["rib", 645],
    ]);
    expect([...creditOf(RECORD).hours]).toEqual([
      ["me", 640],
      ["eve", 105],
    ]);
  });
});
