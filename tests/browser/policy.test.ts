import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parse } from "node-html-parser";
import type { Browser, BrowserContextOptions } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { lookAtAll, openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";
import { serve, type Served } from "./serve.ts";

const site = builtDemo("inspector");
const kinds = onePageOfEachKind(site);
let browser: Browser;
let inFolder: Served;

beforeAll(async () => {
  browser = await openBrowser();
  inFolder = await serve(site.folder, "/workshop/pettichaps/");
});
afterAll(async () => {
  await browser.close();
  await inFolder.close();
});

const USUAL =
  /^default-src 'none'; script-src 'self'; style-src 'self'( 'sha256-[\w+/]{43}=')*; img-src 'self'( data:)?; media-src 'self'; connect-src 'none'; frame-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'$/;

describe("Every page", () => {
  it("states its policy before anything that it could hold for, and has no style attribute and no script of its own", () => {
    const wrong: string[] = [];
    for (const path of site.pages) {
      const html = readFileSync(join(site.folder, path), "utf8");
      const page = parse(html, { blockTextElements: { script: true, style: true } });
      const [charset, policy] = page.querySelectorAll("head > *");
      if (charset?.getAttribute("charset") !== "utf-8" || !USUAL.test(policy?.getAttribute("content") ?? ""))
        wrong.push(`${path}: ${policy?.outerHTML ?? "no head"}`);
      if (html.includes("img-src 'self' data:") !== (path === "404.html")) wrong.push(`${path}: pictures within`);
      if (page.querySelectorAll("[http-equiv]").length !== 1) wrong.push(`${path}: more than one policy`);
      if (page.querySelectorAll("[style], base, form, iframe, object, embed").length > 0)
        wrong.push(`${path}: has what the policy forbids`);
      const scripts = page.querySelectorAll("script:not([src])").map((script) => script.getAttribute("type"));
      if (scripts.some((type) => type !== "application/json")) wrong.push(`${path}: a script of its own`);
    }
    expect(site.pages.length).toBeGreaterThan(100);
    expect(wrong).toEqual([]);
  });
});

/** `pages.test.ts` looks at the same on a desktop, where it listens for any complaint of the browser's. */
const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 800 }, isMobile: true, hasTouch: true };
const PLACES: { readonly [place: string]: () => string } = {
  "a disk": () => `${pathToFileURL(site.folder).href}/`,
  "a sub-folder of a server": () => inFolder.url,
};

describe.each(Object.keys(PLACES))("Opened from %s", (place) => {
  it("on a phone, no kind of page does what its policy forbids", async () => {
    const context = await browser.newContext(PHONE);
    const page = await context.newPage();
    const wrong: string[] = [];
    await page.exposeFunction("tellViolation", (told: string) => void wrong.push(told));
    await page.addInitScript(() => {
      document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
        const { tellViolation } = window as unknown as { tellViolation: (told: string) => void };
        tellViolation(`${location.pathname}: ${violatedDirective} ${blockedURI}`);
      });
    });
    page.on("console", (message) => {
      if (message.type() === "error") wrong.push(`${page.url()}: ${message.text()}`);
    });
    let charts = 0;
    for (const path of kinds) {
      await page.goto((PLACES[place]?.() ?? "") + path);
      charts += await lookAtAll(page);
    }
    await context.close();
    expect(charts).toBeGreaterThan(0);
    expect(wrong).toEqual([]);
  });

  it("a script and a style that were put into a page do nothing", async () => {
    const page = await browser.newPage();
    await page.goto(`${PLACES[place]?.() ?? ""}index.html`);
    const done = await page.evaluate(async () => {
      document.body.insertAdjacentHTML(
        "beforeend",
        `<p id="put" style="color:rgb(1, 2, 3)" onclick="document.title='ran'">a</p>`,
      );
      const put = document.querySelector<HTMLElement>("#put");
      put?.click();
      const script = document.createElement("script");
      script.textContent = "document.title = 'ran'";
      document.head.append(script);
      const asked = await fetch("index.html").then(
        () => "asked",
        () => "refused",
      );
      return { title: document.title, colour: put === null ? "" : getComputedStyle(put).color, asked };
    });
    await page.close();
    expect(done).toMatchObject({ asked: "refused" });
    expect(done.title).not.toBe("ran");
    expect(done.colour).not.toBe("rgb(1, 2, 3)");
  });
});
