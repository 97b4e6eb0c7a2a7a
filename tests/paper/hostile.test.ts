/** Whatever a record says stands in a PDF as itself: never as markup, never beyond its own place. */
import { join } from "node:path";
import { expect, it } from "vitest";
import { appendixSheet } from "../../layouts/appendix/appendix.tsx";
import type { Record } from "../../src/facts/types.ts";
import { sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { dataOf } from "../../src/publish/paper/blocks.ts";
import { paperOf } from "../../src/publish/paper/papers.ts";
import { openMaker } from "../../src/publish/paper/typst.ts";
import { contained } from "../../src/publish/paper/words.ts";
import { exampleRecord, exampleSite } from "../pages/example.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { bare, bodiesOf, bookmarksOf, faultsOf, infoOf } from "./pdf.ts";

const scratch = scratchFolders();

/** Of each its own number, so that none is taken for another. */
const HOSTILE = [
  `#panic("1")`,
  `#read("/etc/hostname")2`,
  "$ x^2 $ 3",
  "@B-001 and <label> 4",
  "*strong* _emph_ 5",
  "back\\slash \\u{41} 6",
  "`raw` ```7```",
  "// 8 no comment /* nor this */",
  "= no heading 9",
  "- no list 10",
  "https://example.org/#11",
  "~ -- --- ... 12",
  "#[13] #{14} [15] {16}",
  "\u05d0\u05d1\u05d2 17",
  "\u0001\u0007\u001f 18",
  "<b>19</b> &amp; &lt;",
  "${20} {{21}} %22",
];

async function pdfOf(record: Record, path: string): Promise<Uint8Array> {
  const site = exampleSite("archive", record);
  const [sheet] = sheetsOf(site.shown);
  const maker = await openMaker();
  if (sheet === undefined || maker === undefined) throw new Error("no sheet, or no Typst");
  const { paper, drawn } = paperOf(site, appendixSheet(site, sheet), () => undefined);
  const bytes = await maker.set(dataOf(paper), drawn);
  writeAll(path, { "evidence.pdf": Buffer.from(bytes) });
  return bytes;
}

it("A title that looks like markup of Typst, HTML or a program stands as itself wherever it is told", async () => {
  const made = exampleRecord();
  const title = HOSTILE.join(" | ");
  const named: Record = {
    ...made,
    aircraft: { ...made.aircraft, name: `Bulrush ${HOSTILE[0]}` },
    lots: new Map([...made.lots].map(([id, lot]) => [id, { ...lot, title: `${id} ${title}` }])),
    assemblies: new Map([...made.assemblies].map(([id, one]) => [id, { ...one, title: `${one.title} ${title}` }])),
    entries: made.entries.map((entry) => ({
      ...entry,
      departures: entry.departures.map((one) => ({ ...one, why: `why ${title}` })),
    })),
  };
  const folder = scratch();
  await pdfOf(named, folder);
  const pdf = join(folder, "evidence.pdf");
  expect(faultsOf(pdf)).toBe("");
  const text = bare(bodiesOf(pdf).join(""));
  const seen = (one: string): boolean => text.includes(bare(one.replace(/[\u0001-\u001f]/g, "")));
  expect(HOSTILE.filter((one) => !/[\u0590-\u05ff\u0001-\u001f]/.test(one) && !seen(one))).toEqual([]);
  expect(text).toContain("\u05d0\u05d1\u05d2");
  expect(bookmarksOf(pdf).some((one) => one.includes(`#panic("1")`))).toBe(true);
  expect(infoOf(pdf).get("Title")).toBe(`Evidence of the glue lines: Bulrush ${HOSTILE[0]}`);
});

it("A sign that turns the direction of writing reaches no further than the text it stands in", () => {
  expect(contained("plain")).toBe("plain");
  expect(contained("not \u202eshown")).toBe("\u2068not \u202eshown\u202c\u2069");
  expect(contained("\u2067a \u202db")).toBe("\u2068\u2067a \u202db\u202c\u2069\u2069");
});

it("The same record gives the same bytes, whoever sets it and however often", async () => {
  const [one, other] = [scratch(), scratch()];
  const first = await pdfOf(exampleRecord(), one);
  expect(Buffer.compare(Buffer.from(first), Buffer.from(await pdfOf(exampleRecord(), other)))).toBe(0);
});
