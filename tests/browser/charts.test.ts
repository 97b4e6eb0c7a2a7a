import { existsSync } from "node:fs";
import { posix } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SCHEMES, openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("public");
const SIZES = { phone: { width: 390, height: 844 }, desktop: { width: 1280, height: 900 } } as const;
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const address = (path: string): string => pathToFileURL(`${site.folder}/${path}`).href;

async function opened(
  path: string,
  device: keyof typeof SIZES,
  colorScheme: "light" | "dark" = "light",
): Promise<Page> {
  const page = await browser.newPage({ viewport: SIZES[device], colorScheme });
  await page.goto(address(path));
  return page;
}

const drawings = (page: Page) => page.locator("figure[data-chart] .chart__drawing svg:visible");

/** Points at each drawing, and waits for what is laid over it. */
async function pointAtAll(page: Page): Promise<void> {
  for (const figure of await page.locator("figure[data-chart]").all()) {
    await figure.locator(".chart__drawing").hover();
    await figure.locator("canvas:visible").first().waitFor();
  }
}

describe.each(["phone", "desktop"] as const)("A chart on a %s, opened from a disk", (device) => {
  it("asks for no library until somebody points at it, and then keeps its face: not a byte of the drawing changes, nothing moves", async () => {
    const page = await opened("hours.html", device);
    const asked = (): Promise<number> => page.locator("script[src$='chart.umd.js']").count();
    const faces = await drawings(page).evaluateAll((all) => all.map((svg) => svg.outerHTML));
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    expect(faces.length).toBeGreaterThan(3);
    expect(await asked()).toBe(0);
    await pointAtAll(page);
    expect(await asked()).toBe(1);
    expect(await drawings(page).evaluateAll((all) => all.map((svg) => svg.outerHTML))).toEqual(faces);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(height);
    await page.close();
  });

  it("tells its figures on the scales of the drawing: lines of years and of hours lie where Chart.js has them", async () => {
    const page = await opened("hours.html", device);
    await pointAtAll(page);
    const off = await page.evaluate(() => {
      interface Scale {
        getPixelForValue(value: number): number;
      }
      const { Chart } = window as unknown as {
        Chart: { getChart(canvas: Element): { scales: { x: Scale; y: Scale } } };
      };
      return [...document.querySelectorAll(".chart__box")].flatMap((box) => {
        const svg = box.querySelector("svg");
        const canvas = box.querySelector("canvas");
        if (svg === null || canvas === null || canvas.clientWidth === 0) return [];
        const { x, y } = Chart.getChart(canvas).scales;
        const zoom = canvas.clientWidth / svg.viewBox.baseVal.width;
        const years = [...svg.querySelectorAll(".axes .year")].map((text) => [
          Number(text.getAttribute("x")) * zoom,
          x.getPixelForValue(Date.UTC(Number(text.textContent), 0, 1) / 86_400_000),
        ]);
        const hours = [...svg.querySelectorAll('.axes [text-anchor="end"] text')].map((text) => [
          (Number(text.getAttribute("y")) - 4) * zoom,
          y.getPixelForValue(Number(text.textContent?.replace(",", ""))),
        ]);
        return [...years, ...hours].map(([drawn = 0, told = 0]) => Math.abs(drawn - told));
      });
    });
    expect(off.length).toBeGreaterThan(20);
    expect(Math.max(...off)).toBeLessThan(1.5);
    await page.close();
  });

  it("has its unit at the axis and every year of the record", async () => {
    const page = await opened("hours.html", device);
    for (const figure of await page.locator("figure[data-chart]").all()) {
      const words = (await figure.locator("svg:visible text").allInnerTexts()).concat(
        await figure.locator("svg:visible text").evaluateAll((all) => all.map((text) => text.textContent ?? "")),
      );
      expect(words).toContain("hours");
      for (const year of ["2025", "2026"])
        expect(words, await figure.locator("figcaption").innerText()).toContain(year);
    }
    const table = await page.locator("figure[data-chart] tbody tr").count();
    expect(table).toBeGreaterThan(100);
    await page.close();
  });

  it("leaves out what its key is pressed for, and shows it again", async () => {
    const page = await opened("hours.html", device);
    const figure = page.locator("figure[data-chart]").nth(1);
    await figure.locator(".chart__drawing").hover();
    const button = figure.locator(".chart__key button").first();
    await button.click();
    expect(await figure.locator(".bars.series-1:visible").count()).toBe(0);
    expect(await button.getAttribute("aria-pressed")).toBe("false");
    await button.press("Enter");
    expect(await figure.locator(".bars.series-1:visible").count()).toBeGreaterThan(0);
    await page.close();
  });
});

describe("What is drawn", () => {
  it("has letters of 11 px and more on a phone, whatever it is", async () => {
    const page = await opened("hours.html", "phone");
    const small: string[] = [];
    let seen = 0;
    for (const path of [
      "hours.html",
      "forecast.html",
      "charts.html",
      "climate.html",
      "assembly/wing.html",
      "joint/WR-J04.html",
      "batch/B-026.html",
      "lot/H-3.html",
    ]) {
      await page.goto(address(path));
      const sizes = await page
        .locator("svg text:visible")
        .evaluateAll((all) =>
          all.map((text) => ({
            size:
              ((text as SVGTextElement).getScreenCTM()?.a ?? 0) * Number.parseFloat(getComputedStyle(text).fontSize),
            text: text.textContent,
          })),
        );
      seen += sizes.length;
      small.push(
        ...sizes.filter(({ size }) => size < 11).map(({ text, size }) => `${path}: ${text} ${size.toFixed(1)}`),
      );
    }
    await page.close();
    expect(seen).toBeGreaterThan(150);
    expect(small).toEqual([]);
  });

  it.each(SCHEMES)(
    "tells every series from every other in grey, in %s colours: by its dashes or by its lightness",
    async (scheme) => {
      const page = await opened("hours.html", "desktop", scheme);
      const figures = await page.locator(".chart__key").evaluateAll((keys) =>
        keys.map((key) =>
          [...key.querySelectorAll("li[class] path")].map((path) => {
            const { stroke, fill, strokeDasharray } = getComputedStyle(path);
            const isLine = fill === "none";
            return { dash: isLine ? strokeDasharray : "none", colour: isLine ? stroke : fill, isLine };
          }),
        ),
      );
      await page.close();
      const alike = figures.flatMap((series, figure) =>
        series.flatMap((one, n) =>
          series
            .slice(n + 1)
            .flatMap((other, m) =>
              one.isLine === other.isLine && one.dash === other.dash && contrast(one.colour, other.colour) < 1.5
                ? [`${figure}: ${n} and ${n + 1 + m}, ${one.colour} and ${other.colour}`]
                : [],
            ),
        ),
      );
      expect(figures.flat().length).toBeGreaterThan(12);
      expect(alike).toEqual([]);
    },
  );

  it("on a line of time leads to what each mark stands for", async () => {
    const page = await opened("assembly/wing-spar.html", "desktop");
    const marks = await page.locator(".timeline svg:visible .row use").count();
    const links = await page
      .locator(".timeline svg:visible .row a")
      .evaluateAll((all) => all.map((link) => link.getAttribute("href") ?? ""));
    expect(marks).toBeGreaterThan(20);
    expect(links).toHaveLength(marks);
    for (const link of links)
      expect(existsSync(posix.join(site.folder, "assembly", link.replace(/#.*/, ""))), link).toBe(true);
    const words = await page.locator(".timeline svg:visible .row a title").first().textContent();
    await page.locator(".timeline svg:visible .row a").first().click();
    expect(page.url()).not.toContain("wing-spar");
    expect(words).toMatch(/^\d+ \w{3} \d{4}: /);
    await page.close();
  });
});

/** WCAG 2.2, 1.4.3: contrast ratio of two colours as a browser tells them. */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => {
    const share = Number(part) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
