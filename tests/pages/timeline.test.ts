import { expect, it } from "vitest";
import type { Told } from "../../src/pages/story/day-events.ts";
import type { Happening } from "../../src/pages/story/day-events.ts";
import { timelineOf } from "../../src/pages/story/timeline.ts";
import type { Entry } from "../../src/facts/types.ts";

const glued = (id: string, word: "shown" | "rejected"): Happening => ({
  row: "Batches",
  mark: word,
  word,
  what: `Batch ${id}`,
  about: { kind: "batch", id },
});

function told(days: number, wordOf: (at: number) => "shown" | "rejected"): Told[] {
  return Array.from({ length: days }, (_, at) => {
    const day = new Date(Date.UTC(2024, 0, 1 + at)).toISOString().slice(0, 10);
    return { entry: { id: day, day } as Entry, minutes: 60, dayEvents: [glued(`B-${at}`, wordOf(at))] };
  });
}

const batches = (all: readonly Told[], most = 120) =>
  timelineOf(all, most, () => true).rows.find(({ name }) => name === "Batches")?.events ?? [];

it("A row of a timeline has each thing on its day", () => {
  const events = batches(told(120, () => "shown"));
  expect(events).toHaveLength(120);
  expect(events[1]).toEqual({
    day: 19724,
    shape: "shown",
    words: "2 Jan 2024: Batch B-1, shown",
    to: "batch/B-1.html",
  });
  const hidden = timelineOf(
    told(2, () => "shown"),
    120,
    () => false,
  ).rows.find(({ name }) => name === "Batches");
  expect(hidden?.events.map(({ to }) => to)).toEqual([undefined, undefined]);
});

it("A row with more than can be told apart has things alike once a month, and one that is alone by its name", () => {
  const events = batches(told(121, (at) => (at === 40 ? "rejected" : "shown")));
  expect(events.map(({ words }) => words)).toEqual([
    "January 2024: 31 times shown",
    "February 2024: 28 times shown",
    "10 Feb 2024: Batch B-40, rejected",
    "March 2024: 31 times shown",
    "April 2024: 30 times shown",
  ]);
  expect(new Set(events.map(({ shape }) => shape))).toEqual(new Set(["shown", "rejected"]));
});
