import { open, readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { folderSource } from "./folder.ts";
import type { BagSource } from "./source.ts";
import { tarSource } from "./tar.ts";
import { zipSource } from "./zip.ts";

/** One bag, or those that lie in a folder, such as all parts of one that was split; sorted by name. */
export interface BagsFound {
  readonly kind: "bags";
  readonly paths: readonly string[];
  /** The folder they lie in, where that was given and not a bag. */
  readonly folder?: string;
  /** Names of what else lies in it. */
  readonly beside: readonly string[];
}

export type Found = { readonly kind: "record" } | BagsFound | { readonly kind: "nothing"; readonly why: string };

/** What stands at a path, by what it holds and not by its name. */
export async function lookAt(path: string): Promise<Found> {
  const found = await stat(path).catch(() => undefined);
  if (found === undefined) return { kind: "nothing", why: `There is nothing at ${path}.` };
  if (found.isFile())
    return (await isArchive(path))
      ? { kind: "bags", paths: [path], beside: [] }
      : { kind: "nothing", why: `${path} is neither a .zip nor a .tar.gz.` };
  if (!found.isDirectory()) return { kind: "nothing", why: `${path} is neither a file nor a folder.` };
  const names = new Set(await readdir(path));
  if (names.has("bagit.txt")) return { kind: "bags", paths: [path], beside: [] };
  if (names.has("aircraft.md") || names.has("seals.txt")) return { kind: "record" };
  const parts = await bagsIn(path, [...names].sort());
  if (parts.length > 0)
    return {
      kind: "bags",
      paths: parts.map((name) => join(path, name)),
      folder: path,
      beside: [...names].filter((name) => !parts.includes(name)).sort(),
    };
  return names.has("data") || [...names].some((name) => /^(tag)?manifest-/.test(name))
    ? { kind: "bags", paths: [path], beside: [] }
    : { kind: "nothing", why: `${path} holds neither a bag (no bagit.txt) nor a record (no aircraft.md).` };
}

export async function openBag(path: string): Promise<BagSource> {
  if ((await stat(path)).isDirectory()) return folderSource(path);
  return (await headOf(path)).startsWith("PK") ? zipSource(path) : tarSource(path);
}

/** Names of the bags in a folder. */
async function bagsIn(folder: string, names: readonly string[]): Promise<string[]> {
  const bags: string[] = [];
  for (const name of names.filter((each) => !each.startsWith("."))) {
    const path = join(folder, name);
    const found = await stat(path).catch(() => undefined);
    const isBag =
      found?.isDirectory() === true
        ? (await stat(join(path, "bagit.txt")).catch(() => undefined))?.isFile() === true
        : found?.isFile() === true && (await isArchive(path));
    if (isBag) bags.push(name);
  }
  return bags;
}

async function isArchive(path: string): Promise<boolean> {
  const head = await headOf(path);
  return (
    head.startsWith("PK\u0003\u0004") ||
    head.startsWith("PK\u0005\u0006") ||
    head.startsWith("\u001f\u008b") ||
    head.slice(257, 262) === "ustar"
  );
}

/** Its first bytes, one letter a byte. */
async function headOf(path: string): Promise<string> {
  const handle = await open(path, "r");
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(512), 0, 512, 0);
    return buffer.toString("latin1", 0, bytesRead);
  } finally {
    await handle.close();
  }
}
