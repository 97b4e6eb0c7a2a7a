import fc from "fast-check";
import { expect, it } from "vitest";
import { spansThatMeet } from "../../src/reckoning/climate/spans-that-meet.ts";

const instant = fc.integer({ min: -20, max: 20 });
const span = fc.tuple(instant, instant).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }));

it("finds just the spans that a search through all finds, in the order they were given", () => {
  fc.assert(
    fc.property(fc.array(span), span, (spans, { from, to }) => {
      expect(spansThatMeet(spans)(from, to)).toEqual(spans.filter((one) => one.from <= to && one.to >= from));
    }),
    { numRuns: 500 },
  );
});

it("takes a span that only touches, on either side, and none that does not", () => {
  const meeting = spansThatMeet([
    { from: 0, to: 10 },
    { from: 20, to: 30 },
    { from: -5, to: 100 },
  ]);
  expect(meeting(10, 20)).toHaveLength(3);
  expect(meeting(11, 19)).toEqual([{ from: -5, to: 100 }]);
  expect(meeting(101, 102)).toEqual([]);
});

it("asks for what it finds and little more where one span covers all others", () => {
  const LONG = 200_000;
  const asked = Array.from({ length: LONG }, (_, i) => ({ from: i, to: i + 0.5 }));
  let looks = 0;
  const counted = asked.map(({ from, to }) => ({
    get from() {
      looks += 1;
      return from;
    },
    get to() {
      looks += 1;
      return to;
    },
  }));
  const meeting = spansThatMeet([{ from: 0, to: LONG }, ...counted]);
  looks = 0;
  expect(meeting(1000, 1001)).toHaveLength(3);
  expect(looks).toBeLessThan(100);
});
