/** Labels for the workshop, read back as a phone would: by a reader of codes that others wrote, from what is printed. */
import jsQR from "jsqr";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { parse } from "node-html-parser";
import type { Browser, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pagesOf } from "../../layouts/shell/site.tsx";
import { TAG_SHEETS } from "../../layouts/tags/sizes.ts";
import type { Edition, Site } from "../../src/editions/shown.ts";
import type { Aircraft, Assembly } from "../../src/facts/types.ts";
import { openBrowser } from "../browser/browsers.ts";
import { exampleSite } from "../pages/example.ts";
import { made } from "../pages/story-site.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";

const ADDRESS = "https://example.org/workshop/heron/";
const MM = 96 / 25.4;
/** Dots of a plain printer, by those of a screen. */
const DOTS = 300 / 96;
const scratch = scratchFolders();

function site(edition: Edition = "public", aircraft: Partial<Aircraft> = { address: ADDRESS }): Site {
  const plain = exampleSite(edition);
  const { record } = plain.shown;
  return { ...plain, shown: { ...plain.shown, record: { ...record, aircraft: { ...record.aircraft, ...aircraft } } } };
}

const tagFiles = (one: Site): string[] =>
  pagesOf(one)
    .map(({ path }) => path)
    .filter((path) => path.startsWith("tags"));

/** The page with its sheets, as a printer gets it. */
async function printed(browser: Browser, one: Site, path: string): Promise<Page> {
  const folder = scratch();
  const sheets = ["style", "tags", "print"].map((name) => [
    `assets/${name}.css`,
    readFileSync(`.build/styles/${name}.css`),
  ]);
  writeAll(folder, { [path]: made(pagesOf(one), path), ...Object.fromEntries(sheets) });
  const page = await browser.newPage({
    viewport: { width: Math.round(210 * MM), height: 1200 },
    deviceScaleFactor: DOTS,
  });
  await page.emulateMedia({ media: "print" });
  await page.goto(pathToFileURL(`${folder}/${path}`).href);
  return page;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Boxes of labels and their codes in mm, with the words beside each. */
const labelsOn = (page: Page) =>
  page.locator(".tag").evaluateAll((tags, mm) => {
    const boxOf = (element: Element | null): Box => {
      const { x = 0, y = 0, width = 0, height = 0 } = element?.getBoundingClientRect() ?? {};
      return { x: (x + scrollX) / mm, y: (y + scrollY) / mm, width: width / mm, height: height / mm };
    };
    return tags.map((tag) => ({
      label: boxOf(tag),
      code: boxOf(tag.querySelector("svg")),
      words: boxOf(tag.querySelector(".tag__words")),
      modules: Number(tag.querySelector("svg")?.getAttribute("viewBox")?.split(" ")[2]),
      id: tag.querySelector(".tag__id")?.textContent ?? "",
      kind: tag.querySelector(".tag__kind")?.textContent ?? "",
    }));
  }, MM);

/** What a reader makes of the code alone, and whether its quiet zone is blank. */
async function readAt(picture: Buffer, { x, y, width, height }: Box, modules: number) {
  const dots = MM * DOTS;
  const region = {
    left: Math.round(x * dots),
    top: Math.round(y * dots),
    width: Math.round(width * dots),
    height: Math.round(height * dots),
  };
  const { data, info } = await sharp(picture).extract(region).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  // Edges are put on whole dots: one less for the code's, one for that of what was cut out.
  const quiet = Math.floor((4 * info.width) / modules) - 2;
  const isQuiet = (at: number): boolean => {
    const [column, row] = [at % info.width, Math.floor(at / info.width)];
    return column < quiet || row < quiet || column >= info.width - quiet || row >= info.height - quiet;
  };
  const blank = Array.from({ length: info.width * info.height }, (_, at) => at).every(
    (at) => !isQuiet(at) || (data[at * 4] ?? 0) > 250,
  );
  return { text: jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data, blank };
}

describe("Tags for the workshop", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  it.each(TAG_SHEETS)(
    "of $width × $height mm lead where they say, as they are printed, with four modules of quiet zone and the id in letters beside",
    async (sheet) => {
      const one = site();
      const page = await printed(browser, one, `tags/${sheet.name}.html`);
      const labels = await labelsOn(page);
      const picture = await page.screenshot({ fullPage: true });
      const { record, evidence } = one.shown;
      expect(labels).toHaveLength(record.assemblies.size + evidence.joints.size + record.lots.size);
      const pages = new Set(pagesOf(one).map(({ path }) => ADDRESS + path));
      for (const { label, code, words, modules, id, kind } of labels) {
        const { text, blank } = await readAt(picture, code, modules);
        expect({ id, text, blank }).toEqual({ id, text: `${ADDRESS}${kind.toLowerCase()}/${id}.html`, blank: true });
        expect(pages).toContain(text);
        expect(code.width / modules, `${id}: mm a module`).toBeGreaterThan(0.4);
        expect(label.width, id).toBeCloseTo(sheet.width, 1);
        expect(label.height, id).toBeCloseTo(sheet.height, 1);
        expect(code.height, id).toBeLessThan(label.height);
        expect(words.x, id).toBeGreaterThanOrEqual(code.x + code.width - 0.01);
        expect(words.x + words.width, id).toBeLessThanOrEqual(label.x + label.width + 0.01);
      }
      await page.close();
    },
  );

  it.each(TAG_SHEETS)(
    "of $width × $height mm stand on their sheet where its labels are, one sheet after the other",
    async (sheet) => {
      const page = await printed(browser, site(), `tags/${sheet.name}.html`);
      const places = (await labelsOn(page)).map(({ label }) => ({ x: label.x, y: label.y % 297 }));
      for (const { x, y } of places) {
        const [column, row] = [(x - sheet.left) / (sheet.width + sheet.gap), (y - sheet.top) / sheet.height];
        expect(Math.abs(column - Math.round(column))).toBeLessThan(0.01);
        expect(Math.abs(row - Math.round(row))).toBeLessThan(0.02);
      }
      const { across, down, width, height, left, top, gap } = sheet;
      expect(left + across * width + (across - 1) * gap).toBeLessThanOrEqual(210);
      expect(top + down * height).toBeLessThanOrEqual(297);
      await page.close();
    },
  );

  it("keep their address when titles change, parts move and others come before", () => {
    const one = site();
    const { record } = one.shown;
    const [fin] = [...record.assemblies.values()] as [Assembly];
    const other = { ...fin, id: "an-other", title: "Before all others", joints: [], holdPoints: [] };
    const assemblies = new Map<string, Assembly>([
      ["an-other", other],
      ...[...record.assemblies].map(
        ([id, each]) => [id, { ...each, title: `${each.title}, renamed`, parent: "an-other" }] as const,
      ),
    ]);
    const changed = { ...one, shown: { ...one.shown, record: { ...record, assemblies } } };
    const codes = (from: Site): Map<string, string> =>
      new Map(
        parse(made(pagesOf(from), "tags/70x37.html"))
          .querySelectorAll(".tag")
          .map((tag) => [
            tag.querySelector(".tag__id")?.text ?? "",
            tag.querySelector("path")?.getAttribute("d") ?? "",
          ]),
      );
    expect(codes(changed).get(fin.id)).toBe(codes(one).get(fin.id));
    expect(codes(changed).size).toBe(codes(one).size + 1);
  });

  it("are not there without an address, nor in narrower editions, and the page says why", () => {
    const without = site("public", {});
    expect(tagFiles(without)).toEqual(["tags.html"]);
    expect(made(pagesOf(without), "tags.html")).toContain("this record does not say where its site stands");
    for (const edition of ["inspector", "archive"] as const) {
      const one = site(edition);
      expect(tagFiles(one)).toEqual(["tags.html"]);
      expect(made(pagesOf(one), "tags.html")).toContain("only the public edition has one");
      expect(made(pagesOf(one), "tags.html")).not.toContain("example.org");
    }
  });

  it("tell of nothing that the public edition hides", () => {
    const hidden = [...exampleSite("archive").shown.record.lots.keys()].filter(
      (id) => !exampleSite("public").shown.record.lots.has(id),
    );
    expect(hidden).not.toEqual([]);
    for (const path of tagFiles(site()))
      for (const id of hidden) expect(made(pagesOf(site()), path)).not.toContain(`>${id}<`);
  });
});
