/** What readers come for, in a real browser from home on, on a phone and at a desk: each within two clicks or one search. */
import { readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const MOST = 2;
const DEVICES = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 900 } } as const;
const SITES = { public: builtDemo("public"), inspector: builtDemo("inspector") };

interface Task {
  readonly edition: keyof typeof SITES;
  /** Names of the links that are clicked, one after the other, as they are read. */
  readonly clicks: readonly string[];
  /** What must be read in the end, where it stands. */
  readonly found: readonly (readonly [where: string, words: string | RegExp])[];
  /** What is typed where the last click led; the first thing found is then opened. */
  readonly searched?: string;
  /** The link that is followed in the end, and what the file it leads to begins with. */
  readonly follows?: readonly [name: string, begins: RegExp];
  /** Read without turning the page over: within so many screens. */
  readonly screens?: number;
}

const TASKS: { readonly [task: string]: Task } = {
  "when may I come": { edition: "public", clicks: [], found: [[".visit", /./]], screens: 2 },
  "what was done last": {
    edition: "public",
    clicks: ["Where it stands"],
    found: [
      ["h1", "Where it stands"],
      ["main", "20 November 2026"],
    ],
  },
  follow: {
    edition: "public",
    clicks: [],
    found: [
      ["main", "Follow the build"],
      ["main a[href='feed.xml']", "the feed"],
    ],
    follows: ["the feed", /^<\?xml [^>]*\?>\s*<feed xmlns="http:\/\/www\.w3\.org\/2005\/Atom"/],
  },
  "the first day": { edition: "public", clicks: ["begin at the beginning"], found: [["h1", "The bench is level"]] },
  "why is B-027 not shown as good": {
    edition: "inspector",
    clicks: ["Evidence", "B-027"],
    found: [
      [".verdict", /recalled/],
      ["main", /Lot H-3 was recalled on 14 February 2026/],
    ],
  },
  "who signed the spar, and what changed since": {
    edition: "inspector",
    clicks: ["Hold points", "Spar before the rear web closes the box"],
    found: [
      ["main", /21 June 2025: signed by Edith Marrowby/],
      ["main", "Changed since it was signed"],
      ["main", /Departure D-12 was noted on 24 October 2026/],
    ],
  },
  "which joints hold lot H-3": {
    edition: "inspector",
    clicks: ["Evidence", "H-3"],
    found: [
      ["main", "From the lot to batches, joints and hold points"],
      ["main", /WR-J02/],
      ["main", /WR-J04/],
    ],
  },
  "print what the inspector needs for WG-H1": {
    edition: "inspector",
    clicks: ["Hold points", "Page and print for WG-H1"],
    found: [
      ["h1", "Wing before the leading edge ply goes on"],
      ["h2", "17. Signature"],
    ],
  },
  "everything on WR-J04": {
    edition: "inspector",
    clicks: ["Search"],
    searched: "WR-J04",
    found: [
      ["h1", "Joint WR-J04"],
      [".verdict", "quarantined"],
      ["main a", "B-026"],
      ["main a", "H-3"],
      ["main a", "WG-H1"],
    ],
  },
  "everything on a joint that blocks nothing": {
    edition: "inspector",
    clicks: ["Evidence", "AL-J01"],
    found: [
      ["h1", "Joint AL-J01"],
      [".verdict", "shown"],
    ],
  },
};

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

async function click(page: Page, name: string): Promise<void> {
  const links = page.getByRole("link", { name, exact: true }).filter({ visible: true });
  expect(await links.count(), `links named ${name} on ${page.url()}`).toBeGreaterThan(0);
  await links.first().click();
  await page.waitForLoadState();
}

async function search(page: Page, words: string): Promise<void> {
  await page.getByRole("searchbox").fill(words);
  await page.locator(".search__found a").first().click();
  await page.waitForLoadState();
}

describe.each(Object.entries(DEVICES))("On a %s", (_, viewport) => {
  it.each(Object.entries(TASKS))("%s", async (_task, { edition, clicks, searched, found, follows, screens }) => {
    const page = await (await browser.newContext({ viewport })).newPage();
    await page.goto(pathToFileURL(`${SITES[edition].folder}/index.html`).href);
    expect(clicks.length).toBeLessThanOrEqual(MOST);
    for (const name of clicks) await click(page, name);
    if (searched !== undefined) await search(page, searched);
    for (const [where, words] of found) {
      const place = page.locator(where).filter({ hasText: words, visible: true }).first();
      expect(await place.isVisible(), `${where} with ${words} on ${page.url()}`).toBe(true);
      if (screens === undefined) continue;
      const top = await place.evaluate((one) => one.getBoundingClientRect().top + scrollY);
      expect(top).toBeLessThan(screens * viewport.height);
    }
    if (follows !== undefined) {
      const [name, begins] = follows;
      const href = await page.getByRole("link", { name, exact: true }).first().getAttribute("href");
      expect(readFileSync(fileURLToPath(new URL(href ?? "", page.url())), "utf8")).toMatch(begins);
    }
    await page.context().close();
  });
});
