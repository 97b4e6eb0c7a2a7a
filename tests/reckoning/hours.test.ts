import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, dayNumber, dayText, monday } from "../../src/reckoning/time/calendar.ts";
import { byMonth, byWeek, cumulative, groupBy, sumBy, total, type Worked } from "../../src/reckoning/hours/hours.ts";

const line = (day: string, minutes: number): Worked => ({ day, minutes });
const someDay = fc.integer({ min: 18_000, max: 20_500 }).map(dayText);
const someLines = fc.array(
  fc.record({ day: someDay, minutes: fc.integer({ min: 1, max: 900 }), who: fc.constantFrom("a", "b", "c") }),
  { maxLength: 60 },
);

describe("Days", () => {
  it("counts from 1970-01-01 and back, over leap days", () => {
    expect(dayNumber("1970-01-01")).toBe(0);
    expect(dayNumber("2024-03-01")).toBe(19_783);
    expect(dayText(19_783)).toBe("2024-03-01");
    expect(addDays("2024-02-28", 2)).toBe("2024-03-01");
    expect(addDays("2023-12-31", 1)).toBe("2024-01-01");
  });

  it("has no number for a day that is not real or not written as a day", () => {
    for (const text of ["2023-02-29", "2024-13-01", "2024-1-01", "x2024-01-01", "2024-01-01x", ""])
      expect(dayNumber(text)).toBeUndefined();
    expect(addDays("2023-02-30", 1)).toBeUndefined();
    expect(monday("soon")).toBeUndefined();
  });

  it("starts weeks on Monday as ISO 8601 does", () => {
    expect(monday("2025-03-10")).toBe("2025-03-10");
    expect(monday("2025-03-16")).toBe("2025-03-10");
    expect(monday("2025-03-17")).toBe("2025-03-17");
    expect(monday("1969-12-31")).toBe("1969-12-29");
  });
});

describe("Sums of hours", () => {
  const lines = [line("2025-03-08", 165), line("2025-03-02", 90), line("2025-03-08", 15), line("2025-04-01", 60)];

  it("adds up by day, in the order of days", () => {
    expect(cumulative(lines)).toEqual([
      { day: "2025-03-02", minutes: 90, sum: 90 },
      { day: "2025-03-08", minutes: 180, sum: 270 },
      { day: "2025-04-01", minutes: 60, sum: 330 },
    ]);
  });

  it("adds up by month, in the order of months", () => {
    expect([...byMonth([line("2025-04-01", 60), ...lines])]).toEqual([
      ["2025-03", 270],
      ["2025-04", 120],
    ]);
  });

  it("puts months in order whatever the order of the lines", () => {
    const months = ["2025-02", "2025-05", "2025-01", "2025-04", "2025-03"];
    for (let turn = 0; turn < months.length; turn += 1) {
      const turned = [...months.slice(turn), ...months.slice(0, turn)];
      expect([...byMonth(turned.map((month) => line(`${month}-01`, 1))).keys()]).toEqual([...months].sort());
      expect(cumulative(turned.map((month) => line(`${month}-01`, 1))).map((step) => step.day.slice(0, 7))).toEqual(
        [...months].sort(),
      );
    }
  });

  it("shows weeks without work", () => {
    expect(byWeek(lines, "2025-02-26", "2025-04-02")).toEqual([
      line("2025-02-24", 90),
      line("2025-03-03", 180),
      line("2025-03-10", 0),
      line("2025-03-17", 0),
      line("2025-03-24", 0),
      line("2025-03-31", 60),
    ]);
  });

  it("widens the weeks to the lines, so that no minute is lost", () => {
    expect(byWeek(lines, "2025-03-10", "2025-03-10")?.map((week) => week.minutes)).toEqual([90, 180, 0, 0, 0, 60]);
    expect(byWeek([], "2025-03-10", "2025-03-11")).toEqual([line("2025-03-10", 0)]);
    expect(byWeek([], "2025-03-18", "2025-03-11")).toEqual([]);
    expect(byWeek(lines, "never", "2025-03-11")).toBeUndefined();
    expect([
      byWeek([], "never", "2025-03-11"),
      byWeek([], "2025-03-10", "never"),
      byWeek(lines, "2025-03-10", "never"),
    ]).toEqual([undefined, undefined, undefined]);
    expect(byWeek([line("never", 1)], "2025-03-10", "2025-03-11")).toBeUndefined();
  });

  it("agrees to the minute by every cut", () => {
    fc.assert(
      fc.property(someLines, (some) => {
        const all = some.reduce((sum, { minutes }) => sum + minutes, 0);
        const add = (sums: Iterable<number>): number => [...sums].reduce((a, b) => a + b, 0);
        expect(total(some)).toBe(all);
        expect(add(sumBy(some, ({ who }) => who).values())).toBe(all);
        expect(add(byMonth(some).values())).toBe(all);
        expect(cumulative(some).at(-1)?.sum ?? 0).toBe(all);
        expect(add((byWeek(some, "2025-01-01", "2025-01-01") ?? []).map((week) => week.minutes))).toBe(all);
        for (const [who, group] of groupBy(some, (one) => one.who))
          expect(total(group)).toBe(sumBy(some, (one) => one.who).get(who));
      }),
    );
  });
});
