/** Everything that a page can say by one word of several is said in the demonstration, by the types of the program. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, it } from "vitest";
import type { Edition } from "../../src/editions/shown.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { reckonStock } from "../../src/evidence/lots/stock.ts";
import { reckonStatistics } from "../../src/evidence/statistics.ts";
import { sourceFiles } from "../architecture/source.ts";
import { builtDemo } from "../browser/demo.ts";
import { excused, NONE } from "../facts/because.ts";
import { allowedBy, heldBy, missing } from "./states.ts";
import { demo } from "./told.ts";
import { meaning, wordsOf } from "./types.ts";
import { MARKED_OTHERWISE, NO_SUCH_LOOK, NOT_IN_THE_STORY } from "./unseen.ts";

const evidence = reckon(demo);

/** The words of a type by its name. */
function words(name: string, file: string): readonly string[] {
  const found = meaning(name, file);
  const all = found && wordsOf(found);
  if (all === undefined) throw new Error(`${name} is not one of several words`);
  return all;
}

const EDITIONS = words("Edition", "src/editions/shown.ts") as readonly Edition[];

/** What an edition shows, with the type of each part. */
function partsOf(edition: Edition): readonly (readonly [value: unknown, type: string, file: string])[] {
  const shown = editionOf(demo, evidence, edition);
  return [
    [shown.record, "Record", "src/facts/types.ts"],
    [shown.evidence, "Evidence", "src/evidence/types.ts"],
    [reckonStock(shown.record, shown.evidence), "Stock", "src/evidence/types/stock.ts"],
    [reckonStatistics(shown.record, shown.evidence), "Statistics", "src/evidence/types/statistics.ts"],
  ];
}

function gathered(of: (value: unknown, type: string, file: string) => ReadonlyMap<string, ReadonlySet<string>>) {
  const all = new Map<string, Set<string>>();
  for (const edition of EDITIONS)
    for (const part of partsOf(edition))
      for (const [where, found] of of(...part)) all.set(where, new Set([...(all.get(where) ?? []), ...found]));
  return all;
}

it("Each verdict, state and kind that the types allow is somewhere in the demo, or it is said why not", () => {
  const allowed = gathered((_, type, file) => allowedBy(type, file));
  const verdicts = ["BatchFile.verdict", "JointFile.state", "HoldPointFile.state", "PairFile.verdict", "LotStock.life"];
  expect(verdicts.filter((where) => (allowed.get(where)?.size ?? 0) < 4)).toEqual([]);
  expect(excused(missing({ allowed, held: gathered(heldBy) }), NOT_IN_THE_STORY)).toEqual(NONE);
});

it("Something of the demo is for each audience, and each edition has what a narrower one has not", () => {
  const held = heldBy(demo, "Record", "src/facts/types.ts");
  const audiences = new Set([...held].filter(([where]) => where.endsWith(".audience")).flatMap(([, all]) => [...all]));
  expect([...audiences].sort()).toEqual([...words("Audience", "src/facts/values.ts")].sort());
  const sizes = EDITIONS.map((edition) => JSON.stringify(editionOf(demo, evidence, edition).record.entries).length);
  expect(new Set(sizes).size).toBe(EDITIONS.length);
});

/** Longer than any machine takes to build the demo in every edition. */
const PATIENCE_MS = 600_000;

beforeAll(() => {
  for (const edition of EDITIONS) builtDemo(edition);
}, PATIENCE_MS);

const html = (edition: Edition): readonly string[] => {
  const { folder, pages } = builtDemo(edition);
  return pages.map((page) => readFileSync(join(folder, page), "utf8"));
};

it("Each mark that a page can have is on a page of the demo, in its own words", () => {
  const marks = words("Marked", "src/pages/evidence/marked.ts");
  const seen = new Set(
    html("archive").flatMap((page) => [...page.matchAll(/mark__word">([^<]+)</gu)].map(([, word]) => word)),
  );
  // What a finding does is a shape alone; the first test has them.
  const shapes = new Set(words("Severity", "src/evidence/types.ts"));
  expect(marks.length).toBeGreaterThan(30);
  const unseen = marks.filter((mark) => !seen.has(mark) && !shapes.has(mark));
  expect(excused(unseen, MARKED_OTHERWISE)).toEqual(NONE);
});

/** Classes that the style sheets have rules for: how charts, lists and all else look in each of their states. */
function styledClasses(): readonly string[] {
  const sheets = (readdirSync("layouts/styles", { recursive: true, encoding: "utf8" }) as string[]).filter((name) =>
    name.endsWith(".css"),
  );
  const rules = sheets.map((name) =>
    readFileSync(join("layouts/styles", name), "utf8").replace(/\/\*[\s\S]*?\*\//gu, ""),
  );
  const selectors = rules.join("\n").replace(/\{[^{}]*\}/gu, "{}");
  return [...new Set([...selectors.matchAll(/\.([a-zA-Z][\w-]*)/gu)].map(([, name]) => name ?? ""))].sort();
}

/** The words within quotes of a script: classes of what it makes as somebody reads are among them. */
const quoted = (text: string): readonly string[] =>
  [...text.matchAll(/(["`])(.*?)\1/gu)].flatMap(([, , inside = ""]) => inside.split(/[\s.]+/u));

it("Each look that a chart, a list or anything else can have is on a page of the demo, or it is said why not", () => {
  const pages = EDITIONS.flatMap(html);
  const worn = new Set(
    pages.flatMap((page) => [...page.matchAll(/class="([^"]*)"/gu)].flatMap(([, all]) => all?.split(" "))),
  );
  const made = new Set(sourceFiles("src/browser").flatMap(({ text }) => quoted(text)));
  const styled = styledClasses().filter((name) => !made.has(name));
  expect(styled.length).toBeGreaterThan(200);
  const unseen = styled.filter((name) => !worn.has(name));
  expect(excused(unseen, NO_SUCH_LOOK)).toEqual(NONE);
});
