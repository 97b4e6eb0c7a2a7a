import { existsSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** Path of a Chromium on this machine, or undefined. `SCARFLINE_CHROMIUM` names another. */
export function chromiumPath(): string | undefined {
  const named = process.env["SCARFLINE_CHROMIUM"];
  return (named === undefined ? USUAL_PLACES : [named]).find((path) => existsSync(path));
}

/** A headless browser that asks nobody outside for anything. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === undefined) throw new Error("No Chromium: see tests/browser/chromium-setup.ts");
  return chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      ...more,
    ],
  });
}

/** Has every picture of a page come and, where its scripts run, a chart drawn by one; 1 where there is a chart, else 0. */
export async function lookAtAll(page: Page, isScripted = true): Promise<number> {
  await page.evaluate(async () => {
    for (const image of document.images) image.loading = "eager";
    await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
    for (const drawing of document.querySelectorAll<HTMLElement>(".chart__drawing")) drawing.click();
  });
  if (!isScripted || (await page.locator("[data-chart]").count()) === 0) return 0;
  await page.waitForSelector("[data-chart] canvas", { state: "attached", timeout: 0 });
  return 1;
}
