/**
 * New files of a record: read as if they lay in it, and kept only if the record has no problem that it had not before.
 */
import { existsSync } from "node:fs";
import { link, mkdir, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { clearBeside, nameBeside, syncFolder, writeDurably } from "../archive/durable.ts";
import { LIMITS } from "../facts/limits.ts";
import type { Day } from "../facts/types.ts";
import type { Problem } from "../problem.ts";
import { type Read, readRecord } from "../record/read.ts";
import { FolderRefused } from "./whole-folder.ts";

const problemsOf = (read: Read): readonly Problem[] => ("problems" in read ? read.problems : []);

export type NewFiles = ReadonlyMap<string, Uint8Array>;

/** The record as it would be with these files. */
export const readWith = (content: string, files: NewFiles, today: Day): Promise<Read> =>
  readRecord(content, { today, asIf: new Map([...files].map(([path, bytes]) => [path, Buffer.from(bytes)])) });

/**
 * The problems that files would bring into a record, which may have some already.
 * @throws FolderRefused where there are so many that it cannot be told
 */
export async function added(content: string, files: NewFiles, today: Day, before?: Read): Promise<readonly Problem[]> {
  const stood = before === undefined ? [] : problemsOf(before);
  if (stood.length > LIMITS.problems)
    throw new FolderRefused("The record has more problems than are told one by one. Mend some first: scarfline check");
  const known = new Set(stood.map((problem) => JSON.stringify(problem)));
  return problemsOf(await readWith(content, files, today)).filter((problem) => !known.has(JSON.stringify(problem)));
}

/** @throws FolderRefused where there is such a file */
export function refuseStanding(content: string, path: string): void {
  const place = join(content, path);
  if (existsSync(place))
    throw new FolderRefused(`${place} is there already, and is left as it is. Write on in it, or give another title.`);
}

/**
 * Writes files, each whole as soon as anyone sees it, and over nothing.
 * @throws FolderRefused where there is such a file
 */
export async function keep(content: string, files: NewFiles): Promise<void> {
  for (const path of files.keys()) refuseStanding(content, path);
  for (const [path, bytes] of files) await keepOne(content, path, bytes);
}

async function keepOne(content: string, path: string, bytes: Uint8Array): Promise<void> {
  const place = join(content, path);
  await mkdir(dirname(place), { recursive: true });
  await clearBeside(place);
  const beside = nameBeside(place);
  try {
    await writeDurably(beside, [bytes]);
    await link(beside, place);
  } catch (error) {
    refuseStanding(content, path);
    throw error;
  } finally {
    await rm(beside, { force: true });
  }
  await syncFolder(dirname(place));
}
