import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { SaxesParser } from "saxes";
import { describe, expect, it } from "vitest";
import { LIMITS } from "../../src/facts/limits.ts";
import { readDrawing } from "../../src/publish/pictures/drawing.ts";
import { ATTRIBUTES, ELEMENTS, SVG } from "../../src/publish/pictures/drawing/allowed.ts";
import { FORGED, HOSTILE } from "./drawings/hostile.ts";

const NS = `xmlns="${SVG}"`;

/** What stands in a drawing that a published one may not have, by a parser of its own. */
function strangers(svg: string): string[] {
  const strange: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on("error", (error) => strange.push(error.message));
  parser.on("doctype", () => strange.push("a document type"));
  parser.on("processinginstruction", ({ target }) => strange.push(`<?${target}`));
  parser.on("comment", (comment) => strange.push(comment));
  parser.on("opentag", ({ uri, local, attributes }) => {
    if (uri !== SVG || !ELEMENTS.has(local)) strange.push(local);
    for (const { name, value } of Object.values(attributes)) {
      const isKnown = ATTRIBUTES.has(name) || /^(xmlns(:xlink)?|xlink:href|xml:(lang|space)|aria-[a-z]+)$/.test(name);
      if (!isKnown || (/href$/.test(name) && !value.startsWith("#"))) strange.push(`${name}="${value}"`);
      if (!["id", "class"].includes(name) && /url\((?!["']?#)|@import|script:/i.test(value)) strange.push(value);
    }
  });
  parser.write(svg).close();
  return strange;
}

describe("Every hostile drawing", () => {
  it.each(Object.entries(HOSTILE))(
    "with %s is told with its place and its mend, or published without it",
    (_what, svg) => {
      const drawing = readDrawing(svg);
      if ("svg" in drawing) return expect(strangers(drawing.svg)).toEqual([]);
      expect(drawing.length).toBeGreaterThan(0);
      for (const { line, column, mend, why } of drawing) {
        expect(line).toBeGreaterThan(0);
        expect(column).toBeGreaterThan(0);
        expect(why.length).toBeGreaterThan(10);
        expect(mend.length).toBeGreaterThan(10);
      }
    },
  );

  it("is told, save those of which the harm stands in notes that are left out", () => {
    const published = Object.entries(HOSTILE).filter(([, svg]) => "svg" in readDrawing(svg));
    expect(published.map(([what]) => what)).toEqual(["a script in notes"]);
  });
});

describe("What is written", () => {
  it.each(FORGED)("has the words of %s as words", (svg) => {
    const drawing = readDrawing(svg);
    expect("svg" in drawing ? strangers(drawing.svg) : []).toEqual([]);
  });

  it("has nothing but what is allowed, whatever pieces it was made of", () => {
    const pieces = [...Object.values(HOSTILE), ...FORGED].map((svg) => svg.replace(/^<svg[^>]*>|<\/svg>$/g, ""));
    const piece = fc.oneof(
      fc.constantFrom(...pieces),
      fc
        .tuple(fc.constantFrom(...ELEMENTS), fc.constantFrom(...ATTRIBUTES.keys()), fc.string())
        .map(([element, attribute, value]) => `<${element} ${attribute}="${value.replace(/[<&"]/g, "&quot;")}"/>`),
      fc.string(),
    );
    let written = 0;
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 4 }), (inner) => {
        const drawing = readDrawing(`<svg ${NS} viewBox="0 0 9 9">${inner.join("")}</svg>`);
        if (!("svg" in drawing)) return;
        written += 1;
        expect(strangers(drawing.svg)).toEqual([]);
        expect(readDrawing(drawing.svg)).toEqual(drawing);
      }),
      { numRuns: 2000, seed: 11 },
    );
    expect(written).toBeGreaterThan(50);
  });

  it("is the demo's drawings as they are", () => {
    for (const name of readdirSync("content/drawings").filter((each) => each.endsWith(".svg"))) {
      const text = readFileSync(`content/drawings/${name}`, "utf8");
      expect(readDrawing(text), name).toHaveProperty("svg", text.trimEnd());
    }
  });
});

describe("A drawing beyond a bound is told", () => {
  const svg = (inner: string): string => `<svg ${NS} viewBox="0 0 9 9">${inner}</svg>`;
  const doubling = (levels: number): string =>
    Array.from({ length: levels }, (_, at) => `<g id="l${at}">${`<use href="#l${at - 1}"/>`.repeat(10)}</g>`).join("");

  it.each([
    ["by its bytes", svg(`<title>${"a".repeat(LIMITS.drawing.bytes)}</title>`)],
    ["by its depth", svg("<g>".repeat(LIMITS.drawing.depth) + "</g>".repeat(LIMITS.drawing.depth))],
    ["by the depth of what is left out", svg(`<metadata>${"<a>".repeat(50_000)}</metadata>`)],
    ["by five thousand groups", svg("<g>".repeat(5000) + "</g>".repeat(5000))],
    [
      "by the attributes of an element",
      svg(`<g ${Array.from({ length: LIMITS.drawing.attributes + 1 }, (_, at) => `data-${at}=""`).join(" ")}/>`),
    ],
    ["by a sheet", svg(`<style>${".a{fill:red}".repeat(LIMITS.drawing.css / 12 + 1)}</style>`)],
    ["by a style", svg(`<g style="${"fill:red;".repeat(LIMITS.drawing.css / 9 + 1)}"/>`)],
    ["by a property", svg(`<g font-family="${"a,".repeat(LIMITS.drawing.css / 2)}a"/>`)],
    ["by its elements", svg("<g/>".repeat(LIMITS.drawing.nodes))],
    ["by copies of copies", svg(doubling(12))],
    [
      "by a chain of references",
      svg(Array.from({ length: 5000 }, (_, at) => `<linearGradient id="g${at}" href="#g${at + 1}"/>`).join("")),
    ],
  ])("%s", (_what, text) => {
    expect(readDrawing(text)).toEqual([expect.objectContaining({ kind: "large" })]);
  });

  it("while one that only says itself again, or has 40,000 blanks in a tag, is drawn", () => {
    expect(readDrawing(svg(`<g id="a"><use href="#a"/></g>`))).toHaveProperty("svg");
    expect(readDrawing(svg(`<g${" ".repeat(40_000)}/>`))).toHaveProperty("svg");
  });

  it("while long paths, transformations and blanks of them are read in the time of their length", () => {
    const most = LIMITS.drawing.bytes - 200;
    expect(readDrawing(svg(`<path d="${"M1 1".repeat(most / 4)}"/>`))).toHaveProperty("svg");
    expect(readDrawing(svg(`<g transform="${"scale(1) , ".repeat(20_000)}scale(2)"/>`))).toHaveProperty("svg");
    for (const transform of [" ".repeat(most / 10), "scale(1)".repeat(most / 80), `scale(${" ".repeat(most / 10)}`])
      expect(readDrawing(svg(`<g transform="${transform}x"/>`))).toEqual([
        expect.objectContaining({ why: "`transform` has a value that cannot stand there" }),
      ]);
  });

  it("in bytes that are not UTF-8, or said to be in others", () => {
    expect(readDrawing(Buffer.from(svg("<title>Längsholm</title>"), "latin1"))).toEqual([
      expect.objectContaining({ kind: "unreadable", found: "other bytes" }),
    ]);
    expect(readDrawing(`<?xml version="1.0" encoding="ISO-8859-1"?>${svg("<title>ä</title>")}`)).toEqual([
      expect.objectContaining({ kind: "unreadable", found: "ISO-8859-1" }),
    ]);
  });
});
