/** The page in a browser: its look, its manners, and what becomes of it without a network, in a second tab, and when the record is built anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import { afterEach, describe, expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { hostOf } from "./host.ts";
import type { Step } from "../../src/bench/step.ts";
import { addressIn, benchOfRecord, buildBench, Phone } from "./phone.ts";
import { ASKING_RECORD, BENCH_RECORD } from "./record.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** Where pictures of the screens go, for people to look at. */
const SHOTS = process.env["SCARFLINE_BENCH_SHOTS"];
/** Bytes that begin as a photograph does. */
const PICTURE = Buffer.from([0xff, 0xd8, 0xff, 0xe0]);
const WCAG_22_AA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const scratch = scratchFolders();
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

/** Taps through all screens of a session with a mix that is out at first; what is done at each. */
const WAY = [
  /^A second phone writes too/,
  /^Phone A/,
  /^Glue from other tins/,
  /^Two-part structural epoxy$/,
  /^R-1/,
  /^H-1/,
  /^Glue$/,
  /RD-J02/,
  /^These 1/,
  /^Another value/,
  /^Back to the values/,
  /^20\.0$/,
  /^It was not read/,
  /^10\.2$/,
  /^Earlier, or not known/,
  /^S-1/,
  /^40\.3$/,
  /^The hardener goes in now/,
  /^It is in/,
  /^18\.8$/,
  /^Note the hardener anew/,
  /^17\.8$/,
  /^Another cup/,
  /^40\.3$/,
  /^The hardener goes in now/,
  /^It is in/,
  /^17\.8$/,
  /^Throw B-A002 away/,
  /^It stood too long/,
  /^Closed/,
];
const TO_OUT = [
  /^RD-J02: /,
  /^Nothing more/,
  /^Another number of S-1/,
  /^3$/,
  /^Note 3/,
  /^Another task/,
  /^gluing$/,
  /^Ines$/,
];
const BREAKING = [
  /^Break 3 pieces/,
  /^In the wood/,
  /^It was not estimated/,
  /^33–$/,
  /^335$/,
  /^Partly in each/,
  /^70$/,
  /^Another value/,
  /^Back to the values/,
  /^No load was read/,
  /^Not broken today/,
  /^Sam$/,
  /^Ines$/,
];

/** By what each screen is known, and that none was left out. */
const HEADS: { readonly [step in Exclude<Step["step"], "scale" | "over">]: RegExp } = {
  joints: /^Which joints/,
  reading: /^How (?:warm|damp)/,
  prepared: /^When were the surfaces finished/,
  timber: /^Of which wood/,
  amount: /^How much resin/,
  "read back": /^(?:Read it back|Do not mix this)/,
  pour: /^Pour the/,
  "mix told": /^This mix is not shown/,
  clock: /^Tap each joint/,
  pieces: /^Test pieces from/,
  broke: /where did it break/,
  share: /how much of the face/,
  load: /at what load/,
  photograph: /^What is on the photograph/,
  watched: /^Who watched/,
  hours: /^Who worked at/,
  out: /^Take it out/,
};

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
      const { bench } = await benchOfRecord(scratch(), ASKING_RECORD);
      phone = await Phone.open({ colorScheme });
      await phone.go(addressIn(bench));
      const [faults, heads]: string[][] = [[], []];
      const look = async (): Promise<void> => {
        await phone?.settled();
        if (phone === undefined) return;
        heads?.push(await phone.heading());
        if (SHOTS !== undefined)
          await phone.page.screenshot({ path: `${SHOTS}/${colorScheme}-${heads?.length}.png`, fullPage: true });
        faults?.push(...(await faultsOf(phone)));
      };
      const walk = async (way: readonly RegExp[]): Promise<void> => {
        for (const words of way) {
          await phone?.tap(words);
          await look();
        }
      };
      await look();
      await walk(WAY);
      await phone.page
        .locator("input[type=file]")
        .setInputFiles({ name: "a.jpg", mimeType: "image/jpeg", buffer: PICTURE });
      await phone.page.getByRole("heading", { name: "What is on the photograph?" }).waitFor();
      await look();
      await walk(TO_OUT);
      await phone.saved();
      await look();
      await phone.tap("It is in the record");
      await walk(BREAKING);
      const unseen = Object.entries(HEADS).filter(([, head]) => !heads?.some((seen) => head.test(seen)));
      expect(unseen).toEqual([]);
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
