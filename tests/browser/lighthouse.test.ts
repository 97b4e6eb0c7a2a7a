import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtDemo } from "./demo.ts";
import { type Form, type Lighthouse, openLighthouse } from "./lighthouse.ts";
import { serve, type Served } from "./serve.ts";

/** The score for speed is a timing, which no test may be; `npm run bench -- pages` tells it. */
const CATEGORIES = ["accessibility", "best-practices", "seo"];
/** Pages, and the most that a screen waits for on one: sheets that are not for paper, scripts, and bytes of all; pictures come when they are scrolled to. */
const PAGES = [
  "index.html",
  "entries.html",
  "entry/2026-11-20-where-it-stands.html",
  "assembly/wing.html",
  "evidence.html",
  "batch/B-018.html",
  "hold-point/WG-H1.html",
];
const MOST_SHEETS = 6;
const MOST_WRITTEN = 30_000;
/** What an inspector takes to the workshop holds more. */
const MOST_OF_A_HOLD_POINT = 45_000;

const site = builtDemo("public");
let served: Served;
let lighthouse: Lighthouse;

beforeAll(async () => {
  served = await serve(site.folder, "/club/pettichaps/");
  lighthouse = await openLighthouse();
});
afterAll(async () => {
  await lighthouse.close();
  await served.close();
});

describe.each<Form>(["mobile", "desktop"])("Lighthouse, as on %s, served from a sub-folder", (form) => {
  it.each(PAGES)("finds nothing amiss with %s: nothing moves, no more is fetched than is shown", async (path) => {
    const { scores, shift, requests, failed, warnings } = await lighthouse.look(served.url + path, form, CATEGORIES);
    const of = (type: string) => requests.filter((request) => request.type === type);
    expect({ failed, warnings }).toEqual({ failed: [], warnings: [] });
    expect(Object.fromEntries(scores)).toEqual({ accessibility: 100, "best-practices": 100, seo: 100 });
    expect(shift).toBe(0);
    expect(of("Document")).toHaveLength(1);
    expect(of("Stylesheet").filter(({ url }) => !/print\.css$/.test(url)).length).toBeLessThanOrEqual(MOST_SHEETS);
    expect(of("Script").length).toBeLessThanOrEqual(1);
    expect(requests.filter(({ url }) => !url.startsWith(served.url) && !url.startsWith("data:"))).toEqual([]);
    const written = ["Document", "Stylesheet", "Script"].flatMap(of).reduce((sum, { bytes }) => sum + bytes, 0);
    expect(written).toBeGreaterThan(5_000);
    expect(written).toBeLessThan(path.startsWith("hold-point/") ? MOST_OF_A_HOLD_POINT : MOST_WRITTEN);
  });
});
