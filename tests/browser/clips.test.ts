import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";
import { serve, type Served } from "./serve.ts";

const site = builtDemo("public");
const PAGE = "entry/2024-09-18-a-lamp-on-a-string.html";
let browser: Browser;
let served: Served;
beforeAll(async () => {
  browser = await openBrowser();
  served = await serve(site.folder);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

async function opened(
  url: string,
  options: Parameters<Browser["newContext"]>[0] = {},
): Promise<{ page: Page; context: BrowserContext; asked: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1000, height: 900 }, ...options });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on("request", (request) => void asked.push(request.url()));
  await page.goto(url + PAGE);
  await page.locator("video").scrollIntoViewIfNeeded();
  await page.waitForTimeout(600);
  return { page, context, asked };
}

const isClip = (url: string): boolean => url.endsWith(".mp4");
const state = (page: Page) =>
  page
    .locator("video")
    .evaluate((video: HTMLVideoElement) => ({
      wide: video.videoWidth,
      high: video.videoHeight,
      seconds: video.duration,
      ready: video.readyState,
      at: video.currentTime,
    }));

describe.each([
  ["a server", () => served.url],
  ["a disk", () => `${pathToFileURL(site.folder).href}/`],
] as const)("A clip on a page from %s", (_, base) => {
  it("is not asked for before it is played, and then plays", async () => {
    const { page, context, asked } = await opened(base());
    expect(asked.filter(isClip)).toEqual([]);
    expect(asked.filter((url) => url.endsWith("-960.jpg"))).toHaveLength(1);
    expect((await state(page)).ready).toBe(0);
    await page.locator("video").focus();
    await page.keyboard.press("Space");
    await page.waitForFunction(() => (document.querySelector("video")?.currentTime ?? 0) > 0.3);
    expect(await state(page)).toMatchObject({ wide: 640, high: 426, seconds: expect.closeTo(2.5, 1) as number });
    expect(asked.filter(isClip).length).toBeGreaterThan(0);
    await context.close();
  });

  it("needs no script, and moves nothing when it is played", async () => {
    const { page, context } = await opened(base(), { javaScriptEnabled: false });
    const before = await page.locator("video").boundingBox();
    expect(Math.round(((before?.width ?? 0) / (before?.height ?? 1)) * 100)).toBe(Math.round(64_000 / 426));
    await page.locator("video").focus();
    await page.keyboard.press("Space");
    await page.waitForTimeout(800);
    expect(await page.locator("video").boundingBox()).toEqual(before);
    await context.close();
  });
});

it("A clip is reached by the keyboard, and the link to its file after it", async () => {
  const { page, context } = await opened(served.url);
  await page.evaluate(() => document.body.focus());
  const reached: string[] = [];
  for (let press = 0; press < 60; press += 1) {
    await page.keyboard.press("Tab");
    reached.push(
      await page.evaluate(() =>
        document.activeElement?.tagName === "VIDEO" ? "video" : (document.activeElement?.getAttribute("href") ?? ""),
      ),
    );
  }
  expect(reached).toContain("video");
  expect(reached.slice(reached.indexOf("video")).some(isClip)).toBe(true);
  await context.close();
});

it("A clip is no wider than a phone's page", async () => {
  const { page, context } = await opened(served.url, { viewport: { width: 360, height: 700 } });
  const box = await page.locator("video").boundingBox();
  expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(360);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  await context.close();
});

it("In print the poster stands in its place, with its words and without the link", async () => {
  const { page, context } = await opened(served.url);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".clip figcaption").innerText()).toBe("Drawn, thirty frames of it: what the light finds");
  expect(await page.locator("video").isVisible()).toBe(false);
  const still = page.locator(".clip__still");
  expect(
    await still.evaluate((image: HTMLImageElement) => [image.complete, image.naturalWidth, image.clientWidth > 200]),
  ).toEqual([true, 960, true]);
  expect((await page.pdf({ format: "A4" })).toString("latin1")).toMatch(/\/Subtype \/Image\s[^]{0,80}?\/Width 960/);
  await context.close();
});

it.each(["light", "dark"] as const)("In %s colours axe finds nothing on a page with a clip", async (colorScheme) => {
  const { page, context } = await opened(served.url, { colorScheme });
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
  const { violations, passes } = await page.evaluate(() =>
    (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run(),
  );
  expect(passes.length).toBeGreaterThan(10);
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
  await context.close();
});
