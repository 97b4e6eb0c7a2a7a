import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balance, balanceOnScales, type Scales } from "../../src/reckoning/weight/centre-of-gravity.ts";

const scales = (change: Partial<Scales> = {}): Scales => ({
  left: 833,
  right: 833,
  third: 340,
  at: "nose",
  mains: 0,
  wheelbase: 78,
  ...change,
});

describe("The centre of gravity on three scales", () => {
  it("with 340 lb on a nose wheel 78 in ahead of the main wheels and 2,006 lb in all lies 13.2 in ahead of them (FAA-H-8083-1; seen)", () => {
    const found = balanceOnScales(scales());
    expect(found?.mass).toBe(2006);
    expect(Number(found?.arm.toFixed(1))).toBe(-13.2);
  });

  it("is D − F·L/W with a nose wheel and D + R·L/W with a tail wheel (FAA-H-8083-1; seen)", () => {
    expect(balanceOnScales(scales({ mains: 128 }))?.arm).toBeCloseTo(128 - (340 * 78) / 2006, 12);
    expect(balanceOnScales(scales({ mains: 128, at: "tail" }))?.arm).toBeCloseTo(128 + (340 * 78) / 2006, 12);
    expect(balanceOnScales(scales({ mains: -75, at: "tail" }))?.arm).toBeCloseTo(-75 + (340 * 78) / 2006, 12);
  });

  it("is the balance of the wheels taken as things weighed at their arms, moment and all", () => {
    const mass = fc.double({ min: 0.1, max: 500, noNaN: true });
    const arm = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(
        mass,
        mass,
        mass,
        arm,
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.constantFrom("nose" as const, "tail" as const),
        (left, right, third, mains, wheelbase, at) => {
          const byLever = balance([
            { mass: left, arm: mains },
            { mass: right, arm: mains },
            { mass: third, arm: at === "nose" ? mains - wheelbase : mains + wheelbase },
          ]);
          const found = balanceOnScales({ left, right, third, at, mains, wheelbase });
          expect(found?.mass).toBeCloseTo(byLever?.mass ?? Number.NaN, 9);
          expect(found?.arm).toBeCloseTo(byLever?.arm ?? Number.NaN, 9);
          expect(found?.moment).toBeCloseTo(byLever?.moment ?? Number.NaN, 6);
        },
      ),
    );
  });

  it("is at the main wheels where the third scale shows nothing", () => {
    expect(balanceOnScales(scales({ third: 0, mains: 40 }))?.arm).toBe(40);
  });

  it("is not reckoned from readings that cannot be", () => {
    for (const change of [
      { left: 0 },
      { right: -1 },
      { third: -0.1 },
      { wheelbase: 0 },
      { mains: Number.NaN },
      { mains: Number.POSITIVE_INFINITY },
      { third: Number.NaN },
    ])
      expect(balanceOnScales(scales(change))).toBeUndefined();
  });
});

describe("The balance of parts", () => {
  it("is Σ m·a over Σ m: 10 kg at 2 m and 30 kg at −1 m balance 0.25 m ahead of the datum", () => {
    expect(
      balance([
        { mass: 10, arm: 2 },
        { mass: 30, arm: -1 },
      ]),
    ).toEqual({ mass: 40, moment: -10, arm: -0.25 });
  });

  it("lies between the outermost parts and moves with the datum", () => {
    const part = fc.record({
      mass: fc.double({ min: 0.01, max: 100, noNaN: true }),
      arm: fc.double({ min: -10, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 20 }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (parts, by) => {
          const at = balance(parts)?.arm ?? Number.NaN;
          expect(at).toBeGreaterThanOrEqual(Math.min(...parts.map(({ arm }) => arm)) - 1e-9);
          expect(at).toBeLessThanOrEqual(Math.max(...parts.map(({ arm }) => arm)) + 1e-9);
          expect(balance(parts.map(({ mass, arm }) => ({ mass, arm: arm + by })))?.arm).toBeCloseTo(at + by, 6);
        },
      ),
    );
  });

  it("is not reckoned without parts, of masses that are not positive, or without arms", () => {
    for (const parts of [
      [],
      [{ mass: 0, arm: 1 }],
      [{ mass: -1, arm: 1 }],
      [{ mass: 1, arm: Number.NaN }],
      [
        { mass: 1, arm: 1 },
        { mass: Number.POSITIVE_INFINITY, arm: 1 },
      ],
    ])
      expect(balance(parts)).toBeUndefined();
  });
});
