/** A record begins: files from answers, checked as any record is before they are kept. */
import { existsSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import type { Problem } from "../../problem.ts";
import type { Day } from "../../facts/types.ts";
import { readRecord } from "../../record/read.ts";
import { FolderRefused, standingIn, writeWhole } from "../whole-folder.ts";
import type { Files } from "./files.ts";

const AIRCRAFT = "aircraft.md";
const MOST_NAMED = 12;

/**
 * Refuses a folder that holds anything, and one within a record.
 * @throws FolderRefused
 */
export function refuseTaken(folder: string): void {
  const around = recordAround(dirname(resolve(folder)));
  if (around !== undefined)
    throw new FolderRefused(
      `${folder} lies in the record ${around}, and a record is a folder of its own. Give one outside it: scarfline begin FOLDER`,
    );
  const standing = standingIn(folder);
  if (standing.length === 0) return;
  const more = standing.length - MOST_NAMED;
  const named = [...standing.slice(0, MOST_NAMED), ...(more > 0 ? [`and ${more} more`] : [])].join(", ");
  throw new FolderRefused(
    `${folder} is not empty: ${named}. Nothing is written over or beside them. Give a folder that is new or empty: scarfline begin FOLDER`,
  );
}

function recordAround(folder: string): string | undefined {
  if (existsSync(join(folder, AIRCRAFT))) return folder;
  const above = dirname(folder);
  return above === folder ? undefined : recordAround(above);
}

/** Writes a record that has no problem, or nothing. */
export async function begin(folder: string, files: Files, today: Day): Promise<readonly Problem[]> {
  let problems: readonly Problem[] = [];
  await writeWhole(folder, files, AIRCRAFT, async (beside) => {
    const read = await readRecord(beside, { today });
    problems = "problems" in read ? read.problems : [];
    return problems.length === 0;
  });
  return problems;
}
