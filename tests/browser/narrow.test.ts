import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";

const site = builtDemo("inspector");
const kinds = onePageOfEachKind(site);
const at = (path: string): string => pathToFileURL(`${site.folder}/${path}`).href;
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** A drawing keeps its size, since its marks would else cover each other: what has two dimensions may (WCAG 2.2, 1.4.10, from memory). */
const MAY_SCROLL = ".plate__scroll, .trace .scroll";

/** What is wider than the window, or has to be moved sideways within itself. */
const sideways = (page: Page): Promise<string[]> =>
  page.evaluate((may) => {
    const name = (one: Element): string => `${one.tagName.toLowerCase()}.${one.getAttribute("class") ?? ""}`;
    const wide =
      document.documentElement.scrollWidth > innerWidth ? [`page ${document.documentElement.scrollWidth}`] : [];
    const scrolls = (one: Element): boolean =>
      one.clientWidth > 0 &&
      one.scrollWidth > one.clientWidth + 1 &&
      ["auto", "scroll"].includes(getComputedStyle(one).overflowX) &&
      !one.matches(may);
    return [...wide, ...[...document.querySelectorAll("main *")].filter(scrolls).map(name)];
  }, MAY_SCROLL);

describe("At 320 px, which is 1280 px at 400 %", () => {
  it("nothing has to be moved sideways, on any kind of page, with ids as short and as long as they may be", async () => {
    const page = await (await browser.newContext({ viewport: { width: 320, height: 800 } })).newPage();
    const wrong: string[] = [];
    for (const path of kinds) {
      await page.goto(at(path));
      await page.evaluate(() => {
        for (const folded of document.querySelectorAll("details")) folded.open = true;
      });
      wrong.push(...(await sideways(page)).map((what) => `${path}: ${what}`));
      await page.evaluate(() => {
        const long = "B-2026-11-20-LEFT-HAND-WING-PANEL-UPPER-REAR-SPAR-CAP-LAMINATION-014";
        for (const id of document.querySelectorAll(".id")) {
          id.textContent = long;
          id.classList.add("id--long");
        }
        for (const head of document.querySelectorAll("h1")) head.textContent = `Joint ${long}`;
      });
      wrong.push(...(await sideways(page)).map((what) => `${path} with long ids: ${what}`));
    }
    await page.context().close();
    expect(wrong).toEqual([]);
  }, 300_000);

  it("lists can be filtered and put in order", async () => {
    const page = await (await browser.newContext({ viewport: { width: 320, height: 800 } })).newPage();
    await page.goto(at("joints.html"));
    await page.locator(".filter__order select").selectOption("-7");
    const areas = (await page.locator("tbody tr td:last-child").allInnerTexts()).map((text) =>
      Number(text.replace(/[^\d.]/g, "")),
    );
    expect(areas).toEqual([...areas].sort((a, b) => b - a));
    await page.context().close();
  });
});
