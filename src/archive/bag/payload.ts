/** What goes into a bag's payload, before anything is copied. */
import { readdir, stat } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { ArchiveRefused } from "../refused.ts";
import { nameFault } from "../safe-path.ts";
import { readChain } from "../seal/chain.ts";
import { leftOver } from "../seal/left-over.ts";
import { recordFiles } from "../seal/record-files.ts";

/** A file of the payload: its path below `data/`, and where its bytes are. */
export interface Piece {
  readonly path: string;
  readonly size: number;
  readonly from: { readonly file: string } | { readonly text: string };
}

/**
 * Every file of the record: those that are read, the seals that are set, and the schemas for editors; no hidden ones.
 */
export async function recordPieces(content: string): Promise<Piece[]> {
  const { root, files } = recordFiles(content);
  const { begun } = await leftOver(root, await readChain(root, { fault: () => undefined, note: () => undefined }));
  const seals = (await filesBelow(root, "seals")).filter((path) => !begun.includes(path));
  const beside = [...(await filesBelow(root, "schemas")), ...seals, ...(await filesBelow(root, "seals.txt"))];
  return Promise.all(
    [...files, ...beside]
      .sort()
      .map(async (path) => ({
        path: `record/${path}`,
        size: (await stat(join(root, path))).size,
        from: { file: join(root, path) },
      })),
  );
}

/** Every file of a folder that this program has just written. */
export async function folderPieces(folder: string, as: string): Promise<Piece[]> {
  const found = (await filesBelow(folder, ".")).sort();
  return Promise.all(
    found.map(async (path) => ({
      path: `${as}/${path}`,
      size: (await stat(join(folder, path))).size,
      from: { file: join(folder, path) },
    })),
  );
}

export function textPiece(path: string, text: string): Piece {
  return { path, size: Buffer.byteLength(text), from: { text } };
}

/** Regular files that are not hidden, from `root`. */
async function filesBelow(root: string, name: string): Promise<string[]> {
  const path = join(root, name);
  const found = await stat(path).catch(() => undefined);
  if (found === undefined) return [];
  if (found.isFile()) return [name];
  const items = await readdir(path, { recursive: true, withFileTypes: true });
  const paths = items
    .filter((item) => item.isFile())
    .map((item) => relative(root, join(item.parentPath, item.name)).split(sep).join("/"));
  return paths.filter((each) => !each.split("/").some((part) => part.startsWith("."))).map(named);
}

function named(path: string): string {
  const fault = nameFault(path);
  if (fault !== undefined)
    throw new ArchiveRefused(
      `The name of ${JSON.stringify(path)} has ${fault} in it, which tools that check an archive read in different ways. Rename the file.`,
    );
  return path;
}

/** Changes whenever a file of the record does: its names, sizes and times of last change. */
export async function recordState(content: string): Promise<string> {
  const pieces = await recordPieces(content);
  const states = await Promise.all(
    pieces.map(async ({ path, from }) => {
      const found = await stat("file" in from ? from.file : content, { bigint: true });
      return `${path} ${found.size} ${found.mtimeNs} ${found.ino}`;
    }),
  );
  return states.join("\n");
}
