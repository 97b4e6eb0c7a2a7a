/** A folder of new files, written whole or not at all, and over nothing. */
import { existsSync, readdirSync, statSync } from "node:fs";
import { link, mkdir, rename, rm } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { clearBeside, nameBeside, syncFolder, syncTree, writeDurably } from "../archive/durable.ts";

/** What keeps a folder from taking new files; the message says what to do. */
export class FolderRefused extends Error {}

/** What is already in a folder, hidden things apart; nothing where there is no such folder yet. */
export function standingIn(folder: string): readonly string[] {
  const there = statSync(folder, { throwIfNoEntry: false });
  if (there === undefined) return refuseWithoutParent(folder);
  if (!there.isDirectory()) throw new FolderRefused(`${folder} is a file. Give a folder that is new or empty.`);
  return readdirSync(folder)
    .filter((name) => !name.startsWith("."))
    .sort();
}

function refuseWithoutParent(folder: string): readonly [] {
  const parent = dirname(resolve(folder));
  if (statSync(parent, { throwIfNoEntry: false })?.isDirectory() === true) return [];
  throw new FolderRefused(`There is no folder ${parent} in which ${basename(folder)} could be made. Make it first.`);
}

/**
 * Writes files beside a folder and, if `isSound` says so of them, puts them into it. A new folder is there whole in one
 * step. Into one that stands the `last` file comes last, so that what a killed command left is nothing yet.
 */
export async function writeWhole(
  target: string,
  files: ReadonlyMap<string, string>,
  last: string,
  isSound: (beside: string) => Promise<boolean>,
): Promise<boolean> {
  const folder = resolve(target);
  const place = existsSync(folder) ? join(folder, "record") : folder;
  await clearBeside(place);
  const beside = nameBeside(place);
  try {
    for (const [path, text] of files) {
      await mkdir(dirname(join(beside, path)), { recursive: true });
      await writeDurably(join(beside, path), [text]);
    }
    if (!(await isSound(beside))) return false;
    await syncTree(beside);
    if (place === folder) await rename(beside, folder).catch((error) => Promise.reject(refusalOf(error, folder)));
    else await moveInto(folder, beside, last);
    await syncFolder(dirname(place));
    return true;
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}

/**
 * Folders take no name that is taken, and a link takes none either; what was moved before one was refused goes back.
 */
async function moveInto(folder: string, beside: string, last: string): Promise<void> {
  const names = readdirSync(beside).sort((a, b) => Number(a === last) - Number(b === last));
  const moved: string[] = [];
  try {
    for (const name of names) {
      await put(join(beside, name), join(folder, name));
      moved.push(name);
    }
  } catch (error) {
    for (const name of moved) await rename(join(folder, name), join(beside, name));
    throw refusalOf(error, folder);
  }
}

async function put(from: string, to: string): Promise<void> {
  if (!statSync(from).isDirectory()) return link(from, to);
  await mkdir(to);
  await rename(from, to);
}

/** Somebody put something there while this was at work. */
function refusalOf(error: unknown, folder: string): unknown {
  return ["EEXIST", "ENOTEMPTY", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "")
    ? new FolderRefused(`Something came into ${folder} meanwhile. It was left as it is, and nothing was written.`)
    : error;
}
