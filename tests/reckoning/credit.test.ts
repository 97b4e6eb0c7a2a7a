import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { majorPortion, sumOfTenths, type Tenths } from "../../src/reckoning/hours/credit.ts";

const task = (maker: number, paid: number, assembly: number, fabrication: number): Tenths => ({
  maker,
  paid,
  assembly,
  fabrication,
});

const anyTask: fc.Arbitrary<Tenths> = fc.tuple(fc.nat(10), fc.nat(10), fc.nat(10)).map((cuts) => {
  const [a = 0, b = 0, c = 0] = [...cuts].sort((x, y) => x - y);
  return task(a, b - a, c - b, 10 - c);
});

describe("The major portion (AC 20-27G checklist: each task one point in tenths; columns seen, line of totals from memory)", () => {
  it("is 100 times assembly and fabrication over all, so 0.3 maker, 0.3 assembly and 0.4 fabrication are 70 %", () => {
    expect(majorPortion([task(3, 0, 3, 4)])).toEqual({ tasks: 1, sums: task(3, 0, 3, 4), share: 70, major: true });
  });

  it("adds tasks up before it divides", () => {
    expect(majorPortion([task(10, 0, 0, 0), task(0, 0, 2, 8), task(0, 1, 9, 0)])).toEqual({
      tasks: 3,
      sums: task(10, 1, 11, 8),
      share: (100 * 19) / 30,
      major: true,
    });
  });

  it("needs more than 50: half is not enough, and one tenth of a thousand tasks more is", () => {
    const half = [task(5, 0, 5, 0), task(0, 5, 0, 5)];
    expect(majorPortion(half)).toMatchObject({ share: 50, major: false });
    const many = Array.from({ length: 999 }, (_, i) => task(5, 0, i % 2 === 0 ? 5 : 0, i % 2 === 0 ? 0 : 5));
    expect(majorPortion(many)?.major).toBe(false);
    expect(majorPortion([...many, task(4, 0, 0, 6)])?.major).toBe(true);
    expect(majorPortion([...many, task(6, 0, 4, 0)])?.major).toBe(false);
  });

  it("counts paid help and the maker alike against it, assembly and fabrication alike for it", () => {
    expect(majorPortion([task(4, 0, 6, 0)])?.share).toBe(60);
    expect(majorPortion([task(0, 4, 6, 0)])?.share).toBe(60);
    expect(majorPortion([task(0, 4, 0, 6)])?.share).toBe(60);
    expect(majorPortion([task(2, 2, 1, 5)])?.share).toBe(60);
  });

  it("says nothing without tasks, or of tenths that are no whole task", () => {
    expect(majorPortion([])).toBeUndefined();
    for (const wrong of [
      task(3, 0, 3, 3),
      task(3, 0, 3, 5),
      task(-1, 1, 5, 5),
      task(2.5, 2.5, 5, 0),
      task(Number.NaN, 0, 5, 5),
      task(0, 0, 0, 0),
      task(0, -1, 6, 5),
      task(0, 0, -1, 11),
      task(0, 6, 5, -1),
    ]) {
      expect(majorPortion([wrong])).toBeUndefined();
      expect(majorPortion([task(0, 0, 5, 5), wrong])).toBeUndefined();
    }
  });

  it("is exact in whole tenths, between 0 and 100, and the same in any order", () => {
    fc.assert(
      fc.property(fc.array(anyTask, { minLength: 1, maxLength: 300 }), (tasks) => {
        const portion = majorPortion(tasks);
        const own = tasks.reduce((sum, { assembly, fabrication }) => sum + assembly + fabrication, 0);
        expect(portion?.major).toBe(own > tasks.length * 5);
        expect(portion?.share).toBeCloseTo((own * 10) / tasks.length, 9);
        expect(portion && sumOfTenths(portion.sums)).toBe(tasks.length * 10);
        expect(majorPortion([...tasks].reverse())).toEqual(portion);
      }),
    );
  });
});
