import matter from "gray-matter";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { problemText } from "../../src/problem.ts";
import { targetOf } from "../../src/record/links.ts";
import { readRecord } from "../../src/record/read.ts";
import type { Record } from "../../src/facts/types.ts";
import { saidOf, withSmall } from "../problems/cases.ts";

const SMALL = new URL("small", import.meta.url).pathname;

async function smallRecord(): Promise<Record> {
  const read = await readRecord(SMALL);
  if ("problems" in read) throw new Error(read.problems.map(problemText).join("\n"));
  return read.record;
}

describe("A record without problems", () => {
  it("becomes the typed record that stands in the golden file", async () => {
    const text = JSON.stringify(
      await smallRecord(),
      (_key, value: unknown) => (value instanceof Map ? Object.fromEntries(value) : value),
      1,
    );
    await expect(`${text}\n`).toMatchFileSnapshot("small.golden.json");
  });

  it("has the day of its last entry, or the one given", async () => {
    expect((await smallRecord()).day).toBe("2025-03-22");
    const read = await readRecord(SMALL, { day: "2025-04-01" });
    expect("record" in read && read.record.day).toBe("2025-04-01");
  });

  it("has entries by day, then by file name", async () => {
    expect((await smallRecord()).entries.map(({ id }) => id)).toEqual([
      "2025-03-08-caps",
      "2025-03-15-pieces",
      "2025-03-22-looked",
    ]);
  });

  it("reckons days and times in the aircraft's time zone", async () => {
    const [entry] = (await smallRecord()).entries;
    expect(entry?.dayStart).toBe(Date.parse("2025-03-08T00:00Z") / 1000);
    expect(entry?.dayEnd).toBe(Date.parse("2025-03-08T23:59:59Z") / 1000);
    expect(entry?.batches[0]?.mixed).toEqual({ typed: "14:20", epoch: Date.parse("2025-03-08T14:20Z") / 1000 });
  });

  it("keeps who and where for departures accepted and items closed later", async () => {
    const [entry] = (await smallRecord()).entries;
    expect(entry?.departures[0]).toMatchObject({ acceptedBy: "looker", acceptedIn: "2025-03-15-pieces" });
    expect(entry?.raised[0]).toMatchObject({ closedIn: "2025-03-15-pieces" });
  });

  it("parts prose by its readers, each passage with its line", async () => {
    const [entry] = (await smallRecord()).entries;
    expect(entry?.body.map(({ audience, line }) => [audience, line])).toEqual([
      ["public", 35],
      ["inspector", 40],
      ["public", 43],
    ]);
  });
});

describe("Links in prose", () => {
  it.each([
    ["B-001", { ref: { kind: "batch", id: "B-001" } }],
    ["B-001/1", { ref: { kind: "piece", id: "B-001/1" } }],
    ["SP-J01", { ref: { kind: "joint", id: "SP-J01" } }],
    ["SP-H1", { ref: { kind: "hold point", id: "SP-H1" } }],
    ["D-1", { ref: { kind: "departure", id: "D-1" } }],
    ["O-1", { ref: { kind: "open item", id: "O-1" } }],
    ["wiping", { ref: { kind: "trial", id: "wiping" } }],
    ["2025-03-15-pieces.md", { ref: { kind: "entry", id: "2025-03-15-pieces" } }],
    ["../lots/S-1.md", { ref: { kind: "lot", id: "S-1" } }],
    ["../photos/jig.jpg", { file: "photos/jig.jpg" }],
    ["../papers/form-3.txt", { file: "papers/form-3.txt" }],
    ["https://example.org/", { web: "https://example.org/" }],
    ["mailto:mara@example.org", { web: "mailto:mara@example.org" }],
    ["builder", undefined],
    ["B-999", undefined],
    ["../papers/none.txt", undefined],
    ["javascript:alert(1)", undefined],
  ])("lead from %s to what it names", async (href, target) => {
    expect(targetOf(await smallRecord(), "entries/2025-03-08-caps.md", href)).toEqual(target);
  });

  it("lead to an entry by its file name from any folder", async () => {
    expect(targetOf(await smallRecord(), "assemblies/spar.md", "2025-03-15-pieces.md")).toEqual({
      ref: { kind: "entry", id: "2025-03-15-pieces" },
    });
  });
});

describe("The engines that gray-matter brings", () => {
  const engines = (matter as unknown as { engines: { [name: string]: { parse: (...parts: unknown[]) => unknown } } })
    .engines;
  afterEach(() => vi.restoreAllMocks());

  it("are never asked, whatever language a file claims", async () => {
    const spies = Object.values(engines).map((engine) => vi.spyOn(engine, "parse"));
    await withSmall(async (folder) => {
      for (const language of ["", "js", "javascript", "json", "coffee", "cson", "yaml", "toml"]) {
        writeFileSync(join(folder, "lots/S-2.md"), `---${language}\ntitle: globalThis.wasRun = true\n---\n`);
        expect(await saidOf(folder)).not.toBe("");
      }
    });
    expect(spies.length).toBeGreaterThan(0);
    for (const spy of spies) expect(spy).not.toHaveBeenCalled();
    expect(globalThis).not.toHaveProperty("wasRun");
  });

  it("leave the same bad file bad when it is read again", async () => {
    await withSmall(async (folder) => {
      writeFileSync(join(folder, "lots/S-2.md"), "---\ntitle: [\n---\n");
      const first = await saidOf(folder);
      expect(first).not.toBe("");
      expect(await saidOf(folder)).toBe(first);
    });
  });
});
