import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { ProblemCode } from "../../src/problems/codes.ts";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { build, type Files, siteOf, writeRecord } from "./record.ts";

const scratch = scratchFolders();

/** What is wrong, the files that make it so, and how the first problem begins. */
const CASES: readonly (readonly [what: string, files: Files, code: ProblemCode, told: RegExp])[] = [
  [
    "a filter that there is not",
    { "pages/a.md": "---\ntitle: A\n---\n\nOn {{ edition.day | dayname }}\n" },
    "own-page",
    /^pages\/a\.md:5:\d+ {2}this page or layout cannot be made.*\n.*\n {4}found {5}.*dayname/,
  ],
  [
    "front matter that is no YAML",
    { "pages/a.md": "---\ntitle: A\nfor: [\n---\nx\n" },
    "own-page",
    /^pages\/a\.md:4:\d+ {2}this page or layout cannot be made/,
  ],
  [
    "code that throws",
    {
      "pages/a.11ty.js": `export const data = { title: "A" };\nexport const render = ({ edition }) => edition.wings.length;\n`,
    },
    "own-page",
    /^pages\/a\.11ty\.js:2:\d+ {2}this page or layout cannot be made.*\n.*\n {4}found {5}Cannot read properties of undefined/,
  ],
  [
    "code that ends the process",
    { "pages/a.11ty.js": `export const data = { title: "A" };\nexport const render = () => process.exit(3);\n` },
    "own-page",
    /^pages:1:1 .*\n.*\n {4}found {5}own pages ended the process that makes them \(3\)/,
  ],
  ["no title", { "pages/a.md": "By road.\n" }, "own-title", /^pages\/a\.md:1:1 {2}this page has no title/],
  [
    "the place of a page of the evidence",
    { "pages/a.md": "---\ntitle: A\npermalink: joint/F-J1.html\n---\nAll is well.\n" },
    "own-place",
    /^pages\/a\.md:1:1 {2}another page of the site lies there/,
  ],
  [
    "the place of a sheet",
    { "pages/a.md": "---\ntitle: A\npermalink: assets/Style.css\n---\nx\n" },
    "own-place",
    /^pages\/a\.md:1:1 {2}own pages are pages, or files of data or text/,
  ],
  [
    "a place outside the site",
    {
      "pages/a.11ty.js": `export const data = { title: "A", permalink: "../../a.html" };\nexport const render = () => "x";\n`,
    },
    "own-place",
    /^pages\/a\.11ty\.js:1:1 {2}.*/,
  ],
  [
    "a link to what this edition withholds",
    { "pages/a.md": "---\ntitle: A\n---\nSee [it](/entry/2021-03-09-letter.html).\n" },
    "own-link",
    /^pages\/a\.md:4:10 {2}this link leads to nothing in this edition.*\n.*\n {4}found {5}entry\/2021-03-09-letter\.html/,
  ],
  [
    "a style within the page",
    { "pages/a.md": '---\ntitle: A\n---\n<p style="color:red">x</p>\n' },
    "own-policy",
    /^pages\/a\.md:4:4 {2}no page has an attribute of this kind.*\n.*\n {4}found {5}style/,
  ],
  [
    "a script",
    { "pages/a.md": "---\ntitle: A\n---\n<script>alert(1)</script>\n" },
    "own-policy",
    /^pages\/a\.md:4:1 {2}no own page has an element of this kind/,
  ],
  [
    "a page that leads away by itself",
    { "pages/a.md": '---\ntitle: A\n---\n<meta http-equiv="refresh" content="0;url=https://example.org">\n' },
    "own-policy",
    /^pages\/a\.md:4:1 .*/,
  ],
  [
    "a picture of another host",
    { "layouts/home.liquid": '{{ content }}\n<img src="https://example.org/a.png" alt="">\n' },
    "own-policy",
    /^layouts\/home\.liquid:2:11 {2}no page asks another host for anything/,
  ],
  [
    "a sheet that asks for another",
    { "style.css": "b {}\n@import 'https://example.org/a.css';\n" },
    "own-sheet",
    /^style\.css:2:1 .*/,
  ],
  [
    "a sheet with a picture",
    { "style.css": "body {\n  background: url(a.png);\n}\n" },
    "own-sheet",
    /^style\.css:2:15 .*/,
  ],
  [
    "a sheet that is no CSS",
    { "style.css": "body { color }\n" },
    "own-sheet",
    /^style\.css:1:\d+ {2}this is no CSS: .*/,
  ],
  [
    "a layout of the evidence",
    { "layouts/batch.liquid": "<p>all well</p>" },
    "own-layout",
    /^layouts\/batch\.liquid:1:1 {2}pages of the evidence have no layout of one's own/,
  ],
  [
    "readers that nobody knows",
    { "pages/a.md": "---\ntitle: A\nfor: inspectors\n---\nx\n" },
    "own-audience",
    /^pages\/a\.md:3:6 {2}`for:` of this page names no edition/,
  ],
  [
    "a passage for fewer readers",
    { "pages/a.md": "---\ntitle: A\n---\n::: inspector\nx\n:::\n" },
    "own-audience",
    /^pages\/a\.md:4:1 {2}an own page has no passages for other readers/,
  ],
];

describe("What is wrong with own pages is told in its place, and nothing that was published is touched:", () => {
  it.each(CASES)("%s", async (_, files, wrong, told) => {
    const folder = scratch();
    const content = await writeRecord(folder, {});
    const before = await siteOf(folder);
    writeAll(content, files);
    const { code, err } = await build(folder);
    expect(err).toMatch(told);
    expect(err).toContain(`[${wrong}]\n`);
    expect(err).toContain("Nothing was written to");
    expect(code).toBe(1);
    expect(contentOf(join(folder, "site"))).toEqual(before);
  });

  it("by check, for the editions that it holds for", async () => {
    const folder = scratch();
    const content = await writeRecord(folder, {
      "pages/a.md": "---\ntitle: A\nfor: archive\n---\nSee [it](/batch/B-9.html).\n",
    });
    const { code, err } = await command(["check", content]);
    expect(code).toBe(1);
    expect(err).toMatch(/^pages\/a\.md:5:10 {2}this link leads to nothing in this edition {2}\[own-link\]/);
  });

  it("by bag, which then writes none", async () => {
    const folder = scratch();
    const content = await writeRecord(folder, { "pages/a.md": "By road.\n" });
    const { code, err } = await command(["bag", "--content", content, "--out", join(folder, "archive")]);
    expect([code, err.includes("[own-title]"), err.includes("Nothing was written to")]).toEqual([1, true, true]);
    expect([...contentOf(folder).keys()].filter((path) => path.startsWith("archive/"))).toEqual([]);
  });
});
