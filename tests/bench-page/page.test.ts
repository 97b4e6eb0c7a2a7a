/** The page in a browser: its look, its manners, and what becomes of it without a network, in a second tab, and when the record is built anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import { afterEach, describe, expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { hostOf } from "./host.ts";
import { addressIn, benchOfRecord, buildBench, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WCAG_22_AA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const scratch = scratchFolders();
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

/** Taps through all screens of a session with a mix that is out at first; what is done at each. */
const WAY = [
  /^Glue: Two-part/,
  /RD-J02/,
  /^These 1/,
  /^20\.0$/,
  /^50$/,
  /^10\.2$/,
  /^S-1/,
  /^40\.3$/,
  /^The hardener goes in now/,
  /^It is in/,
  /^18\.8$/,
  /^Note the hardener anew/,
  /^17\.8$/,
  /^Closed$/,
  /^Nothing more/,
  /^3 of S-1/,
  /^Ines$/,
];

/** What axe finds, what is read that is smaller than 28 px, and what is tapped that is smaller than 48 px. */
async function faultsOf(on: Phone): Promise<string[]> {
  await on.page.evaluate(AXE);
  const { violations, passes } = await on.page.evaluate(
    (tags) =>
      (window as unknown as { axe: { run: (what: object) => Promise<AxeResults> } }).axe.run({
        runOnly: tags,
        resultTypes: ["violations"],
      }),
    WCAG_22_AA,
  );
  if (passes.length < 8) throw new Error("axe looked at next to nothing");
  const sizes = await on.page.evaluate(() => {
    const faults: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const parent = walker.currentNode.parentElement;
      if (!parent || walker.currentNode.textContent?.trim() === "" || parent.closest("pre, script, .heard")) continue;
      const size = Number.parseFloat(getComputedStyle(parent).fontSize);
      if (size < 28) faults.push(`${size} px: ${walker.currentNode.textContent}`);
    }
    for (const button of document.querySelectorAll("button")) {
      const { width, height } = button.getBoundingClientRect();
      if (width < 48 || height < 48) faults.push(`${width} × ${height}: ${button.textContent}`);
    }
    if (document.documentElement.scrollWidth > innerWidth) faults.push("scrolls sideways");
    return faults;
  });
  return [...violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`), ...sizes];
}

describe("Each screen at 390 px", () => {
  it.each(["light", "dark"] as const)(
    "is clean by axe, large to read and to tap, in %s",
    async (colorScheme) => {
      const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
      phone = await Phone.open({ colorScheme });
      await phone.go(addressIn(bench));
      const faults: string[] = [];
      const look = async (): Promise<void> => {
        await phone?.settled();
        if (phone) faults.push(...(await faultsOf(phone)).map((fault) => `${fault}`));
      };
      await look();
      for (const words of WAY) {
        await phone.tap(words);
        await look();
      }
      await phone.saved();
      await look();
      await phone.tap("It is in the record");
      await phone.tap("Break 3 pieces");
      await look();
      await phone.tap("In the wood");
      await look();
      await phone.tap("100");
      await look();
      expect([...new Set(faults)]).toEqual([]);
      expect(phone.errors).toEqual([]);
    },
    300_000,
  );
});

describe("The page", () => {
  it("loads a second time without a network on localhost, and then takes up a new build, with what was kept", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    const host = await hostOf(bench);
    phone = await Phone.open();
    await phone.go(host.url);
    await phone.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await phone.tap(/^Glue: Two-part/);
    await phone.tap(/RD-J02/);
    host.isUp = false;
    await phone.page.reload();
    expect(await phone.text("[data-kept]")).toBe("2");
    const first = await phone.page.evaluate(() => document.querySelector<HTMLElement>("#record")?.dataset["digest"]);
    const lot = BENCH_RECORD["lots/S-1.md"] ?? "";
    writeFileSync(join(content, "lots/S-1.md"), lot.replace("Spruce planks", "Other planks"));
    await buildBench(content, bench);
    host.isUp = true;
    await phone.page.evaluate(() =>
      navigator.serviceWorker.ready.then((ready) => ready.update().then(() => undefined)),
    );
    await phone.page.waitForFunction(
      async () => (await navigator.serviceWorker.getRegistration())?.installing === null,
    );
    host.isUp = false;
    await phone.page.waitForTimeout(500);
    await phone.page.reload();
    expect(await phone.text("[data-kept]")).toBe("2");
    const second = await phone.page.evaluate(() => document.querySelector<HTMLElement>("#record")?.dataset["digest"]);
    expect(second).not.toBe(first);
    await phone.tap("These 1");
    for (const value of ["20.0", "50", "10.2"]) await phone.tap(value);
    expect(await phone.mark()).toContain("Spruce planks");
    host.close();
  }, 300_000);

  it("with a session open keeps the record that it began with, when a new page stands in its place", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await Phone.open();
    await phone.go(addressIn(bench));
    await phone.tap(/^Glue: Two-part/);
    await phone.tap(/RD-J02/);
    const lot = BENCH_RECORD["lots/S-1.md"] ?? "";
    writeFileSync(join(content, "lots/S-1.md"), lot.replace("Spruce planks", "Other planks"));
    await buildBench(content, bench);
    await phone.go(addressIn(bench));
    expect(await phone.text("[data-kept]")).toBe("2");
    await phone.tap("These 1");
    for (const value of ["20.0", "50", "10.2"]) await phone.tap(value);
    expect(await phone.mark()).toContain("Spruce planks");
  }, 300_000);

  it("is taken by one tab alone", async () => {
    const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await Phone.open();
    await phone.go(addressIn(bench));
    await phone.tap(/^Glue: Two-part/);
    const second = await phone.context.newPage();
    await second.goto(addressIn(bench));
    await second.waitForSelector("h1");
    expect(await second.locator("h1").innerText()).toBe("Open in another tab");
    expect(await second.locator("button").count()).toBe(0);
    await phone.page.close();
    await second.reload();
    await second.waitForSelector("[data-kept]");
    expect(await second.locator("[data-kept]").innerText()).toBe("1");
  }, 300_000);

  it("speaks against a cup that is too small for the scale, in a shop that is too cold, and writes it all the same where it is mixed", async () => {
    const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await Phone.open();
    await phone.go(addressIn(bench));
    for (const words of [/^Glue: Two-part/, /RD-J02/, /^These 1/]) await phone.tap(words);
    await phone.tap("Another value");
    for (const key of ["1", "2", ".", "5"]) await phone.tap(key);
    await phone.tap(/^Note 12\.5 °C/);
    for (const words of [/^50$/, /^10\.2$/, /^S-1/, /^Another value/, /^2$/, /^Note 2 g/]) await phone.tap(words);
    expect(await phone.heading()).toBe("Do not mix this");
    const told = await phone.mark();
    expect(told).toContain("cannot show the ratio of so small a mix");
    expect(told).toContain("12.5 °C");
    await phone.tap("It is mixed already: write it down");
    expect(await phone.heading()).toBe("Pour the hardener");
  }, 300_000);
});
