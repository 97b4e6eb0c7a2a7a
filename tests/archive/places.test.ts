/** What an archive says of itself to a stranger, against what is in it. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readmeText } from "../../src/archive/bag/readme.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { questionsFor } from "../../src/pages/archive/guide.ts";
import { placesOf } from "../../src/pages/archive/places.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { layOut } from "../../src/publish/publish.ts";
import { readRecord } from "../../src/record/read.ts";
import { exampleRecord } from "../pages/example.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";

const scratch = scratchFolders();

const LEAST = {
  "aircraft.md":
    "---\nname: Stub\ntype: Test bed\nstart: 2021-01-01\ntime_zone: Europe/Berlin\nunits: metric\ntasks: [planning]\n" +
    "people:\n  - { id: b, name: Ab Builder, public: Ab, role: builder }\n---\n",
  "entries/2021-03-01-first.md": "---\ndate: 2021-03-01\ntitle: A first day\n---\nA look at the plans.\n",
};

async function archiveOf(content: string): Promise<Shown> {
  const read = await readRecord(content, { today: "2026-11-26" });
  if ("problems" in read) throw new Error(read.problems.map(({ message }) => message).join());
  return editionOf(read.record, reckon(read.record), "archive");
}

const foldersOf = (shown: Shown): string[] => placesOf(shown, false).flatMap(({ folders }) => folders);
const OWN = ["record/pages/", "record/layouts/", "record/style.css"];

describe("An archive of a record that has but words", () => {
  const least = (): Promise<Shown> => {
    const content = scratch();
    writeAll(content, LEAST);
    return archiveOf(content);
  };

  it("promises no folder that it has not", async () => {
    const shown = await least();
    expect(foldersOf(shown)).toEqual(["site/index.html", "record/", ...OWN, "rules.json", "record.sha256"]);
    const readme = readmeText(shown, "1.0.0");
    expect(readme.match(/data\/(?:record\/)?(?:attachments|photos|drawings|ledgers)\//g)).toBeNull();
    expect(readme).toContain("  data/record/pages/, data/record/layouts/ and data/record/style.css\n");
  });

  it("has no ledgers, nor what would tell programs of them, and says so", async () => {
    const shown = await least();
    expect(ledgersOf(shown)).toEqual([]);
    expect(readmeText(shown, "1.0.0")).toContain("The record has nothing to be put into a ledger yet.");
    expect(readmeText(shown, "1.0.0")).not.toContain("datapackage.json");
    expect(questionsFor(shown).map(({ page }) => page)).not.toContain("ledgers.html");
    const { pages } = layOut(shown, { pictures: new Map(), documents: new Map(), clips: new Map() });
    const page = pages.find(({ path }) => path === "ledgers.html")?.make() ?? "";
    expect(page).toContain("The record has nothing to be put into a ledger yet.");
    expect(page).not.toContain("datapackage.json");
  });
});

it("An archive names each folder that papers, pictures, clips, drawings, readings and hours lie in, as the record has them", async () => {
  const shown = await archiveOf("content");
  const folders = foldersOf(shown).filter((folder) => /^record\/./.test(folder) && !OWN.includes(folder));
  expect(folders.filter((folder) => !existsSync(join("content", folder.replace("record/", ""))))).toEqual([]);
  expect(folders).toEqual(
    ["attachments", "photos", "clips", "climate", "hours", "drawings"].map((folder) => `record/${folder}/`),
  );
  const made = exampleRecord();
  const elsewhere = {
    ...made,
    lots: new Map([...made.lots].map(([id, lot]) => [id, { ...lot, certificate: `${id}.pdf` }])),
  };
  const papers = placesOf(editionOf(elsewhere, reckon(elsewhere), "archive"), false).find(
    ({ page }) => page === "papers.html",
  );
  expect(papers?.folders).toContain("record/");
});
