import { beforeAll, describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Picture, Site } from "../../src/editions/shown.ts";
import { proseOf } from "../../src/publish/markdown.ts";
import { readRecord } from "../../src/record/read.ts";
import type { Record } from "../../src/facts/types.ts";
import { scratchFolders, writeAll } from "./scratch.ts";
import { smallRecord } from "./small-record.ts";

const scratch = scratchFolders();
const jig: Picture = {
  width: 640,
  height: 480,
  colour: "#a08060",
  sources: [
    { type: "image/webp", files: [{ path: "photos/j-640.webp", width: 640 }] },
    { type: "image/jpeg", files: [{ path: "photos/j-640.jpg", width: 640 }] },
  ],
};

let record: Record;

beforeAll(async () => {
  const content = scratch();
  writeAll(content, await smallRecord());
  const read = await readRecord(content);
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  record = read.record;
});

function prose(markdown: string, from = "entry/2021-03-01-first.html", edition: Edition = "public"): string {
  const site: Site = {
    shown: editionOf(record, reckon(record), edition),
    pictures: new Map([["photos/jig.jpg", jig]]),
    clips: new Map(),
    files: new Map([["papers/letter.txt", "files/l.txt"]]),
    prose: () => "",
  };
  return proseOf(site)({ markdown }, from).trim();
}

describe("Prose", () => {
  it("shows raw HTML as it was typed", () => {
    expect(prose(`<b>x</b> <script>alert(1)</script>`)).toBe(
      "<p>&lt;b&gt;x&lt;/b&gt; &lt;script&gt;alert(1)&lt;/script&gt;</p>",
    );
  });

  it("links ids, entries and files of the record from wherever the page stands", () => {
    expect(prose("[a](F-J1) [b](fin) [c](2021-03-08-second.md) [d](../entries/2021-03-08-second.md)")).toBe(
      `<p><a href="../joint/F-J1.html">a</a> <a href="../assembly/fin.html">b</a> <a href="../entry/2021-03-08-second.html">c</a> <a href="../entry/2021-03-08-second.html">d</a></p>`,
    );
    expect(prose("[a](F-J1)", "index.html")).toBe(`<p><a href="joint/F-J1.html">a</a></p>`);
    expect(prose("[a](../papers/letter.txt) [b](papers/letter.txt)", "about.html", "inspector")).toBe(
      `<p><a href="files/l.txt">a</a> <a href="files/l.txt">b</a></p>`,
    );
  });

  it("leaves links that lead out as they are", () => {
    expect(prose("[a](https://example.org/x?y=1&z) [b](mailto:a@example.org)")).toBe(
      `<p><a href="https://example.org/x?y=1&amp;z">a</a> <a href="mailto:a@example.org">b</a></p>`,
    );
  });

  it("shows plain words where the edition does not show what a link leads to", () => {
    expect(prose("[the letter](2021-03-09-letter.md)")).toBe("<p>the letter</p>");
    expect(prose("[the letter](2021-03-09-letter.md)", undefined, "inspector")).toBe(
      `<p><a href="../entry/2021-03-09-letter.html">the letter</a></p>`,
    );
    expect(prose("[**x**](javascript:alert(1)) [y](no-such-thing) [z](%zz)")).not.toContain("<a");
  });

  it("shows a declared picture in all its widths, with the words declared for it or those given here", () => {
    expect(prose("![](../photos/jig.jpg)")).toContain(`alt="The jig on the bench"`);
    expect(prose('![Closer, with a "clamp"](../photos/jig.jpg)')).toContain(
      `alt="Closer, with a “clamp”"`.replaceAll(/[“”]/g, "&quot;"),
    );
    expect(prose("![](../photos/jig.jpg)")).toContain(`width="640" height="480"`);
    expect(prose("![](../photos/jig.jpg)")).toMatch(
      /^<p><a class="photo__large" href="\.\.\/photos\/j-640\.jpg"><picture>/,
    );
    expect(prose("[![](../photos/jig.jpg)](https://example.org/)").match(/<a /g)).toHaveLength(1);
    expect(prose("![](../photos/jig.jpg)")).toContain(`src="../photos/j-640.jpg"`);
  });

  it("shows nothing for a picture that the edition does not show", () => {
    expect(prose("before ![The vault](../photos/secret-vault.jpg) after")).toBe("<p>before  after</p>");
  });

  it("keeps the page's title the only heading of the first rank", () => {
    expect(prose("# A\n\n## B\n\n###### C")).toBe("<h2>A</h2>\n<h3>B</h3>\n<h6>C</h6>");
    expect(prose("## A\n\n### B")).toBe("<h2>A</h2>\n<h3>B</h3>");
    expect(prose("#### A")).toBe("<h2>A</h2>");
  });
});
