import { describe, expect, it } from "vitest";
import { barsDrawing } from "../../src/charts/bars.ts";
import { apart, monthTicks } from "../../src/charts/frame.ts";
import { linesDrawing } from "../../src/charts/lines.ts";
import { timelineDrawing } from "../../src/charts/timeline.ts";
import { dayNumber } from "../../src/reckoning/time/calendar.ts";

const at = (day: string): number => dayNumber(day) ?? 0;
const ROOM = { width: 300, height: 200, names: 100 };

describe("Lines over time", () => {
  const drawing = linesDrawing(
    {
      from: at("2025-01-01"),
      to: at("2025-03-01"),
      filled: true,
      series: [
        {
          name: "Worked",
          points: [
            [at("2025-01-01"), 0],
            [at("2025-02-01"), 10],
            [at("2025-03-01"), 30],
          ],
        },
      ],
      against: {
        name: "As meant",
        points: [
          [at("2025-01-01"), 0],
          [at("2025-03-01"), 40],
        ],
      },
    },
    ROOM,
  );

  it("draw a path of lengths rounded to a tenth", () => {
    expect(drawing.lines[0]?.path).toBe("M46,174L126.9,137L200,63");
    expect(drawing.area).toBe("M46,174L126.9,137L200,63V174H46Z");
    expect(drawing.against?.path).toBe("M46,174L200,26");
  });

  it("name each line at its end", () => {
    expect(drawing.lines[0]).toMatchObject({ end: { x: 200, y: 63 }, nameAt: { x: 210, y: 63 } });
  });

  it("put ticks on first days of months and the year on January", () => {
    expect(drawing.frame.xTicks).toEqual([
      { at: 46, label: "2025", strong: true },
      { at: 126.9, label: "Feb", strong: false },
      { at: 200, label: "Mar", strong: false },
    ]);
    expect(drawing.frame.yTicks.map(({ label }) => label)).toEqual(["0", "10", "20", "30", "40"]);
  });

  it("can be drawn of no work at all", () => {
    const empty = linesDrawing({ from: 0, to: 0, series: [{ name: "Worked", points: [] }] }, ROOM);
    expect(empty.lines[0]?.path).toBe("");
    expect(JSON.stringify(empty)).not.toContain("null");
  });
});

describe("Bars of weeks", () => {
  const drawing = barsDrawing(
    {
      weeks: [0, 7, 14],
      series: [
        { name: "a", values: [4, 0, 2] },
        { name: "b", values: [2, 5, 0] },
      ],
      level: 8,
    },
    ROOM,
  );

  it("stand on each other and leave out what is nothing", () => {
    expect(drawing.stacks[0]?.bars).toEqual([
      { x: 46, y: 100, width: 49.3, height: 74 },
      { x: 148.7, y: 137, width: 49.3, height: 37 },
    ]);
    expect(drawing.stacks[1]?.bars).toEqual([
      { x: 46, y: 63, width: 49.3, height: 37 },
      { x: 97.3, y: 81.5, width: 49.3, height: 92.5 },
    ]);
  });

  it("make room for the level they are held against", () => {
    expect(drawing.level).toBe(26);
  });
});

describe("A line of time", () => {
  const input = {
    from: at("2025-01-06"),
    to: at("2025-06-30"),
    work: [
      { day: at("2025-01-06"), hours: 2 },
      { day: at("2025-03-01"), hours: 4 },
    ],
    rows: [
      {
        name: "Batches",
        events: [
          { day: at("2025-03-01"), shape: "shown", words: "B-1" },
          { day: at("2025-03-02"), shape: "pending", words: "B-2" },
        ],
      },
      { name: "Departures", events: [] },
    ],
  };

  it("lifts events that would cover each other, and leaves out rows without any", () => {
    const { rows } = timelineDrawing(input, { width: 960, names: 100 });
    expect(rows.map(({ name }) => name)).toEqual(["Batches"]);
    expect(rows[0]?.events.map(({ y }) => y)).toEqual([22, 10]);
  });

  it("draws posts as long as the hours of the day", () => {
    expect(timelineDrawing(input, { width: 960, names: 100 }).posts.map(({ height }) => height)).toEqual([17, 34]);
  });

  it("puts names above the rows where there is no room beside them", () => {
    const { rows, left } = timelineDrawing(input, { width: 400, names: 0 });
    expect(left).toBe(4);
    expect((rows[0]?.nameY ?? 0) < (rows[0]?.events[1]?.y ?? 0)).toBe(true);
  });
});

describe("Ticks of months", () => {
  it("grow sparser with time, and never stand before the first day", () => {
    const labels = (from: string, to: string, most: number): string[] =>
      monthTicks(at(from), at(to), most).map(({ label }) => label);
    expect(labels("2025-01-15", "2025-04-02", 12)).toEqual(["Feb", "Mar", "Apr"]);
    expect(labels("2024-09-01", "2026-08-31", 8)).toEqual(["Oct", "2025", "Apr", "Jul", "Oct", "2026", "Apr", "Jul"]);
    expect(labels("2020-06-01", "2026-08-31", 8)).toEqual(["2021", "2022", "2023", "2024", "2025", "2026"]);
  });
});

describe("Names at the ends of lines", () => {
  it("are moved apart in order and kept above the foot", () => {
    expect(apart([100, 101, 20], 15, 200)).toEqual([100, 115, 20]);
    expect(apart([198, 199], 15, 200)).toEqual([185, 200]);
  });
});
