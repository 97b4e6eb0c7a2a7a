/** Takes pictures of pages for people to look at: `npm run shots -- SITE OUT page.html …` at phone and desktop width, light, dark and print. */
import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { openBrowser } from "./browsers.ts";

const [siteFolder = "site", outFolder = ".cache/shots", ...paths] = process.argv.slice(2);
const WIDTHS = { phone: 390, context: 1280 };

mkdirSync(outFolder, { recursive: true });
const browser = await openBrowser();
for (const path of paths.length > 0 ? paths : ["index.html"]) {
  const name = path.replaceAll("/", "-").replace(/\.html$/, "");
  for (const [device, width] of Object.entries(WIDTHS)) {
    for (const colorScheme of ["light", "dark"] as const) {
      const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
      const page = await context.newPage();
      await page.goto(pathToFileURL(resolve(siteFolder, path)).href);
      await page.evaluate(async () => {
        for (const image of document.images) image.loading = "eager";
        await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
      });
      await page.screenshot({ path: join(outFolder, `${name}-${device}-${colorScheme}.png`), fullPage: true });
      await context.close();
    }
  }
  const page = await browser.newPage();
  await page.goto(pathToFileURL(resolve(siteFolder, path)).href);
  await page.pdf({ path: join(outFolder, `${name}.pdf`), format: "A4", preferCSSPageSize: true });
  await page.close();
}
await browser.close();
