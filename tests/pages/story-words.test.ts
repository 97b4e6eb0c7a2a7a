import { describe, expect, it } from "vitest";
import { dateShort, dateWords, monthWords } from "../../src/words/dates.ts";
import { durationWords, hoursRounded, hoursWords } from "../../src/words/durations.ts";
import { listed } from "../../src/words/lists.ts";
import { grouped, percent, signedPercent } from "../../src/words/numbers.ts";
import { inUnits, quantityWords } from "../../src/words/quantities.ts";
import { celsius, g, inches, mpa, pc } from "../evidence/quantities.ts";

describe("Words of pages", () => {
  it("writes days and months in full and in short", () => {
    expect([dateWords("2025-03-08"), dateShort("2025-12-31"), monthWords("2025-02")]).toEqual([
      "8 March 2025",
      "31 Dec 2025",
      "February 2025",
    ]);
  });

  it.each([
    [165, "2 h 45 min"],
    [45, "45 min"],
    [120, "2 h"],
    [0, "no hours"],
    [72_240, "1,204 h"],
  ])("writes %i minutes as %s", (minutes, words) => {
    expect(hoursWords(minutes)).toBe(words);
  });

  it("rounds sums to a tenth of an hour below a hundred hours and to the hour above", () => {
    expect([hoursRounded(166), hoursRounded(6030)]).toEqual(["2.8 h", "101 h"]);
  });

  it.each([
    [2100, "35 min"],
    [12_000, "3 h 20 min"],
    [29, "less than a minute"],
    [86_400 * 4, "4 d"],
    [86_400 * 4 + 3600 * 6, "4 d 6 h"],
  ])("writes %i seconds as %s", (seconds, words) => {
    expect(durationWords(seconds)).toBe(words);
  });

  it("writes shares with their sign, and none for what rounds to nothing", () => {
    expect([
      percent(0.833),
      signedPercent(0.0123),
      signedPercent(-0.004),
      signedPercent(0.0001),
      signedPercent(-0.0001),
    ]).toEqual(["83 %", "+1.2 %", "−0.4 %", "0.0 %", "0.0 %"]);
  });

  it("groups digits and leaves decimals alone", () => {
    expect([grouped(1234567), grouped(1234.5678, 2), grouped(-0.01, 1)]).toEqual(["1,234,567", "1,234.57", "0.0"]);
  });

  it("joins words as English does", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
      "",
      "a",
      "a and b",
      "a, b and c",
    ]);
  });

  it("shows quantities as typed, with the aircraft's units after them where they were typed in others", () => {
    expect(quantityWords(g("42.0"), "metric")).toBe("42.0 g");
    expect(quantityWords(g("42.0"), "imperial")).toBe("42.0 g (1.48 oz)");
    expect(quantityWords(inches(1, 4), "metric")).toBe("1/4 in (6.35 mm)");
    expect(quantityWords(inches(1, 4), "imperial")).toBe("1/4 in");
    expect(quantityWords(celsius("20"), "imperial")).toBe("20 °C (68.0 °F)");
    expect(quantityWords(pc("52"), "imperial")).toBe("52 %");
    expect(inUnits(mpa("7.9").value, "Pa", "imperial")).toBe("1,146 psi");
  });
});
