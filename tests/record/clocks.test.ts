import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLanguage } from "../../src/facts/language.ts";
import { readMoney } from "../../src/facts/quantity/money.ts";
import { type Clock, clockText, readClock } from "../../src/facts/time/clock.ts";
import { Zone } from "../../src/facts/time/zone.ts";

const clock = (typed: string, latest = 36): Clock => {
  const reading = readClock(typed, latest);
  if ("fault" in reading) throw new Error(reading.fault.message);
  return reading.value;
};
const lisbon = Zone.of("Europe/Lisbon");
const epoch = (day: string, typed: string, twice: "earlier" | "later" = "earlier"): number | undefined =>
  lisbon.moment(day, clock(typed), twice)?.epoch;
const utc = (text: string): number => Date.parse(text) / 1000;

describe("A time of day", () => {
  it("with seconds is the moment to the second, on a day on which clocks are changed too", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_399 }), (seconds) => {
        const typed = new Date(seconds * 1000).toISOString().slice(11, 19);
        expect(epoch("2025-01-10", typed)).toBe(utc("2025-01-10T00:00:00Z") + seconds);
        expect(clockText(clock(typed).minutes)).toBe(
          typed
            .replace(/^0/, "")
            .replace(/:00$/, (end, at: number) => (at === typed.replace(/^0/, "").length - 3 ? "" : end)),
        );
      }),
    );
    expect(epoch("2025-03-30", "05:02:30")).toBe(utc("2025-03-30T04:02:30Z"));
    expect(epoch("2025-03-30", "01:30:00")).toBeUndefined();
  });

  it("past midnight is one of the next day", () => {
    expect(epoch("2025-01-10", "24:10:30")).toBe(utc("2025-01-11T00:10:30Z"));
  });

  it("with its offset is that passage of the hour that comes twice, whichever would be taken", () => {
    for (const twice of ["earlier", "later"] as const) {
      expect(epoch("2025-10-26", "01:05+01:00", twice)).toBe(utc("2025-10-26T00:05:00Z"));
      expect(epoch("2025-10-26", "01:05+00:00", twice)).toBe(utc("2025-10-26T01:05:00Z"));
      expect(epoch("2025-10-26", "01:05Z", twice)).toBe(utc("2025-10-26T01:05:00Z"));
    }
    expect(epoch("2025-10-26", "01:05")).toBe(utc("2025-10-26T00:05:00Z"));
    expect(epoch("2025-10-26", "01:05", "later")).toBe(utc("2025-10-26T01:05:00Z"));
  });

  it("with an offset that never held is no moment", () => {
    expect(epoch("2025-07-01", "12:00+00:00")).toBeUndefined();
    expect(epoch("2025-07-01", "12:00+01:00")).toBe(utc("2025-07-01T11:00:00Z"));
  });

  it.each(["14:20:60", "14:20+15:00", "14:20+01:60", "14:20 +1", "14", "36:00"])("is not %s", (typed) => {
    expect(readClock(typed, 36)).toHaveProperty("fault");
  });
});

describe("A sum of money", () => {
  it("is kept in hundredths, with its currency", () => {
    expect(readMoney("84.5 EUR")).toEqual({ value: { typed: "84.5 EUR", hundredths: 8450, currency: "EUR" } });
    expect(readMoney("1200 GBP")).toMatchObject({ value: { hundredths: 120_000 } });
  });

  it.each([
    ["EUR 84,50", "84.50 EUR"],
    ["84,5 EUR", "84.5 EUR"],
    ["84.50 eur", "84.50 EUR"],
    ["84.505 EUR", undefined],
    ["-3 EUR", undefined],
    ["84 XYZ", undefined],
  ])("typed as %s has the mend %s", (typed, instead) => {
    const reading = readMoney(typed);
    expect("fault" in reading && reading.fault.instead).toBe(instead);
  });
});

describe("A language", () => {
  it("is known by its tag, and by nothing else", () => {
    expect(readLanguage("pt-br")).toEqual({ value: "pt-BR" });
    expect(readLanguage("de")).toEqual({ value: "de" });
    for (const typed of ["Deutsch", "xx", "", "e", "de_DE_x"]) expect(readLanguage(typed)).toHaveProperty("fault");
  });
});
