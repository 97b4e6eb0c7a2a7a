/** Reads what is packed by gzip (RFC 1952), and nothing that stands after it. */
import { createReadStream } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import { crc32, createInflateRaw } from "node:zlib";
import { Damaged } from "./source.ts";

const MAGIC = [0x1f, 0x8b, 0x08];
const HEAD = 10;
const TAIL = 8;
/** Flags of the head, RFC 1952 2.3.1. */
const HEAD_CRC = 2;
const EXTRA = 4;
const NAME = 8;
const COMMENT = 16;
const RESERVED = 0xe0;
/** A head longer than this belongs to no bag. */
const LONGEST_HEAD = 64 * 1024;
/** Photographs and text pack to no less than a thousandth; deflate itself cannot do much better. */
const MOST_FOLD = 1_000;
/** Below this much unpacked no archive is a trap, however well it packs. */
const HARMLESS = 4 * 1024 * 1024;

/**
 * What a file packed by gzip holds. It must be one member and nothing else: most tools read a second member as more of the same file,
 * some stop after the first, and what is padded on is dropped in silence. So that all readers get the same, anything more is an error.
 * @throws Damaged
 */
export async function* gunzipped(path: string): AsyncGenerator<Buffer> {
  const handle = await open(path, "r");
  try {
    const { size } = await handle.stat();
    const from = endOfHead(await bytesAt(handle, 0, LONGEST_HEAD));
    const inflate = createInflateRaw();
    const packed = createReadStream(path, { start: from, highWaterMark: 256 * 1024 });
    packed.once("error", (error) => inflate.destroy(error));
    const unpacked = { crc: 0, bytes: 0 };
    try {
      for await (const chunk of packed.pipe(inflate) as AsyncIterable<Buffer>) {
        unpacked.crc = crc32(chunk, unpacked.crc);
        unpacked.bytes += chunk.length;
        if (unpacked.bytes > HARMLESS && unpacked.bytes > size * MOST_FOLD)
          throw new Damaged(`is damaged: it unpacks to more than ${MOST_FOLD} times its size`);
        yield chunk;
      }
    } catch (error) {
      throw isOfZlib(error) ? new Damaged(`is damaged: ${error.message}`) : error;
    } finally {
      packed.destroy();
    }
    const end = from + inflate.bytesWritten;
    checkTail(await bytesAt(handle, end, TAIL), size - end, unpacked);
  } finally {
    await handle.close();
  }
}

async function bytesAt(handle: FileHandle, position: number, length: number): Promise<Buffer> {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, position);
  return buffer.subarray(0, bytesRead);
}

function isOfZlib(error: unknown): error is Error {
  return error instanceof Error && ((error as NodeJS.ErrnoException).code ?? "").startsWith("Z_");
}

/** Where what is packed begins. */
function endOfHead(bytes: Buffer): number {
  const flags = bytes[3] ?? 0;
  if (bytes.length < HEAD || MAGIC.some((byte, index) => bytes[index] !== byte) || (flags & RESERVED) !== 0)
    throw new Damaged("is damaged: it has no head of gzip");
  let at = HEAD;
  if ((flags & EXTRA) !== 0) at += 2 + (bytes.length < at + 2 ? LONGEST_HEAD : bytes.readUInt16LE(at));
  for (const flag of [NAME, COMMENT]) {
    if ((flags & flag) === 0) continue;
    const zero = bytes.indexOf(0, at);
    at = zero < 0 ? LONGEST_HEAD : zero + 1;
  }
  if ((flags & HEAD_CRC) !== 0) at += 2;
  if (at >= bytes.length) throw new Damaged("is damaged: the head of its gzip does not end");
  return at;
}

/** @param left bytes of the file from the tail's beginning */
function checkTail(tail: Buffer, left: number, unpacked: { readonly crc: number; readonly bytes: number }): void {
  if (left < TAIL) throw new Damaged("is damaged: it is cut off");
  if (tail.readUInt32LE(0) !== unpacked.crc || tail.readUInt32LE(4) !== unpacked.bytes % 2 ** 32)
    throw new Damaged("is damaged: it does not unpack to what it was made of");
  if (left > TAIL)
    throw new Damaged("goes on after the end of its gzip, and some tools would read more of it than others");
}
