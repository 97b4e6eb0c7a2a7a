import { describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { hoursOf } from "../../src/evidence/hours.ts";
import type { Record } from "../../src/facts/types.ts";
import { storyOf } from "../../src/pages/story/story.ts";
import { readRecord } from "../../src/record/read.ts";
import { TODAY, withSmall } from "../problems/cases.ts";
import { change } from "./change.ts";

const VISITOR = [
  "@ aircraft.md",
  "-   - { id: looker",
  "+   - { id: guest, name: Ada Caller, public: Ada, role: visitor }\n  - { id: looker",
];

const day = (date: string, ...lines: string[]): string[] =>
  [
    `@ new entries/${date}-hours.md`,
    "---",
    `date: ${date}`,
    "title: Hours",
    "assembly: spar",
    "hours:",
    ...lines.map((line) => `  - ${line}`),
    "---",
  ].map((line, at) => (at === 0 ? line : `+ ${line}`));

async function recordWith(...changes: string[]): Promise<Record> {
  return withSmall(async (folder) => {
    change(folder, changes);
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) throw new Error(read.problems.map(({ message }) => message).join("\n"));
    return read.record;
  });
}

const linesOn = (record: Record, date: string) =>
  record.entries.find((entry) => entry.day === date)?.hours.map(({ who, minutes, typed }) => ({ who, minutes, typed }));

describe("A line of hours", () => {
  it("of several people is the whole of the time for each of them", async () => {
    const record = await recordWith(...day("2025-04-05", "{ who: [builder, helper], task: gluing, time: 2:15 }"));
    expect(linesOn(record, "2025-04-05")).toEqual([
      { who: "builder", minutes: 135, typed: "2:15" },
      { who: "helper", minutes: 135, typed: "2:15" },
    ]);
  });

  it("from one time to another is as long as that took, past midnight too, and by the moments where clocks were changed", async () => {
    const line = (from: string, to: string) => `{ who: builder, task: gluing, from: "${from}", to: "${to}" }`;
    const record = await recordWith(
      ...day("2025-03-30", line("00:30", "03:30")),
      ...day("2025-04-05", line("10:00", "12:15")),
      ...day("2025-04-06", line("22:00", "24:10")),
      ...day("2025-10-26", line("00:30", "03:30"), line("01:30+01:00", "01:05+00:00")),
    );
    expect(linesOn(record, "2025-03-30")).toEqual([{ who: "builder", minutes: 120, typed: "00:30 to 03:30" }]);
    expect(linesOn(record, "2025-04-05")).toEqual([{ who: "builder", minutes: 135, typed: "10:00 to 12:15" }]);
    expect(linesOn(record, "2025-04-06")).toEqual([{ who: "builder", minutes: 130, typed: "22:00 to 24:10" }]);
    expect(linesOn(record, "2025-10-26")).toEqual([
      { who: "builder", minutes: 240, typed: "00:30 to 03:30" },
      { who: "builder", minutes: 35, typed: "01:30+01:00 to 01:05+00:00" },
    ]);
  });

  it("of a visitor is in no sum of work, and its entry is told of the assembly that was looked at", async () => {
    const lines = [
      "{ who: builder, task: gluing, time: 1:00 }",
      "{ who: guest, task: testing, time: 3:00, assembly: wing }",
    ];
    const without = hoursOf(await recordWith(...VISITOR)).all.minutes;
    const record = await recordWith(...VISITOR, ...day("2025-04-05", ...lines));
    const entry = record.entries.find((one) => one.day === "2025-04-05");
    expect(entry?.visits.map(({ who, minutes }) => ({ who, minutes }))).toEqual([{ who: "guest", minutes: 180 }]);
    expect(hoursOf(record).all.minutes).toBe(without + 60);
    const story = storyOf(editionOf(record, reckon(record), "archive"));
    expect(story.work.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(without + 60);
    expect([...(story.homesOf.get(entry?.id ?? "") ?? [])]).toEqual(["spar", "wing"]);
  });
});
