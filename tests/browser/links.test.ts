import { existsSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { type BuiltSite, builtDemo } from "./demo.ts";

interface PageRead {
  readonly links: readonly string[];
  readonly anchors: ReadonlySet<string>;
}

describe.each(["public", "inspector", "archive"] as const)("Every link of the demo's %s edition", (edition) => {
  const site = builtDemo(edition);
  const pages = new Map(site.pages.map((path) => [path, readPage(site, path)]));

  it("is found on every page, so that this test cannot pass on nothing", () => {
    expect(site.pages.length).toBeGreaterThan(250);
    expect(
      [...pages].filter(([path, page]) => path !== "404.html" && page.links.length < 5).map(([path]) => path),
    ).toEqual([]);
  });

  it("is relative or leads outside by a plain link", () => {
    const odd = [...pages].flatMap(([path, page]) =>
      page.links
        .filter((link) => link.startsWith("/") || /^(javascript|data|file):/.test(link))
        .map((link) => `${path} → ${link}`),
    );
    expect(odd).toEqual([]);
  });

  it("leads to a file and an anchor that are there", () => {
    const dead = [...pages].flatMap(([path, page]) =>
      page.links.filter((link) => !leadsSomewhere(link, path, site, pages)).map((link) => `${path} → ${link}`),
    );
    expect(dead).toEqual([]);
  });

  it("reaches every page from the home page", () => {
    const reached = new Set(["index.html"]);
    const ahead = ["index.html"];
    for (let path = ahead.pop(); path !== undefined; path = ahead.pop()) {
      for (const to of (pages.get(path)?.links ?? []).map((link) => target(link, path ?? "").file)) {
        if (pages.has(to) && !reached.has(to)) {
          reached.add(to);
          ahead.push(to);
        }
      }
    }
    expect(site.pages.filter((path) => !reached.has(path))).toEqual(["404.html"]);
  });

  it("lets an inspector go from an assembly to each of its joints' batch, lots and pieces in two clicks", () => {
    const lost: string[] = [];
    for (const path of site.pages.filter((page) => page.startsWith("joint/"))) {
      const fromAssembly = [...pages].some(
        ([from, page]) => from.startsWith("assembly/") && page.links.some((link) => target(link, from).file === path),
      );
      if (!fromAssembly) lost.push(`${path} is on no assembly's page`);
      const text = parse(readFileSync(join(site.folder, path), "utf8")).text;
      const isGlued = !/not glued/i.test(text);
      const kinds = ["batch/", "lot/"].filter(
        (kind) => !(pages.get(path)?.links ?? []).some((link) => target(link, path).file.startsWith(kind)),
      );
      if (isGlued && kinds.length > 0) lost.push(`${path} does not link to its ${kinds.join(" and ")}`);
    }
    expect(lost).toEqual([]);
  });
});

function readPage(site: BuiltSite, path: string): PageRead {
  const root = parse(readFileSync(join(site.folder, path), "utf8"));
  const links = [
    ...["href", "src", "poster", "data"].flatMap((name) =>
      root
        .querySelectorAll(`[${name}]`)
        .filter((element) => element.getAttribute("rel") !== "icon")
        .map((element) => element.getAttribute(name) ?? ""),
    ),
    ...root
      .querySelectorAll("[srcset]")
      .flatMap((element) =>
        (element.getAttribute("srcset") ?? "").split(",").map((part) => part.trim().split(/\s+/)[0] ?? ""),
      ),
  ];
  return { links, anchors: new Set(root.querySelectorAll("[id]").map((element) => element.id)) };
}

function target(link: string, from: string): { file: string; anchor: string } {
  const [path = "", anchor = ""] = decodeURIComponent(link).split("#");
  return { file: path === "" ? from : posix.normalize(posix.join(posix.dirname(from), path)), anchor };
}

function leadsSomewhere(link: string, from: string, site: BuiltSite, pages: ReadonlyMap<string, PageRead>): boolean {
  if (/^(https?|mailto):/.test(link)) return true;
  const { file, anchor } = target(link, from);
  if (file.startsWith("..") || !existsSync(join(site.folder, file))) return false;
  return anchor === "" || pages.get(file)?.anchors.has(anchor) === true;
}
