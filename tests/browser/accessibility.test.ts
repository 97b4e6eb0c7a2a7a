import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./chromium.ts";
import { buildDemo, onePageOfEachKind } from "./demo.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WCAG_22_AA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

const site = buildDemo("inspector");
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  site.remove();
});

describe.each(["light", "dark"] as const)("In %s colours axe finds nothing against WCAG 2.2 AA", (colorScheme) => {
  it.each([390, 1280])(
    "at %i px, on every kind of page",
    async (width) => {
      const context = await browser.newContext({
        colorScheme,
        viewport: { width, height: 900 },
        reducedMotion: "reduce",
      });
      const page = await context.newPage();
      const violations: string[] = [];
      for (const path of onePageOfEachKind(site)) {
        await page.goto(pathToFileURL(`${site.folder}/${path}`).href);
        await page.evaluate(AXE);
        const results = await page.evaluate(async (tags) => {
          const axe = (window as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe;
          return axe.run({ runOnly: tags });
        }, WCAG_22_AA);
        expect(results.passes.length, path).toBeGreaterThan(5);
        violations.push(
          ...results.violations.map(
            (found) =>
              `${path}: ${found.id}, ${found.help}: ${found.nodes
                .slice(0, 2)
                .map((node) => node.html.slice(0, 160))
                .join(" | ")}`,
          ),
        );
      }
      await context.close();
      expect(violations).toEqual([]);
    },
    300_000,
  );
});
