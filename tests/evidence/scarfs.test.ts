/** What was measured at a joint: the slope of a scarf, and anything else. */
import { describe, expect, it } from "vitest";
import { readDrawn } from "../../src/facts/quantity/drawn.ts";
import { readScarf } from "../../src/facts/quantity/range.ts";
import type { Departure, Measurement } from "../../src/facts/types.ts";
import { batch, departure, entry, glued, measurement, test } from "./make.ts";
import { reckon } from "./reckoned.ts";

const slope = (typed: string) => {
  const reading = readScarf(typed);
  if (reading === undefined || "fault" in reading) throw new Error(`${typed} is no slope`);
  return reading.value;
};

function fileOf(found: Partial<Measurement>, departures: readonly Departure[] = []) {
  const one = measurement({ what: "Scarf", joint: "W-1", entry: "2025-03-09-other", ...found });
  const other = entry("2025-03-09-other", { measurements: [one], departures });
  return reckon(
    glued([batch("B-1", { joints: ["W-1"] })], [test("B-1/1", {}, "2025-12-01")], { entries: [other] }),
  ).joints.get("W-1");
}

const told = (...given: Parameters<typeof fileOf>) =>
  fileOf(...given)
    ?.findings.filter(({ rule }) => rule === "joint-measured")
    .map(({ severity, sentence, limit }) => [severity, sentence, limit?.text, limit?.from.known]);

describe("A slope", () => {
  it("is read as rise in length, and of two ends the steeper counts", () => {
    expect(slope("1 in 12").value).toBe(1 / 12);
    expect(slope(" 2:25 ").value).toBe(0.08);
    expect(slope("1 in 13 to 1 in 11")).toMatchObject({ typed: "1 in 13 to 1 in 11", value: 1 / 11, unit: "slope" });
  });

  it("is none where it runs the other way, and no length is one", () => {
    expect(readScarf("12 in 1")).toMatchObject({ fault: { code: "no-slope", message: "this is not a slope" } });
    expect(readScarf("1 in 12 to 12 in 1")).toMatchObject({ fault: { code: "no-slope" } });
    expect(readScarf("0 in 12")).toMatchObject({ fault: { code: "no-slope" } });
    for (const typed of ["12 in", "1 in", "1/2 in", "8 mm to 10 mm"]) expect(readScarf(typed)).toBeUndefined();
  });

  it("of a drawing is the steepest that it allows, and never two", () => {
    expect(readDrawn("1 in 12")).toMatchObject({ value: { dimension: "slope", limits: { most: 1 / 12 } } });
    expect(readDrawn("1 in 10 to 1 in 12")).toMatchObject({ fault: { code: "no-slope" } });
  });
});

describe("A scarf of a joint", () => {
  const scarf = (typed: string, asked?: string) => ({
    dimension: "slope" as const,
    found: slope(typed),
    ...(asked !== undefined && { limits: { typed: asked, most: slope(asked).value } }),
  });

  it("is no steeper than its drawing asks", () => {
    expect(told(scarf("1:12", "1 in 12"))).toEqual([["meets", "Scarf: 1:12.", "no steeper than 1 in 12", "record"]]);
    expect(fileOf(scarf("1:12", "1 in 12"))?.state).toBe("shown");
    expect(told(scarf("1 in 11.9", "1 in 12"))).toEqual([
      ["unproven", "Scarf: 1 in 11.9, outside what is asked.", "no steeper than 1 in 12", "record"],
    ]);
    expect(fileOf(scarf("1 in 11.9", "1 in 12"))?.state).toBe("not shown");
  });

  it("is no steeper than common practice has it where the drawing gives no slope", () => {
    expect(told(scarf("1 in 12"))).toEqual([
      ["meets", "Scarf: 1 in 12.", "no steeper than 1 in 12", "common practice"],
    ]);
    expect(fileOf(scarf("1 in 11.9"))?.state).toBe("not shown");
    expect(fileOf(scarf("1 in 8", "1 in 8"))?.state).toBe("shown");
  });

  it("that is too steep is settled by a departure that is accepted, and by no other", () => {
    const off = { ...scarf("1 in 11", "1 in 12"), departure: "D-1" };
    const left = departure("D-1", { entry: "2025-03-09-other", day: "2025-03-09" });
    expect(told(off, [left])?.[0]?.slice(0, 2)).toEqual([
      "unproven",
      "Scarf: 1 in 11, outside what is asked; departure D-1, which stands for it, is not accepted.",
    ]);
    const accepted = { ...left, acceptedBy: "ins", acceptedIn: "2025-03-09-other", reference: "letter 4" };
    expect(told(off, [accepted])?.[0]?.slice(0, 2)).toEqual([
      "caution",
      "Scarf: 1 in 11, outside what is asked, and accepted as departure D-1.",
    ]);
    expect(fileOf(off, [accepted])?.state).toBe("shown");
  });
});

describe("Anything else measured at a joint", () => {
  const gap = (value: number) => ({
    what: "Gap",
    found: { typed: `${value * 1000} mm`, value, unit: "m", step: 0.0001 },
  });

  it("leaves it not shown where it is out, and is asked nothing where no limit is given", () => {
    const limits = { typed: "at most 0.5 mm", most: 0.0005 };
    expect(told({ ...gap(0.0006), limits })?.[0]?.slice(0, 3)).toEqual([
      "unproven",
      "Gap: 0.6 mm, outside what is asked.",
      "at most 0.5 mm",
    ]);
    expect(fileOf({ ...gap(0.0005), limits })?.state).toBe("shown");
    expect(told(gap(0.003))).toEqual([]);
  });
});
