import { describe, expect, it } from "vitest";
import { readDrawing } from "../../src/publish/pictures/drawing.ts";

const plain = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 120"><path d="M0 0h400"/><use href="#a"/></svg>`;

describe("A drawing", () => {
  it("is published as it is where it holds nothing but the drawing", () => {
    expect(readDrawing(plain)).toEqual({ width: 400, height: 120, svg: plain });
  });

  it("takes its size from width and height where there is no view box", () => {
    expect(readDrawing(`<svg width="80px" height="60"/>`)).toMatchObject({ width: 80, height: 60 });
  });

  it("loses what a drawing program noted beside the picture", () => {
    const noted = `<?xml version="1.0"?><!-- drawn at /home/jo/plans --><!DOCTYPE svg>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:pen="http://pen.example/ns" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 10" pen:docname="/home/jo/fin.svg">
<pen:view zoom="2"><pen:grid/></pen:view><metadata><rdf>Jo Secret</rdf><metadata/></metadata><g pen:label="secret" id="keep"><title>Fin</title><use xlink:href="#keep"/></g></svg>`;
    const drawing = readDrawing(noted);
    expect(drawing).toMatchObject({
      svg: expect.stringContaining(`<g id="keep"><title>Fin</title><use xlink:href="#keep"/></g></svg>`),
    });
    expect(JSON.stringify(drawing)).not.toMatch(/secret|\/home\/jo|pen[:.]|rdf/i);
  });

  it.each([
    ["a script", `<svg viewBox="0 0 9 9"><script>alert(1)</script></svg>`, "<script>"],
    ["a page of its own", `<svg viewBox="0 0 9 9"><foreignObject/></svg>`, "<foreignObject>"],
    ["code in an attribute", `<svg viewBox="0 0 9 9"><g onclick="alert(1)"/></svg>`, `onclick="alert(1)"`],
    [
      "a picture from another host",
      `<svg viewBox="0 0 9 9"><image href="https://example.org/a.png"/></svg>`,
      `<image>`,
    ],
    [
      "a picture inside it, whose metadata cannot be seen",
      `<svg viewBox="0 0 9 9"><image href="data:image/jpeg;base64,AAAA"/></svg>`,
      `<image>`,
    ],
    [
      "a fill from elsewhere",
      `<svg viewBox="0 0 9 9"><rect fill="url(other.svg#a)"/></svg>`,
      `fill="url(other.svg#a)"`,
    ],
    [
      "styles from elsewhere",
      `<svg viewBox="0 0 9 9"><style>@import "https://example.org/a.css";</style></svg>`,
      `@import "https://example.org/a.css";`,
    ],
    ["entities", `<!DOCTYPE svg [<!ENTITY a "b">]><svg viewBox="0 0 9 9"/>`, "<!ENTITY"],
  ])("is refused with %s", (_what, svg, found) => {
    expect(readDrawing(svg)).toEqual([expect.objectContaining({ found })]);
  });

  it("keeps fills and styles that stay within it", () => {
    expect(
      readDrawing(`<svg viewBox="0 0 9 9"><style>.a{fill:url(#b)}</style><rect fill="url('#b')"/></svg>`),
    ).toHaveProperty("svg");
  });

  it("tells all objections, each with its line and column", () => {
    const found = readDrawing(`<svg viewBox="0 0 9 9">\n  <script/>\n <g onload="x()"/></svg>`);
    expect(found).toEqual([
      expect.objectContaining({ line: 2, column: 3 }),
      expect.objectContaining({ line: 3, column: 2 }),
    ]);
  });

  it("is refused where it is something else, or has no size", () => {
    expect(readDrawing("<html></html>")).toEqual([expect.objectContaining({ why: expect.stringContaining("no SVG") })]);
    expect(readDrawing(`<svg width="100%"/>`)).toEqual([
      expect.objectContaining({ why: expect.stringContaining("viewBox") }),
    ]);
  });
});
