import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unchanged, unchangedList } from "../../src/editions/unchanged.ts";

describe("What an edition leaves as it is", () => {
  it("is the same object where all values are the same", () => {
    const before = { id: "B-1", mass: { value: 42 }, joints: ["J-1", "J-2"] };
    expect(unchanged(before, { ...before, joints: [...before.joints] })).toBe(before);
  });

  it("is another object where a value differs, with the lists that are the same", () => {
    const before = { id: "B-1", lots: ["R-1"], joints: ["J-1"] };
    const after = unchanged(before, { ...before, lots: [], joints: [...before.joints] });
    expect(after).toEqual({ id: "B-1", lots: [], joints: ["J-1"] });
    expect(after.joints).toBe(before.joints);
    expect(before.lots).toEqual(["R-1"]);
  });

  it("is another object where a value was taken out or put in without a value", () => {
    expect(unchanged<{ a?: unknown; b?: unknown }>({ a: undefined }, { b: undefined })).toEqual({ b: undefined });
    expect(Object.keys(unchanged<{ a?: unknown; b?: unknown }>({ a: undefined }, { b: undefined }))).toEqual(["b"]);
    expect(Object.keys(unchanged<{ a?: unknown; b?: unknown }>({ a: 1, b: 2 }, { a: 1 }))).toEqual(["a"]);
  });

  it("is the same list only where it holds the same things in the same order", () => {
    const [one, two] = [{ id: 1 }, { id: 1 }];
    const before = [one, two];
    expect(unchangedList(before, [one, two])).toBe(before);
    for (const after of [[two, one], [one], [one, two, two], [one, { id: 1 }]])
      expect(unchangedList(before, after)).toBe(after);
  });

  it("never says anything else than what was decided", () => {
    const thing = fc.dictionary(
      fc.constantFrom("a", "b", "c"),
      fc.oneof(fc.constantFrom(undefined, 1, 2, "1"), fc.array(fc.constantFrom(1, 2), { maxLength: 2 })),
      { noNullPrototype: true },
    );
    fc.assert(
      fc.property(thing, thing, (before, after) => {
        const was = structuredClone(before);
        const decided = structuredClone(after);
        const told = unchanged(before, after);
        expect(told).toStrictEqual(decided);
        expect(before).toStrictEqual(was);
      }),
      { numRuns: 500 },
    );
  });
});
