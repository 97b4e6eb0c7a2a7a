import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { Seconded } from "../../src/evidence/seconded.ts";
import type { PairFile, Standing } from "../../src/evidence/types.ts";
import { pairFile } from "../../src/evidence/measures/pair.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import { departure, entry, measurement, record } from "./make.ts";

const NOW = reckon(record({}));

describe("How far a departure is accepted", () => {
  const after = (now: Standing, ...before: Standing[]) =>
    new Seconded(
      record({}),
      before.map((one) => ({ ...NOW, standings: new Map([["D-1", one]]) })),
    ).departure(departure("D-1"), now);

  it("is no further than it was before someone alone amended it", () => {
    const order = [
      "not accepted",
      "accepted by no inspector",
      "accepted by one who worked on it",
      "told by the builder",
      "accepted on a condition",
      "accepted",
    ] as const;
    order.forEach((worse, at) => {
      for (const better of order.slice(at)) {
        expect(after(better, worse)).toBe(worse);
        expect(after(worse, better)).toBe(worse);
      }
    });
    expect(after("accepted")).toBe("accepted");
  });
});

describe("A pair of sides", () => {
  const file = pairFile(recordIndexOf(record({ entries: [entry("2025-03-10-other")] })), "P", [
    measurement({ pair: "P", side: "left" }),
  ]);
  const held = (before: Partial<PairFile>) =>
    new Seconded(record({}), [
      { ...NOW, pairs: new Map([["Q", { ...file, id: "Q", verdict: "out" as const, ...before }]]) },
    ]).pair({ ...file, verdict: "within" }).verdict;

  it("is held against a pair of another name that one of its sides was in, and no other", () => {
    expect(held({})).toBe("out");
    expect(held({ now: [], before: file.now })).toBe("out");
    expect(held({ now: [], before: [] })).toBe("within");
  });
});
