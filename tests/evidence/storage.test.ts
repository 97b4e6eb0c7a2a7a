/** How lots were kept and how warm the glue has been since, by the logger over the bench; no source: from the sheet's own limits. */
import { describe, expect, it } from "vitest";
import type { Adhesive } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, entry, glued, lot, test } from "./make.ts";
import { celsius } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const STORAGE = { typed: "10 °C to 25 °C", least: 10, most: 25 };
const FIRST = "2025-01-09";
const HOURS = 24 * 120;

/** Findings of one rule on a batch of 10 March, its lots come on 10 January, in a record that ends in April; the shop at 20 °C but for one hour. */
function told(
  rule: string,
  change: Partial<Adhesive>,
  { at = -1, warmth = 20, hours = HOURS, logged = true, joints = ["W-1"] } = {},
) {
  const made = glued([batch("B-1", { joints })], [test("B-1/1")], {
    adhesives: [adhesive(change)],
    lots: [lot("R-1"), lot("H-1", { material: "hardener" }), lot("S-1", { material: "timber" })],
    entries: [entry("2025-04-01-later")],
  });
  const climate = logged ? [log("shop", FIRST, hours, (hour) => ({ temperature: hour === at ? warmth : 20 }))] : [];
  const { batches } = reckon({ ...made, climate });
  return batches.get("B-1")?.findings.flatMap((one) => (one.rule === rule ? [`${one.severity}: ${one.sentence}`] : []));
}

describe("How a lot was kept", () => {
  const kept = (more = {}) => told("lot-storage", { storage: STORAGE }, more)?.[0];

  it("is as the sheet asks where the logger shows all of the time, at the limits themselves too", () => {
    const sentence = (least: string, greatest: string) =>
      `meets: From the day lot R-1 came until it was used the shop was logged at ${least} to ${greatest}, as the sheet keeps it.`;
    expect(kept()).toBe(sentence("20.0 °C", "20.0 °C"));
    expect(kept({ at: 500, warmth: 10 })).toBe(sentence("10.0 °C", "20.0 °C"));
    expect(kept({ at: 500, warmth: 25 })).toBe(sentence("20.0 °C", "25.0 °C"));
  });

  it("is a caution for any reading outside between the day it came and its use, and for none outside of that time", () => {
    expect(kept({ at: 500, warmth: 9.96 })).toBe(
      "caution: Between the day lot R-1 came and its use the shop was logged at 9.96 °C, below what the sheet keeps it at, if it stood where the logger hangs. See what the sheet says of one that was kept so.",
    );
    expect(kept({ at: 500, warmth: 25.04 })).toContain("at 25.04 °C, above what the sheet keeps it at");
    expect([10, 30, 1400, 1500].map((at) => kept({ at, warmth: 5 })?.split(":")[0])).toEqual([
      "meets",
      "caution",
      "caution",
      "meets",
    ]);
  });

  it("is told for both lots, as not known where nothing or not all was logged, and not asked of a batch in no joint or of a sheet that says nothing", () => {
    expect(told("lot-storage", { storage: STORAGE }, { logged: false })).toEqual([
      "caution: How lot R-1 was kept until it was used is not known: no logger had it.",
      "caution: How lot H-1 was kept until it was used is not known: no logger had it.",
    ]);
    expect(kept({ hours: 500 })).toBe(
      "caution: From the day lot R-1 came until it was used the shop was logged at 20.0 °C to 20.0 °C where it was logged; the rest is not known.",
    );
    expect(told("lot-storage", { storage: STORAGE }, { joints: [] })).toEqual([]);
    expect(told("lot-storage", {})).toEqual([]);
  });
});

describe("Heat after the cure", () => {
  const SERVICE = { service: celsius("40") };

  it("is at most what the sheet lets cured adhesive see, or a caution", () => {
    expect(told("service-heat", SERVICE, { at: 1600, warmth: 40 })).toEqual([
      "meets: Since it was closed the shop was logged at 40.0 °C at most.",
    ]);
    expect(told("service-heat", SERVICE, { at: 1600, warmth: 40.04 })).toEqual([
      "caution: Since it was closed the shop was logged at 40.04 °C, above the 40 °C that the sheet lets cured adhesive see, if the part stood where the logger hangs.",
    ]);
    expect(told("service-heat", SERVICE, { at: 1400, warmth: 45 })?.[0]).toContain("meets");
  });

  it("is a caution where the log ends before, and is not asked without a log or a limit", () => {
    expect(told("service-heat", SERVICE, { hours: 1600 })).toEqual([
      "caution: Since it was closed the shop was logged at 20.0 °C at most where it was logged; the rest is not known.",
    ]);
    expect(told("service-heat", SERVICE, { logged: false })).toEqual([]);
    expect(told("service-heat", {}, {})).toEqual([]);
  });
});
