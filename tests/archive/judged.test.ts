import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { compared, type Ledgers } from "../../src/archive/judged/compare.ts";
import type { Row } from "../../src/pages/ledgers/column.ts";
import { command as commandThen } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { bagIn, tool } from "./make.ts";

const scratch = scratchFolders();
/** On a day after the last of the record’s. */
const command: typeof commandThen = (words) => commandThen(words, { now: () => new Date("2026-11-27T12:00:00") });
const kept: { bag?: ReadonlyMap<string, string>; zip?: string } = {};

beforeAll(async () => {
  const folder = scratch();
  cpSync("tests/attacks/base", join(folder, "content"), { recursive: true });
  const { code, err } = await command(["bag", join(folder, "content"), "--out", folder]);
  if (code !== 0) throw new Error(err);
  kept.bag = contentOf(join(folder, readBagName(folder)));
});

const readBagName = (folder: string): string =>
  tool("sh", ["-c", "ls -d */ | grep -v content"], folder).out.trim().replace(/\/$/, "");

interface Ledger {
  rules: number;
  rows: { [column: string]: unknown }[];
}

/** The bag as another program would have published it: its ledgers changed, and all of it vouched for. */
function published(
  name: string,
  change: (ledger: Ledger) => void,
  more: { readonly [path: string]: string } = {},
): string {
  const files: { [path: string]: Buffer } = {};
  for (const [path, text] of kept.bag ?? [])
    if (!/^(?:tag)?manifest-|^bagit/.test(path)) files[path] = Buffer.from(text, "latin1");
  const path = `data/ledgers/${name}.json`;
  const ledger = JSON.parse(files[path]?.toString("utf8") ?? "") as Ledger;
  change(ledger);
  files[path] = Buffer.from(JSON.stringify(ledger));
  for (const [at, text] of Object.entries(more)) files[at] = Buffer.from(text);
  const payload = Object.keys(files).filter((each) => each.startsWith("data/"));
  const bytes = payload.reduce((sum, each) => sum + (files[each]?.length ?? 0), 0);
  const info = files["bag-info.txt"]
    ?.toString()
    .replace(/Payload-Oxum: .*/, `Payload-Oxum: ${bytes}.${payload.length}`);
  files["bag-info.txt"] = Buffer.from(info ?? "");
  const algorithms = ["sha256", "sha512"];
  return bagIn(join(scratch(), "bag"), { files, algorithms, tagAlgorithms: algorithms });
}

const judged = (bag: string, ...words: string[]) => command(["verify", bag, "--judged-anew", ...words]);

describe("scarfline verify --judged-anew", () => {
  it("finds no verdict another where the archive was published by the rules of today", async () => {
    const { code, out, err } = await judged(published("batches", () => undefined));
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(
      /Judged anew by the rules of version 2 as of 25 March 2025; it was published by those of version 2: \d\d verdicts, and none is another\.\n$/,
    );
  });

  it("tells a verdict that differs, with the reasons that were published and those of now, and changes nothing in the archive", async () => {
    const bag = published("batches", ({ rows }) => {
      for (const row of rows) if (row["batch"] === "B-001") row["verdict"] = "rejected";
    });
    const before = contentOf(bag);
    const { code, out } = await judged(bag);
    expect(code).toBe(0);
    expect(out).toMatch(/batch B-001: published as rejected, now \w+/);
    expect(out).toMatch(/ {4}published: /);
    expect(out).toMatch(/ {4}now: /);
    expect(out).toMatch(/of \d\d verdicts 1 is another\. What was published stands as it was\.\n$/);
    expect(contentOf(bag)).toEqual(before);
  });

  it("tells words that only changed by the word map, apart from verdicts that differ", async () => {
    const bag = published("batches", (ledger) => {
      ledger.rules = 1;
      for (const row of ledger.rows) row["verdict"] = row["verdict"] === "shown" ? "accepted" : row["verdict"];
    });
    const { out } = await judged(bag);
    expect(out).toMatch(/\d verdicts? of accepted (?:is|are) now called shown: only the word is another\./);
    expect(out).toMatch(/published by those of version 1: \d\d verdicts, and none is another/);
  });

  it("reads an archive that is packed, and gives all of it as JSON", async () => {
    const bag = published("joints", ({ rows }) => {
      for (const row of rows.slice(0, 1)) row["state"] = "quarantined";
    });
    expect(tool("tar", ["czf", "bag.tar.gz", "bag"], join(bag, "..")).code).toBe(0);
    const packed = join(bag, "../bag.tar.gz");
    const { out } = await judged(packed, "--json");
    const told = JSON.parse(out) as { judged: { differences: object[]; rules: number; day: string } };
    expect(told.judged).toMatchObject({ rules: 2, day: "2025-03-25" });
    expect(told.judged.differences).toEqual([
      {
        thing: "joint",
        id: expect.any(String),
        published: { verdict: "quarantined", reasons: expect.any(Array) },
        present: { verdict: expect.any(String), reasons: expect.any(Array) },
      },
    ]);
  });

  it("judges no archive that has a fault, and tells what keeps the rules of today from reading a record", async () => {
    const bag = published("batches", () => undefined);
    writeFileSync(join(bag, "data/rules.json"), "{}");
    const faulty = await judged(bag);
    expect(faulty).toMatchObject({ code: 1, out: expect.stringContaining("only an archive without faults is") });
    const aircraft = readFileSync(join(bag, "data/record/aircraft.md"), "utf8").replace(
      "units: metric",
      "units: cubits",
    );
    const list = [...(kept.bag ?? [])].find(([path]) => path === "data/record.sha256")?.[1] ?? "";
    const strange = await judged(
      published("batches", () => undefined, { "data/record/aircraft.md": aircraft, "data/record.sha256": list }),
    );
    expect(strange).toMatchObject({ code: 1, err: expect.stringContaining("cubits") });
    expect(strange.out).toContain("these rules cannot read it");
  });

  it("is refused for a record, which has published nothing", async () => {
    expect(await command(["verify", "tests/attacks/base", "--judged-anew"])).toMatchObject({ code: 2 });
  });
});

it("Judgements are compared by what they are of: what is in one alone is told, and of two things called alike each", () => {
  const coat = (verdict: string): Row => ({ assembly: "w", where: "rib", coat: 1, entry: "e", verdict });
  const ledgers = (rows: readonly Row[], findings: readonly Row[] = []): Ledgers =>
    new Map([
      ["coats", rows],
      ["findings", findings],
    ]);
  const finding = (severity: string, sentence: string): Row => ({ about: "w, rib, 1, e", severity, sentence });
  const reasons = [
    finding("meets", "well"),
    finding("waits", "later"),
    finding("rejects", "broken"),
    finding("rejects", "wet"),
  ];
  expect(
    compared(ledgers([coat("shown"), coat("shown")]), ledgers([coat("shown"), coat("rejected")], reasons), 2),
  ).toEqual({
    judged: 2,
    renamed: [],
    differences: [
      {
        thing: "coat",
        id: "w, rib, 1, e (2)",
        published: { verdict: "shown", reasons: [] },
        present: { verdict: "rejected", reasons: ["broken", "wet"] },
      },
    ],
  });
  expect(compared(ledgers([coat("shown")]), ledgers([]), 2).differences).toEqual([
    { thing: "coat", id: "w, rib, 1, e", published: { verdict: "shown", reasons: [] } },
  ]);
  // A word that only later rules use is no other word for a verdict of theirs.
  expect(compared(ledgers([coat("accepted")]), ledgers([coat("shown")]), 2)).toMatchObject({
    renamed: [],
    differences: [{}],
  });
  expect(compared(ledgers([coat("accepted")]), ledgers([coat("shown")]), 1)).toMatchObject({
    renamed: [{ count: 1 }],
    differences: [],
  });
});
