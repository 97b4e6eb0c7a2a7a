import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./chromium.ts";
import { buildDemo, onePageOfEachKind } from "./demo.ts";
import { serve, type Served } from "./serve.ts";

const site = buildDemo("inspector");
const kinds = onePageOfEachKind(site);
let browser: Browser;
let atRoot: Served;
let inFolder: Served;

beforeAll(async () => {
  browser = await openBrowser();
  atRoot = await serve(site.folder);
  inFolder = await serve(site.folder, "/workshop/pettichaps/");
});
afterAll(async () => {
  await browser.close();
  await atRoot.close();
  await inFolder.close();
  site.remove();
});

const PLACES = {
  "a disk": () => `${pathToFileURL(site.folder).href}/`,
  "a server's root": () => atRoot.url,
  "a sub-folder of a server": () => inFolder.url,
};

describe.each(Object.entries(PLACES))("Opened from %s", (_place, base) => {
  it("each kind of page loads with no error and asks no other host", async () => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    const complaints = await complaintsOf(context, base(), kinds);
    await context.close();
    expect(complaints).toEqual([]);
  });
});

describe("With scripts off", () => {
  it("each kind of page shows its text, its pictures and its charts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 390, height: 844 } });
    const complaints = await complaintsOf(context, inFolder.url, kinds);
    const page = await context.newPage();
    await page.goto(`${inFolder.url}hours.html`);
    const charts = await page.locator("main svg[role=img]").all();
    expect((await Promise.all(charts.map((chart) => chart.isVisible()))).filter(Boolean).length).toBeGreaterThan(3);
    await context.close();
    expect(complaints).toEqual([]);
  });

  it("no text on the page is hidden that scripts would show", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    for (const kind of kinds) {
      await page.goto(inFolder.url + kind);
      expect((await page.locator("main").innerText()).length, kind).toBeGreaterThan(40);
    }
    await context.close();
  });
});

describe("On a phone 390 px wide", () => {
  it("no kind of page is wider than the screen", async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const page = await context.newPage();
    const wide: string[] = [];
    for (const kind of kinds) {
      await page.goto(inFolder.url + kind);
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      if (width > 390) wide.push(`${kind} is ${width} px wide`);
    }
    await context.close();
    expect(wide).toEqual([]);
  });
});

async function complaintsOf(context: BrowserContext, base: string, paths: readonly string[]): Promise<string[]> {
  const complaints: string[] = [];
  const page = await context.newPage();
  listen(page, base, complaints);
  for (const path of paths) {
    await page.goto(base + path, { waitUntil: "load" });
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await page.waitForLoadState("networkidle");
    const broken = await page.locator("img").evaluateAll((images) => (images as HTMLImageElement[]).filter((image) => image.complete && image.naturalWidth === 0).map((image) => image.src));
    complaints.push(...broken.map((src) => `${path}: picture ${src} does not show`));
  }
  return complaints;
}

function listen(page: Page, base: string, complaints: string[]): void {
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on("requestfailed", (request) => complaints.push(`${page.url()}: ${request.url()} failed`));
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${page.url()}: ${response.url()} answered ${response.status()}`);
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(base) && !request.url().startsWith("data:")) complaints.push(`${page.url()} asked for ${request.url()}`);
  });
}
