import { describe, expect, it } from "vitest";
import { LocalTime } from "../../src/reckoning/time/local-time.ts";

const at = (text: string): number => Date.parse(`${text}Z`) / 1000;

describe("The time in a zone", () => {
  const lisbon = new LocalTime("Europe/Lisbon");

  it("is an hour on in summer, whatever was asked before", () => {
    expect(
      [
        "2025-03-30T00:59:59",
        "2025-03-30T01:00:00",
        "2025-10-26T00:59:59",
        "2025-10-26T01:00:00",
        "2025-07-01T23:30:00",
        "2025-01-01T00:00:00",
      ].map((text) => lisbon.minute(at(text))),
    ).toEqual([
      "2025-03-30 00:59",
      "2025-03-30 02:00",
      "2025-10-26 01:59",
      "2025-10-26 01:00",
      "2025-07-02 00:30",
      "2025-01-01 00:00",
    ]);
  });

  it("tells the day and its number", () => {
    expect(lisbon.day(at("2025-07-01T22:59:59"))).toBe("2025-07-01");
    expect(lisbon.day(at("2025-07-01T23:00:00"))).toBe("2025-07-02");
    expect(lisbon.dayNumber(at("2025-07-01T23:00:00"))).toBe(Date.UTC(2025, 6, 2) / 86_400_000);
    expect(new LocalTime("America/Chicago").day(at("2025-07-01T04:59:59"))).toBe("2025-06-30");
  });

  it("says by the next full hour, and on the hour itself that hour", () => {
    expect(
      ["2025-07-01T13:59:59", "2025-07-01T14:00:00", "2025-07-01T14:00:01", "2025-07-01T22:30:00"].map((text) =>
        lisbon.hourBy(at(text)),
      ),
    ).toEqual(["2025-07-01 15:00", "2025-07-01 15:00", "2025-07-01 16:00", "2025-07-02 00:00"]);
    expect(lisbon.hourBy(at("2025-07-01T14:00:00") + 0.001)).toBe("2025-07-01 16:00");
    expect(new LocalTime("Asia/Kolkata").hourBy(at("2025-07-01T00:00:00"))).toBe("2025-07-01 06:00");
  });

  it("knows a midnight far from Greenwich, a few hours before the clocks change", () => {
    expect(new LocalTime("Pacific/Apia").midnight(Date.parse("2020-09-27T00:00Z") / 86_400_000)).toBe(
      at("2020-09-26T11:00:00"),
    );
  });

  it("knows the midnight of a day in both halves of the year", () => {
    const midnight = (day: string): number => lisbon.midnight(Date.parse(`${day}T00:00Z`) / 86_400_000);
    expect([
      midnight("2025-01-10"),
      midnight("2025-07-10"),
      midnight("2025-03-30"),
      midnight("2025-03-31"),
      midnight("2025-10-26"),
      midnight("2025-10-27"),
    ]).toEqual(
      [
        "2025-01-10T00:00",
        "2025-07-09T23:00",
        "2025-03-30T00:00",
        "2025-03-30T23:00",
        "2025-10-25T23:00",
        "2025-10-27T00:00",
      ].map((text) => at(`${text}:00`)),
    );
  });
});
