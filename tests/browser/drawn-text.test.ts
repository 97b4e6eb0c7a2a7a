import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isChromium, openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";

const site = builtDemo("inspector");
const kinds = onePageOfEachKind(site).filter((path) => path !== "appendix.html");
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** For text that is not large: WCAG 2.2, 1.4.3 (from memory). */
const LEAST = 4.5;

/**
 * Every text of a drawing in a page with its contrast to the flat ground that it stands on: the box drawn behind it, or what is behind the
 * whole drawing. By the relative luminance of WCAG 2.2 (from memory).
 */
function contrasts(): { readonly text: string; readonly ratio: number }[] {
  const painter = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
  const rgba = (colour: string): number[] => {
    if (painter === null) throw new Error("no canvas");
    painter.clearRect(0, 0, 1, 1);
    painter.fillStyle = colour;
    painter.fillRect(0, 0, 1, 1);
    return [...painter.getImageData(0, 0, 1, 1).data];
  };
  const luminance = ([red = 0, green = 0, blue = 0]: number[]): number => {
    const part = (byte: number): number =>
      byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;
    return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
  };
  const behind = (from: Element | null): string => {
    for (let one = from; one !== null; one = one.parentElement) {
      const { backgroundColor } = getComputedStyle(one);
      if (rgba(backgroundColor)[3] === 255) return backgroundColor;
    }
    return getComputedStyle(document.documentElement).colorScheme.includes("dark") ? "Canvas" : "white";
  };
  const groundOf = (text: Element): string => {
    const box = text.parentElement?.querySelector(":scope > rect");
    const fill = box === null || box === undefined ? "none" : getComputedStyle(box).fill;
    const { opacity } = box === null || box === undefined ? { opacity: "0" } : getComputedStyle(box);
    return fill !== "none" && opacity === "1" && box?.closest(".trace__box") !== null
      ? fill
      : behind(text.closest("svg"));
  };
  return [...document.querySelectorAll("main svg text")]
    .filter((text) => text.getClientRects().length > 0 && (text.textContent ?? "").trim() !== "")
    .map((text) => {
      const [one, other] = [getComputedStyle(text).fill, groundOf(text)].map((colour) => luminance(rgba(colour)));
      const [light, dark] = [Math.max(one ?? 0, other ?? 0), Math.min(one ?? 0, other ?? 0)];
      return { text: text.textContent ?? "", ratio: (light + 0.05) / (dark + 0.05) };
    });
}

const ALL_WAYS: readonly (readonly [string, BrowserContextOptions])[] = [
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["colours that the reader chose", { forcedColors: "active" }],
  ["dark colours that the reader chose", { forcedColors: "active", colorScheme: "dark" }],
];

const WAYS = ALL_WAYS.slice(0, isChromium ? undefined : 1);

describe.each(WAYS)("In %s", (_, options) => {
  it("every text in a drawing can be read on the ground that it stands on", async () => {
    const page = await (await browser.newContext({ ...options, viewport: { width: 1280, height: 900 } })).newPage();
    const pale: string[] = [];
    let seen = 0;
    for (const path of kinds) {
      await page.goto(pathToFileURL(`${site.folder}/${path}`).href);
      const found = await page.evaluate(contrasts);
      seen += found.length;
      pale.push(
        ...found.filter(({ ratio }) => ratio < LEAST).map(({ text, ratio }) => `${path}: ${text}, ${ratio.toFixed(2)}`),
      );
    }
    await page.context().close();
    expect(seen).toBeGreaterThan(200);
    expect(pale).toEqual([]);
  }, 300_000);
});
