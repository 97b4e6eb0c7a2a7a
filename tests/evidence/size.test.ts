/** A record far larger than any aircraft needs reckons in one pass whose time grows no worse than its size. */
import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/record/types.ts";
import { dayText } from "../../src/reckoning/calendar.ts";
import { assembly, batch, entry, holdPoint, joint, lot, openItem, record, test } from "./make.ts";
import { g } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };

/** So many batches, each in two joints, with a resin lot for each ten of them and every fiftieth lot recalled. */
function large(batches: number): Record {
  const lots = [lot("H-1", { material: "hardener" }), lot("S-1", { material: "timber" }), ...Array.from({ length: batches / 10 }, (_, i) => lot(`R-${i}`))];
  const joints = Array.from({ length: batches * 2 }, (_, i) => joint(`J-${i}`, `a-${i % 20}`));
  const assemblies = [
    assembly("aircraft", { holdPoints: [holdPoint("FLY", { assembly: "aircraft", kind: "flight" })] }),
    ...Array.from({ length: 20 }, (_, a) => assembly(`a-${a}`, { parent: "aircraft", joints: joints.filter((one) => one.assembly === `a-${a}`), holdPoints: [holdPoint(`H-${a}`, { assembly: `a-${a}` })] })),
  ];
  const entries = Array.from({ length: batches }, (_, i) => {
    const id = `${dayText(20_000 + Math.floor(i / 10))}-e${String(i).padStart(6, "0")}`;
    const made = batch(`B-${i}`, { entry: id, joints: [`J-${2 * i}`, `J-${2 * i + 1}`], resin: { lot: `R-${Math.floor(i / 10)}`, mass: g("40.0") } }, id.slice(0, 10));
    const recalls = i % 500 === 0 ? [{ place, entry: id, day: id.slice(0, 10), lot: `R-${i / 10}`, why: "notice" }] : [];
    const tests = i > 0 ? [test(`B-${i - 1}/1`, { entry: id }, id.slice(0, 10))] : [];
    return entry(id, { batches: [made], recalls, tests, raised: [openItem(`O-${i}`, { entry: id, assembly: `a-${i % 20}`, before: i % 2 === 0 ? "close-up" : "FLY" })], assembly: "a-0" });
  });
  return record({ lots, assemblies, entries });
}

function seconds(made: Record): number {
  const from = performance.now();
  const evidence = reckon(made);
  expect(evidence.batches.size * 2).toBe(evidence.joints.size);
  return (performance.now() - from) / 1000;
}

describe("A record of 20,000 batches", () => {
  it("is reckoned in a time that grows with its size and not with its square", () => {
    const small = large(2_500);
    const whole = large(20_000);
    seconds(small);
    const ratio = seconds(whole) / seconds(small);
    // Eight times as much: linear is 8, n log n is 11, a nested scan would be 64.
    expect(ratio).toBeLessThan(32);
  });
});
