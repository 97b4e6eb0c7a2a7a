import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { listFolder } from "../../record/folder.ts";
import { bytesOf, digestsOf } from "../digest.ts";
import { manifestLine } from "../manifest.ts";
import { ArchiveRefused } from "../refused.ts";
import { nameFault } from "../safe-path.ts";
import { BESIDE } from "./chain.ts";

/** Digest by path, sorted by path. */
export type RecordDigests = ReadonlyMap<string, string>;

/**
 * SHA-256 of each file that the record is made of: all but hidden files, the schemas for editors and the seals themselves. Time stamps of
 * earlier seals are among them, so that the next seal shows if one is taken away; what a seal is signed by is not.
 * @param progress told how many files are done, of how many
 * @throws ArchiveRefused where a name cannot be written in a manifest
 */
export async function recordDigests(
  content: string,
  progress: (done: number, of: number) => void,
): Promise<RecordDigests> {
  const { root, files: written } = recordFiles(content);
  const files = [...written, ...(await stampFiles(root))].sort();
  const digests = new Map<string, string>();
  for (const file of files) {
    const { digests: found } = await digestsOf(bytesOf(join(root, file), { followLinks: true }), ["sha256"]);
    digests.set(file, found.get("sha256") ?? "");
    progress(digests.size, files.length);
  }
  return digests;
}

/** Of time stamps that came, from the record's folder: what was asked, what was replied, and the authority's certificates. */
async function stampFiles(root: string): Promise<string[]> {
  const names = await readdir(join(root, "seals")).catch(() => []);
  const came = new Set(names.filter((name) => name.endsWith(`.${BESIDE.reply}`)).map((name) => name.slice(0, -4)));
  const kinds: readonly string[] = [BESIDE.query, BESIDE.reply, BESIDE.authority];
  return names
    .filter((name) => came.has(name.slice(0, -4)) && kinds.includes(name.slice(-3)) && !name.startsWith("."))
    .map((name) => `seals/${name}`);
}

export function recordFiles(content: string): { readonly root: string; readonly files: readonly string[] } {
  const folder = listFolder(content);
  if ("problem" in folder) throw new ArchiveRefused(`${content}: ${folder.problem.message}.`);
  for (const file of folder.files) {
    const fault = nameFault(file);
    if (fault !== undefined)
      throw new ArchiveRefused(
        `The name of ${JSON.stringify(file)} has ${fault} in it, which tools that check an archive read in different ways. Rename the file.`,
      );
  }
  return folder;
}

export function manifestOf(digests: RecordDigests): string {
  return [...digests].map(([path, digest]) => manifestLine(digest, path)).join("");
}
