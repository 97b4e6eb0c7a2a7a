import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PageFile } from "../editions/shown.ts";

/**
 * Eleventy holds all pages of a run until it has made the last. So many keep it small, and beginning anew costs as
 * much as a few dozen pages.
 */
const PAGES_A_RUN = 1000;

/**
 * Writes pages into a folder through Eleventy. It is given an empty input folder, so that it never reads a record:
 * it would take the same bytes for something else. The pages of a run come from one template with a page for each file,
 * since every further template costs as much as rendering a page, and more the more there are.
 * @throws Error that names the page, if one cannot be made
 */
export async function writePages(pages: readonly PageFile[], folder: string): Promise<void> {
  refuseStrayPaths(pages);
  const input = await mkdtemp(join(tmpdir(), "scarfline-"));
  try {
    await mkdir(folder, { recursive: true });
    for (let from = 0; from < pages.length; from += PAGES_A_RUN)
      await writeRun(pages.slice(from, from + PAGES_A_RUN), input, folder);
  } finally {
    await rm(input, { recursive: true });
  }
}

async function writeRun(pages: readonly PageFile[], input: string, folder: string): Promise<void> {
  const { default: Eleventy } = await import("@11ty/eleventy");
  let failure: unknown;
  const made = (page: PageFile): Buffer => {
    try {
      // Text put together from thousands of small strings takes four times the room of one string.
      return Buffer.from(page.make());
    } catch (error) {
      throw (failure ??= new Error(
        `The page ${page.path} could not be made: ${error instanceof Error ? error.message : String(error)}`,
        { cause: error },
      ));
    }
  };
  const eleventy = new Eleventy(input, folder, {
    configPath: false,
    quietMode: true,
    config: (config) => {
      config.setUseGitIgnore(false);
      config.addTemplate<PageFile>("pages.11ty.js", ({ file }) => made(file), {
        files: pages,
        pagination: { data: "files", size: 1, alias: "file" },
        permalink: ({ file }) => file.path,
      });
    },
  });
  eleventy.disableLogger();
  await eleventy.write().catch((error: unknown) => {
    throw failure ?? error;
  });
}

/**
 * Every page stays in its folder, and no two are written to one file, on disks that tell upper from lower case and on
 * others.
 */
function refuseStrayPaths(pages: readonly PageFile[]): void {
  const taken = new Map<string, string>();
  for (const { path } of pages) {
    if (
      path.startsWith("/") ||
      path.includes("\\") ||
      path.split("/").some((part) => part === "" || part === "." || part === "..")
    )
      throw new Error(`A page would be written to the stray path ${path}`);
    const other = taken.get(path.toLowerCase());
    if (other !== undefined) throw new Error(`Two pages would be written to one file: ${other} and ${path}`);
    taken.set(path.toLowerCase(), path);
  }
}
