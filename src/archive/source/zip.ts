import { stat } from "node:fs/promises";
import type { Readable } from "node:stream";
import { type Entry, open, type ZipFile } from "yauzl";
import type { Tellings } from "../finding.ts";
import { Members, withoutBaseFolder } from "./members.ts";
import { type BagSource, Damaged } from "./source.ts";
import { checkFrame } from "./zip-frame.ts";

/** A bag in a `.zip`. */
export async function zipSource(path: string): Promise<BagSource> {
  const bytes = (await stat(path)).size;
  let base = "";
  let names: ReadonlySet<string> = new Set();
  return {
    name: path,
    list: async (findings) => {
      const members = new Members(findings);
      const entries: Entry[] = [];
      let compressed = 0;
      const read = async (entry: Entry, name: string): Promise<void> => {
        entries.push(entry);
        compressed += entry.compressedSize;
        if (compressed > bytes)
          throw new Damaged("says that more is packed into it than it has bytes: some of it would be read many times");
        addEntry(entry, name, members, findings);
      };
      await walk(path, read, (zip, list) => checkFrame(path, zip, entries, list, findings));
      const found = withoutBaseFolder(members.end(), findings);
      base = found.base;
      names = new Set(found.members.map((member) => member.path));
      return found.members;
    },
    visit: async (wanted, use) => {
      const seen = new Set<string>();
      await walk(path, async (entry, name, zip) => {
        const inner = name.slice(base.length);
        if (!name.startsWith(base) || !names.has(inner) || seen.has(inner) || !wanted(inner)) return;
        seen.add(inner);
        await use(inner, streamOf(zip, entry, name));
      });
    },
    close: () => Promise.resolve(),
  };
}

const IS_KIND = 0o170000;
const FILE = 0o100000;
const LINK = 0o120000;

function addEntry(entry: Entry, name: string, members: Members, findings: Tellings): void {
  const kind = entry.versionMadeBy >> 8 === 3 ? (entry.externalFileAttributes >>> 16) & IS_KIND : 0;
  if (name.endsWith("/")) {
    if (entry.uncompressedSize > 0) findings.fault("container", name, "this is a folder, and yet has bytes in it");
    return members.addFolder(name);
  }
  if (kind !== 0 && kind !== FILE)
    return members.refuse(name, kind === LINK ? "a symbolic link" : "of a kind that no record has");
  if (entry.isEncrypted() || ![0, 8].includes(entry.compressionMethod))
    return findings.fault(
      "container",
      name,
      entry.isEncrypted()
        ? "this is encrypted, so it cannot be checked"
        : `this is packed by a method (${entry.compressionMethod}) that cannot be read here`,
    );
  members.add(name, entry.uncompressedSize);
}

/** Gives one entry after the other to `use`, in the order of the list at the archive's end. */
async function walk(
  path: string,
  use: (entry: Entry, name: string, zip: ZipFile) => Promise<void>,
  atEnd: (zip: ZipFile, list: { listAt: number; listEnd: number }) => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  const zip = await new Promise<ZipFile>((resolve, reject) =>
    open(
      path,
      { lazyEntries: true, decodeStrings: false, validateEntrySizes: true, autoClose: false },
      (error, opened) => (error ? reject(damaged(error)) : resolve(opened)),
    ),
  );
  const listAt = cursorOf(zip);
  try {
    await new Promise<void>((resolve, reject) => {
      zip.on("entry", (entry: Entry) => void use(entry, nameOf(entry), zip).then(() => zip.readEntry(), reject));
      zip.on("end", resolve);
      zip.on("error", (error: Error) => reject(damaged(error)));
      zip.readEntry();
    });
    await atEnd(zip, { listAt, listEnd: cursorOf(zip) });
  } finally {
    zip.close();
  }
}

/** Where in the list it reads next; a number, whatever the library's types say. */
function cursorOf(zip: ZipFile): number {
  return zip.readEntryCursor as unknown as number;
}

/** Without a flag for UTF-8 a name may be in any encoding; where it happens to be UTF-8 it is taken as such. */
function nameOf(entry: Entry): string {
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(entry.fileNameRaw);
}

async function* streamOf(zip: ZipFile, entry: Entry, name: string): AsyncGenerator<Uint8Array> {
  const stream = await new Promise<Readable>((resolve, reject) =>
    zip.openReadStream(entry, (error, opened) => (error ? reject(damaged(error)) : resolve(opened))),
  );
  try {
    for await (const chunk of stream) yield chunk as Uint8Array;
  } catch (error) {
    throw error instanceof Error && !("syscall" in error)
      ? new Damaged(`is damaged at ${name}: ${error.message}`)
      : error;
  }
}

function damaged(error: Error): Error {
  return "syscall" in error ? error : new Damaged(`is damaged: ${error.message}`);
}
