import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fisherTable } from "../../src/reckoning/statistics/fisher-table.ts";
import { leastShownEffect } from "../../src/reckoning/statistics/least-shown-effect.ts";
import { trialPower } from "./power.ts";
import { apart, numbers, referenceRows } from "../reference/rows.ts";

describe("The power of a trial", () => {
  it("agrees with R's fisher.test and dbinom, outcome by outcome, on 200 random trials", () => {
    const rows = referenceRows("trial-power");
    expect(rows).toHaveLength(200);
    for (const row of rows) {
      const [pieces = 0, share = 0, others = 0, otherShare = 0, alpha = 0] = [
        "pieces",
        "share",
        "other_pieces",
        "other_share",
        "alpha",
      ].map((name) => Number(row(name)));
      const power = trialPower({ pieces, share }, { pieces: others, share: otherShare }, alpha);
      expect(apart(power, Number(row("power")), 1e-12), `${pieces} ${others}`).toBeLessThan(1e-9);
    }
  });

  it("does not care which preparation is named first", () => {
    expect(trialPower({ pieces: 5, share: 0.9 }, { pieces: 8, share: 0.2 })).toBeCloseTo(
      trialPower({ pieces: 8, share: 0.2 }, { pieces: 5, share: 0.9 }) ?? NaN,
      14,
    );
  });

  it("is nothing where the pieces are so few that no outcome could show a difference", () => {
    expect(trialPower({ pieces: 3, share: 1 }, { pieces: 3, share: 0 })).toBe(0);
    expect(trialPower({ pieces: 4, share: 1 }, { pieces: 4, share: 0 })).toBe(1);
  });

  it.each([
    [0, 0.5],
    [61, 0.5],
    [2.5, 0.5],
    [3, -0.1],
    [3, 1.1],
    [3, NaN],
  ])("gives nothing for %d pieces with a share of %d", (pieces, share) => {
    expect(trialPower({ pieces, share }, { pieces: 3, share: 1 })).toBeUndefined();
    expect(trialPower({ pieces: 3, share: 1 }, { pieces, share })).toBeUndefined();
  });

  it("takes as many as 60 pieces, and no level that is none", () => {
    expect(trialPower({ pieces: 60, share: 1 }, { pieces: 1, share: 0 })).toBe(1);
    expect(trialPower({ pieces: 3, share: 1 }, { pieces: 3, share: 1 }, 0)).toBeUndefined();
    expect(trialPower({ pieces: 3, share: 1 }, { pieces: 3, share: 1 }, 1)).toBeUndefined();
  });
});

describe("The least effect that so few pieces could have shown", () => {
  it("agrees with R's fisher.test, pbinom and uniroot on 220 random trials of two to four preparations", () => {
    const rows = referenceRows("least-shown-effect");
    expect(rows).toHaveLength(220);
    expect(rows.filter((row) => row("effect") === "").length).toBeGreaterThan(20);
    expect(rows.filter((row) => row("effect") !== "").length).toBeGreaterThan(20);
    for (const row of rows) {
      const shown = leastShownEffect(numbers(row("pieces")), Number(row("alpha")), Number(row("power")));
      expect(apart(shown?.clearest, Number(row("clearest"))), row("pieces")).toBeLessThan(1e-8);
      if (row("effect") === "") expect(shown?.effect).toBeUndefined();
      else expect(apart(shown?.effect, Number(row("effect"))), row("pieces")).toBeLessThan(1e-8);
    }
  });

  it("is none for three against three: even all held against none has p 0.1", () => {
    expect(leastShownEffect([3, 3])).toEqual({ clearest: 0.1 });
  });

  it("is the effect at which the power, reckoned over every outcome, is what was asked", () => {
    for (const [n, m, alpha, power] of [
      [4, 4, 0.05, 0.8],
      [6, 9, 0.05, 0.9],
      [12, 5, 0.1, 0.5],
      [20, 20, 0.05, 0.8],
    ] as const) {
      const { effect = NaN } = leastShownEffect([n, m], alpha, power) ?? {};
      const powers = [
        [n, m],
        [m, n],
      ].map(
        ([strong = 0, weak = 0]) =>
          trialPower({ pieces: strong, share: 1 }, { pieces: weak, share: 1 - effect }, alpha) ?? 0,
      );
      expect(Math.min(...powers)).toBeCloseTo(power, 10);
    }
  });

  it("leaves no outcome out that would be told apart at 5 %, for any two preparations of up to 25 pieces: those outcomes have no gaps", () => {
    for (let n = 1; n <= 25; n += 1) {
      for (let m = 1; m <= 25; m += 1) {
        const told = Array.from(
          { length: m + 1 },
          (_, held) =>
            (fisherTable([
              [n, 0],
              [held, m - held],
            ]) ?? 1) <= 0.05,
        );
        expect(told.lastIndexOf(true)).toBe((told.includes(false) ? told.indexOf(false) : told.length) - 1);
      }
    }
  });

  it("shrinks or stays as pieces are added to every preparation alike", () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 16 }), (n) => {
        expect(leastShownEffect([n + 4, n + 4])?.effect).toBeLessThan(leastShownEffect([n, n])?.effect ?? 0);
      }),
    );
  });

  it("gives nothing where one of the preparations takes more tables than are gone through", () => {
    // Any number of failures from 0 to n in each row but the first: 10⁴·11 tables.
    expect(leastShownEffect([46, 9, 9, 9, 9, 10])).toBeUndefined();
  });

  it("gives nothing for one preparation, for none that shows something, or for no level", () => {
    for (const pieces of [[], [4], [4, 0], [4, 1.5], [4, -3]]) expect(leastShownEffect(pieces)).toBeUndefined();
    expect(leastShownEffect([4, 4], 0)).toBeUndefined();
    expect(leastShownEffect([4, 4], 0.05, 1)).toBeUndefined();
    expect(leastShownEffect([60, 61])).toBeUndefined();
    expect(leastShownEffect([60, 60])?.effect).toBeCloseTo(0.1286, 4);
  });
});
