import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { individualsChart } from "../../src/reckoning/statistics/individuals-chart.ts";
import { mean } from "../../src/reckoning/statistics/mean.ts";
import { sampleDeviation } from "../../src/reckoning/statistics/sample-deviation.ts";
import { apart, numbers, referenceRows } from "../reference/rows.ts";

const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe("The individuals and moving-range chart", () => {
  it("gives centre 50.81, mean range 1.8778, limits 45.8159 and 55.8041 for the flow rates of the NIST/SEMATECH handbook 6.3.2.2 (seen second-hand)", () => {
    const chart = individualsChart(FLOW);
    expect(chart?.centre).toBeCloseTo(50.81, 10);
    expect(chart?.limits?.meanRange).toBeCloseTo(1.8778, 4);
    // 50.81 − 3·1.87778/1.128 is 45.81596: the handbook's 45.8159 is cut off and not rounded.
    expect(Math.abs((chart?.limits?.lower ?? NaN) - 45.8159)).toBeLessThan(1e-4);
    expect(chart?.limits?.upper).toBeCloseTo(55.8041, 3);
    expect(chart?.limits?.outside).toEqual([]);
  });

  it("agrees with R on 200 random series: mean, deviation, limits, and which points lie outside", () => {
    const rows = referenceRows("individuals-chart");
    expect(rows).toHaveLength(200);
    expect(rows.filter((row) => row("outside") !== "").length).toBeGreaterThan(20);
    expect(rows.filter((row) => row("range_outside") !== "").length).toBeGreaterThan(20);
    for (const row of rows) {
      const values = numbers(row("values"));
      const chart = individualsChart(values);
      const got = [
        mean(values),
        sampleDeviation(values),
        chart?.limits?.meanRange,
        chart?.limits?.lower,
        chart?.limits?.upper,
      ];
      const want = ["mean", "deviation", "mean_range", "lower", "upper"].map((name) => Number(row(name)));
      expect(Math.max(...want.map((value, i) => apart(got[i], value, 1e-3)))).toBeLessThan(1e-11);
      expect(chart?.limits?.outside).toEqual(numbers(row("outside")));
      expect(chart?.limits?.rangeOutside).toEqual(numbers(row("range_outside")));
      expect(chart?.centre).toBe(mean(values));
    }
  });

  it("has no limits below eight points, and has them from eight", () => {
    expect(individualsChart(FLOW.slice(0, 7))?.limits).toBeUndefined();
    expect(individualsChart(FLOW.slice(0, 7))?.ranges).toHaveLength(6);
    expect(individualsChart(FLOW.slice(0, 8))?.limits).toBeDefined();
    expect(individualsChart([4])).toEqual({ centre: 4, ranges: [] });
  });

  it("marks a point beyond either limit and the range that led to it, at the later of the two points", () => {
    const quiet = [0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1];
    expect(individualsChart([...quiet, 30])?.limits).toMatchObject({ outside: [12], rangeOutside: [12] });
    expect(individualsChart([-30, ...quiet])?.limits).toMatchObject({ outside: [0], rangeOutside: [1] });
    expect(individualsChart(quiet)?.limits?.rangeUpper).toBeCloseTo(3.267, 12);
  });

  it("marks nothing where all values are the same, whatever binary arithmetic makes of their mean", () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.integer({ min: 8, max: 40 }), (value, n) => {
        const chart = individualsChart(new Array<number>(n).fill(value));
        expect(chart?.limits).toMatchObject({ outside: [], rangeOutside: [] });
      }),
    );
  });

  it("moves and stretches with its values", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 8, maxLength: 30 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: -99, max: 99 }),
        (values, by, add) => {
          const one = individualsChart(values)?.limits;
          const other = individualsChart(values.map((value) => value * by + add))?.limits;
          expect(other?.upper).toBeCloseTo((one?.upper ?? NaN) * by + add, 6);
          expect(other?.lower).toBeCloseTo((one?.lower ?? NaN) * by + add, 6);
        },
      ),
    );
  });

  it("gives nothing for no values or for what is no number", () => {
    expect(individualsChart([])).toBeUndefined();
    expect(individualsChart([1, NaN])).toBeUndefined();
  });
});

describe("Mean and sample deviation", () => {
  it("divides by one less than the number of values", () => {
    expect(sampleDeviation([2, 4])).toBeCloseTo(Math.SQRT2, 15);
    expect(mean([2, 4])).toBe(3);
  });

  it("gives nothing where there is nothing to reckon", () => {
    expect([mean([]), mean([Infinity]), sampleDeviation([3]), sampleDeviation([]), sampleDeviation([1, NaN])]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});
