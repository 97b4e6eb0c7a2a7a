import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as pause } from "node:timers/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readDrawing } from "../../src/publish/pictures/drawing.ts";
import { FORGED, HOSTILE } from "../publish/drawings/hostile.ts";
import { openBrowser } from "./browsers.ts";

let browser: Browser;
let server: Server;
let own: string;
let shown = "";

beforeAll(async () => {
  browser = await openBrowser();
  server = createServer((_request, response) => {
    response.setHeader("content-type", "image/svg+xml; charset=utf-8");
    response.end(shown);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  own = `http://127.0.0.1:${(server.address() as AddressInfo).port}/drawing.svg`;
});
afterAll(async () => {
  await browser.close();
  server.close();
});

const HOST = "http://elsewhere.invalid";
const filled = (svg: string): string => svg.replaceAll("HOSTNAME", "elsewhere.invalid").replaceAll("HOST", HOST);

/** What a browser does when it opens a drawing by itself, besides showing it. */
async function doneBy(page: Page, svg: string): Promise<string[]> {
  const done: string[] = [];
  shown = svg;
  const onRequest = (request: { url(): string }): void => {
    if (request.url() !== own && !request.url().endsWith("/favicon.ico")) done.push(request.url());
  };
  const onDialog = (dialog: { dismiss(): Promise<void> }): void => {
    done.push("ran a script");
    void dialog.dismiss();
  };
  page.on("request", onRequest);
  page.on("dialog", onDialog);
  await page.goto(own).catch(() => done.push("went elsewhere"));
  await pause(30);
  page.off("request", onRequest);
  page.off("dialog", onDialog);
  return done;
}

describe("Drawings that ask a host or run a script when opened by themselves", () => {
  it("are 60 and more, and do so in this browser as they are", async () => {
    const page = await (await browser.newContext()).newPage();
    const harmful: string[] = [];
    for (const [what, svg] of Object.entries(HOSTILE))
      if ((await doneBy(page, filled(svg))).length > 0) harmful.push(what);
    await page.context().close();
    expect(Object.keys(HOSTILE).length).toBeGreaterThan(60);
    expect(harmful.length).toBeGreaterThan(45);
  });

  it("do neither as they are published, where they are", async () => {
    const page = await (await browser.newContext()).newPage();
    const wrong: string[] = [];
    for (const [what, svg] of [...Object.entries(HOSTILE), ...FORGED.map((each) => [each, each] as const)]) {
      const drawing = readDrawing(filled(svg));
      if (!("svg" in drawing)) continue;
      for (const done of await doneBy(page, drawing.svg)) wrong.push(`${what}: ${done}`);
    }
    await page.context().close();
    expect(wrong).toEqual([]);
  });
});
