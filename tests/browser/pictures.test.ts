import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";
import { serve, type Served } from "./serve.ts";

const site = builtDemo("public");
const kinds = [...onePageOfEachKind(site), "entry/2026-10-31-beam-to-frame.html"];
let browser: Browser;
let served: Served;

beforeAll(async () => {
  browser = await openBrowser();
  served = await serve(site.folder, "/club/");
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

interface Seen {
  readonly src: string;
  readonly sized: boolean;
  readonly lazy: boolean;
  readonly coloured: boolean;
  readonly alt: string;
  readonly top: number;
  readonly laidOut: number;
  /** Pixels across of the file the browser chose; 0 where it chose none yet. */
  readonly chosen: number;
  readonly widest: number;
  readonly drawn: boolean;
}

/** Runs in the page: each picture as it is laid out and as the browser chose it. */
/** What is far down these must be there when they are printed. */
const PRINTED = /^(?:appendix|hold-point\/)/;

function picturesSeen(): Seen[] {
  return [...document.querySelectorAll<HTMLImageElement>("main img")].map((image) => {
    const widths = [
      ...((image.closest("picture")?.querySelector("source") ?? image).getAttribute("srcset")?.matchAll(/ (\d+)w/g) ??
        []),
    ].map(([, width]) => Number(width));
    const box = image.getBoundingClientRect();
    return {
      src: image.currentSrc,
      sized: image.hasAttribute("width") && image.hasAttribute("height"),
      lazy: image.dataset["was"] === "lazy",
      coloured: getComputedStyle(image).backgroundColor !== "rgba(0, 0, 0, 0)",
      alt: image.alt,
      top: box.top + window.scrollY,
      laidOut: box.width,
      chosen: Number(/-(\d+)\.(?:webp|jpg)$/.exec(image.currentSrc)?.[1] ?? 0),
      widest: Math.max(0, ...widths),
      drawn: image.currentSrc.endsWith(".svg"),
    };
  });
}

const DEVICES = {
  phone: { width: 390, height: 844, deviceScaleFactor: 3 },
  desktop: { width: 1440, height: 900, deviceScaleFactor: 1 },
};

describe.each(Object.entries(DEVICES))("Pictures on a %s", (_device, { width, height, deviceScaleFactor }) => {
  const seen: (Seen & { readonly path: string })[] = [];
  beforeAll(async () => {
    const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor });
    const page = await context.newPage();
    for (const path of kinds) {
      await page.goto(served.url + path);
      await page.evaluate(async () => {
        for (const image of document.images) {
          image.dataset["was"] = image.loading;
          image.loading = "eager";
        }
        await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
      });
      seen.push(...(await page.evaluate(picturesSeen)).map((picture) => ({ ...picture, path })));
    }
    await context.close();
  });
  const wrong = (is: (picture: Seen) => boolean): string[] =>
    seen
      .filter(is)
      .map(
        ({ path, src, top, laidOut, chosen }) =>
          `${path}: ${src} at ${Math.round(top)}, ${Math.round(laidOut)} wide, chosen ${chosen}`,
      );

  it("are many, each with its size and its words, a photograph with a colour to stand in its place", () => {
    expect(seen.length).toBeGreaterThan(40);
    expect(wrong(({ sized, alt, coloured, drawn }) => !sized || alt === "" || coloured === drawn)).toEqual([]);
  });

  it("come only when scrolled near, but for a large one at the top of a page", () => {
    const firsts = new Set(kinds.flatMap((path) => seen.find((picture) => picture.path === path) ?? []));
    expect(
      seen
        .filter((picture) => !picture.lazy && !firsts.has(picture) && !PRINTED.test(picture.path))
        .map(({ path, src }) => `${path}: ${src}`),
    ).toEqual([]);
    expect(wrong(({ lazy, top, drawn, laidOut }) => lazy && !drawn && top < height / 3 && laidOut > width / 3)).toEqual(
      [],
    );
  });

  it("are chosen wide enough to be sharp wherever there is a file so wide, and hardly wider than that", () => {
    const needed = ({ laidOut }: Seen): number => laidOut * deviceScaleFactor;
    expect(seen.filter(({ chosen }) => chosen > 0).length).toBeGreaterThan(30);
    expect(
      wrong((picture) => picture.chosen > 0 && picture.chosen < Math.min(needed(picture) * 0.9, picture.widest)),
    ).toEqual([]);
    expect(wrong((picture) => picture.chosen > Math.max(480, needed(picture) * 2.2))).toEqual([]);
  });
});
