import { describe, expect, test } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import { storyPages } from "../../layouts/shell/story-pages.tsx";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import type { Edition, Site } from "../../src/editions/shown.ts";
import type { Amendment, Record } from "../../src/facts/types.ts";
import { entry } from "../evidence/make.ts";
import { exampleRecord, exampleSite } from "./example.ts";

const place = { file: "amended.md", line: 1, column: 1 };
const GLUED = "2025-03-10-glue";
const TESTED = "2025-03-20-tests";
const BY = "2025-04-05-amends";

const amendments: readonly Amendment[] = [
  {
    place,
    entry: GLUED,
    by: BY,
    day: "2025-04-05",
    why: "The slip says otherwise",
    seenBy: "jo",
    prose: true,
    withheld: false,
    changes: [
      {
        place,
        about: { kind: "batch", id: "B-001" },
        fact: "Batch B-001",
        value: "hardener mass",
        was: ["35.1 g"],
        is: ["20.0 g"],
        needs: [{ kind: "batch", id: "B-001" }],
        audience: "public",
      },
      {
        place,
        about: { kind: "batch", id: "B-001" },
        fact: "Batch B-001",
        value: "timber",
        was: [{ kind: "lot", id: "S-1" }],
        needs: [],
        audience: "public",
        fixed: true,
      },
      {
        place,
        about: { kind: "entry", id: GLUED },
        fact: "Hours",
        was: [{ kind: "person", id: "jo" }, ", gluing"],
        is: [{ kind: "person", id: "ada" }, ", gluing"],
        needs: [],
        audience: "public",
      },
    ],
  },
  {
    place,
    entry: TESTED,
    by: BY,
    day: "2025-04-05",
    why: "Misheard",
    prose: false,
    withheld: false,
    changes: [
      {
        place,
        about: { kind: "departure", id: "D-1" },
        fact: "Departure D-1",
        value: "why",
        was: ["The jig was bent"],
        is: ["The jig had moved"],
        needs: [{ kind: "departure", id: "D-1" }],
        audience: "inspector",
      },
    ],
  },
];

function amended(): Record {
  const made = exampleRecord();
  const entries = made.entries.map((one) =>
    one.id === GLUED
      ? {
          ...one,
          body: [
            { audience: "public" as const, markdown: "It went together well.", line: 9 },
            { audience: "archive" as const, markdown: "Nobody may know.", line: 12 },
          ],
        }
      : one,
  );
  return { ...made, entries: [...entries, entry(BY, { title: "Put right", assembly: "fin", amendments })] };
}

const page = (site: Site, path: string): string =>
  [...storyPages(site), ...evidencePages(site)].find((one) => one.path === path)?.make() ?? "";
const words = (html: string): string =>
  html
    .replace(/<(?:style|svg)[\s\S]*?<\/(?:style|svg)>/g, "")
    .replace(/<del>/g, "[was ")
    .replace(/<\/del>/g, "]")
    .replace(/<[^>]+>/g, "")
    .replace(/\s+/g, " ");
const sites = new Map(
  (["public", "inspector", "archive"] as const).map((edition) => [edition, exampleSite(edition, amended())] as const),
);
const site = (edition: Edition): Site => sites.get(edition) ?? exampleSite(edition, amended());

describe("An entry that was amended", () => {
  const html = page(site("archive"), `entry/${GLUED}.html`);

  test("says on what day, why, what was and what is, and leads to the entry that amends it", () => {
    expect(html).toContain(`<a href="../entry/${BY}.html"><time datetime="2025-04-05">5 April 2025</time></a>`);
    expect(words(html)).toContain("Because: The slip says otherwise. Source seen by Jo Ferrand.The text of the day");
    expect(words(html)).toContain("Batch B-001, hardener mass: was [was 35.1 g], is 20.0 g");
    expect(words(html)).toContain("Batch B-001, timber: was [was S-1], is struck out; this does not count, because");
    expect(words(html)).toContain("Hours: was [was Jo Ferrand, gluing], is Ada Vollmer, gluing");
  });

  test("keeps its first text readable, struck through, and says so in words", () => {
    expect(html).toMatch(/<del><div class="prose ?"><p>It went together well\.<\/p><\/div>/);
    expect(words(html)).toMatch(
      /Struck out on 5 April 2025, because: The slip says otherwise\. Source seen by Jo Ferrand\. What was written first:\[was It went together well\./,
    );
    expect(words(html)).toContain("End of the text that is struck out.");
  });
});

test("The entry that amends others leads to each of them and says the same", () => {
  const html = page(site("archive"), `entry/${BY}.html`);
  expect(html).toContain(`href="../entry/${GLUED}.html">Lower rib, 10 March 2025</a>`);
  expect(words(html)).toContain("Departure D-1, why: was [was The jig was bent], is The jig had moved");
});

test("A batch's page and a list of departures say every value that was changed, since when and why", () => {
  expect(words(page(site("archive"), "batch/B-001.html"))).toContain(
    "Amended on 5 April 2025: Batch B-001, hardener mass: was [was 35.1 g], is 20.0 g, because: The slip says otherwise. Source seen by Jo Ferrand.",
  );
  expect(words(page(site("inspector"), "departures.html"))).toContain(
    "Amended on 5 April 2025: Departure D-1, why: was [was The jig was bent]",
  );
});

test("The public edition has neither first nor amended text of what it hides, and tells that there is something", () => {
  const open = site("public");
  const both = [`entry/${GLUED}.html`, `entry/${BY}.html`, "departures.html"].map((path) => page(open, path)).join("");
  for (const secret of ["Jo Ferrand", "S-1", "The jig", "D-1", "Nobody may know"]) expect(both).not.toContain(secret);
  expect(words(page(open, `entry/${BY}.html`))).toContain("Some of what it changes is not shown in this edition.");
  expect(words(page(open, `entry/${GLUED}.html`))).toContain(
    "timber: was [was something this edition does not show], is struck out",
  );
});

test("The ledger of amendments has a row for each change, and is not there where nothing was amended", () => {
  const csv = ledgersOf(site("archive").shown)
    .find(({ path }) => path === "data/amendments.csv")
    ?.text.split("\r\n");
  expect(csv?.slice(0, 4)).toEqual([
    "entry,amended_by,day,why,about_kind,about,what,value,was,is,seen_by,fixed_when_broken",
    `${GLUED},${BY},2025-04-05,The slip says otherwise,entry,${GLUED},,prose,,,Jo Ferrand,no`,
    `${GLUED},${BY},2025-04-05,The slip says otherwise,batch,B-001,Batch B-001,hardener mass,35.1 g,20.0 g,Jo Ferrand,no`,
    `${GLUED},${BY},2025-04-05,The slip says otherwise,batch,B-001,Batch B-001,timber,S-1,,Jo Ferrand,yes`,
  ]);
  expect(ledgersOf(exampleSite("archive").shown).some(({ path }) => path.includes("amendments"))).toBe(false);
});
