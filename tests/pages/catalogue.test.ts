/** Every sentence that evidence says is in the catalogue, and in nothing else: another language is one folder. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { reckonStock } from "../../src/evidence/lots/stock.ts";
import type { Code, Saying } from "../../src/evidence/saying.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import type { Record } from "../../src/facts/types.ts";
import { layOut } from "../../src/publish/publish.ts";
import { readRecord } from "../../src/record/read.ts";
import type { Catalogue } from "../../src/words/findings/catalogue.ts";
import { ENGLISH } from "../../src/words/findings/english.ts";

const CODES = Object.keys(ENGLISH) as Code[];
/** A language in which every sentence is its code between marks. */
const MARKED = Object.fromEntries(CODES.map((code) => [code, () => `⟦${code}⟧`])) as unknown as Catalogue;
const NOTHING = { pictures: new Map(), documents: new Map(), clips: new Map() };

/** Everything that evidence says of a record, but for its rules. */
function sayings(record: Record, evidence: Evidence): Saying[] {
  const findings = [...evidence.findings, ...reckonStock(record, evidence).findings];
  const points = [...evidence.holdPoints.values()];
  return [
    ...findings.flatMap((finding) => [finding, ...(finding.limit ? [finding.limit, finding.limit.from] : [])]),
    ...points.flatMap(({ needs, changes }) => [...needs, ...needs.map(({ takes }) => takes), ...changes]),
    ...[...evidence.trials.values()].flatMap(({ cautions, conclusion }) => [...cautions, ...conclusion]),
  ];
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

describe("The demo in a language of marks", () => {
  const shown: { plain?: Shown; marked?: Shown } = {};
  beforeAll(async () => {
    const read = await readRecord("content", { today: "2026-11-26" });
    if ("problems" in read) throw new Error("the demo has problems");
    const evidence = reckon(read.record);
    shown.plain = editionOf(read.record, evidence, "archive");
    shown.marked = editionOf(read.record, evidence, "archive", undefined, MARKED);
  });

  it("has no sentence on any page, ledger or appendix that did not come from its catalogue", () => {
    const { plain, marked } = shown;
    if (!plain || !marked) throw new Error("no demo");
    const all = sayings(plain.record, plain.evidence).map((saying) => [saying.code, plain.say(saying)] as const);
    // A word or two may well stand in what the builder wrote, and the title of a data sheet is the builder's own.
    const said = new Map(
      all.filter(([code, text]) => code !== "source/sheet" && text.length > 25).map(([code, text]) => [text, code]),
    );
    const pages = layOut(marked, NOTHING).pages.map(({ path, make }) => ({ path, text: make() }));
    const text = pages.map((page) => page.text).join("\n");
    const found = [...said].filter(([sentence]) => [sentence, escaped(sentence)].some((words) => text.includes(words)));
    expect(found).toEqual([]);
    expect(said.size).toBeGreaterThan(500);
    const kinds = new Set([...text.matchAll(/⟦([\w-]+)/gu)].map(([, kind]) => kind));
    expect([...kinds]).toEqual(
      expect.arrayContaining([
        "mix-ratio",
        "need",
        "take",
        "limit",
        "source",
        "caution",
        "conclusion",
        "rule",
        "title",
      ]),
    );
  });
});

describe("The catalogue", () => {
  it("has no sentence that nothing says", () => {
    const files = (readdirSync("src", { recursive: true, encoding: "utf8" }) as string[]).filter(
      (name) => name.endsWith(".ts") && /^(?:evidence(?!\/codes)|editions)\//u.test(name),
    );
    const text = files.map((name) => readFileSync(join("src", name), "utf8")).join("\n");
    const asked = CODES.filter((code) => !/^(?:rule|title)\//u.test(code));
    expect(asked.filter((code) => !text.includes(`"${code}"`))).toEqual([]);
  });
});
