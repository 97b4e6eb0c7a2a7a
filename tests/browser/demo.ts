import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, statSync } from "node:fs";
import { join, sep } from "node:path";

export interface BuiltSite {
  readonly folder: string;
  /** Paths of all HTML pages from the site's root, with `/`. */
  readonly pages: readonly string[];
}

/** Longer than any machine takes to build the demo. */
const PATIENCE_MS = 300_000;
const LOOKS_EVERY_MS = 100;

/**
 * The demo record as it is built by the command a builder runs, once for all tests of a run: none may change it. Throws where it cannot be
 * built, or is being built for too long.
 */
export function builtDemo(edition: "public" | "inspector" | "archive"): BuiltSite {
  const shared = process.env["SCARFLINE_DEMO"];
  if (shared === undefined) throw new Error("the demo is built in a folder that tests/browser/demo-setup.ts makes");
  const folder = join(shared, edition);
  const [begun, ended] = [`${folder}.begun`, `${folder}.ended`];
  if (isFirst(begun)) {
    try {
      execFileSync(
        process.execPath,
        [".build/cli.js", "build", "--content", "content", "--edition", edition, "--out", folder],
        { stdio: ["ignore", "ignore", "inherit"] },
      );
    } finally {
      mkdirSync(ended);
    }
  }
  for (let waited = 0; !existsSync(ended); waited += LOOKS_EVERY_MS) {
    if (waited > PATIENCE_MS) throw new Error(`another test has been building the ${edition} edition for too long`);
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, LOOKS_EVERY_MS);
  }
  return { folder, pages: pagesIn(folder) };
}

/** Whether nobody made this folder before; of several who ask, one is told so. */
function isFirst(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
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
