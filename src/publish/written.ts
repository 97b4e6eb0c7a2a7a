/** The one writer of pages, for a site that is built and for one that is looked at while it is written. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { PageFile } from "../editions/shown.ts";
import { type Made, noting } from "../reads.ts";
import type { Keeper } from "./output/kept-pages.ts";

/**
 * Writes pages into a folder, one after the other, but for those that are kept.
 * @throws Error that names the page, if one cannot be made
 */
export function writePages(pages: readonly PageFile[], folder: string, keeper?: Keeper): void {
  refuseStrayPaths(pages);
  const folders = new Set(pages.map(({ path }) => dirname(join(folder, path))));
  for (const each of folders) mkdirSync(each, { recursive: true });
  for (const page of pages) if (keeper?.keeps(page.path, join(folder, page.path)) !== true) write(page, folder, keeper);
}

/** Writes one page into a folder, which is made if it is not there. */
export function writePage(page: PageFile, folder: string): void {
  mkdirSync(dirname(join(folder, page.path)), { recursive: true });
  write(page, folder);
}

function write({ path, make }: PageFile, folder: string, keeper?: Keeper): void {
  let page: Made<string>;
  try {
    page = noting(make);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(`The page ${path} could not be made: ${why}`, { cause: error });
  }
  const bytes = Buffer.from(page.made);
  keeper?.note(path, bytes, page.reads);
  writeFileSync(join(folder, path), bytes);
}

/** Whether a path leads to no place of its own below the folder it is from. */
export function isStray(path: string): boolean {
  return (
    path.startsWith("/") ||
    path.includes("\\") ||
    path.split("/").some((part) => part === "" || part === "." || part === "..")
  );
}

/**
 * Every page stays in its folder, and no two are written to one file, on disks that tell upper from lower case and on
 * others.
 */
function refuseStrayPaths(pages: readonly PageFile[]): void {
  const taken = new Map<string, string>();
  for (const { path } of pages) {
    if (isStray(path)) throw new Error(`A page would be written to the stray path ${path}`);
    const other = taken.get(path.toLowerCase());
    if (other !== undefined) throw new Error(`Two pages would be written to one file: ${other} and ${path}`);
    taken.set(path.toLowerCase(), path);
  }
}
