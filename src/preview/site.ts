import { rmSync } from "node:fs";
import { join } from "node:path";
import type { PageFile } from "../editions/shown.ts";
import { type Layout, place } from "../publish/publish.ts";
import { writePage } from "../publish/written.ts";

/**
 * A site of which each page is made when it is asked for, into a folder that a server looks into.
 *
 * No page outlives a renewal: which pages an edit can change need not be known, so none can be left stale.
 * Photographs and documents
 * bear the digest of what is in them in their names, so that one that was placed once stays right.
 */
export class SiteOnDemand {
  readonly folder: string;
  readonly #placed = new Set<string>();
  #pages: ReadonlyMap<string, PageFile> = new Map();
  #made = new Set<string>();

  constructor(folder: string) {
    this.folder = folder;
  }

  /** Takes the place of what was shown before. */
  async renew({ pages, placings }: Layout): Promise<void> {
    const missing = [...placings.values()].filter(({ to }) => !this.#placed.has(to));
    await place(missing, this.folder);
    for (const { to } of missing) this.#placed.add(to);
    for (const path of this.#made) rmSync(join(this.folder, path));
    this.#made = new Set();
    this.#pages = new Map(pages.map((page) => [page.path, page]));
  }

  /**
   * Sees to it that the page at a path is in the folder; false if the site has none there.
   * @throws whatever keeps the page from being made
   */
  make(path: string): boolean {
    const page = this.#pages.get(path);
    if (page === undefined || this.#made.has(path)) return page !== undefined;
    writePage(page, this.folder);
    this.#made.add(path);
    return true;
  }
}
