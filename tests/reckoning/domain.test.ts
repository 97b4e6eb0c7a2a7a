import { expect, it } from "vitest";
import { notNegative, positive } from "../../src/reckoning/domain.ts";

it("A function's arguments lie in its domain only if each of them does", () => {
  expect([notNegative(), notNegative(0, 1), positive(1, 2)]).toEqual([true, true, true]);
  for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect([notNegative(1, bad), notNegative(bad, 1)]).toEqual([false, false]);
    expect([positive(1, bad), positive(bad, 1)]).toEqual([false, false]);
  }
  expect(positive(1, 0)).toBe(false);
});
