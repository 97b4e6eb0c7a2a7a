import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

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
