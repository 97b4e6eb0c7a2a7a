import { describe, expect, it } from "vitest";
import { builder } from "./builders.ts";
import { coverage } from "./coverage.ts";

describe("The band of 80 %", () => {
  it("holds 75 to 90 % of the time at 4, 13 and 26 weeks on forty builders with seasons, pauses and drift", () => {
    for (const { ahead, tried, held } of coverage(40)) {
      expect(tried, `${ahead} weeks`).toBeGreaterThan(1000);
      expect(held / tried, `${ahead} weeks`).toBeGreaterThan(0.75);
      expect(held / tried, `${ahead} weeks`).toBeLessThan(0.9);
    }
  });
});

describe("A builder that never was", () => {
  it("is the same for the same number, pauses for weeks and differs from year to year", () => {
    expect(builder(3)).toEqual(builder(3));
    expect(builder(3)).not.toEqual(builder(4));
    const idle = (weekly: readonly number[]): number => weekly.filter((week) => week === 0).length / weekly.length;
    const shares = Array.from({ length: 40 }, (_, at) => idle(builder(at + 1)));
    expect(Math.min(...shares)).toBeLessThan(0.2);
    expect(Math.max(...shares)).toBeGreaterThan(0.5);
  });
});
