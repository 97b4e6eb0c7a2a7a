import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { openBrowser } from "./chromium.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("public");
const asked: string[] = [];
let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await openBrowser();
});
beforeEach(async () => {
  await page?.close();
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  asked.length = 0;
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(`${site.folder}/assembly/wing-spar.html`).href);
});
afterAll(async () => {
  await browser.close();
});

const library = () => asked.filter((url) => url.endsWith("chart.umd.js")).length;
const drawing = () => page.locator("#assembly-hours .chart__drawing");
const canvas = () => page.locator("#assembly-hours canvas");
const heightOfPage = () => page.evaluate(() => document.documentElement.scrollHeight);

describe("A chart, opened from a disk", () => {
  it("is a drawing and asks for no library until somebody points at it", async () => {
    await drawing().scrollIntoViewIfNeeded();
    expect(await drawing().isVisible()).toBe(true);
    expect(library()).toBe(0);
  });

  it("comes alive under the pointer, in the drawing's place, and nothing moves", async () => {
    const before = await heightOfPage();
    await drawing().hover();
    await canvas().waitFor({ state: "visible" });
    expect(library()).toBe(1);
    expect(await drawing().isVisible()).toBe(false);
    expect(await heightOfPage()).toBe(before);
    const inked = await canvas().evaluate((element) => {
      const of = element as HTMLCanvasElement;
      return of
        .getContext("2d")
        ?.getImageData(0, 0, of.width, of.height)
        .data.some((value) => value > 0);
    });
    expect(inked).toBe(true);
  });

  it("comes alive again in the other colours when those are changed", async () => {
    await drawing().hover();
    await canvas().waitFor({ state: "visible" });
    await page.emulateMedia({ colorScheme: "dark" });
    await page.waitForFunction(() => document.querySelectorAll("#assembly-hours canvas").length === 1);
    await canvas().waitFor({ state: "visible" });
    expect(library()).toBe(1);
  });

  it("comes alive by a tap on a phone", async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const phone = await context.newPage();
    await phone.goto(pathToFileURL(`${site.folder}/assembly/wing-spar.html`).href);
    await phone.locator("#assembly-hours .chart__drawing").tap();
    await phone.locator("#assembly-hours canvas").waitFor({ state: "visible" });
    await context.close();
  });
});
