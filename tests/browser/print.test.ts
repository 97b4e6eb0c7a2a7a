import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { extractText, getDocumentProxy } from "unpdf";
import { afterAll, beforeAll, expect, it } from "vitest";
import { isChromium, openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("inspector");
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** Firefox draws no margin boxes (CSS Paged Media 3, 4): there its own heads and feet number the sheets under the page's title. */
it.runIf(isChromium)(
  "prints the appendix with the aircraft, the edition, the record's date, the seal and the page's number on every page",
  async () => {
    const pages = await printed("appendix.html");
    expect(pages.length).toBeGreaterThan(20);
    const bare = pages.flatMap((text, index) => {
      const missing = ["Pettichaps", "Inspector’s edition", "2026", "No seal", String(index + 1)].filter(
        (words) => !text.toLowerCase().includes(words.toLowerCase()),
      );
      return missing.length === 0 ? [] : [`page ${index + 1} lacks ${missing.join(", ")}`];
    });
    expect(bare).toEqual([]);
  },
);

it("prints the appendix with every batch, its verdict and a place to sign", async () => {
  const text = (await printed("appendix.html")).join("\n");
  const batches = site.pages
    .filter((path) => path.startsWith("batch/"))
    .map((path) => path.slice("batch/".length, -".html".length));
  expect(batches.length).toBeGreaterThan(39);
  expect(batches.filter((id) => !text.includes(id))).toEqual([]);
  expect(text).toContain("Signed / not signed");
  for (const part of ["Climate of the workshop", "Month by month", "What is still to be glued", "Pieces that passed"])
    expect(text).toContain(part);
});

it("prints a hold point with its drawing and a number on each sheet, and its sign-off block unbroken", async () => {
  const pages = await printed("hold-point/WG-H1.html");
  const whole = (text: string): string => text.replace(/\s+/g, " ");
  if (isChromium)
    pages.forEach((text, at) => {
      expect(whole(text)).toContain("Hold point WG-H1, before close-up");
      expect(whole(text)).toContain(`Page ${at + 1} of ${pages.length}`);
    });
  expect(whole(pages[0] ?? "")).toContain("What is looked at");
  const signed = pages.filter((text) => text.includes("Signed / not signed")).map(whole);
  expect(signed).toHaveLength(1);
  for (const line of ["17. Signature", "Looked at", "Name and authority", "To be closed by", "Remarks", "Signature"])
    expect(signed[0]).toContain(line);
});

it("prints an assembly page without the navigation and with its drawing and timeline", async () => {
  const text = (await printed("assembly/wing-spar.html")).join("\n");
  const page = await browser.newPage();
  await page.goto(pathToFileURL(`${site.folder}/assembly/wing-spar.html`).href);
  const menu = await page.locator("header nav a").allInnerTexts();
  const marks = await page.locator("main a.mark > span:not(.unseen)").allTextContents();
  await page.close();
  const lines = text.split("\n").map((line) => line.trim());
  expect(menu).toContain("Search");
  expect(lines.filter((line) => menu.includes(line) && line !== "Open items" && line !== "Departures")).toEqual([]);
  expect(marks.length).toBeGreaterThan(9);
  expect(marks.filter((mark) => !text.includes(mark))).toEqual([]);
  expect(text).toContain("Hours a day");
});

async function printed(path: string): Promise<string[]> {
  const page = await browser.newPage();
  await page.goto(pathToFileURL(`${site.folder}/${path}`).href);
  const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true });
  await page.close();
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return text;
}
