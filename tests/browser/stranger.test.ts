/** What a stranger asks of an archive years on: answered from its README by keyboard, without scripts, within three steps each. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { hoursWords } from "../../src/words/durations.ts";
import { openBrowser } from "./browsers.ts";

const folder = mkdtempSync(join(tmpdir(), "scarfline-stranger-"));
let bag = "";
let readme = "";
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  const words = [".build/cli.js", "bag", "--content", "content", "--out", folder, "--serialise", "zip"];
  execFileSync(process.execPath, words, { stdio: ["ignore", "ignore", "inherit"] });
  execFileSync("unzip", ["-q", readdirSync(folder)[0] ?? ""], { cwd: folder });
  bag = join(folder, readdirSync(folder).find((name) => !name.endsWith(".zip")) ?? "");
  readme = readFileSync(join(bag, "README.txt"), "utf8");
  browser = await openBrowser();
  context = await browser.newContext({ javaScriptEnabled: false });
}, 600_000);
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Tabs beyond which nobody goes on pressing. */
const PATIENCE = 60;

interface Reader {
  readonly page: Page;
  /** Pages opened and links followed so far. */
  steps: number;
}

/** Opens what the README names below a question. */
async function asks(question: string): Promise<Reader> {
  const [, path] = new RegExp(`^ {2}${question.replaceAll("?", "\\?")}\n {6}(\\S+)$`, "m").exec(readme) ?? [];
  if (path === undefined) throw new Error(`the README does not say where to ask: ${question}`);
  const page = await context.newPage();
  const [file = "", anchor] = path.split("#");
  await page.goto(pathToFileURL(join(bag, file)).href + (anchor === undefined ? "" : `#${anchor}`));
  return { page, steps: 1 };
}

/** By the key that skips to the page, then from link to link, to the one with these words. */
async function follow(reader: Reader, words: string): Promise<void> {
  const { page } = reader;
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  for (let pressed = 0; pressed < PATIENCE; pressed += 1) {
    await page.keyboard.press("Tab");
    if ((await page.locator(":focus").textContent())?.trim() !== words) continue;
    await page.keyboard.press("Enter");
    await page.waitForLoadState();
    reader.steps += 1;
    return;
  }
  throw new Error(`no link says ${words} within ${PATIENCE} tabs of ${page.url()}`);
}

const textOf = async ({ page }: Reader): Promise<string> =>
  (await page.locator("main").innerText()).replaceAll(/\s+/g, " ");

interface Rows {
  readonly rows: readonly { readonly [column: string]: string | number | readonly string[] | null }[];
}
const ledger = (name: string): Rows["rows"] =>
  (JSON.parse(readFileSync(join(bag, `data/ledgers/${name}.json`), "utf8")) as Rows).rows;

it("tells the history of the wing spar, from the timber that came to the signature on it", async () => {
  const reader = await asks("How was a part made, from timber to signature?");
  await follow(reader, "Main spar");
  expect(reader.steps).toBeLessThanOrEqual(3);
  const text = await textOf(reader);
  const joints = ledger("joints").filter(({ assembly }) => assembly === "wing-spar");
  expect(joints.length).toBeGreaterThan(10);
  for (const { joint, state } of joints) expect(text).toMatch(new RegExp(`Joint ${joint}, [^.]*? ${state} `));
  const order = [
    /Lot S-1 came/,
    /Batch B-0\d+/,
    /closes the box ?not signed ?: Edith/,
    /closes the box ?signed ?: Edith/,
  ].map((words) => text.search(words));
  expect(order.every((at) => at > 0)).toBe(true);
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(await reader.page.locator("main img").count()).toBeGreaterThan(5);
});

it("tells what was recalled, and what became of each joint that held it", async () => {
  const reader = await asks("What was recalled, and what became of each joint?");
  const recalled = ledger("stock").filter(({ recalled: is }) => is === "yes");
  expect(recalled).toHaveLength(1);
  const [lot = ""] = recalled.map(({ lot: id }) => String(id));
  const batches = ledger("batches").filter((row) => [row["resin_lot"], row["hardener_lot"]].includes(lot));
  const held = new Set(batches.flatMap(({ joints }) => joints as readonly string[]));
  const lines = (await reader.page.locator(`#lot-${lot} li`).allInnerTexts()).map((line) =>
    line.replaceAll(/\s+/g, " "),
  );
  expect(held.size).toBeGreaterThan(2);
  expect(lines).toHaveLength(held.size);
  for (const id of held) {
    const state = String(ledger("joints").find(({ joint }) => joint === id)?.["state"]);
    expect(lines).toContainEqual(
      expect.stringMatching(new RegExp(`^${id}, .*: ${state} ?\\. (?:It holds it still|Its glue was taken out)`)),
    );
  }
  expect(reader.steps).toBeLessThanOrEqual(3);
});

it("tells the hours in all, and whose they are", async () => {
  const both = [...ledger("hours"), ...ledger("earlier-hours")];
  const sum = (rows: Rows["rows"]): string => hoursWords(rows.reduce((all, { minutes }) => all + Number(minutes), 0));
  const all = await asks("How many hours, and when?");
  expect(await textOf(all)).toContain(`${sum(both)} worked`);
  const whose = await asks("Whose hours?");
  const text = await textOf(whose);
  for (const name of new Set(both.map((row) => String(row["name"]))))
    expect(text).toContain(`${name} ${sum(both.filter((row) => row["name"] === name))}`);
  expect(all.steps + whose.steps).toBeLessThanOrEqual(3);
});

it("tells which departures are still open, as the index of events in the README does", async () => {
  const reader = await asks("Which departures from the drawing are still open?");
  const rows = await reader.page.locator("main tbody tr").allInnerTexts();
  const open = rows
    .filter((row) => !/accepted by Edith Marrowby, paper: [^;]*$/.test(row))
    .map((row) => /D-\d+/.exec(row)?.[0]);
  const events = readme.replaceAll(/\n {14}/g, " ").split("\n");
  const told = events.filter((line) => / Departure\. /.test(line));
  const openTold = told
    .filter((line) => / It is not accepted| that is still open/.test(line))
    .map((line) => /D-\d+/.exec(line)?.[0]);
  expect(told).toHaveLength(rows.length);
  expect(openTold.length).toBeGreaterThan(2);
  expect(open.sort()).toEqual(openTold.sort());
  expect(reader.steps).toBeLessThanOrEqual(3);
});

it("tells how to find out whether it is unaltered, by commands that say so", async () => {
  const reader = await asks("Is it unaltered?");
  const commands = await reader.page.locator("#check + * ~ section").first().locator("dt code").allInnerTexts();
  expect(commands.length).toBe(4);
  const said = (): string =>
    commands
      .map((line) => {
        try {
          return execFileSync("sh", ["-c", `${line} 2>&1`], { cwd: bag, encoding: "utf8" });
        } catch (error) {
          return String((error as { stdout?: string }).stdout);
        }
      })
      .join("");
  expect(said()).toBe("");
  expect(reader.steps + 1).toBeLessThanOrEqual(3);
  const home = join(bag, "data/site/home.html");
  const kept = readFileSync(home);
  writeFileSync(home, `${kept.toString()} `);
  expect(said()).toContain("data/site/home.html: FAILED");
  writeFileSync(home, kept);
});
