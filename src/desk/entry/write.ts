/**
 * An entry begins: it is read as if it lay in the record, and kept only if the record has no problem that it had not
 * before.
 */
import { existsSync } from "node:fs";
import { link, mkdir, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { clearBeside, nameBeside, syncFolder, writeDurably } from "../../archive/durable.ts";
import { LIMITS } from "../../facts/limits.ts";
import type { Day } from "../../facts/types.ts";
import type { Problem } from "../../problem.ts";
import { type Read, readRecord } from "../../record/read.ts";
import { FolderRefused } from "../whole-folder.ts";

const problemsOf = (read: Read): readonly Problem[] => ("problems" in read ? read.problems : []);

/** The record as it would be with this file. */
export const readWith = (content: string, path: string, text: string, today: Day): Promise<Read> =>
  readRecord(content, { today, asIf: new Map([[path, Buffer.from(text)]]) });

/**
 * The problems that a file would bring into a record that has some already.
 * @throws FolderRefused where there are so many that it cannot be told
 */
export async function added(
  content: string,
  path: string,
  text: string,
  { today, before }: { readonly today: Day; readonly before: Read },
): Promise<readonly Problem[]> {
  const stood = problemsOf(before);
  if (stood.length > LIMITS.problems)
    throw new FolderRefused("The record has more problems than are told one by one. Mend some first: scarfline check");
  const known = new Set(stood.map((problem) => JSON.stringify(problem)));
  return problemsOf(await readWith(content, path, text, today)).filter(
    (problem) => !known.has(JSON.stringify(problem)),
  );
}

/** @throws FolderRefused where there is such a file */
export function refuseStanding(content: string, path: string): void {
  const place = join(content, path);
  if (existsSync(place))
    throw new FolderRefused(`${place} is there already, and is left as it is. Write on in it, or give another title.`);
}

/**
 * Writes a file that is whole as soon as anyone sees it, and over nothing.
 * @throws FolderRefused where there is such a file
 */
export async function writeNew(content: string, path: string, text: string): Promise<void> {
  const place = join(content, path);
  await mkdir(dirname(place), { recursive: true });
  await clearBeside(place);
  const beside = nameBeside(place);
  try {
    await writeDurably(beside, [text]);
    await link(beside, place);
  } catch (error) {
    refuseStanding(content, path);
    throw error;
  } finally {
    await rm(beside, { force: true });
  }
  await syncFolder(dirname(place));
}
