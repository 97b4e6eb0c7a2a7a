import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import { parse } from "node-html-parser";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SCHEMES, goBack, isChromium, openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const site = builtDemo("public");
const linksOn = (path: string): number =>
  parse(readFileSync(join(site.folder, path), "utf8")).querySelectorAll("a.photo__large").length;
const path = site.pages.filter((page) => page.startsWith("joint/")).sort((a, b) => linksOn(b) - linksOn(a))[0] ?? "";
const address = pathToFileURL(`${site.folder}/${path}`).href;
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const dialog = (page: Page) => page.locator("dialog.gallery");
const shown = (page: Page) => dialog(page).locator("img").getAttribute("src");
const links = (page: Page) => page.locator("a.photo__large");
const linked = (page: Page, at: number) =>
  links(page)
    .nth(at)
    .evaluate((link) => (link as HTMLAnchorElement).href);

describe("Photographs, opened from a disk", () => {
  it("are several on the page tried, so that this test cannot pass on nothing", () => {
    expect(linksOn(path)).toBeGreaterThan(2);
  });

  it.runIf(isChromium)("are plain links to their largest files where there are no scripts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(address);
    await links(page).first().click();
    expect(page.url()).toMatch(/photos\/[0-9a-f]+-\d+\.jpg$/);
    await context.close();
  });

  it("are opened, leafed through and closed by keyboard, and the focus is on the one seen last", async () => {
    const page = await browser.newPage();
    await page.goto(address);
    await links(page).first().focus();
    await page.keyboard.press("Enter");
    expect(await dialog(page).isVisible()).toBe(true);
    expect(await shown(page)).toBe(await linked(page, 0));
    await page.keyboard.press("ArrowRight");
    expect(await shown(page)).toBe(await linked(page, 1));
    expect(await dialog(page).locator("img").getAttribute("alt")).toBe(
      await links(page).nth(1).locator("img").getAttribute("alt"),
    );
    expect(await dialog(page).innerText()).toContain(`2 of ${linksOn(path)}`);
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowLeft");
    expect(await shown(page)).toBe(await linked(page, linksOn(path) - 1));
    await page.keyboard.press("Escape");
    expect(await dialog(page).isVisible()).toBe(false);
    // The browser tells that the dialog is closed a moment after it is.
    await expect
      .poll(() =>
        links(page)
          .last()
          .evaluate((link) => link === document.activeElement),
      )
      .toBe(true);
    await page.close();
  });

  it.runIf(isChromium)("are leafed through by swiping and by buttons large enough for a thumb", async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const page = await context.newPage();
    await page.goto(address);
    await links(page).first().tap();
    await swipe(page, 300, 100);
    expect(await shown(page)).toBe(await linked(page, 1));
    await swipe(page, 100, 300);
    expect(await shown(page)).toBe(await linked(page, 0));
    await swipe(page, 200, 190);
    expect(await shown(page)).toBe(await linked(page, 0));
    await dialog(page).getByRole("button", { name: "After" }).tap();
    expect(await shown(page)).toBe(await linked(page, 1));
    const sizes = await dialog(page)
      .locator("button")
      .evaluateAll((buttons) => buttons.map((button) => button.getBoundingClientRect().height));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
    await dialog(page).getByRole("button", { name: "Close" }).tap();
    expect(await dialog(page).isVisible()).toBe(false);
    await context.close();
  });

  it("are closed by Back, which leaves the page as it was; closed otherwise they leave no step behind", async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(`${site.folder}/index.html`).href);
    await page.goto(address);
    await links(page).first().click();
    await goBack(page);
    expect(await dialog(page).isVisible()).toBe(false);
    expect(page.url()).toBe(address);
    await links(page).first().click();
    await dialog(page).getByRole("button", { name: "Close" }).click();
    await expect.poll(() => page.evaluate(() => history.state)).toBe(null);
    await goBack(page);
    expect(await page.evaluate(() => location.href)).toMatch(/index\.html$/);
    await page.close();
  });

  it("are larger on a phone than on the page, and twice as large when asked, whatever their shape", async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(address);
    for (const at of [0, 1, 2]) {
      const onPage = await links(page).nth(at).locator("img").boundingBox();
      await links(page).nth(at).click();
      const image = dialog(page).locator("img");
      await image.evaluate((element) => (element as HTMLImageElement).decode());
      // The box of the picture itself, within that of its element.
      const drawn = () =>
        image.evaluate((element) => {
          const { naturalWidth, naturalHeight, clientWidth, clientHeight } = element as HTMLImageElement;
          return naturalWidth * Math.min(clientWidth / naturalWidth, clientHeight / naturalHeight);
        });
      const whole = await drawn();
      expect(whole).toBeGreaterThan((onPage?.width ?? 0) + 10);
      await dialog(page).getByRole("button", { name: "Larger" }).click();
      expect(await drawn()).toBeGreaterThan(whole * 1.9);
      await dialog(page).getByRole("button", { name: "Whole" }).click();
      expect(await drawn()).toBeCloseTo(whole, 0);
      await page.keyboard.press("Escape");
    }
    await page.close();
  });

  it.each(SCHEMES)(
    "stand open on the whole screen with nothing for axe to find, in %s colours",
    async (colorScheme) => {
      const page = await browser.newPage({ colorScheme, viewport: { width: 390, height: 844 } });
      await page.goto(address);
      await links(page).first().click();
      await dialog(page)
        .locator("img")
        .evaluate((image) => (image as HTMLImageElement).decode());
      const box = await dialog(page).locator("img").boundingBox();
      expect(box?.width).toBeGreaterThan(250);
      expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(844);
      await page.evaluate(AXE);
      const found = await page.evaluate(() =>
        (window as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe.run({
          runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"],
        }),
      );
      expect(found.violations.map(({ id }) => id)).toEqual([]);
      await page.close();
    },
  );
});

async function swipe(page: Page, from: number, to: number): Promise<void> {
  await dialog(page)
    .locator("img")
    .evaluate(
      (image, [start, end]) => {
        const touch = (x: number): Touch => new Touch({ identifier: 1, target: image, clientX: x, clientY: 300 });
        image.dispatchEvent(
          new TouchEvent("touchstart", { touches: [touch(start ?? 0)], changedTouches: [touch(start ?? 0)] }),
        );
        image.dispatchEvent(new TouchEvent("touchend", { touches: [], changedTouches: [touch(end ?? 0)] }));
      },
      [from, to],
    );
}
