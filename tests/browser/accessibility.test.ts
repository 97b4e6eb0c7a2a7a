import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SCHEMES, openBrowser } from "./browsers.ts";
import { builtDemo, onePageOfEachKind } from "./demo.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WCAG_22_AA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

const site = builtDemo("inspector");
const kinds = onePageOfEachKind(site);
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** What axe judges by colours; all else is the same in light and dark. */
const COLOURS = ["color-contrast", "link-in-text-block"];
/** So long that its colours take most of a minute; they stand in one column, and are asked for at one width. */
const LONGEST = "appendix.html";

/** What axe is asked of a page: a full look in light, the colours alone in dark. */
function asked(path: string, colorScheme: "light" | "dark", width: number): object | undefined {
  const isColoursSeen = path === LONGEST && width < 1000;
  const resultTypes = ["violations", "incomplete"];
  const checks = { "color-contrast": { options: { ignoreLength: true } } };
  if (colorScheme === "dark") return isColoursSeen ? undefined : { runOnly: COLOURS, resultTypes, checks };
  const rules = Object.fromEntries(isColoursSeen ? COLOURS.map((rule) => [rule, { enabled: false }]) : []);
  return { runOnly: WCAG_22_AA, rules, resultTypes, checks };
}

describe.each(SCHEMES)("In %s colours axe finds nothing against WCAG 2.2 AA", (colorScheme) => {
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
      for (const path of kinds) {
        const options = asked(path, colorScheme, width);
        if (options === undefined) continue;
        await page.goto(pathToFileURL(`${site.folder}/${path}`).href);
        await page.evaluate(AXE);
        const results = await page.evaluate(async (what) => {
          const axe = (window as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe;
          return axe.run(what);
        }, options);
        expect(results.passes.length, path).toBeGreaterThan(colorScheme === "light" ? 5 : 0);
        violations.push(...[...results.violations, ...unmeasured(results)].map((found) => told(path, found)));
      }
      await context.close();
      expect(violations).toEqual([]);
    },
    900_000,
  );
});

/** Texts of which axe cannot tell what they stand on; of those in drawings it never can: `drawn-text.test.ts` measures them. */
function unmeasured({ incomplete }: AxeResults): AxeResults["incomplete"] {
  return incomplete
    .filter(({ id }) => id === "color-contrast")
    .map((found) => ({ ...found, nodes: found.nodes.filter(({ html }) => !/^<(?:text|tspan)\b/.test(html)) }))
    .filter(({ nodes }) => nodes.length > 0);
}

function told(path: string, { id, help, nodes }: AxeResults["violations"][number]): string {
  const where = nodes.slice(0, 2).map((node) => node.html.slice(0, 160));
  return `${path}: ${id}, ${help}: ${where.join(" | ")}`;
}
