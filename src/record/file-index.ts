/** Files beside the record: which there are, and what a path typed in one of its files leads to. */
import { closeSync, openSync, readSync } from "node:fs";
import { join, posix } from "node:path";
import { nearest } from "../facts/nearest.ts";
import { type Fault, meaning, onlyYouKnow, type Reading, shown, writes } from "../facts/reading.ts";
import type { Folder } from "./folder.ts";
import { clipFault, pictureFault } from "./heads.ts";
import type { FilePath } from "../facts/types.ts";

const EXPECTED = "the path of a file in the record, relative to this file, such as ../photos/jig.jpg";

export class FileIndex {
  readonly #folder: Pick<Folder, "root" | "files" | "asIf">;
  readonly #files: ReadonlySet<string>;
  #folded: Map<string, string> | undefined;
  readonly #pictures = new Map<string, Fault | undefined>();

  constructor(folder: Pick<Folder, "root" | "files" | "asIf">) {
    this.#folder = folder;
    this.#files = new Set(folder.files);
  }

  /** The file that a path leads to from a file of the record. */
  find(from: string, typed: string): Reading<FilePath> {
    const refused = pathFault(typed);
    if (refused) return { fault: refused };
    const path = posix.join(posix.dirname(from), typed);
    if (path === ".." || path.startsWith("../")) {
      return {
        fault: {
          code: "bad-path",
          message: "this path leads out of the record's folder",
          expected: EXPECTED,
          found: shown(typed),
          mend: "put the file into the record's folder and write the path to it there",
        },
      };
    }
    if (this.#files.has(path)) return { value: path };
    return this.#nearMiss(from, typed, path);
  }

  #nearMiss(from: string, typed: string, path: string): Reading<FilePath> {
    this.#folded ??= new Map([...this.#files].map((file) => [file.normalize("NFC").toLowerCase(), file]));
    const same = this.#folded.get(path.normalize("NFC").toLowerCase());
    // The same name in another form of Unicode is the same name to whoever typed it.
    if (same !== undefined && same.normalize("NFC") === path.normalize("NFC")) return { value: same };
    if (same !== undefined) {
      return {
        fault: {
          code: "no-file",
          message: "capital letters differ from the file's name",
          expected: EXPECTED,
          found: shown(typed),
          ...writes(pathBetween(from, same)),
        },
      };
    }
    const meant = this.#meant(path);
    const mending =
      meant === undefined
        ? onlyYouKnow(`put the file at ${path}, or correct the path`)
        : meaning(pathBetween(from, meant));
    return {
      fault: {
        code: "no-file",
        message: "there is no such file in the record",
        expected: EXPECTED,
        found: shown(typed),
        ...mending,
      },
    };
  }

  /** A file of the same name elsewhere, or of almost the same name in the same folder. */
  #meant(path: string): string | undefined {
    const name = posix.basename(path);
    const elsewhere = [...this.#files].filter((file) => posix.basename(file) === name && !file.endsWith(".md"));
    if (elsewhere.length > 0) return elsewhere[0];
    const folder = posix.dirname(path);
    const near = nearest(
      name,
      [...this.#files]
        .filter((file) => posix.dirname(file) === folder && !file.endsWith(".md"))
        .map((file) => posix.basename(file)),
    );
    return near === undefined ? undefined : posix.join(folder, near);
  }

  /** What keeps a file from being shown as a picture, by its first bytes. */
  pictureFault(path: FilePath): Fault | undefined {
    if (!this.#pictures.has(path)) this.#pictures.set(path, this.#headFault(path, pictureFault));
    return this.#pictures.get(path);
  }

  /** What keeps a file from being played as a clip, by its name and first bytes; whether it is whole is seen when it is copied. */
  clipFault(path: FilePath): Fault | undefined {
    return this.#headFault(path, clipFault);
  }

  /** What keeps a file from being attached. */
  attachmentFault(path: FilePath): Fault | undefined {
    if (path.endsWith(".md"))
      return {
        code: "no-attachment",
        message: "a Markdown file is a part of the record, not an attachment",
        found: path,
        mend: "link to it in the prose",
      };
    return this.#headFault(path, emptyFault);
  }

  #headFault(path: FilePath, faultOf: (head: Buffer, path: FilePath) => Fault | undefined): Fault | undefined {
    let head: Buffer;
    try {
      head = this.#folder.asIf?.get(path)?.subarray(0, HEAD) ?? headOf(join(this.#folder.root, path));
    } catch {
      return { code: "unreadable", message: "this file cannot be read", found: path, mend: "look at its permissions" };
    }
    return faultOf(head, path);
  }
}

function emptyFault(head: Buffer, path: FilePath): Fault | undefined {
  return head.length > 0
    ? undefined
    : { code: "no-attachment", message: "this file is empty", found: path, mend: "put the right file in its place" };
}

const OF_THE_DISK = "copy the file into the record's folder, and write its path from this file";

function pathFault(typed: string): Fault | undefined {
  const said = (message: string, mend: string): Fault => ({
    code: "bad-path",
    message,
    expected: EXPECTED,
    found: shown(typed),
    mend,
  });
  if (/^(?:[A-Za-z]:|[/~]|\\)/.test(typed)) return said("this path begins at the disk, not at this file", OF_THE_DISK);
  if (typed.includes("\\"))
    return { ...said("a path has / between its parts, on every system", ""), ...writes(typed.replaceAll("\\", "/")) };
  if (/^[A-Za-z][A-Za-z0-9+.-]+:/.test(typed))
    return said("nothing is fetched from elsewhere", "put the file into the record's folder and give its path");
  if (typed.endsWith("/") || posix.basename(typed) === "." || posix.basename(typed) === "..")
    return said("this is the path of a folder", "give the path of a file");
  return undefined;
}

/** The path from one file of the record to another. */
export function pathBetween(from: string, to: string): string {
  return posix.relative(posix.dirname(from), to);
}

/** As many bytes of a file as tell what it is. */
const HEAD = 512;

function headOf(path: string): Buffer {
  const head = Buffer.alloc(HEAD);
  const handle = openSync(path, "r");
  try {
    return head.subarray(0, readSync(handle, head, 0, head.length, 0));
  } finally {
    closeSync(handle);
  }
}
