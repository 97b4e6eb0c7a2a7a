/** What lies in the record's folder. */
import { type Dirent, readdirSync, realpathSync, statSync } from "node:fs";
import { join, sep } from "node:path";
import { beyond, LIMITS } from "../facts/limits.ts";
import { placed, type Problem } from "../problem.ts";
import type { Fault } from "../facts/reading.ts";

export interface Folder {
  /** The folder itself, without symbolic links in its path. */
  readonly root: string;
  /** Paths relative to the folder, with `/`, sorted. */
  readonly files: readonly string[];
  readonly problems: readonly Problem[];
  /** Files that are read as if they lay there. */
  readonly asIf?: ReadonlyMap<string, Buffer>;
}

/** The folder, as if these files lay in it too; where none is looked for they are not found. */
export function withFiles(folder: Folder, asIf: ReadonlyMap<string, Buffer>): Folder {
  const found = [...asIf.keys()].filter(isLookedFor);
  return { ...folder, files: [...new Set([...folder.files, ...found])].sort(), asIf };
}

/** Folders that hold nothing the record is made of. */
const NOT_READ = new Set(["schemas", "seals", "seals.txt"]);

const isPassedOver = (name: string, folder: string): boolean =>
  name.startsWith(".") || (folder === "" && NOT_READ.has(name));

function isLookedFor(path: string): boolean {
  const names = path.split("/");
  return (
    names.length - 1 <= LIMITS.folders && !names.some((name, at) => isPassedOver(name, names.slice(0, at).join("/")))
  );
}

export function listFolder(content: string): Folder | { readonly problem: Problem } {
  try {
    if (!statSync(content).isDirectory()) return { problem: noFolder("the record's folder is a file", content) };
  } catch (error) {
    const isThere = (error as NodeJS.ErrnoException).code === "EACCES";
    return { problem: isThere ? problem(".", UNREADABLE) : noFolder("the record's folder does not exist", content) };
  }
  const root = realpathSync(content);
  const files: string[] = [];
  const problems: Problem[] = [];
  if (itemsIn(root) === undefined) return { problem: problem(".", UNREADABLE) };
  walk(root, "", files, problems, 0);
  files.sort();
  return { root, files, problems: [...problems, ...sameButForCase(files)] };
}

function noFolder(message: string, content: string): Problem {
  return {
    file: ".",
    line: 1,
    column: 1,
    code: "no-folder",
    message,
    expected: "a folder with aircraft.md in it",
    found: content,
    mend: "give the folder after --content, or make it",
  };
}

function problem(file: string, fault: Fault): Problem {
  return placed({ file, line: 1, column: 1 }, fault);
}

function walk(root: string, folder: string, files: string[], problems: Problem[], depth: number): void {
  const items = itemsIn(join(root, folder));
  if (items === undefined) problems.push(problem(folder, UNREADABLE));
  for (const item of items ?? []) {
    if (isPassedOver(item.name, folder)) continue;
    const path = folder === "" ? item.name : `${folder}/${item.name}`;
    if (item.isDirectory() && depth < LIMITS.folders) {
      if (item.name.endsWith(".md"))
        problems.push(
          problem(path, {
            code: "folder-as-file",
            message: "a folder has the name of a record file",
            expected: "a file",
            mend: "rename the folder, or put a file in its place",
          }),
        );
      walk(root, path, files, problems, depth + 1);
    } else if (item.isFile()) files.push(path);
    else {
      const fault: Fault | undefined = item.isSymbolicLink()
        ? linkFault(root, path)
        : item.isDirectory()
          ? TOO_DEEP
          : {
              code: "unreadable",
              message: "this is neither a file nor a folder that can be read",
              mend: "take it out of the record",
            };
      if (fault) problems.push(problem(path, fault));
      else files.push(path);
    }
  }
}

/** Nothing where the system lets nobody look into the folder. */
function itemsIn(folder: string): Dirent[] | undefined {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch {
    return undefined;
  }
}

const TOO_DEEP = beyond(
  "folders within each other are too many here",
  `${LIMITS.folders} within each other`,
  "move it up, or out of the record",
);

const UNREADABLE: Fault = {
  code: "unreadable",
  message: "this folder cannot be read",
  expected: "a folder that you may read",
  mend: "look at its permissions",
};

/** A symbolic link may lead to a file of the same record and nowhere else. */
function linkFault(root: string, path: string): Fault | undefined {
  const mend = "put the file itself in its place";
  let target: string;
  try {
    target = realpathSync(join(root, path));
  } catch {
    return { code: "symbolic-link", message: "this symbolic link leads nowhere", mend };
  }
  if (!target.startsWith(root + sep))
    return { code: "symbolic-link", message: "this symbolic link leads out of the record", found: target, mend };
  return statSync(target).isFile()
    ? undefined
    : {
        code: "symbolic-link",
        message: "this symbolic link leads to a folder",
        mend: "put the folder itself in its place",
      };
}

/** Of photographs and papers; record files have ids, which are compared anyway. */
function sameButForCase(files: readonly string[]): Problem[] {
  const seen = new Map<string, string>();
  return files.flatMap((file) => {
    if (file.endsWith(".md")) return [];
    const folded = file.normalize("NFC").toLowerCase();
    const other = seen.get(folded);
    seen.set(folded, other ?? file);
    if (other === undefined) return [];
    return [
      problem(file, {
        code: "same-but-case",
        message: "two files differ only in capital letters",
        found: `${other} and ${file}`,
        mend: "rename one: on many disks they are the same file",
      }),
    ];
  });
}
