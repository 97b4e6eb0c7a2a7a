import { createHash, randomBytes } from "node:crypto";
import { createReadStream, readFileSync, statSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join, sep } from "node:path";
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

/** What is kept beside derivatives: they go into sites as links to the same bytes, so whoever writes into a site's picture writes into them. */
interface Noted {
  readonly facts: unknown;
  readonly files: { readonly [name: string]: Omit<Sight, "seen"> };
}

const FACTS = "facts.json";
const RECIPE_NAME = sha256(JSON.stringify(RECIPE)).slice(0, 12);
/** Larger files, which are clips, are read piece by piece. */
const READ_WHOLE = 16 * 2 ** 20;
/**
 * Some disks keep times to two seconds: a file that changed so shortly before it was seen may have changed again
 * since.
 */
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
  readonly #looked = new Set<string>();
  #stale = false;

  private constructor(root: string) {
    this.#root = root;
  }

  static open(root: string): PictureCache {
    const cache = new PictureCache(root);
    cache.#readSights();
    return cache;
  }

  /** SHA-256 of a file's content: from an earlier look where size and time are still the same, else by reading it. */
  async digestOf(path: string): Promise<string> {
    this.#looked.add(path);
    const { size, mtimeMs } = statSync(path);
    const sight = this.#sights.get(path);
    if (sight !== undefined && sight.size === size && sight.changed === mtimeMs && sight.seen - mtimeMs > TOO_FRESH_MS)
      return sight.digest;
    const digest = await digestOfFile(path, size);
    this.#sights.set(path, { size, changed: mtimeMs, seen: Date.now(), digest });
    this.#stale = true;
    return digest;
  }

  /** What was kept for this content under `kind`, or undefined where there is none or somebody altered it. */
  find<Facts>(kind: string, digest: string): Kept<Facts> | undefined {
    const folder = this.#folder(kind, digest);
    const known = this.#kept.get(folder);
    if (known !== undefined) return known as Kept<Facts>;
    const noted = soundIn(folder);
    return noted === undefined ? undefined : this.#remembered({ folder, facts: noted.facts as Facts });
  }

  keep<Facts>(
    kind: string,
    digest: string,
    facts: Facts,
    files: readonly { name: string; bytes: Buffer | string }[],
  ): Promise<Kept<Facts>> {
    return this.make(kind, digest, async (making) => {
      for (const { name, bytes } of files) await writeFile(join(making, name), bytes);
      return facts;
    });
  }

  /** Keeps what `fill` puts into a folder; what it throws is thrown on, and nothing is kept then. */
  async make<Facts>(kind: string, digest: string, fill: (making: string) => Promise<Facts>): Promise<Kept<Facts>> {
    const folder = this.#folder(kind, digest);
    const making = join(this.#root, "making", randomBytes(8).toString("hex"));
    await mkdir(making, { recursive: true });
    const facts = await fill(making).catch(async (error: unknown) => {
      await rm(making, { recursive: true, force: true });
      throw error;
    });
    const noted: Noted = { facts, files: await filesIn(making) };
    await writeFile(join(making, FACTS), JSON.stringify(noted));
    await mkdir(dirname(folder), { recursive: true });
    await rename(making, folder).catch(async () => {
      // Another build was quicker, or what lies there was damaged.
      if (soundIn(folder) !== undefined) return rm(making, { recursive: true });
      await rm(folder, { recursive: true, force: true });
      return rename(making, folder);
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

  /**
   * Takes away all that was not asked for since it was opened, and tells how many pictures, documents and clips that
   * were.
   */
  async prune(): Promise<number> {
    let pruned = 0;
    for (const { parentPath, name } of await readdir(this.#root, { recursive: true, withFileTypes: true })) {
      if (name !== FACTS || this.#kept.has(parentPath) || isUnder(parentPath, join(this.#root, "making"))) continue;
      await rm(parentPath, { recursive: true });
      pruned += 1;
    }
    for (const path of this.#sights.keys()) if (!this.#looked.has(path)) this.#stale = this.#sights.delete(path);
    await this.close();
    return pruned;
  }

  #remembered<Facts>(kept: Kept<Facts>): Kept<Facts> {
    this.#kept.set(kept.folder, kept);
    return kept;
  }

  #folder(kind: string, digest: string): string {
    return join(this.#root, `${kind}-${RECIPE_NAME}`, digest.slice(0, 2), digest);
  }

  #readSights(): void {
    const sights = readJson<{ [path: string]: Sight }>(join(this.#root, "seen.json")) ?? {};
    for (const [path, sight] of Object.entries(sights)) this.#sights.set(path, sight);
  }
}

/** Undefined where there is no such file, or where a disk that failed left half of it: then all is made anew. */
function readJson<T>(file: string): T | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as T;
  } catch {
    return undefined;
  }
}

/** Files that look as when they were made are taken for the same; of others their bytes are asked. */
function soundIn(folder: string): Noted | undefined {
  const noted = readJson<Partial<Noted>>(join(folder, FACTS));
  if (noted?.facts === undefined || noted.files === undefined) return undefined;
  const { facts, files } = noted;
  const isSame = ([name, { size, changed, digest }]: [string, Noted["files"][string]]): boolean => {
    const now = statSync(join(folder, name), { throwIfNoEntry: false });
    if (now?.size !== size) return false;
    return now.mtimeMs === changed || (size <= READ_WHOLE && sha256(readFileSync(join(folder, name))) === digest);
  };
  return Object.entries(files).every(isSame) ? { facts, files } : undefined;
}

async function filesIn(folder: string): Promise<Noted["files"]> {
  const files: { [name: string]: Noted["files"][string] } = {};
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    const { size, mtimeMs } = statSync(path);
    files[name] = { size, changed: mtimeMs, digest: await digestOfFile(path, size) };
  }
  return files;
}

const digestOfFile = async (path: string, size: number): Promise<string> =>
  size > READ_WHOLE ? sha256OfStream(path) : sha256(await readFile(path));

function isUnder(path: string, folder: string): boolean {
  return path.startsWith(folder + sep);
}

async function sha256OfStream(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const piece of createReadStream(path, { highWaterMark: 2 ** 20 })) hash.update(piece as Buffer);
  return hash.digest("hex");
}

/** In hexadecimal. */
function sha256(data: Buffer | string): string {
  return createHash("sha256").update(data).digest("hex");
}
