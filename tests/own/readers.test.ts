import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { build, type Files, siteOf, writeRecord } from "./record.ts";

const scratch = scratchFolders();

const part = (include: string): string => `---\ntitle: A\n---\nHello.\n\n${include}\n`;
const PASSAGE = "::: inspector\nMARMALADE\n:::\n";

/** What tells of fewer readers, the files that do, and how the first problem begins. */
const CASES: readonly (readonly [what: string, files: Files, told: RegExp])[] = [
  [
    "`for:` that front matter computes",
    {
      "pages/a.11ty.js": `export const data = { title: "A", eleventyComputed: { for: () => "inspector" } };\nexport const render = () => "MARMALADE";\n`,
    },
    /^pages\/a\.11ty\.js:1:\d+ {2}`for:` of this page is set only once/,
  ],
  [
    "`for:` that data of a folder computes",
    {
      "pages/shop/shop.11tydata.js": `export default { eleventyComputed: { for: "inspector" } };\n`,
      "pages/shop/a.md": "---\ntitle: A\n---\nMARMALADE\n",
    },
    /^pages\/shop\/a\.md:1:1 {2}`for:` of this page is set only once/,
  ],
  [
    "`for:` that a layout computes",
    {
      "layouts/own.liquid": "---\neleventyComputed:\n  for: inspector\n---\n{{ content }}",
      "pages/a.md": "---\ntitle: A\nlayout: own.liquid\n---\nMARMALADE\n",
    },
    /^pages\/a\.md:1:1 {2}`for:` of this page is set only once/,
  ],
  [
    "`for:` that a page is paged by",
    {
      "pages/a.md":
        "---\ntitle: A\nreaders: [inspector]\npagination: { data: readers, size: 1, alias: for }\n---\nMARMALADE\n",
    },
    /^pages\/a\.md:3:\d+ {2}`for:` of this page is set only once/,
  ],
  [
    "`for:` that a permalink sets",
    {
      "pages/a.11ty.js": `export const data = { title: "A", permalink: (all) => { all.for = "archive"; return "a.html"; } };\nexport const render = () => "MARMALADE";\n`,
    },
    /^pages\/a\.11ty\.js:1:\d+ {2}`for:` of this page is set only once/,
  ],
  [
    "a layout that is computed and has `for:`",
    {
      "layouts/own.liquid": "---\nfor: inspector\n---\n{{ content }}",
      "pages/a.11ty.js": `export const data = { title: "A", eleventyComputed: { layout: () => "own.liquid" } };\nexport const render = () => "MARMALADE";\n`,
    },
    /^pages\/a\.11ty\.js:1:\d+ {2}the layout of this page is set only once/,
  ],
  [
    "a passage in a part that Liquid takes in",
    { "pages/_includes/part.md": PASSAGE, "pages/a.md": part(`{% include "part.md" %}`) },
    /^pages\/a\.md:1:1 {2}an own page has no passages .*\n.*\n {4}found {5}::: inspector/,
  ],
  [
    "a passage in a part that Nunjucks takes in, in the middle of a line",
    { "pages/_includes/part.njk": PASSAGE, "pages/a.njk": part(`<p>See {% include "part.njk" %}</p>`) },
    /^pages\/a\.njk:1:1 {2}an own page has no passages/,
  ],
  [
    "a passage of a macro",
    {
      "pages/_includes/macros.njk": `{% macro told(word) %}::: {{ word }} MARMALADE :::{% endmacro %}`,
      "pages/a.njk": part(`{% import "macros.njk" as m %}<ul><li><b>1</b> {{ m.told("archive") }}</li></ul>`),
    },
    /^pages\/a\.njk:1:1 {2}an own page has no passages/,
  ],
  [
    "a passage of a layout",
    {
      "layouts/own.liquid": `{{ content }}\n<p>${PASSAGE}</p>`,
      "pages/a.md": part("x").replace("A", "A\nlayout: own.liquid"),
    },
    /^pages\/a\.md:1:1 {2}an own page has no passages/,
  ],
  [
    "a passage of a layout of the story",
    { "layouts/home.liquid": `{{ content }}\n<p>\n${PASSAGE}</p>` },
    /^layouts\/home\.liquid:3:1 {2}an own page has no passages/,
  ],
  [
    "a passage in a comment",
    { "pages/a.html": part("<!-- ::: inspector MARMALADE ::: -->") },
    /^pages\/a\.html:6:1 {2}an own page has no passages/,
  ],
  [
    "a passage in a file of data",
    {
      "pages/a.11ty.js": `export const data = { permalink: "a.json" };\nexport const render = () => JSON.stringify({ a: ["x\\n::: inspector\\nMARMALADE"] });\n`,
    },
    /^pages\/a\.11ty\.js:2:\d+ {2}an own page has no passages/,
  ],
  [
    "a whole page for fewer readers as a part of another",
    {
      "pages/_includes/part.md": "---\ntitle: B\nfor: inspector\n---\nMARMALADE\n",
      "pages/a.md": part(`{% include "part.md" %}`),
    },
    /^pages\/a\.md:1:1 {2}an own page has no passages .*\n.*\n {4}found {5}for: inspector/,
  ],
  [
    "a script under an ending in which nobody looks",
    { "pages/a.md": "---\ntitle: A\npermalink: a.HTML\n---\n<script>MARMALADE</script>\n" },
    /^pages\/a\.md:1:1 {2}own pages are pages, or files of data or text/,
  ],
];

describe("What own pages have for fewer readers is published to nobody else:", () => {
  it.each(CASES)("%s", async (_, files, told) => {
    const folder = scratch();
    await writeRecord(folder, files);
    const { code, err } = await build(folder);
    expect(err).toMatch(told);
    expect(code).toBe(1);
    expect(
      [...contentOf(folder)].filter(([path, text]) => path.startsWith("site") && text.includes("MARMALADE")),
    ).toEqual([]);
  });

  it("and whoever computes other things, or for the same readers, is not stopped", async () => {
    const folder = scratch();
    await writeRecord(folder, {
      "pages/a.11ty.js": `export const data = { for: "inspector", eleventyComputed: { title: () => "A", for: "inspector" } };\nexport const render = () => "MARMALADE";\n`,
      "pages/b.md": "---\ntitle: B\n---\nOpen for: inspectors, twice 8:00::9:00.\n",
    });
    const site = await siteOf(folder, "--edition", "all");
    const having = [...site].filter(([path, text]) => path.endsWith("/a.html") && text.includes("MARMALADE"));
    expect(having.map(([path]) => path)).toEqual(["archive/a.html", "inspector/a.html"]);
    expect(site.get("public/b.html")).toContain("8:00::9:00");
  });
});
