import { describe, expect, it } from "vitest";
import { planOf, type Part } from "../../src/reckoning/hours/plan.ts";

const part = (id: string, planned?: number, more: Partial<Part> = {}): Part => ({
  id,
  finished: false,
  ...(planned === undefined ? {} : { planned }),
  ...more,
});
const worked = (assembly: string, minutes: number) => ({ day: "2025-01-06", assembly, minutes });

describe("What is left by the plan", () => {
  it("is the plan less the work where nothing is finished yet", () => {
    const plan = planOf(
      [part("fin", 600), part("wing", 6000)],
      [worked("fin", 200), worked("wing", 1000), worked("fin", 100)],
    );
    expect(plan).toMatchObject({ factor: 1, corrected: false, left: 5300, unplanned: 0 });
    expect(plan.parts.map(({ left }) => left)).toEqual([300, 5000]);
  });

  it("is corrected by what finished parts took of what was planned for all of them", () => {
    const plan = planOf(
      [part("fin", 600, { finished: true }), part("rudder", 400, { finished: true }), part("wing", 6000)],
      [worked("fin", 1100), worked("rudder", 400), worked("wing", 500)],
    );
    expect(plan.factor).toBe(1.5);
    expect(plan.corrected).toBe(true);
    expect(plan.left).toBe(8500);
    expect(plan.parts.map(({ left }) => left)).toEqual([0, 0, 8500]);
  });

  it("counts a part as finished when one that it lies within is", () => {
    const plan = planOf(
      [
        part("tail", undefined, { finished: true }),
        part("fin", 600, { parent: "tail" }),
        part("skin", 100, { parent: "fin" }),
      ],
      [worked("fin", 300)],
    );
    expect(plan.left).toBe(0);
    expect(planOf([part("fin", 600, { parent: "gone" })], []).left).toBe(600);
    expect(plan.factor).toBeCloseTo(300 / 700, 12);
  });

  it("takes a plan to be for the part itself, without those within it, finished or not", () => {
    const parts = [
      part("tail", 1000),
      part("fin", 600, { parent: "tail", finished: true }),
      part("jig", undefined, { parent: "tail" }),
    ];
    const plan = planOf(parts, [worked("fin", 600), worked("jig", 77), worked("tail", 10)]);
    expect(plan).toMatchObject({ factor: 1, left: 990, unplanned: 77 });
  });

  it("leaves nothing of a part that has outrun its plan, and never less than nothing", () => {
    const plan = planOf([part("fin", 600), part("wing", 100)], [worked("fin", 700)]);
    expect(plan.parts.map(({ left }) => left)).toEqual([0, 100]);
  });

  it("corrects nothing where no time was noted on what is finished, or none was planned for it", () => {
    expect(planOf([part("fin", 600, { finished: true }), part("wing", 100)], [])).toMatchObject({
      factor: 1,
      corrected: false,
      left: 100,
    });
    expect(planOf([part("fin", 0, { finished: true }), part("wing", 100)], [worked("fin", 5)])).toMatchObject({
      factor: 1,
      corrected: false,
    });
  });
});
