import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readRecord } from "../../../src/record/read.ts";
import { command } from "../../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../../publish/scratch.ts";
import { WORKSHOP } from "../workshop.ts";
import { messySheet } from "./messy-sheet.ts";

const scratch = scratchFolders();

/** A record of two builders that began early enough. */
function workshop(files: { readonly [path: string]: string | Buffer }): { record: string; given: string } {
  const [record, given] = [scratch(), scratch()];
  const aircraft = WORKSHOP["aircraft.md"]
    .replace("start: 2021-03-07", "start: 2017-01-01")
    .replace("people:", "people:\n  - { id: karl, name: Karl Example, public: Karl, role: helper }")
    .replace("[gluing, testing]", "[gluing, shaping, testing]");
  writeAll(record, { ...WORKSHOP, "aircraft.md": aircraft });
  writeAll(given, files);
  return { record, given };
}

const MAPPING = [
  ["--column", "span=Datum"],
  ["--column", "who=Wer"],
  ["--column", "task=Arbeit"],
  ["--column", "time=Stunden"],
  ["--column", "assembly=Teil"],
  ["--column", "source=none of these"],
  ["--source", "Spreadsheet of the hangar"],
  ["--days", "D.M.YYYY, DD/MM/YY"],
  ["--decimal", ","],
  ["--numbers", "hours"],
  ["--merged", "task=yes"],
  ["--merged", "who=no"],
  ["--merged", "assembly=no"],
  ["--person-is", "Ines=me"],
  ["--person-is", "Karl=karl"],
  ["--person-is", "wir beide=me + karl"],
  ["--task-is", "Leimen=gluing"],
  ["--task-is", "Schleifen=shaping"],
  ["--task-is", "Hobeln / Schleifen=shaping"],
  ["--task-is", "Bruchprobe=testing"],
  ["--assembly-is", "Ruder=rudder"],
  ["--assembly-is", "Hangar=no assembly"],
  ["--several", "each"],
].flat();

const take = (record: string, file: string, ...more: readonly string[]) =>
  command(["take", file, "--content", record, ...more], { now: () => new Date("2022-03-01T12:00:00") });

describe("Five years of a messy spreadsheet", () => {
  const sheet = messySheet(20_211);
  const name = "Stunden 2017-2021 (1).csv";
  const path = "hours/stunden-2017-2021.csv";

  it("come in by one mapping, to the minute, and the file stays as it was", async () => {
    const { record, given } = workshop({ [name]: sheet.text });
    expect(sheet.text.split("\r\n").length).toBeGreaterThan(1200);
    const { code, out, err } = await take(record, join(given, name), ...MAPPING, "--set-aside");
    expect(err).toBe("");
    expect([code, out.slice(0, 5)]).toEqual([0, "Took "]);
    expect(readFileSync(join(record, path), "utf8")).toBe(sheet.text);
    const read = await readRecord(record);
    if ("problems" in read) return expect.fail(JSON.stringify(read.problems));
    const [table] = read.record.earlier;
    const sums = new Map<string, number>();
    for (const { who, minutes } of table?.lines ?? []) sums.set(who, (sums.get(who) ?? 0) + minutes);
    expect(sums).toEqual(new Map(sheet.minutes));
    expect(new Set(table?.lines.map(({ place }) => place.line)).size).toBe(sheet.readable);
    expect(table?.setAside).toBe(sheet.unreadable.length);
    const site = join(scratch(), "site");
    await command(["build", record, "--out", site], { now: () => new Date("2022-03-01T12:00:00") });
    const told = `${sheet.unreadable.length} lines of ${table?.title} are in no sum: set aside`;
    expect(readFileSync(join(site, "hours.html"), "utf8").replaceAll(/\s+/gu, " ")).toContain(told);
    expect(table?.lines.every(({ span }) => span.from === span.to)).toBe(true);
  });

  it("are told by row and reason where a line cannot be read, each of them and no other", async () => {
    const { record, given } = workshop({ [name]: sheet.text });
    const { code, err } = await take(record, join(given, name), ...MAPPING);
    expect(code).toBe(2);
    const rows = [...err.matchAll(/hours\/stunden-2017-2021\.csv:(\d+):\d+ {2}(.*) {2}\[/gu)];
    expect([...new Set(rows.map(([, line]) => Number(line)))]).toEqual(sheet.unreadable);
    expect(new Set(rows.map(([, , why]) => why))).toEqual(
      new Set([
        "this is not a day, a month or a year",
        "this row has nothing under who",
        "this row has nothing under time",
        "this is not a length of time",
        "this has a point, and the table's decimal mark is said to be a comma",
        "no time has passed",
      ]),
    );
    expect(contentOf(record).has(path)).toBe(false);
  });

  it("are named in the file beside them, line by line with what stands there", async () => {
    const { record, given } = workshop({ [name]: sheet.text });
    await take(record, join(given, name), ...MAPPING, "--set-aside");
    const beside = readFileSync(join(record, path.replace(".csv", ".md")), "utf8");
    const lines = sheet.text.split("\r\n");
    const named = [...beside.matchAll(/- line: "?(\d+)"?\n {4}typed: "?(.*?)"?\n {4}why: (.+)\n/gu)];
    expect(named.map(([, line]) => Number(line))).toEqual(sheet.unreadable);
    for (const [, line, typed] of named) expect(lines[Number(line) - 1]).toBe(typed);
  });

  it("do nothing the second time", async () => {
    const { record, given } = workshop({ [name]: sheet.text });
    await take(record, join(given, name), ...MAPPING, "--set-aside");
    const before = contentOf(record);
    expect(await take(record, join(given, name))).toEqual({
      code: 0,
      out: `Is there already ${join(given, name)}\n  ${path}\n`,
      err: "",
    });
    expect(contentOf(record)).toEqual(before);
  });
});

it("A mapping with a flag left out writes nothing and tells all that is missing at that point", async () => {
  const { record, given } = workshop({ "s.csv": "Datum;Wer;Arbeit;Stunden\n1.2.2020;Ines;Leimen;0,33\n" });
  const before = contentOf(record);
  const columns = MAPPING.slice(0, 8);
  const { code, err } = await take(record, join(given, "s.csv"), ...columns);
  expect(code).toBe(2);
  expect(err).toContain('--column "assembly=<header>"');
  expect(err).toContain('--column "source=<header>"');
  const more = ["--column", "assembly=none of these", "--column", "source=none of these", "--source", "Old sheet"];
  const reading = await take(record, join(given, "s.csv"), ...columns, ...more);
  expect(reading.err.match(/^ {2}--\S+/gmu)).toEqual(["  --days", "  --decimal", "  --nearest-minute"]);
  const ways = ["--days", "D.M.YYYY", "--decimal", ",", "--nearest-minute", "yes"];
  const words = await take(record, join(given, "s.csv"), ...columns, ...more, ...ways);
  expect(words.err.match(/^ {2}--\S+ "?\w*/gmu)).toEqual(['  --person-is "Ines', '  --task-is "Leimen']);
  expect(contentOf(record)).toEqual(before);
});

it("An export that has grown since, under another name, is not counted twice unless somebody says so", async () => {
  const head = "Datum;Wer;Arbeit;Stunden\n";
  const first = `${head}1.2.2020;Ines;Leimen;2,5\n2.2.2020;Ines;Leimen;1\n`;
  const { record, given } = workshop({
    "jan.csv": first,
    "feb.csv": `${first}2.2.2020;Ines;Leimen;1\n3.2.2020;Ines;Leimen;4\n`,
  });
  const rest = [...MAPPING.slice(0, 8), "--column", "assembly=none of these", "--column", "source=none of these"];
  const said = [...rest, "--source", "Old", "--days", "D.M.YYYY", "--decimal", ",", "--numbers", "hours"];
  const words = ["--person-is", "Ines=me", "--task-is", "Leimen=gluing"];
  expect(await take(record, join(given, "jan.csv"), ...said, ...words)).toMatchObject({ code: 0 });
  const before = contentOf(record);
  const asked = await take(record, join(given, "feb.csv"), ...said, ...words);
  expect(asked.code).toBe(2);
  expect(asked.err).toContain(
    "2 lines of it say what hours/jan.csv says: the same day, person, task, time and assembly",
  );
  expect(asked.err).toMatch(/^ {2}--again/mu);
  expect(contentOf(record)).toEqual(before);
  expect(await take(record, join(given, "feb.csv"), ...said, ...words, "--again")).toMatchObject({ code: 0 });
});

it("A file whose name is taken by another table is left, and so is one without a header", async () => {
  const { record, given } = workshop({ "s.csv": "Datum;Wer;Arbeit;Stunden\n", "t.csv": "1;2;3\n" });
  writeAll(record, { "hours/s.csv": "span,who,task,time,source\n2020,me,gluing,1:00,Notebook\n" });
  const { code, err } = await command(["take", given, "--content", record]);
  expect(code).toBe(1);
  expect(err).toContain("hours/s.csv is there already and tells of something else");
  expect(err).toContain("No line within the first 30 is a header");
});
