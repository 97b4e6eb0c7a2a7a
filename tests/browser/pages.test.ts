import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isChromium, lookAtAll, openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";
import { serve, type Served } from "./serve.ts";

const site = builtDemo("inspector");
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

describe.runIf(isChromium)("With scripts off", () => {
  it("each kind of page shows its text, its pictures and its charts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 390, height: 844 } });
    const complaints = await complaintsOf(context, inFolder.url, kinds, false);
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

interface Seen {
  readonly path: string;
  readonly needed: number;
  /** Boxes on it that scroll sideways by themselves. */
  readonly boxes: readonly { readonly focusable: boolean; readonly name: string; readonly html: string }[];
}

describe("On a phone 360 px wide", () => {
  const WIDTH = 360;
  let context: BrowserContext;
  let page: Page;
  const seen: Seen[] = [];

  beforeAll(async () => {
    context = await browser.newContext({ viewport: { width: WIDTH, height: 800 }, hasTouch: true, isMobile: true });
    page = await context.newPage();
    for (const path of kinds) {
      await page.goto(inFolder.url + path);
      seen.push({ path, ...(await page.evaluate(boxesThatScroll)) });
    }
  });
  afterAll(async () => {
    await context.close();
  });

  it("no kind of page is wider than the screen", () => {
    expect(
      seen.filter(({ needed }) => needed > WIDTH).map(({ path, needed }) => `${path} is ${needed} px wide`),
    ).toEqual([]);
  });

  it("what is wider scrolls in a box of its own, which the keyboard reaches and a reader is told the name of", () => {
    expect(seen.flatMap(({ boxes }) => boxes).length).toBeGreaterThan(10);
    expect(
      seen.flatMap(({ path, boxes }) =>
        boxes.filter(({ focusable, name }) => !focusable || name === "").map(({ html }) => `${path}: ${html}`),
      ),
    ).toEqual([]);
  });

  it("a trace runs from top to bottom, each box wide enough to be read and tall enough to be hit", async () => {
    for (const kind of kinds.filter((path) => /^(joint|lot)\//.test(path))) {
      await page.goto(inFolder.url + kind);
      expect(await page.locator(".trace__across").isVisible(), kind).toBe(false);
      const sizes = await page
        .locator(".trace__down a.trace__box rect")
        .evaluateAll((boxes) =>
          boxes
            .map((box) => box.getBoundingClientRect())
            .map((box) => ({ width: box.width, height: box.height, right: box.right })),
        );
      expect(sizes.length, kind).toBeGreaterThan(2);
      expect(
        sizes.filter((size) => size.width < 180 || size.height < 24 || size.right > WIDTH),
        kind,
      ).toEqual([]);
    }
  });
});

/** Runs in the page. */
function boxesThatScroll(): Omit<Seen, "path"> {
  const scrolls = [...document.querySelectorAll<HTMLElement>("main *")].filter(
    (element) =>
      element.scrollWidth > element.clientWidth + 1 && ["auto", "scroll"].includes(getComputedStyle(element).overflowX),
  );
  return {
    needed: document.documentElement.scrollWidth,
    boxes: scrolls.map((element) => ({
      focusable: element.tabIndex === 0,
      name: element.getAttribute("aria-label") ?? "",
      html: element.outerHTML.slice(0, 80),
    })),
  };
}

async function complaintsOf(
  context: BrowserContext,
  base: string,
  paths: readonly string[],
  isScripted = true,
): Promise<string[]> {
  const complaints: string[] = [];
  const page = await context.newPage();
  listen(page, base, complaints);
  for (const path of paths) {
    await page.goto(base + path, { waitUntil: "load" });
    await lookAtAll(page, isScripted);
    const broken = await page
      .locator("img")
      .evaluateAll((images) =>
        (images as HTMLImageElement[])
          .filter((image) => image.complete && image.naturalWidth === 0)
          .map((image) => image.src),
      );
    complaints.push(...broken.map((src) => `${path}: picture ${src} does not show`));
  }
  return complaints;
}

/** As Chromium and as Firefox call a request of a page that was left. */
const LEFT = ["net::ERR_ABORTED", "NS_BINDING_ABORTED"];

function listen(page: Page, base: string, complaints: string[]): void {
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on("requestfailed", (request) => {
    const why = request.failure()?.errorText ?? "";
    // The icon of a page that is left at once may be on its way still; the next page asks for it again.
    if (!LEFT.includes(why) || !request.url().endsWith("/assets/icon.svg"))
      complaints.push(`${page.url()}: ${request.url()} failed: ${why}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${page.url()}: ${response.url()} answered ${response.status()}`);
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(base) && !request.url().startsWith("data:"))
      complaints.push(`${page.url()} asked for ${request.url()}`);
  });
}
