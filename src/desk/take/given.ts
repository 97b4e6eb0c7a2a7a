/** What somebody gives to be taken into a record: files, and folders of them. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { LIMITS } from "../../facts/limits.ts";
import { FolderRefused } from "../whole-folder.ts";

export interface Given {
  /** As it is told. */
  readonly path: string;
  /** Its name without what a browser adds to the second of two downloads. */
  readonly name: string;
  readonly bytes: Buffer;
  readonly kind: "entry" | "photograph" | "table" | "unknown";
}

/**
 * All files, those of folders too, by their names; hidden ones are left out.
 * @throws FolderRefused where something is not there, or larger than is read
 */
export function givenAt(paths: readonly string[]): readonly Given[] {
  return [...new Set(paths.flatMap((path) => within(path, 0)))].map(givenOf);
}

function within(path: string, depth: number): string[] {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) throw new FolderRefused(`There is no file ${path}. Nothing was taken.`);
  if (!there.isDirectory() || depth > LIMITS.folders) return [path];
  return readdirSync(path)
    .filter((name) => !name.startsWith("."))
    .sort()
    .flatMap((name) => within(join(path, name), depth + 1));
}

const KINDS: { readonly [ending: string]: Given["kind"] } = {
  ".md": "entry",
  ".jpg": "photograph",
  ".jpeg": "photograph",
  ".png": "photograph",
  ".webp": "photograph",
  ".avif": "photograph",
  ".heic": "photograph",
  ".tif": "photograph",
  ".tiff": "photograph",
  ".csv": "table",
  ".tsv": "table",
};

function givenOf(path: string): Given {
  const { size } = statSync(path);
  if (size > LIMITS.tableBytes) throw new FolderRefused(`${path} is larger than is read. Nothing was taken.`);
  const name = basename(path);
  const ending = extname(name);
  const bytes = readFileSync(path);
  return {
    path,
    name: `${name.slice(0, name.length - ending.length).replace(/ ?\(\d+\)$/u, "")}${ending}`,
    bytes,
    kind: kindOf(name, ending),
  };
}

/** Where a bench page shares its file, `.md` may have become `.md.txt`; loggers write tables as `.txt`. */
function kindOf(name: string, ending: string): Given["kind"] {
  if (/\.md\.txt$/iu.test(name)) return "entry";
  if (ending.toLowerCase() === ".txt") return "table";
  return KINDS[ending.toLowerCase()] ?? "unknown";
}
