import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { goBack, isChromium, openBrowser } from "../browser/browsers.ts";
import { builtDemo } from "../browser/demo.ts";
import { serve } from "../browser/serve.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const site = builtDemo("public");
const address = (path: string): string => `${pathToFileURL(site.folder).href}/${path}`;
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const SIZES = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
];

/** From home, by keyboard or pointer, to what is found by `words`; what the page had to complain of is a fault. */
async function searched(page: Page, words: string): Promise<void> {
  await page.goto(address("index.html"));
  await page.getByRole("link", { name: "Search", exact: true }).click();
  await page.getByRole("searchbox").fill(words);
  await page.waitForFunction(() => document.querySelector("output")?.textContent !== "");
}

const group = (page: Page, name: string) => page.getByRole("region", { name: new RegExp(`^${name}( |$)`) });
const paths = async (page: Page): Promise<string[]> =>
  page.locator(".search__found a").evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));

describe.each(SIZES)("From a disk, at $width px", (viewport) => {
  let page: Page;
  const said: string[] = [];
  beforeAll(async () => {
    page = await browser.newPage({ viewport });
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(String(error)));
  });
  afterAll(async () => {
    expect(said).toEqual([]);
    await page.close();
  });

  it("one search has everything on WR-J04: the joint first, its batch, its hold points, the days it was worked on", async () => {
    await searched(page, "WR-J04");
    expect((await paths(page))[0]).toBe("joint/WR-J04.html");
    await expect
      .poll(() => group(page, "Batch").getByRole("link").allInnerTexts())
      .toEqual([expect.stringMatching(/^B-026/)]);
    expect((await group(page, "Hold points").getByRole("link").allInnerTexts()).join(" ")).toContain("WG-H1");
    const days = await group(page, "Entries").getByRole("link").count();
    const named = site.pages.filter(
      (path) =>
        path.startsWith("entry/") && readFileSync(`${site.folder}/${path}`, "utf8").includes("joint/WR-J04.html"),
    );
    expect(named.length).toBeGreaterThan(1);
    expect(days).toBeGreaterThanOrEqual(named.length);
    for (const path of named) expect(await paths(page)).toContain(path);
  });

  it("leads to what was found, and is as it was when one comes back", async () => {
    await searched(page, "WR-J04");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForURL(/joint\/WR-J04/);
    await goBack(page);
    await expect.poll(() => page.getByRole("searchbox").inputValue()).toBe("WR-J04");
    await expect.poll(async () => (await paths(page))[0]).toBe("joint/WR-J04.html");
  });

  it("forgives a misspelt word of the story and says what it was taken for", async () => {
    await searched(page, "thermomter");
    expect(await page.locator("output").innerText()).toContain("“thermomter” stands nowhere so; taken for thermometer");
    expect(await group(page, "Entries").getByRole("link").count()).toBeGreaterThan(3);
  });

  it("finds words of findings, and of nothing else than what is there", async () => {
    await searched(page, "recalled H-3");
    expect(await paths(page)).toContain("lot/H-3.html");
    await searched(page, "zeppelin");
    expect(await page.locator("output").innerText()).toBe("Nothing found.");
  });

  it("shows eight of a kind and all when asked, and the keyboard goes on at the ninth", async () => {
    await searched(page, "glue");
    const entries = group(page, "Entries");
    expect(await entries.getByRole("link").count()).toBe(8);
    await entries.getByRole("button", { name: /^All \d+ entries$/ }).click();
    expect(await entries.getByRole("link").count()).toBeGreaterThan(20);
    expect(
      await entries
        .getByRole("link")
        .nth(8)
        .evaluate((link) => link === document.activeElement),
    ).toBe(true);
  });

  it("keeps to its width, and axe finds nothing on what was found", async () => {
    await searched(page, "WR-J04");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    await page.evaluate(AXE);
    const { violations } = await page.evaluate(async () =>
      (window as unknown as { axe: { run: (how: object) => Promise<AxeResults> } }).axe.run({ preload: false }),
    );
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html ?? ""}`)).toEqual([]);
  });
});

describe("The search", () => {
  it("asks for its index when somebody searches, and on no other page", async () => {
    const page = await browser.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    const server = await serve(site.folder);
    for (const path of ["index.html", "evidence.html"]) await page.goto(`${server.url}${path}`);
    expect(asked.length).toBeGreaterThan(5);
    expect(asked.filter((url) => url.endsWith("search-index.js"))).toEqual([]);
    await page.goto(`${server.url}search.html`);
    await page.getByRole("searchbox").fill("glue");
    await page.waitForFunction(() => document.querySelector("output")?.textContent !== "");
    expect(asked.filter((url) => url.endsWith("search-index.js"))).toHaveLength(1);
    await page.close();
    await server.close();
  });

  it("can be shared by its address", async () => {
    const page = await browser.newPage();
    await page.goto(address("search.html#squeeze-out"));
    await expect.poll(async () => (await paths(page)).length).toBeGreaterThan(0);
    expect(await page.getByRole("searchbox").inputValue()).toBe("squeeze-out");
    await page.close();
  });

  it.runIf(isChromium)(
    "is without scripts a list of every entry under its year, and no box that does nothing",
    async () => {
      const page = await browser.newPage({ javaScriptEnabled: false });
      await page.goto(address("search.html"));
      expect(await page.getByRole("searchbox").count()).toBe(0);
      const listed = await page.locator(".search__list a").count();
      expect(listed).toBe(site.pages.filter((path) => path.startsWith("entry/")).length);
      expect(await page.locator(".search__all h3").allInnerTexts()).toEqual(["2026", "2025", "2024"]);
      await page.close();
    },
  );
});
