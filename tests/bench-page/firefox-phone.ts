/** The same phone with a Firefox in it. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import puppeteer, { type Browser, type ElementHandle, type Page } from "puppeteer-core";
import { pathOf } from "../browser/browsers.ts";
import type { Hand } from "./phone.ts";

/** Driven by WebDriver BiDi through a library that can touch; what it saves goes into a folder without a question. */
async function openTouched(downloads: string): Promise<Browser> {
  const executablePath = pathOf("firefox");
  if (executablePath === undefined) throw new Error("No firefox: see tests/browser/browsers-setup.ts");
  return puppeteer.launch({
    browser: "firefox",
    executablePath,
    protocol: "webDriverBiDi",
    headless: true,
    extraPrefsFirefox: {
      "browser.download.folderList": 2,
      "browser.download.dir": downloads,
      "browser.download.always_ask_before_handling_new_types": false,
    },
  });
}

/** Libraries ask whether code may be made of text, are refused by the page's policy, and go on without: Firefox tells of it. */
const ASKED_AND_REFUSED = /Content-Security-Policy: .* blocked a JavaScript eval /u;

export class FirefoxPhone implements Hand {
  taps = 0;
  readonly asked: string[] = [];
  readonly errors: string[] = [];

  private constructor(
    readonly browser: Browser,
    public page: Page,
    readonly downloads: string,
  ) {}

  static async open(): Promise<FirefoxPhone> {
    const downloads = mkdtempSync(join(tmpdir(), "scarfline-firefox-"));
    const browser = await openTouched(downloads);
    const phone = new FirefoxPhone(browser, await browser.newPage(), downloads);
    await phone.#hear();
    return phone;
  }

  async #hear(): Promise<void> {
    await this.page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true });
    this.page.on("request", (request) => this.asked.push(request.url()));
    this.page.on("pageerror", (error) => {
      if (!ASKED_AND_REFUSED.test(String(error))) this.errors.push(String(error));
    });
  }

  async go(address: string): Promise<void> {
    await this.page.goto(address);
    if (!(await this.#once(() => document.querySelector("footer, h1") !== null))) throw new Error("no page came");
  }

  async ready(): Promise<void> {
    await this.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  }

  /** The processes that hold its pages die at once; another tab is opened. */
  async killTab(address: string): Promise<void> {
    const own = this.browser.process()?.pid;
    const listed = execFileSync("ps", ["-eo", "pid=,ppid=,args="], { encoding: "utf8" }).split("\n");
    const all = listed.map((line) => /^ *(\d+) +(\d+) +(.*)$/.exec(line) ?? []);
    const within = (pid: number | undefined): readonly (readonly (string | undefined)[])[] =>
      all.filter(([, , parent]) => Number(parent) === pid).flatMap((one) => [one, ...within(Number(one[1]))]);
    const tabs = within(own).filter(([, , , args = ""]) => args.includes("-contentproc") && / tab$/.test(args.trim()));
    if (tabs.length === 0) throw new Error("no process of a tab to kill");
    for (const [, pid] of tabs) process.kill(Number(pid), "SIGKILL");
    await new Promise((done) => setTimeout(done, 1000));
    const dead = this.page;
    this.page = await this.browser.newPage();
    void dead.close().catch(() => undefined);
    await this.#hear();
    await this.go(address);
  }

  async tap(words: string | RegExp, section?: string): Promise<void> {
    await this.#once(() => !document.documentElement.hasAttribute("data-settling"));
    const before = await this.mark();
    const reads = typeof words === "string" ? words : words.source;
    const found = await this.page.evaluateHandle(
      (text, isWhole, within) =>
        [...document.querySelectorAll("button")].find((button) => {
          const name = button.textContent?.trim() ?? "";
          if (within !== undefined && !button.closest("section")?.textContent?.includes(within)) return false;
          return isWhole ? name === text : new RegExp(text).test(name);
        }),
      reads,
      typeof words === "string",
      section,
    );
    const button = found.asElement() as ElementHandle<Element> | null;
    if (button === null) throw new Error(`no button ${reads}: ${before}`);
    await button.tap();
    this.taps += 1;
    await this.#once((was) => document.body.innerText !== was, before);
  }

  /** Whether it came to hold within some seconds; asked from outside, since the page's policy lets nothing be made of text. */
  async #once(holds: (was: string) => boolean, was = ""): Promise<boolean> {
    for (let tries = 0; tries < 250; tries += 1) {
      if (await this.page.evaluate(holds, was)) return true;
      await new Promise((done) => setTimeout(done, 20));
    }
    return false;
  }

  mark(): Promise<string> {
    return this.page.evaluate(() => document.body.innerText);
  }

  heading(): Promise<string> {
    return this.text("h1");
  }

  text(selector: string): Promise<string> {
    return this.page.$eval(selector, (part) => (part as HTMLElement).innerText);
  }

  async saved(): Promise<{ readonly name: string; readonly text: string }> {
    await this.tap("Save it as a file");
    for (let wait = 0; wait < 100; wait += 1) {
      const name = readdirSync(this.downloads).find((one) => one.endsWith(".md"));
      const text = name === undefined ? "" : readFileSync(join(this.downloads, name), "utf8");
      if (name !== undefined && text.trimEnd().endsWith("---")) return { name, text };
      await new Promise((done) => setTimeout(done, 100));
    }
    throw new Error("Firefox saved no file");
  }

  async close(): Promise<void> {
    await this.browser.close();
    rmSync(this.downloads, { recursive: true, force: true });
  }
}
