/** What stands on pages for people to read, of every page of the widest edition. */
import { readFileSync } from "node:fs";
import { type HTMLElement, type Node, NodeType, parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { builtDemo } from "../browser/demo.ts";

/** What is copied or typed as it stands. */
const AS_IT_STANDS = "script, style, head, code, pre";
const ISO_DAY = /.{0,24}\b\d{4}-\d\d-\d\d\b.{0,24}/;
const NO_MINUTES = /.{0,24}(?<![\d.,:])0 min\b.{0,24}/;
/** Words run together with hyphens, as files are named. */
const SLUG = /^(?:\d{4}-\d\d-\d\d-)?[a-z]+\d*(?:-[a-z0-9]+)+$/;

interface Read {
  readonly texts: readonly string[];
  readonly links: readonly string[];
}

function read(page: string): Read {
  const root = parse(page, { comment: false });
  for (const part of root.querySelectorAll(AS_IT_STANDS)) part.remove();
  const texts = (node: Node): string[] =>
    node.nodeType === NodeType.TEXT_NODE ? [node.text] : node.childNodes.flatMap(texts);
  return { texts: texts(root), links: root.querySelectorAll("a").map((link: HTMLElement) => link.text.trim()) };
}

function faults({ texts, links }: Read): string[] {
  return [
    ...texts.flatMap((text) => ISO_DAY.exec(text)?.[0] ?? []).map((text) => `a day as files write it: ${text}`),
    ...texts.flatMap((text) => NO_MINUTES.exec(text)?.[0] ?? []).map((text) => `no minutes: ${text}`),
    ...links.filter((link) => SLUG.test(link)).map((link) => `a link named as a file: ${link}`),
  ];
}

describe("On every page of the archive", () => {
  const { folder, pages } = builtDemo("archive");

  it("no day is written as files write it, no time is 0 min, and no link is called as its file", () => {
    expect(pages.length).toBeGreaterThan(300);
    const found = pages.flatMap((path) =>
      faults(read(readFileSync(`${folder}/${path}`, "utf8"))).map((fault) => `${path}: ${fault}`),
    );
    expect(found).toEqual([]);
  });

  it("which such a page would fail", () => {
    const page =
      '<p>On 2026-01-24 it took 0 min.</p><a href="a">ply-faces</a><a>2025-05-10-hair</a><code>2026-01-24</code>';
    expect(faults(read(page))).toHaveLength(4);
    expect(faults(read("<p>10 min, 1.0 min, 20 January 2026</p><a>B-014</a><a>Hold points</a>"))).toEqual([]);
  });
});
