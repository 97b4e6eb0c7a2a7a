import MarkdownIt from "markdown-it";
import { parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { fieldRows, KINDS } from "../../src/desk/fields/rows.ts";
import { markdownPage } from "../../src/desk/fields/told.ts";

const rows = KINDS.flatMap((kind) => fieldRows(kind).map((row) => ({ kind, ...row })));

describe("The page of all fields", () => {
  it("is that of the forms: -u renews it", async () => {
    await expect(markdownPage()).toMatchFileSnapshot("../../layouts/readme/fields.md");
  });

  it("says of each field what it is for", () => {
    expect(rows.filter(({ says }) => says === "").map(({ kind, path }) => `${kind} ${path}`)).toEqual([]);
  });

  it("has a table for each kind, and a row for each field that reads as it was written", () => {
    const page = parse(new MarkdownIt().render(markdownPage()));
    const cells = page.querySelectorAll("tbody tr").map((row) => row.querySelectorAll("td").map((td) => td.text));
    expect(page.querySelectorAll("table").length).toBe(KINDS.length);
    expect(cells.map((row) => row.length)).toEqual(rows.map(() => 6));
    expect(cells.map((row) => row[0])).toEqual(rows.map(({ path }) => path));
    expect(cells.map((row) => row[4])).toEqual(rows.map(({ says }) => says.replaceAll("`", "")));
  });
});
