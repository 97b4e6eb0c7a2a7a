import { existsSync } from "node:fs";
import { type Browser, chromium, firefox, type Page } from "playwright-core";

export type BrowserName = "chromium" | "firefox";

const USUAL_PLACES: { readonly [name in BrowserName]: readonly string[] } = {
  chromium: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ],
  firefox: ["/usr/bin/firefox-esr", "/usr/bin/firefox", "/Applications/Firefox.app/Contents/MacOS/firefox"],
};

/** Which browser the tests of pages open: Chromium, or what `SCARFLINE_BROWSER` names. Throws on a name of none. */
export function browserAsked(): BrowserName {
  const named = process.env["SCARFLINE_BROWSER"] ?? "chromium";
  if (named !== "chromium" && named !== "firefox")
    throw new Error(`SCARFLINE_BROWSER is chromium or firefox, not ${named}`);
  return named;
}

/** What a test may ask of Chromium alone: by its protocol Firefox cannot be held without scripts, touched, or told to look as in print. */
export const isChromium = browserAsked() === "chromium";

/** Colours that the browser asked for can be told to prefer. */
export const SCHEMES: readonly ("light" | "dark")[] = isChromium ? ["light", "dark"] : ["light"];

/** Path of that browser on this machine, or undefined. `SCARFLINE_CHROMIUM` and `SCARFLINE_FIREFOX` name another. */
export function pathOf(name: BrowserName): string | undefined {
  const named = process.env[`SCARFLINE_${name.toUpperCase()}`];
  return (named === undefined ? USUAL_PLACES[name] : [named]).find((path) => existsSync(path));
}

/** The browser asked for, without a window, that asks nobody outside for anything. `more` are arguments of Chromium's. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  return browserAsked() === "firefox" ? openFirefox() : openChromium(more);
}

async function openChromium(more: readonly string[]): Promise<Browser> {
  return chromium.launch({
    executablePath: there("chromium"),
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

/** Debian's Firefox as it is, driven by WebDriver BiDi (W3C). */
async function openFirefox(): Promise<Browser> {
  return firefox.launch({ channel: "moz-firefox", executablePath: there("firefox") });
}

function there(name: BrowserName): string {
  const path = pathOf(name);
  if (path === undefined) throw new Error(`No ${name}: see tests/browser/browsers-setup.ts`);
  return path;
}

/** What `page.goBack()` does. Firefox's protocol tells nothing of a step within a page or to one that it kept, so the page itself is asked. */
export async function goBack(page: Page): Promise<void> {
  const was = await page.evaluate(() => location.href);
  const within = page.evaluate(
    () =>
      new Promise<void>((done) => {
        addEventListener("popstate", () => done(), { once: true });
        history.back();
      }),
  );
  const elsewhere = page.waitForFunction((left) => location.href !== left, was);
  await Promise.any([within, elsewhere]);
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
