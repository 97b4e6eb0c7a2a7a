/** A phone of 390 × 844 px with the page at the bench, driven by touch. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { pathOf } from "../browser/browsers.ts";
import { command } from "../cli/command.ts";
import { writeAll } from "../publish/scratch.ts";

export const NOW = { now: () => new Date(), timeZone: "Europe/Lisbon" };

/** A record in a folder, and the page made of it beside. */
export async function benchOfRecord(
  folder: string,
  files: { readonly [path: string]: string },
  changed = NOW,
): Promise<{ readonly content: string; readonly bench: string }> {
  const [content, bench] = [join(folder, "content"), join(folder, "bench")];
  writeAll(content, files);
  await buildBench(content, bench, changed);
  return { content, bench };
}

export async function buildBench(content: string, bench: string, changed = NOW): Promise<void> {
  const { code, err } = await command(["build", content, "--edition", "bench", "--out", bench], changed);
  if (code !== 0) throw new Error(err);
}

export const addressIn = (bench: string): string => pathToFileURL(join(bench, "index.html")).href;

export interface PhoneOptions {
  readonly colorScheme?: "light" | "dark";
  /** Where the browser keeps what is kept; without it a new place. */
  readonly profile?: string;
  readonly zone?: string;
}

/** What a person does with a phone, whichever browser is in it. */
export interface Hand {
  readonly taps: number;
  readonly asked: readonly string[];
  readonly errors: readonly string[];
  readonly go: (address: string) => Promise<void>;
  /** Resolves once the page would load without a network. */
  readonly ready: () => Promise<void>;
  readonly killTab: (address: string) => Promise<void>;
  readonly tap: (words: string | RegExp, section?: string) => Promise<void>;
  readonly mark: () => Promise<string>;
  readonly heading: () => Promise<string>;
  readonly text: (selector: string) => Promise<string>;
  readonly saved: () => Promise<{ readonly name: string; readonly text: string }>;
  readonly close: () => Promise<void>;
}

/** One browser, as a person holds it: taps are counted, and none comes before the screen takes it. */
export class Phone implements Hand {
  taps = 0;
  readonly asked: string[] = [];
  readonly errors: string[] = [];

  private constructor(
    readonly context: BrowserContext,
    public page: Page,
    readonly profile: string,
  ) {}

  static async open({ colorScheme = "light", profile, zone = "Europe/Lisbon" }: PhoneOptions = {}): Promise<Phone> {
    const executablePath = pathOf("chromium");
    if (executablePath === undefined) throw new Error("No Chromium: see tests/browser/browsers-setup.ts");
    const place = profile ?? mkdtempSync(join(tmpdir(), "scarfline-phone-"));
    const context = await chromium.launchPersistentContext(place, {
      executablePath,
      args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"],
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      acceptDownloads: true,
      timezoneId: zone,
      colorScheme,
    });
    const phone = new Phone(context, context.pages()[0] ?? (await context.newPage()), place);
    phone.#hear();
    return phone;
  }

  #hear(): void {
    this.page.on("request", (request) => this.asked.push(request.url()));
    this.page.on("pageerror", (error) => this.errors.push(error.message));
    this.page.on("console", (message) => {
      if (message.type() === "error") this.errors.push(message.text());
    });
  }

  async go(address: string): Promise<void> {
    await this.page.goto(address);
    await this.page.waitForSelector("footer, h1");
  }

  async ready(): Promise<void> {
    await this.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  }

  /** The tab dies at once, without a word to the page; another is opened. */
  async killTab(address: string): Promise<void> {
    const session = await this.context.newCDPSession(this.page);
    const died = this.page.waitForEvent("crash");
    void session.send("Page.crash").catch(() => undefined);
    await died;
    const dead = this.page;
    this.page = await this.context.newPage();
    await dead.close();
    this.#hear();
    await this.go(address);
  }

  /** Waits until the screen takes a tap, and taps what reads so, in the section that holds some words where they are given. */
  async tap(words: string | RegExp, section?: string): Promise<void> {
    await this.settled();
    const name = typeof words === "string" ? new RegExp(`^${escaped(words)}$`) : words;
    const place = section === undefined ? this.page : this.page.locator("section", { hasText: section });
    const button = place.getByRole("button", { name }).first();
    const before = await this.mark();
    await button.tap({ timeout: 5000 });
    this.taps += 1;
    await this.page
      .waitForFunction((was) => document.body.innerText !== was, before, { timeout: 5000 })
      .catch(() => undefined);
  }

  mark(): Promise<string> {
    return this.page.evaluate(() => document.body.innerText);
  }

  async settled(): Promise<void> {
    await this.page.waitForFunction(() => !document.documentElement.hasAttribute("data-settling"));
  }

  heading(): Promise<string> {
    return this.page.locator("h1").innerText();
  }

  text(selector: string): Promise<string> {
    return this.page.locator(selector).first().innerText();
  }

  /** Taps what saves the file, and reads what was saved. */
  async saved(): Promise<{ readonly name: string; readonly text: string }> {
    const coming = this.page.waitForEvent("download");
    await this.tap("Save it as a file");
    const download = await coming;
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
  }

  async close(keep = false): Promise<void> {
    await this.context.close();
    if (!keep) rmSync(this.profile, { recursive: true, force: true });
  }
}

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
