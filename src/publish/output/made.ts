import { mkdirSync, type Stats, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { OutputRefused } from "./refused.ts";

/**
 * A folder that the builder named, made with those above it that are missing. Each is asked for once: Node's own
 * recursive mkdir tries for ever where a system lets nothing be made, as in /proc.
 * @throws OutputRefused where a file is in the way or the system makes no folders there
 */
export function madeFolder(path: string): string {
  const folder = resolve(path);
  const there = whatIs(folder);
  if (there?.isDirectory()) return folder;
  if (there) throw new OutputRefused(`${path} is a file, and a folder is needed. Give another: --out DIR`);
  if (dirname(folder) === folder) throw new OutputRefused(`${path} is not there. Give another folder: --out DIR`);
  madeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST") return folder;
    if (code !== "ENOENT") throw error;
    throw new OutputRefused(
      `${folder} cannot be made: the system makes no folders in ${dirname(folder)}. Give another: --out DIR`,
    );
  }
  return folder;
}

function whatIs(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch (error) {
    if (["ENOENT", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
    throw error;
  }
}
