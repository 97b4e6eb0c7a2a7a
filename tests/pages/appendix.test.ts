/** The appendix of a long record: a sheet for each assembly, and nothing lost between them. */
import { parse } from "node-html-parser";
import { expect, it } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import { MOST_ON_A_SHEET } from "../../src/pages/appendix/sheets.ts";
import type { Record } from "../../src/facts/types.ts";
import { exampleRecord, exampleSite } from "./example.ts";

/** Its first batch again and again, each under an id of its own and without pieces. */
function longRecord(batches: number): Record {
  const made = exampleRecord();
  const [first] = made.entries.flatMap((entry) => entry.batches);
  if (first === undefined) throw new Error("no batch");
  const more = Array.from({ length: batches }, (_, at) => ({ ...first, id: `L-${1000 + at}`, pieces: [] }));
  return {
    ...made,
    entries: made.entries.map((entry) =>
      entry.id === first.entry ? { ...entry, batches: [...entry.batches, ...more] } : entry,
    ),
  };
}

const sheetsOf = (record: Record): ReadonlyMap<string, ReturnType<typeof parse>> =>
  new Map(
    evidencePages(exampleSite("inspector", record))
      .filter(({ path }) => path.startsWith("appendix"))
      .map(({ path, make }) => [path, parse(make())]),
  );

it("A record of few batches has one sheet", () => {
  expect([...sheetsOf(exampleRecord()).keys()]).toEqual(["appendix.html"]);
});

it("A record of many has one for each assembly, and an index by which each batch and joint is found", () => {
  const record = longRecord(MOST_ON_A_SHEET);
  const sheets = sheetsOf(record);
  expect([...sheets.keys()]).toEqual(["appendix.html", "appendix/fin.html"]);
  const ids = (path: string): string[] =>
    sheets
      .get(path)
      ?.querySelectorAll("[id]")
      .map(({ id }) => id) ?? [];
  const all = [...sheets.keys()].flatMap(ids).filter((id) => id.startsWith("batch-"));
  const batches = record.entries.flatMap((entry) => entry.batches).map(({ id }) => `batch-${id}`);
  expect([...all].sort()).toEqual([...batches].sort());
  const index =
    sheets
      .get("appendix.html")
      ?.querySelectorAll(".appendix__index a")
      .map((a) => a.getAttribute("href") ?? "") ?? [];
  expect(index.length).toBeGreaterThan(batches.length);
  const lost = index.filter((href) => {
    const [path = "", id = ""] = href.startsWith("#") ? ["appendix.html", href.slice(1)] : href.split("#");
    return !ids(path).includes(id);
  });
  expect(lost).toEqual([]);
});

it("Links of a sheet lead to where a thing stands, on another sheet too", () => {
  const sheets = sheetsOf(longRecord(MOST_ON_A_SHEET));
  const hrefs = sheets.get("appendix/fin.html")?.querySelectorAll('a[href*="appendix.html#"]') ?? [];
  const ids = new Set(
    sheets
      .get("appendix.html")
      ?.querySelectorAll("[id]")
      .map(({ id }) => id),
  );
  expect(hrefs.length).toBeGreaterThan(0);
  expect(hrefs.map((a) => a.getAttribute("href") ?? "").filter((href) => !ids.has(href.split("#")[1] ?? ""))).toEqual(
    [],
  );
});
