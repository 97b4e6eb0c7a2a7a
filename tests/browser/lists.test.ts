import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { goBack, openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("inspector");
const at = (path: string): string => `${pathToFileURL(site.folder).href}/${path}`;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await openBrowser();
  page = await browser.newPage();
});
beforeEach(async () => {
  await page.goto("about:blank");
  await page.goto(at("evidence.html"));
});
afterAll(async () => {
  await browser.close();
});

const batches = () => page.locator("section[aria-labelledby=batches]");
const firstCells = async (): Promise<string[]> =>
  (await batches().locator("tbody tr:visible td:first-child").allInnerTexts()).map((text) => text.trim());
const statesShown = async (): Promise<string[]> => [
  ...new Set(await page.locator("table[data-list=joints] tbody tr:visible td .mark__word").allInnerTexts()),
];

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
    expect(await batches().locator("caption").innerText()).toBe("Batches, by batch, rising");
    await head.getByRole("button").click();
    expect(await head.getAttribute("aria-sort")).toBe("descending");
    expect(await firstCells()).toEqual([...up].reverse());
    expect(await batches().locator("output").innerText()).toBe("by batch, falling");
  });

  it("tells those who cannot see it what a filter left, politely", async () => {
    expect(await batches().locator("output").getAttribute("aria-live")).toBe("polite");
  });

  it("is reached from what is counted, with those rows alone, by an address that holds after Back and for others", async () => {
    const row = page.locator(".tally__row", { hasText: "The record cannot show that this joint is good" });
    const counted = Number(await row.locator("dd").innerText());
    await row.getByRole("link").click();
    expect(page.url()).toMatch(/joints\.html#joints-not-shown$/);
    await expect.poll(statesShown).toEqual(["not shown"]);
    expect(await page.locator("table[data-list=joints] tbody tr:visible").count()).toBe(counted);
    await page.getByLabel("Order").evaluate((select: HTMLSelectElement) => {
      select.value = "-7";
      select.dispatchEvent(new Event("change"));
    });
    const shared = page.url();
    expect(shared).toMatch(/#joints-not-shown\?sort=7&down=$/);
    const listed = await page.locator("tbody tr:visible th a").allInnerTexts();
    await page.locator("tbody tr:visible th a").first().click();
    await goBack(page);
    expect(await page.locator("tbody tr:visible th a").allInnerTexts()).toEqual(listed);
    const another = await browser.newPage();
    await another.goto(shared);
    expect(await another.locator("tbody tr:visible th a").allInnerTexts()).toEqual(listed);
    await another.close();
  });

  it("goes back step by step through the kinds that were chosen", async () => {
    await page.goto(at("joints.html"));
    await page.locator(".filter select").first().selectOption("shown");
    await page.locator(".filter select").first().selectOption("pending");
    expect(await statesShown()).toEqual(["pending"]);
    await goBack(page);
    expect(await statesShown()).toEqual(["shown"]);
    await goBack(page);
    expect((await statesShown()).length).toBeGreaterThan(3);
  });

  it("sorts figures by how much they are in their unit, and verdicts by the worst", async () => {
    await page.goto(at("joints.html#joints?sort=7"));
    const areas = (await page.locator("tbody tr td:last-child").allInnerTexts()).map((text) =>
      Number(text.replace(/[^\d.]/g, "")),
    );
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    await page.goto(at("joints.html#joints?sort=2"));
    const states = await page.locator("table[data-list=joints] tbody tr td .mark__word").allInnerTexts();
    expect([...new Set(states)]).toEqual(["quarantined", "opened", "not shown", "pending", "not glued", "shown"]);
  });
});

describe("Without scripts", () => {
  it("a list is whole, and an address of one kind of rows leads to the first of them", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const plain = await context.newPage();
    await plain.goto(at("joints.html#joints-pending"));
    expect(await plain.locator("table[data-list=joints] tbody tr").count()).toBe(
      site.pages.filter((path) => path.startsWith("joint/")).length,
    );
    const first = plain.locator("tr[data-group=pending]").first();
    expect(await first.getAttribute("id")).toBe("joints-pending");
    expect(await first.evaluate((row) => row.matches(":target"))).toBe(true);
    await context.close();
  });
});

describe("On a phone", () => {
  it.each(["joints.html", "evidence.html", "measurements.html", "hold-point/WG-H1.html", "assembly/wing-spar.html"])(
    "each row of %s is a card with how it stands at its top, and no table is wider than the page",
    async (path) => {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
      const phone = await context.newPage();
      await phone.goto(at(path));
      const wrong = await phone.evaluate(() =>
        [...document.querySelectorAll<HTMLTableElement>("table.cards")].flatMap((table) => {
          const bad: string[] = [];
          if (table.scrollWidth > table.clientWidth + 1 || table.getBoundingClientRect().right > innerWidth)
            bad.push("wide");
          const row = table.tBodies[0]?.rows[0];
          const mark = row?.querySelector<HTMLElement>(":scope > td > .mark, :scope > td > p:first-child > .mark");
          const cells = [...(row?.cells ?? [])].filter((cell) => cell.offsetHeight > 0);
          const least = Math.min(
            ...cells
              .slice(1)
              .filter((cell) => !cell.contains(mark ?? null))
              .map((cell) => cell.offsetTop),
          );
          if (mark && mark.closest("td") !== null && (mark.closest("td")?.offsetTop ?? 0) > least)
            bad.push("verdict below");
          return bad.map((what) => `${table.caption?.textContent}: ${what}`);
        }),
      );
      expect(wrong).toEqual([]);
      await context.close();
    },
  );
});
