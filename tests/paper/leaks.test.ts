/** A PDF of an edition holds no word that the edition withholds: not in its text, its bookmarks, or what stands for a picture. */
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { plantedRecord } from "../leaks/record.ts";
import { mayShow } from "../leaks/words.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { papersOfRecord } from "./demo.ts";
import { bare, pagesOf } from "./pdf.ts";

const scratch = scratchFolders();

/** Every text within: of pages, and of all else by qpdf, which decodes what is coded. */
function wordsIn(pdf: string): string {
  const all = execFileSync("qpdf", ["--json=2", "--json-stream-data=none", pdf], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  return bare(pagesOf(pdf).join("")) + bare(all);
}

it.each([0, 1, 2])("No PDF of the inspector's edition holds a word that it withholds (choice %i)", async (choice) => {
  const planted = await plantedRecord((...from) => from[choice % from.length] as (typeof from)[number]);
  const [content, out] = [scratch(), scratch()];
  writeAll(content, planted.files);
  const { papersOf } = await papersOfRecord(content, "inspector", out);
  expect(readdirSync(join(out, "paper")).length).toBe(papersOf.length);
  const text = papersOf.map((path) => wordsIn(join(out, path))).join("");
  // A number may stand anywhere by itself; a word may not.
  const words = planted.words.filter(({ text: said }) => /\p{L}{3}/u.test(said));
  const withheld = words.filter((word) => !mayShow(word, "inspector", planted.publicShows));
  const shown = words.filter((word) => mayShow(word, "inspector", planted.publicShows));
  expect(withheld.length).toBeGreaterThan(20);
  expect(withheld.filter((word) => text.includes(bare(word.text))).map(({ where }) => where)).toEqual([]);
  expect(shown.filter((word) => text.includes(bare(word.text))).length, "found by the same search").toBeGreaterThan(50);
});

it("The public edition has no PDF", async () => {
  const out = scratch();
  expect((await papersOfRecord("content", "public", out)).papersOf).toEqual([]);
  expect(readdirSync(out)).toEqual([]);
});
