import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PageFile } from "../pages/shown.ts";

/**
 * Writes pages into a folder through Eleventy. It is given an empty input folder, so that it never reads a record:
 * it would take the same bytes for something else. All pages come from one template with a page for each file,
 * since every further template costs as much as rendering a page, and more the more there are.
 * @throws Error that names the page, if one cannot be made
 */
export async function writePages(pages: readonly PageFile[], folder: string): Promise<void> {
  refuseStrayPaths(pages);
  const { default: Eleventy } = await import("@11ty/eleventy");
  const input = await mkdtemp(join(tmpdir(), "scarfline-"));
  let failure: unknown;
  const made = (page: PageFile): Buffer => {
    try {
      // Text put together from thousands of small strings takes four times the room of one string, and Eleventy keeps all pages until it writes the first.
      return Buffer.from(page.make());
    } catch (error) {
      throw (failure ??= new Error(`The page ${page.path} could not be made: ${error instanceof Error ? error.message : String(error)}`, { cause: error }));
    }
  };
  try {
    await mkdir(folder, { recursive: true });
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
  } finally {
    await rm(input, { recursive: true });
  }
}

/** Every page stays in its folder, and no two are written to one file, on disks that tell upper from lower case and on others. */
function refuseStrayPaths(pages: readonly PageFile[]): void {
  const taken = new Map<string, string>();
  for (const { path } of pages) {
    if (path.startsWith("/") || path.includes("\\") || path.split("/").some((part) => part === "" || part === "." || part === "..")) throw new Error(`A page would be written to the stray path ${path}`);
    const other = taken.get(path.toLowerCase());
    if (other !== undefined) throw new Error(`Two pages would be written to one file: ${other} and ${path}`);
    taken.set(path.toLowerCase(), path);
  }
}
