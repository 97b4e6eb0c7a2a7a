import { readdir, stat } from "node:fs/promises";
import { join, relative } from "node:path";
import { bytesOf, digestsOf } from "../digest.ts";

/** Whether two files, or all files of two folders, have the same names and bytes. */
export async function sameTree(one: string, other: string): Promise<boolean> {
  const [left, right] = [await filesOf(one), await filesOf(other)];
  if (left.join("\n") !== right.join("\n")) return false;
  for (const path of left) {
    const [from, to] = [join(one, path), join(other, path)];
    if ((await stat(from)).size !== (await stat(to)).size || (await digestOf(from)) !== (await digestOf(to)))
      return false;
  }
  return true;
}

async function filesOf(path: string): Promise<string[]> {
  if ((await stat(path)).isFile()) return [""];
  const items = await readdir(path, { recursive: true, withFileTypes: true });
  return items
    .filter((item) => !item.isDirectory())
    .map((item) => relative(path, join(item.parentPath, item.name)))
    .sort();
}

async function digestOf(path: string): Promise<string | undefined> {
  return (await digestsOf(bytesOf(path, { followLinks: true }), ["sha256"])).digests.get("sha256");
}
