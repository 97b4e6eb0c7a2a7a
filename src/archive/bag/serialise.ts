import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { join } from "node:path";
import { pipeline, Readable } from "node:stream";
import { createGzip } from "node:zlib";
import { Pack } from "tar/pack";
import { ZipFile } from "yazl";
import { writeDurably } from "../durable.ts";

export type Serialisation = "zip" | "tar.gz";

/**
 * Packs a bag into one file, the same bytes whatever the day, the time zone and the folder: sorted, with one time and
 * one mode for all.
 * A zip holds its files uncompressed, since compressors differ between machines and photographs gain nothing; a
 * tar.gz is compressed.
 * @param folder the folder that the bag lies in
 * @param bag the bag's own name
 * @param paths of its files within it, sorted
 * @param passed told how many bytes more were packed
 */
export async function serialise(
  folder: string,
  bag: string,
  paths: readonly string[],
  as: Serialisation,
  to: string,
  passed: (bytes: number) => void,
): Promise<void> {
  const names = paths.map((path) => `${bag}/${path}`);
  await writeDurably(to, as === "zip" ? counted(await zipOf(folder, names), passed) : tarOf(folder, names, passed));
}

async function zipOf(folder: string, names: readonly string[]): Promise<AsyncIterable<Uint8Array>> {
  const zip = new ZipFile();
  const out = zip.outputStream as Readable;
  zip.on("error", (error: Error) => out.destroy(error));
  for (const name of names) {
    // The time of a zip is that of the clock on the wall, so this is the same everywhere.
    const options = {
      mtime: new Date(1980, 0, 1),
      mode: 0o100644,
      compress: false,
      forceDosTimestamp: true,
      size: (await stat(join(folder, name))).size,
    };
    zip.addReadStreamLazy(name, options, (give) => give(undefined, createReadStream(join(folder, name))));
  }
  zip.end();
  return out;
}

function tarOf(folder: string, names: readonly string[], passed: (bytes: number) => void): AsyncIterable<Uint8Array> {
  const pack = new Pack({
    cwd: folder,
    portable: true,
    mtime: new Date(0),
    noDirRecurse: true,
    strict: true,
    onWriteEntry: ({ stat: found }) => void (found !== undefined && (found.mode = 0o100644)),
  });
  for (const name of names) pack.write(name);
  pack.end();
  return gzipped(counted(pack, passed));
}

async function* counted(
  chunks: AsyncIterable<Uint8Array>,
  passed: (bytes: number) => void,
): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) {
    passed(chunk.length);
    yield chunk;
  }
}

/** Without the name of the system in the head, which gzip else puts there. */
async function* gzipped(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const UNKNOWN_SYSTEM = 255;
  const gzip = createGzip({ level: 9 });
  // An error on the way comes out of `gzip` itself.
  pipeline(Readable.from(chunks), gzip, () => undefined);
  let at = 0;
  for await (const chunk of gzip as AsyncIterable<Buffer>) {
    if (at <= 9 && at + chunk.length > 9) chunk[9 - at] = UNKNOWN_SYSTEM;
    at += chunk.length;
    yield chunk;
  }
}
