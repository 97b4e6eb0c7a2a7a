import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { chartsView } from "../../src/pages/evidence/evidence-charts.ts";
import { boundWords, intervalWords } from "../../src/pages/evidence/trial-page.ts";
import type { Audience, Batch, Record } from "../../src/facts/types.ts";
import { batch, glued, test, type Made } from "../evidence/make.ts";
import { g, newton } from "../evidence/quantities.ts";

const day = (n: number): string => `2025-03-${String(n).padStart(2, "0")}`;

function build(
  hardener: readonly string[],
  loads: readonly number[] = hardener.map(() => 1200),
  made: Made = {},
): Record {
  const batches = hardener.map(
    (amount, i): Batch =>
      batch(
        `B-${i + 1}`,
        { resin: { lot: "R-1", mass: g("40.0") }, hardener: { lot: "H-1", mass: g(amount) } },
        day(i + 1),
      ),
  );
  return glued(
    batches,
    batches.map(({ id }, i) => test(`${id}/1`, { load: newton(String(loads[i])) }, "2025-04-20")),
    made,
  );
}
const view = (record: Record, edition: Audience = "archive") => chartsView(editionOf(record, reckon(record), edition));

const QUIET = ["20.0", "20.1", "19.9", "20.0", "20.1", "20.0", "19.9", "20.0"];

describe("The charts of ratio errors and stresses", () => {
  it("say mean and limits in the unit shown, what the sheet allows, and what lies outside", () => {
    const [ratio] = view(build([...QUIET, "21.6", "20.0"])).ratios;
    // Errors 0, 0.5, −0.5, 0, 0.5, 0, −0.5, 0, 8, 0 %: mean 0.8, mean range 20/9, limits 0.8 ± 3·2.222/1.128.
    expect(ratio?.says).toBe(
      "Error of the ratio of hardener to resin, 10 batches in the order of mixing; mean +0.8 %, limits −5.1 % and +6.7 %. Outside them: B-9. The data sheet allows ±5.0 %.",
    );
    expect(ratio?.outside).toEqual(["B-9"]);
    expect(ratio?.jumps).toEqual(["B-9", "B-10"]);
    expect(ratio?.rows[8]).toEqual({
      batch: "B-9",
      day: day(9),
      value: "+8.0 %",
      range: "8.0 %",
      outside: true,
      rangeOutside: true,
    });
    expect(ratio?.rows[0]?.range).toBe("");
    expect(ratio?.title).toBe("Resorcin, measured by mass");
  });

  it("draw values and ranges in the unit of their axis", () => {
    const [ratio] = view(build([...QUIET, "21.6", "20.0"])).ratios;
    expect(ratio?.values.unit).toBe("%");
    expect(ratio?.values.points[8]).toEqual({ label: "B-9", value: expect.closeTo(8, 9), marked: true });
    expect(ratio?.ranges.points[7]).toEqual({ label: "B-9", value: expect.closeTo(8, 9), marked: true });
    expect(ratio?.values.levels.map(({ form }) => form)).toEqual(["centre", "limit", "limit"]);
    expect(ratio?.ranges.levels.map(({ form }) => form)).toEqual(["centre", "limit"]);
    expect(ratio?.ranges.levels[1]?.value).toBeCloseTo((ratio?.ranges.levels[0]?.value ?? NaN) * 3.267, 9);
  });

  it("have no limits below eight batches, and say why", () => {
    const [ratio] = view(build(QUIET.slice(0, 7))).ratios;
    expect(ratio?.says).toContain("Below 8 batches there are no limits: so few would set them by chance.");
    expect(ratio?.values.levels.map(({ form }) => form)).toEqual(["centre"]);
    expect(ratio?.ranges.levels).toEqual([]);
  });

  it("tell the stress of each batch in the aircraft's units, and the bound that eight or more show", () => {
    const loads = [1200, 1260, 1180, 1230, 1300, 1210, 1190, 1250];
    const [metric] = view(build(QUIET, loads)).stresses;
    expect(metric?.rows[0]).toEqual({
      batch: "B-1",
      day: day(1),
      value: "6.67 MPa",
      range: "",
      pieces: 1,
      outside: false,
      rangeOutside: false,
    });
    expect(metric?.tolerance).toMatch(
      /^With 95 % confidence at least 90 % of such batches break at a mean stress above 6\.24 MPa: mean 6\.82 MPa less 2\.582 times the deviation of 0\.23 MPa, over 8 batches\./,
    );
    const [imperial] = view(build(QUIET, loads, { units: "imperial" })).stresses;
    expect(imperial?.rows[0]?.value).toBe("967 psi");
    expect(imperial?.values.unit).toBe("psi");
    expect(view(build(QUIET.slice(1), loads)).stresses[0]?.tolerance).toBeUndefined();
  });

  it("are of what the edition shows alone", () => {
    const record = build([...QUIET, "21.6", "20.0"]);
    const hidden: Record = {
      ...record,
      entries: record.entries.map((one) => (one.day === day(9) ? { ...one, audience: "inspector" as const } : one)),
    };
    const without: Record = {
      ...record,
      entries: record.entries
        .filter((one) => one.day !== day(9))
        .map((one) => ({ ...one, tests: one.tests.filter(({ piece }) => piece !== "B-9/1") })),
    };
    expect(view(hidden, "public").ratios).toEqual(view(without, "public").ratios);
    expect(view(hidden, "inspector").ratios[0]?.outside).toEqual(["B-9"]);
  });
});

describe("Bounds in words", () => {
  it("are rounded away from what is not shown", () => {
    expect(boundWords(0.3684)).toBe("36.8 %");
    expect(boundWords(0.36899)).toBe("36.8 %");
    expect(boundWords(0.4)).toBe("40.0 %");
    expect(intervalWords({ lower: 0.2924, upper: 0.9951 })).toBe("29.2 % to 99.6 %");
    expect(intervalWords({ lower: 0, upper: 1 })).toBe("0.0 % to 100.0 %");
    expect(intervalWords({ lower: 0.3, upper: 0.7 })).toBe("30.0 % to 70.0 %");
  });
});
