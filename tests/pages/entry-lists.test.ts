import { expect, it } from "vitest";
import { entryLists } from "../../src/pages/story/entry-lists.ts";
import type { Entry, Record } from "../../src/facts/types.ts";

function record(count: number): Record {
  const entries = Array.from(
    { length: count },
    (_, at) => ({ day: new Date(Date.UTC(2021, 10, 1 + at)).toISOString().slice(0, 10) }) as Entry,
  );
  return { entries } as unknown as Record;
}

it("Entries stand on one page up to four hundred, the newest first", () => {
  const [list, ...others] = entryLists(record(400));
  expect(others).toEqual([]);
  expect(list).toMatchObject({ path: "entries.html" });
  expect(list?.year).toBeUndefined();
  expect(list?.entries.map(({ day }) => day)).toEqual(
    record(400)
      .entries.map(({ day }) => day)
      .reverse(),
  );
});

it("More of them stand on a page for each year, each entry on one of them, the newest year on the first", () => {
  const lists = entryLists(record(500));
  expect(lists.map(({ path, year, entries }) => [path, year, entries.length])).toEqual([
    ["entries.html", "2023", 74],
    ["entries/2022.html", "2022", 365],
    ["entries/2021.html", "2021", 61],
  ]);
  expect(lists.flatMap(({ entries }) => entries.map(({ day }) => day))).toEqual(
    record(500)
      .entries.map(({ day }) => day)
      .reverse(),
  );
});
