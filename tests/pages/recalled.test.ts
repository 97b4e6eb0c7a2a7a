import { expect, it } from "vitest";
import { recalledLots } from "../../src/pages/archive/recalled.ts";
import type { Batch, Entry, Rework, Stage } from "../../src/facts/types.ts";
import { assembly, batch, entry, joint, lot, LOTS, record } from "../evidence/make.ts";
import { exampleSite } from "./example.ts";

const place = { file: "made.md", line: 1, column: 1 };

const glue = (day: string, id: string, change: Partial<Batch> = {}, stage?: number): Entry => {
  const of = `${day}-glue`;
  const said: Stage[] = stage === undefined ? [] : [{ place, entry: of, day, joint: "W-1", stage, batches: [id] }];
  return entry(of, { batches: [batch(id, change, day)], stages: said });
};

const open = (day: string, change: Partial<Rework> = {}): Entry => {
  const on = { place, entry: `${day}-open`, day };
  return entry(on.entry, { reworks: [{ ...on, joints: ["W-1"], why: "It was so", ...change }] });
};

function became(of: string, ...entries: readonly Entry[]): string[] {
  const letter = { place, entry: "2025-03-11-letter", day: "2025-03-11" };
  const made = record({
    lots: [...LOTS, lot("S-2", { material: "timber", adhesive: undefined, species: "Sitka spruce" })],
    assemblies: [assembly("wing", { joints: [joint("W-1")] })],
    entries: [...entries, entry(letter.entry, { recalls: [{ ...letter, lot: of, why: "Bad" }] })],
  });
  const { shown } = exampleSite("inspector", made);
  return recalledLots(shown).flatMap(({ joints }) => joints.map((one) => one.became));
}

const GOOD = { hardener: { lot: "H-2", mass: { typed: "20 g", value: 0.02, unit: "kg", step: 0.001 } } } as const;

it("A recalled lot is told to be taken out on the day on which it was, whatever was opened later", () => {
  expect(
    became("H-1", glue("2025-03-10", "B-1"), open("2025-03-15"), glue("2025-03-16", "B-2", GOOD), open("2025-04-01")),
  ).toEqual(["Its glue was taken out on 15 March 2025; glued again with B-2 of 16 March 2025 (taken out since)."]);
  expect(
    became(
      "H-1",
      glue("2025-03-10", "B-1"),
      open("2025-03-15"),
      glue("2025-03-16", "B-2", GOOD),
      open("2025-04-01"),
      glue("2025-04-02", "B-3", GOOD),
    ),
  ).toEqual([
    "Its glue was taken out on 15 March 2025; glued again with B-2 of 16 March 2025 (taken out since) and B-3 of 2 April 2025.",
  ]);
});

it("A lot that went in twice is told to be out from when the last of it was", () => {
  expect(
    became("H-1", glue("2025-03-10", "B-1"), open("2025-03-15"), glue("2025-03-16", "B-2"), open("2025-04-01")),
  ).toEqual(["Its glue was taken out on 1 April 2025; it has not been glued since."]);
});

it("A lot in one stage of a joint is out when that stage was opened, and only that stage is glued again", () => {
  expect(
    became(
      "H-1",
      glue("2025-03-10", "B-1", {}, 1),
      glue("2025-03-11", "B-2", GOOD, 2),
      open("2025-03-14", { stages: [2] }),
      open("2025-03-15", { stages: [1] }),
      glue("2025-03-16", "B-3", GOOD, 2),
      glue("2025-03-17", "B-4", GOOD, 1),
    ),
  ).toEqual(["Its glue of stage 1 was taken out on 15 March 2025; glued again with B-4 of 17 March 2025."]);
});

it("Timber is out from when another was put in its place, and no sooner", () => {
  const opened = [glue("2025-03-10", "B-1"), open("2025-03-15"), glue("2025-03-16", "B-2", { timber: [] })];
  expect(became("S-1", ...opened)).toEqual(["It holds it still."]);
  expect(became("S-1", ...opened, open("2025-04-01", { replaced: [{ lot: "S-1", with: "S-2" }] }))).toEqual([
    "Its glue was taken out on 1 April 2025, and S-2 put in the place of S-1; it has not been glued since.",
  ]);
});
