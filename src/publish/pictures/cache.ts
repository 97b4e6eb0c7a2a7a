import { createHash, randomBytes } from "node:crypto";
import { existsSync, statSync } from "node:fs";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { RECIPE } from "./recipe.ts";

/** What has been made of a file with given content. Paths of `files` are names within `folder`. */
export interface Kept<Facts> {
  readonly folder: string;
  readonly facts: Facts;
}

interface Sight {
  readonly size: number;
  readonly changed: number;
  readonly seen: number;
  readonly digest: string;
}

const RECIPE_NAME = sha256(JSON.stringify(RECIPE)).slice(0, 12);
/** Some disks keep times to two seconds: a file that changed so shortly before it was seen may have changed again since. */
const TOO_FRESH_MS = 2500;

/**
 * Derivatives kept by the content they were made from and the recipe. Safe to delete, and to kill at any time:
 * a folder comes into being whole, by renaming. Editions and records may share one.
 */
export class PictureCache {
  readonly #root: string;
  readonly #sights = new Map<string, Sight>();
  /** What was found or kept since it was opened, by its folder. */
  readonly #kept = new Map<string, Kept<unknown>>();
  #stale = false;

  private constructor(root: string) {
    this.#root = root;
  }

  static async open(root: string): Promise<PictureCache> {
    const cache = new PictureCache(root);
    await cache.#readSights();
    return cache;
  }

  /** SHA-256 of a file's content: from an earlier look where size and time are still the same, else by reading it. */
  async digestOf(path: string): Promise<string> {
    const { size, mtimeMs } = statSync(path);
    const sight = this.#sights.get(path);
    if (sight !== undefined && sight.size === size && sight.changed === mtimeMs && sight.seen - mtimeMs > TOO_FRESH_MS) return sight.digest;
    const digest = sha256(await readFile(path));
    this.#sights.set(path, { size, changed: mtimeMs, seen: Date.now(), digest });
    this.#stale = true;
    return digest;
  }

  /** What was kept for this content under `kind`, or undefined. */
  async find<Facts>(kind: string, digest: string): Promise<Kept<Facts> | undefined> {
    const folder = this.#folder(kind, digest);
    const known = this.#kept.get(folder);
    if (known !== undefined) return known as Kept<Facts>;
    const text = await readFile(join(folder, "facts.json"), "utf8").catch(() => undefined);
    return text === undefined ? undefined : this.#remembered({ folder, facts: JSON.parse(text) as Facts });
  }

  async keep<Facts>(kind: string, digest: string, facts: Facts, files: readonly { name: string; bytes: Buffer | string }[]): Promise<Kept<Facts>> {
    const folder = this.#folder(kind, digest);
    const making = join(this.#root, "making", randomBytes(8).toString("hex"));
    await mkdir(making, { recursive: true });
    for (const { name, bytes } of files) await writeFile(join(making, name), bytes);
    await writeFile(join(making, "facts.json"), JSON.stringify(facts));
    await mkdir(dirname(folder), { recursive: true });
    await rename(making, folder).catch(async (error: unknown) => {
      await rm(making, { recursive: true });
      if (!existsSync(folder)) throw error;
    });
    return this.#remembered({ folder, facts });
  }

  /** Notes what was seen, so that an unchanged file is not read the next time. */
  async close(): Promise<void> {
    if (!this.#stale) return;
    await mkdir(this.#root, { recursive: true });
    const making = join(this.#root, `seen.${randomBytes(4).toString("hex")}`);
    await writeFile(making, JSON.stringify(Object.fromEntries(this.#sights)));
    await rename(making, join(this.#root, "seen.json"));
  }

  #remembered<Facts>(kept: Kept<Facts>): Kept<Facts> {
    this.#kept.set(kept.folder, kept);
    return kept;
  }

  #folder(kind: string, digest: string): string {
    return join(this.#root, `${kind}-${RECIPE_NAME}`, digest.slice(0, 2), digest);
  }

  async #readSights(): Promise<void> {
    const text = await readFile(join(this.#root, "seen.json"), "utf8").catch(() => "{}");
    for (const [path, sight] of Object.entries(JSON.parse(text) as { [path: string]: Sight })) this.#sights.set(path, sight);
  }
}

/** In hexadecimal. */
export function sha256(data: Buffer | string): string {
  return createHash("sha256").update(data).digest("hex");
}
