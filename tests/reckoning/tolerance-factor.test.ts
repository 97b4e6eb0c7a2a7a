import { describe, expect, it } from "vitest";
import { toleranceFactor } from "../../src/reckoning/statistics/tolerance-factor.ts";
import { apart, referenceRows } from "../reference/rows.ts";

describe("The one-sided tolerance factor", () => {
  it("agrees within 0.002 with CMH-17's table for n = 2 to 137, 95/90 and 95/99 (second-hand: from the tests of an R package)", () => {
    const rows = referenceRows("tolerance-table");
    expect(rows.map((row) => Number(row("n")))).toEqual(Array.from({ length: 136 }, (_, i) => i + 2));
    for (const row of rows) {
      const n = Number(row("n"));
      expect(Math.abs((toleranceFactor(n, 0.9, 0.95) ?? NaN) - Number(row("b"))), `B at ${n}`).toBeLessThan(0.002);
      expect(Math.abs((toleranceFactor(n, 0.99, 0.95) ?? NaN) - Number(row("a"))), `A at ${n}`).toBeLessThan(0.002);
    }
  });

  it("agrees with R's quantile of the noncentral t distribution on 250 random inputs", () => {
    const rows = referenceRows("tolerance-factor");
    expect(rows).toHaveLength(250);
    for (const row of rows) {
      const k = toleranceFactor(Number(row("n")), Number(row("coverage")), Number(row("confidence")));
      expect(apart(k, Number(row("k"))), `${row("n")} ${row("coverage")} ${row("confidence")}`).toBeLessThan(1e-9);
    }
  });

  it("is the quantile of Student's t over √n where half must lie above: 95 % at n = 4 is 2.3534/2 (table of t, memory)", () => {
    expect(toleranceFactor(4, 0.5, 0.95)).toBeCloseTo(2.3533634348 / 2, 9);
  });

  it("is by two values and 99/99 what the closed form gives: there S is the size of a normal value", () => {
    // With one degree of freedom S = |Z|; the mean over Z by Simpson's rule, apart from the way the function takes.
    const k = toleranceFactor(2, 0.99, 0.99) ?? NaN;
    expect(k).toBeGreaterThan(100);
    expect(reachedByTwo(k, 2.3263478740408408)).toBeCloseTo(0.99, 8);
  });

  it("falls with more values, and rises with coverage and with confidence", () => {
    const at = (n: number, coverage = 0.9, confidence = 0.95): number =>
      toleranceFactor(n, coverage, confidence) ?? NaN;
    const by = [2, 3, 5, 10, 50, 500, 10_000].map((n) => at(n));
    expect(by).toEqual([...by].sort((a, b) => b - a));
    expect(at(10_000)).toBeGreaterThan(1.2815515655);
    expect(at(10_000)).toBeCloseTo(1.2815515655, 1);
    expect(at(8, 0.95)).toBeGreaterThan(at(8, 0.9));
    expect(at(8, 0.9, 0.99)).toBeGreaterThan(at(8, 0.9, 0.95));
  });

  it.each([
    [1, 0.9, 0.95],
    [2.5, 0.9, 0.95],
    [10_001, 0.9, 0.95],
    [5, 0.4, 0.95],
    [5, 1, 0.95],
    [5, 0.9, 0.4],
    [5, 0.9, 1],
    [5, 0.5, 0.5],
    [NaN, 0.9, 0.9],
  ])("gives nothing for n = %d, coverage %d, confidence %d", (n, coverage, confidence) => {
    expect(toleranceFactor(n, coverage, confidence)).toBeUndefined();
  });
});

/** P(X ≤ √2·(k·|Z| − z)) for X and Z normal = the share of angles of (Z, X) that lie below the line, summed over Z in fine steps. */
function reachedByTwo(k: number, z: number): number {
  const steps = 400_000;
  const h = 10 / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i += 1) {
    const s = i * h;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp(-(s * s) / 2) * normal(Math.SQRT2 * (k * s - z));
  }
  return (sum * h * 2) / (3 * Math.sqrt(2 * Math.PI));
}

/** Φ by its series (Abramowitz and Stegun 26.2.11). */
function normal(x: number): number {
  if (x < -8) return 0;
  if (x > 8) return 1;
  let term = x;
  let sum = x;
  for (let i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) sum += term *= (x * x) / i;
  return 0.5 + (sum * Math.exp(-(x * x) / 2)) / Math.sqrt(2 * Math.PI);
}
