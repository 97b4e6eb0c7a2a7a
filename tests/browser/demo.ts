import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, sep } from "node:path";

export interface BuiltSite {
  readonly folder: string;
  /** Paths of all HTML pages from the site's root, with `/`. */
  readonly pages: readonly string[];
  readonly remove: () => void;
}

/** Builds the demo record by the command a builder runs, into a folder of its own. */
export function buildDemo(edition: "public" | "inspector"): BuiltSite {
  const parent = mkdtempSync(join(tmpdir(), "scarfline-demo-"));
  const folder = join(parent, "site");
  execFileSync(process.execPath, [".build/cli.js", "build", "--edition", edition, "--out", folder], {
    stdio: ["ignore", "ignore", "inherit"],
  });
  return { folder, pages: pagesIn(folder), remove: () => rmSync(parent, { recursive: true }) };
}

/** Of each kind of page (its folder, or itself at the root) the longest one, since it has most on it. */
export function onePageOfEachKind(site: BuiltSite): string[] {
  const longest = new Map<string, { path: string; size: number }>();
  for (const path of site.pages) {
    const kind = path.includes("/") ? path.slice(0, path.indexOf("/")) : path;
    const size = statSync(join(site.folder, path)).size;
    if (size > (longest.get(kind)?.size ?? -1)) longest.set(kind, { path, size });
  }
  return [...longest.values()].map((page) => page.path).sort();
}

function pagesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".html"))
    .map((name) => name.split(sep).join("/"))
    .sort();
}
