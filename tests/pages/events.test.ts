import { expect, it } from "vitest";
import { eventsOf } from "../../src/pages/archive/events.ts";
import type { Amendment, Change, Entry } from "../../src/facts/types.ts";
import { entry, record } from "../evidence/make.ts";
import { exampleSite } from "./example.ts";

const on = { place: { file: "made.md", line: 1, column: 1 }, entry: "2025-03-15-open", day: "2025-03-15" };

const told = (change: Partial<Entry>): string[] => {
  const { shown } = exampleSite("archive", record({ entries: [entry("2025-03-10-glue"), entry(on.entry, change)] }));
  return eventsOf(shown).map(({ says }) => says);
};

it("The index of events names the stages of a joint that were opened where not all were", () => {
  const reworks = [
    { ...on, joints: ["W-1"], why: "Dry" },
    { ...on, joints: ["W-2"], stages: [1, 3], why: "Hot" },
  ];
  expect(told({ reworks })).toEqual([
    "The glue was taken out of joint W-1: Dry.",
    "The glue was taken out of joint W-2, stages 1 and 3 of it: Hot.",
  ]);
});

it("The index of events says of several values that they were amended, and of one that it was", () => {
  const change = {} as Change;
  const amended = (changes: number, prose: boolean): Amendment => ({
    ...on,
    entry: "2025-03-10-glue",
    by: on.entry,
    why: "Misread",
    changes: Array.from({ length: changes }, () => change),
    prose,
    withheld: false,
  });
  const amendments = [amended(1, false), amended(2, false), amended(0, true), amended(1, true), amended(0, false)];
  const words = told({ amendments }).map((says) => says.replace("Of the entry of 10 March 2025 ", ""));
  expect(words).toEqual([
    "1 value was amended: Misread.",
    "2 values were amended: Misread.",
    "the text was amended: Misread.",
    "1 value and the text were amended: Misread.",
    "something was amended: Misread.",
  ]);
});
