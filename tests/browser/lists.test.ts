import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./chromium.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("inspector");
let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await openBrowser();
  page = await browser.newPage();
  await page.goto(`${pathToFileURL(site.folder).href}/evidence.html`);
});
afterAll(async () => {
  await browser.close();
});

const batches = () => page.locator("section[aria-labelledby=batches]");
const firstCells = async (): Promise<string[]> =>
  (await batches().locator("tbody tr:visible td:first-child").allInnerTexts()).map((text) => text.trim());

describe("A long list, opened from a disk", () => {
  it("shows only the rows that hold every word typed, says how many, and shows all again", async () => {
    const all = await firstCells();
    await batches().getByLabel("Show rows with").fill("REJECTED");
    const verdicts = await batches().locator("tbody tr:visible .mark__word").allInnerTexts();
    expect(verdicts.length).toBeGreaterThan(0);
    expect(new Set(verdicts)).toEqual(new Set(["rejected", "rejected, lot recalled"]));
    expect(await batches().locator("output").innerText()).toBe(`${verdicts.length} of ${all.length}`);
    await batches().getByLabel("Show rows with").fill("");
    expect(await firstCells()).toEqual(all);
  });

  it("sorts by a column up and down, and tells readers of the table which way", async () => {
    const head = batches().locator("th", { hasText: "Batch" });
    await head.getByRole("button").click();
    const up = await firstCells();
    expect(await head.getAttribute("aria-sort")).toBe("ascending");
    expect(up).toEqual([...up].sort());
    await head.getByRole("button").click();
    expect(await head.getAttribute("aria-sort")).toBe("descending");
    expect(await firstCells()).toEqual([...up].reverse());
  });
});
