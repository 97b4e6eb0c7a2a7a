import { describe, expect, it } from "vitest";
import { isZone, offsetOf, zoneClock } from "../../../src/facts/time/wall-clock.ts";
import { readings } from "./reading.ts";

const file = (...stamps: readonly string[]): string =>
  `Time,Temp (°C)\n${stamps.map((stamp, i) => `${stamp},${i}\n`).join("")}`;
const local = (text: string, more: object = {}): string[] =>
  readings(text, { zone: "local", gap: 3e7, ...more }).map((line) => line.replace(/ -$/u, ""));

describe("The workshop's clock, put forward and back", () => {
  it("is an hour ahead of UTC in a summer of Lisbon", () => {
    expect(
      local(file("2025-03-30 00:30", "2025-03-30 02:30", "2025-07-01 12:00", "2025-10-26 00:30", "2025-10-26 02:30")),
    ).toEqual([
      "2025-03-30T00:30Z 0",
      "2025-03-30T01:30Z 1",
      "2025-07-01T11:00Z 2",
      "2025-10-25T23:30Z 3",
      "2025-10-26T02:30Z 4",
    ]);
  });

  it("never shows the hour left out in spring", () => {
    expect(local(file("2025-03-30 00:59", "2025-03-30 01:00", "2025-03-30 01:59", "2025-03-30 02:00"))).toEqual([
      "3:1 climate-hour",
      "4:1 climate-hour",
    ]);
  });

  it("tells the two passages of the doubled hour by the stamps going back", () => {
    expect(
      local(
        file(
          "2025-10-26 00:30",
          "2025-10-26 01:00",
          "2025-10-26 01:30",
          "2025-10-26 01:00",
          "2025-10-26 01:30",
          "2025-10-26 02:00",
        ),
      ),
    ).toEqual([
      "2025-10-25T23:30Z 0",
      "2025-10-26T00:00Z 1",
      "2025-10-26T00:30Z 2",
      "2025-10-26T01:00Z 3",
      "2025-10-26T01:30Z 4",
      "2025-10-26T02:00Z 5",
    ]);
  });

  it("tells them likewise where there is one reading in each hour, and where the newest comes first", () => {
    expect(local(file("2025-10-26 00:30", "2025-10-26 01:30", "2025-10-26 01:30", "2025-10-26 02:30"))).toEqual([
      "2025-10-25T23:30Z 0",
      "2025-10-26T00:30Z 1",
      "2025-10-26T01:30Z 2",
      "2025-10-26T02:30Z 3",
    ]);
    expect(
      local(
        file(
          "2025-10-26 02:00",
          "2025-10-26 01:30",
          "2025-10-26 01:00",
          "2025-10-26 01:30",
          "2025-10-26 01:00",
          "2025-10-26 00:30",
        ),
      ),
    ).toEqual([
      "2025-10-25T23:30Z 5",
      "2025-10-26T00:00Z 4",
      "2025-10-26T00:30Z 3",
      "2025-10-26T01:00Z 2",
      "2025-10-26T01:30Z 1",
      "2025-10-26T02:00Z 0",
    ]);
  });

  it("leaves one passage alone open, until the builder says which it is", () => {
    const once = file("2025-10-26 00:30", "2025-10-26 01:30", "2025-10-26 02:30");
    expect(local(once)).toEqual(["3:1 climate-hour"]);
    expect(local(once, { doubledHour: "first" })[1]).toBe("2025-10-26T00:30Z 1");
    expect(local(once, { doubledHour: "second" })[1]).toBe("2025-10-26T01:30Z 1");
  });

  it("does not believe a clock that goes back twice, at any end of the file", () => {
    expect(local(file("2025-10-26 01:30", "2025-10-26 01:20", "2025-10-26 01:10"))).toEqual(["4:1 climate-hour"]);
    expect(local(file("2025-10-26 00:10", "2025-10-26 01:30", "2025-10-26 01:20", "2025-10-26 01:10"))).toEqual([
      "3:1 climate-hour",
    ]);
  });

  it("knows each autumn by itself", () => {
    const stamps = [
      "2024-10-27 01:30",
      "2024-10-27 01:30",
      "2024-10-27 02:00",
      "2025-10-26 01:30",
      "2025-10-26 01:30",
      "2025-10-26 03:00",
    ];
    expect(local(file(...stamps))).toEqual([
      "2024-10-27T00:30Z 0",
      "2024-10-27T01:30Z 1",
      "2024-10-27T02:00Z 2",
      "2025-10-26T00:30Z 3",
      "2025-10-26T01:30Z 4",
      "2025-10-26T03:00Z 5",
    ]);
  });

  it("runs through both hours where the logger's clock stays at one offset", () => {
    const text = file("2025-03-30 01:30", "2025-10-26 01:30");
    expect(readings(text, { zone: "+00:00", gap: 3e7 })).toEqual(["2025-03-30T01:30Z 0 -", "2025-10-26T01:30Z 1 -"]);
    expect(readings(text, { zone: "UTC-03:30", gap: 3e7 })).toEqual(["2025-03-30T05:00Z 0 -", "2025-10-26T05:00Z 1 -"]);
  });
});

describe("Zones", () => {
  it("reads offsets, and takes nothing else for one", () => {
    expect(["Z", "utc", "GMT", "+01:00", "UTC+1", "GMT-0330", "−05:00", "+1400"].map(offsetOf)).toEqual([
      0, 0, 0, 3600, 3600, -12600, -18000, 50400,
    ]);
    expect(["", "local", "Europe/Lisbon", "+15", "+01:60", "1"].map(offsetOf)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("knows time zones by name, however they are capitalised", () => {
    expect(["Europe/Lisbon", "europe/lisbon", "Europe/Nowhere", "here"].map(isZone)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it("asks the calendar seldom: a zone's clock answers in any order", () => {
    const clock = zoneClock("America/Chicago", Date.UTC(2020, 0, 1) / 1000, Date.UTC(2025, 0, 1) / 1000);
    const at = (...parts: [number, number, number, number]): number => Date.UTC(...parts) / 1000;
    expect(clock(at(2024, 6, 1, 12))).toEqual([at(2024, 6, 1, 17)]);
    expect(clock(at(2020, 0, 1, 12))).toEqual([at(2020, 0, 1, 18)]);
    expect(clock(at(2024, 10, 3, 1))).toEqual([at(2024, 10, 3, 6), at(2024, 10, 3, 7)]);
    expect(clock(at(2022, 2, 13, 2))).toEqual([]);
    expect(clock(at(2022, 2, 13, 3))).toEqual([at(2022, 2, 13, 8)]);
  });
});
