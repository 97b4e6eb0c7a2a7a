/** Whether a site stands as an earlier build wrote it, and would come out the same: then nothing needs to be done. */
import { hash, randomBytes } from "node:crypto";
import { closeSync, existsSync, lstatSync, openSync, readFileSync, readSync, realpathSync, statSync } from "node:fs";
import { mkdir, rename, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { basename, dirname, join, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { listFolder } from "../../record/folder.ts";
import { isOwn, isOwnCode } from "../../record/own.ts";
import { filesIn, MARKER } from "./folder.ts";

export interface SiteSources {
  /** The record's folder. */
  readonly content: string;
  /** `undefined` where it cannot be told which program runs. */
  readonly program: string | undefined;
  /** All else that the site depends on. */
  readonly options: object;
}

export interface SitePlace {
  readonly out: string;
  /** Folder for what need not be made twice. */
  readonly cache: string;
}

interface Stamp {
  readonly madeFrom: string;
  readonly site: string;
  readonly told: readonly string[];
}

/** Read whole whatever their times say; of all others, which are pictures, papers and clips, size and time are enough, as for the cache of pictures. */
const ALWAYS_READ = /\.(?:md|csv|tsv|txt|svg|html|css|js|json|xml|webmanifest|sha256)$/i;
const READ_UP_TO = 2 ** 16;
/** Some disks keep times to two seconds: what changed so shortly ago may change again and look the same. */
const TOO_FRESH_MS = 2500;
/** A digest of all that the site comes from; undefined where something changed too shortly ago, or cannot be read. */
export async function madeFrom({ content, program, options }: SiteSources): Promise<string | undefined> {
  if (program === undefined) return undefined;
  try {
    const files = await filesOf(content);
    if (files === undefined) return undefined;
    const root = realpathSync(content);
    // Code of the builder may ask for anything: the day, the network, another folder.
    if (files.some((path) => isOwn(path) && isOwnCode(path, readFileSync(join(root, path), "utf8")))) return undefined;
    const sights = new Sights(root);
    const seen = files.map((path) => sights.of(path));
    if (Date.now() - sights.newest < TOO_FRESH_MS) return undefined;
    return digestOf([madeWith(program, options), root, ...seen]);
  } catch {
    return undefined;
  }
}

/** A digest of all that a site comes from besides a record: the program, what is asked of it, and how the machine is set. */
export function madeWith(program: string, options: object): string {
  const { locale, timeZone } = Intl.DateTimeFormat().resolvedOptions();
  return digestOf([program, JSON.stringify(options), locale, timeZone]);
}

/** What a build reads of a record's folder; undefined where that has a problem. */
async function filesOf(content: string): Promise<string[] | undefined> {
  const folder = listFolder(content);
  if ("problem" in folder || folder.problems.length > 0) return undefined;
  const seals = existsSync(join(folder.root, "seals")) ? await filesIn(join(folder.root, "seals")) : [];
  const list = existsSync(join(folder.root, "seals.txt")) ? ["seals.txt"] : [];
  return [...folder.files, ...list, ...seals.map((path) => `seals/${path}`)].sort();
}

/** What was told when the site that stands was built, if it is as that build wrote it and would be made from the same. */
export function standing({ out, cache }: SitePlace, from: string | undefined): readonly string[] | undefined {
  if (from === undefined) return undefined;
  try {
    const stamp = JSON.parse(readFileSync(standingFile({ out, cache }, "json"), "utf8")) as Stamp;
    return stamp.madeFrom === from && stamp.site === siteDigest(out) ? stamp.told : undefined;
  } catch {
    return undefined;
  }
}

/** Notes how a site was made that has just been put into its place; `written` are digests of what was, by path. */
export async function keepStanding(
  place: SitePlace,
  from: string | undefined,
  told: readonly string[],
  written?: ReadonlyMap<string, string>,
): Promise<void> {
  if (from === undefined) return;
  const file = standingFile(place, "json");
  const stamp: Stamp = { madeFrom: from, site: siteDigest(place.out, written), told };
  await mkdir(dirname(file), { recursive: true });
  const making = `${file}.${randomBytes(4).toString("hex")}`;
  await writeFile(making, JSON.stringify(stamp));
  await rename(making, file);
}

/** A digest of the compiled program in `folder`, of what it does not bundle and of Node with all that it brings, such as time zones; undefined where other code runs than that. */
export async function compiledProgram(folder: string): Promise<string | undefined> {
  const compiled = join(folder, ".build");
  if (!fileURLToPath(import.meta.url).startsWith(compiled + sep)) return undefined;
  const files = (await filesIn(compiled)).filter((path) => !path.endsWith(".map")).sort();
  return digestOf([
    JSON.stringify(process.versions),
    readFileSync(join(folder, "package.json"), "utf8"),
    ...installed(),
    ...files.map((path) => `${path} ${hash("sha256", readFileSync(join(compiled, path)), "hex")}`),
  ]);
}

/** What npm noted of the packages beside the program, of which some are asked for when it runs. */
function installed(): string[] {
  const folders = createRequire(import.meta.url).resolve.paths("sharp") ?? [];
  const lists = folders.map((folder) => join(folder, ".package-lock.json")).filter((file) => existsSync(file));
  return lists.map((file) => readFileSync(file, "utf8"));
}

/** Of the files that the build wrote; what somebody put beside them is not asked. */
function siteDigest(out: string, written?: ReadonlyMap<string, string>): string {
  const listed = readFileSync(join(out, MARKER), "utf8");
  const sights = new Sights(out, written);
  return digestOf([
    listed,
    ...listed
      .trimEnd()
      .split("\n")
      .map((path) => sights.of(path)),
  ]);
}

/** What is kept of a site that stands. */
export const standingFile = ({ out, cache }: SitePlace, kind: "json" | "pages"): string =>
  join(cache, "standing", `${digestOf([realpathSync(out)]).slice(0, 24)}.${kind}`);

/** How files of one folder look, each looked at once. */
class Sights {
  /** The latest time of those that were told by their times. */
  newest = 0;
  readonly #root: string;
  readonly #folders = new Map<string, string>();
  readonly #digests: ReadonlyMap<string, string> | undefined;

  /** `digests` are of the bytes of files that need not be read. */
  constructor(root: string, digests?: ReadonlyMap<string, string>) {
    this.#root = root;
    this.#digests = digests;
  }

  /** `path` has `/`, and where it lies in truth counts too. */
  of(path: string): string {
    const file = `${this.#root}${sep}${path}`;
    const met = lstatSync(file);
    const isLink = met.isSymbolicLink();
    const real = isLink ? realpathSync(file) : `${this.#realFolder(dirname(file))}${sep}${basename(file)}`;
    const { size, mtimeMs } = isLink ? statSync(file) : met;
    if (size <= READ_UP_TO || ALWAYS_READ.test(path) || isOwn(path) || basename(path) === MARKER)
      return `${path}\0${real}\0${this.#digests?.get(path) ?? bytesDigest(file, size)}`;
    this.newest = Math.max(this.newest, mtimeMs);
    return `${path}\0${real}\0${size} ${mtimeMs}`;
  }

  #realFolder(folder: string): string {
    let real = this.#folders.get(folder);
    if (real === undefined) this.#folders.set(folder, (real = realpathSync(folder)));
    return real;
  }
}

/** Most files fit in, and are read by one call. */
const ROOM = Buffer.allocUnsafeSlow(READ_UP_TO + 1);

/** Of the bytes of a file that was met in such a size. */
export function bytesDigest(file: string, size: number): string {
  if (size > READ_UP_TO) return hash("sha256", readFileSync(file), "hex");
  const handle = openSync(file, "r");
  try {
    const length = readSync(handle, ROOM, 0, ROOM.length, 0);
    return hash("sha256", length === size ? ROOM.subarray(0, length) : readFileSync(handle), "hex");
  } finally {
    closeSync(handle);
  }
}

/** Each part with its length, so that no two lists of parts read alike. */
function digestOf(parts: readonly string[]): string {
  return hash("sha256", parts.map((part) => `${part.length}:${part}`).join(""), "hex");
}
