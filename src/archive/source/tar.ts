import { open } from "node:fs/promises";
import { Parser } from "tar/parse";
import type { ReadEntry } from "tar/read-entry";
import { bytesOf } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { gunzipped } from "./gzip.ts";
import { Members, withoutBaseFolder } from "./members.ts";
import { type BagSource, Damaged } from "./source.ts";

/** Longer names and notes in an archive than this are refused by the parser, so that they cannot fill the memory. */
const LARGEST_NAME = 64 * 1024;
const BLOCK = 512;

/** A bag in a `.tar`, compressed by gzip or not. It is read from its beginning to its end for each visit. */
export function tarSource(path: string): BagSource {
  let base = "";
  let names: ReadonlySet<string> = new Set();
  return {
    name: path,
    list: async (findings) => {
      const members = new Members(findings);
      const hasEnd = await walk(path, async (entry) => {
        entry.resume();
        addEntry(entry, members, findings);
      });
      if (!hasEnd)
        findings.note(
          "container",
          path,
          "this tar has no mark at its end, so nothing in it shows that it was not cut off",
        );
      const found = withoutBaseFolder(members.end(), findings);
      base = found.base;
      names = new Set(found.members.map((member) => member.path));
      return found.members;
    },
    visit: async (wanted, use) => {
      const seen = new Set<string>();
      await walk(path, async (entry) => {
        const name = nameOf(entry);
        const inner = name.slice(base.length);
        const isMember = isFile(entry) && name.startsWith(base) && names.has(inner) && !seen.has(inner);
        if (!isMember || !wanted(inner)) return void entry.resume();
        seen.add(inner);
        await use(inner, entry as AsyncIterable<Uint8Array>);
        entry.resume();
      });
    },
    close: () => Promise.resolve(),
  };
}

function nameOf({ path }: ReadEntry): string {
  return path.replace(/^\.\//, "");
}

function isFile({ type }: ReadEntry): boolean {
  return type === "File" || type === "OldFile" || type === "ContiguousFile";
}

function addEntry(entry: ReadEntry, members: Members, findings: Tellings): void {
  const name = nameOf(entry);
  if (isFile(entry)) members.add(name, entry.size);
  else if (entry.type === "Directory" || entry.type === "GNUDumpDir") {
    members.addFolder(name);
    if (entry.size > 0) findings.fault("container", name, "this is a folder, and yet has bytes in it");
  } else members.refuse(name, kindWords(entry.type));
}

/**
 * Gives one entry after the other to `use`, which must read it to its end. Returns whether the tar has its mark of the end, two empty
 * blocks; after it, and after one alone, some readers stop and others go on, so that nothing but zeros may follow.
 */
async function walk(path: string, use: (entry: ReadEntry) => Promise<void>): Promise<boolean> {
  const reading = new Reading(use);
  for await (const blocks of blocksOf(await tarBytes(path))) await reading.take(blocks);
  return reading.end();
}

class Reading {
  readonly #parser = new Parser({ strict: false, maxMetaEntrySize: LARGEST_NAME, brotli: false, zstd: false });
  #chain = Promise.resolve();
  #failed: Error | undefined;
  #wake = (): void => undefined;
  #sawEmpty = false;
  #ended = false;

  constructor(use: (entry: ReadEntry) => Promise<void>) {
    this.#parser.on("entry", (entry: ReadEntry) => {
      if (this.#sawEmpty) this.#fail(new Damaged("goes on after an empty block, where some tools stop reading"));
      this.#chain = this.#chain.then(() => use(entry));
      this.#chain.catch((error: Error) => this.#fail(error));
    });
    this.#parser.on("ignoredEntry", ({ path }: ReadEntry) =>
      this.#fail(new Damaged(`holds something that cannot be read at ${path || "an unnamed place"}`)),
    );
    this.#parser.on("warn", (code: string, message: string) => {
      if (code !== "TAR_ENTRY_INFO") this.#fail(new Damaged(`is damaged: ${message}`));
    });
    this.#parser.on("error", (error: Error) => this.#fail(new Damaged(`is damaged: ${error.message}`)));
    this.#parser.on("nullBlock", () => (this.#sawEmpty = true));
    this.#parser.on("eof", () => (this.#ended = true));
    this.#parser.on("drain", () => this.#wake());
  }

  /** Blocks among which an empty one is are given singly, so that the end is seen where it is. */
  async take(blocks: Buffer): Promise<void> {
    const step = hasEmpty(blocks) ? BLOCK : blocks.length;
    for (let at = 0; at < blocks.length; at += step) {
      const piece = blocks.subarray(at, at + step);
      if (this.#failed !== undefined) throw this.#failed;
      if (this.#ended) {
        if (!piece.equals(EMPTY.subarray(0, piece.length)))
          throw new Damaged("holds something after its end, which some tools would read");
      } else if (piece.length % BLOCK !== 0) throw new Damaged("is damaged: it is cut off");
      else if (!this.#parser.write(piece)) await this.#drained();
    }
  }

  async end(): Promise<boolean> {
    const isRead = new Promise<void>((resolve) => {
      this.#wake = resolve;
      this.#parser.on("end", resolve);
    });
    this.#parser.end();
    if (this.#failed === undefined) await isRead;
    if (this.#failed === undefined) await this.#chain;
    if (this.#failed !== undefined) throw this.#failed;
    return this.#ended;
  }

  #drained(): Promise<void> {
    return new Promise((resolve) => (this.#wake = resolve));
  }

  #fail(error: Error): void {
    this.#failed ??= error;
    this.#wake();
  }
}

const EMPTY = Buffer.alloc(BLOCK);

function hasEmpty(blocks: Buffer): boolean {
  for (let at = 0; at < blocks.length; at += BLOCK)
    if (blocks[at] === 0 && blocks.subarray(at, at + BLOCK).equals(EMPTY)) return true;
  return blocks.length % BLOCK !== 0;
}

/** Unpacks gzip once; what would be unpacked a second time is no tar. */
async function tarBytes(path: string): Promise<AsyncIterable<Uint8Array>> {
  const handle = await open(path, "r");
  const { buffer } = await handle.read(Buffer.alloc(2), 0, 2, 0).finally(() => handle.close());
  return buffer.equals(GZIP) ? gunzipped(path) : bytesOf(path, { followLinks: true });
}

const GZIP = Buffer.from([0x1f, 0x8b]);

/** The same bytes in pieces of whole blocks; only the last may be less. */
async function* blocksOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Buffer> {
  let rest: Buffer = Buffer.alloc(0);
  let isFirst = true;
  for await (const chunk of chunks) {
    const bytes = rest.length === 0 ? Buffer.from(chunk) : Buffer.concat([rest, chunk]);
    const whole = bytes.length - (bytes.length % BLOCK);
    rest = bytes.subarray(whole);
    if (whole === 0) continue;
    if (isFirst && bytes.subarray(0, 2).equals(GZIP)) throw new Damaged("is packed by gzip twice");
    isFirst = false;
    yield bytes.subarray(0, whole);
  }
  if (rest.length > 0) yield rest;
}

function kindWords(type: string): string {
  if (type === "SymbolicLink") return "a symbolic link";
  return type === "Link" ? "a link to another file of the archive" : `of a kind that no record has (${type})`;
}
