import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type HTMLElement, parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { builtDemo, onePageOfEachKind } from "../browser/demo.ts";

const site = builtDemo("inspector");

const textOf = (sheet: string): string => readFileSync(join(site.folder, "assets", sheet), "utf8");

/** Selectors of a sheet for what stands on a page, without states and generated parts. */
function selectorsIn(sheet: string): string[] {
  const css = textOf(sheet)
    .replace(/@media[^{]*\{/g, "")
    .replace(/\{[^}]*\}/g, "\n");
  const plain = css.split(/[\n,}]/).map((selector) => selector.replace(/::?[a-z-]+(\([^)]*\))?/g, "").trim());
  return [...new Set(plain)].filter((selector) => /^[a-z.]/.test(selector) && selector.includes("."));
}

const sheets = new Map(
  readdirSync(join(site.folder, "assets"))
    .filter((name) => name.endsWith(".css"))
    .map((name) => [name, selectorsIn(name)]),
);

function matches(root: HTMLElement, classes: ReadonlySet<string>, selector: string): boolean {
  const named = [...selector.matchAll(/\.([\w-]+)/g)].map(([, name]) => name ?? "");
  return named.every((name) => classes.has(name)) && root.querySelector(selector) !== null;
}

describe("The style sheets of a page", () => {
  it("hold rules, so that this test cannot pass on nothing", () => {
    expect([...sheets].filter(([, selectors]) => selectors.length < 3)).toEqual([]);
    expect(sheets.size).toBeGreaterThan(8);
  });

  it("are all those that have a rule for anything on it", () => {
    const missing: string[] = [];
    for (const path of onePageOfEachKind(site).filter((page) => page !== "404.html")) {
      const root = parse(readFileSync(join(site.folder, path), "utf8"));
      const linked = root
        .querySelectorAll("link[rel=stylesheet]")
        .map((link) => link.getAttribute("href")?.split("/").at(-1));
      const carried = root.querySelectorAll("style").map((style) => style.textContent);
      const isTaken = (sheet: string): boolean =>
        linked.includes(sheet) || carried.some((css) => css.includes(textOf(sheet)));
      const classes = new Set(root.querySelectorAll("[class]").flatMap((element) => element.classNames.split(/\s+/)));
      for (const [sheet, selectors] of sheets) {
        if (isTaken(sheet)) continue;
        missing.push(
          ...selectors
            .filter((selector) => matches(root, classes, selector))
            .map((selector) => `${path} lacks ${sheet} for ${selector}`),
        );
      }
    }
    expect(missing).toEqual([]);
  });
});
