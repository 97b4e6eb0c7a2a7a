/** Whether a clip is all there: what was cut short while it was copied may well begin as it should. */
import { type FileHandle, open } from "node:fs/promises";
import { Refused } from "./refused.ts";

export type Container = "mp4" | "webm";

/** @throws Refused where the outermost parts of the file go beyond its end */
export async function expectWhole(path: string, container: Container): Promise<void> {
  const file = await open(path, "r");
  try {
    const { size } = await file.stat();
    const end = container === "mp4" ? await endOfBoxes(file, size) : await endOfSegment(file, size);
    if (end > size) throw new Refused("damaged", `${size} of at least ${end} bytes are there`);
  } finally {
    await file.close();
  }
}

/** Where the last box at the top would end: ISO/IEC 14496-12, 4.2. A size of 0 means to the end of the file. */
async function endOfBoxes(file: FileHandle, size: number): Promise<number> {
  let at = 0;
  while (at < size) {
    const head = await bytesAt(file, at, 16);
    if (head.length < 8) return at + 8;
    const short = head.readUInt32BE(0);
    const long = short === 1 && head.length === 16 ? Number(head.readBigUInt64BE(8)) : short;
    if (short === 0) return size;
    if (long < 8) throw new Refused("damaged", `a part at ${at} has no size`);
    at += long;
  }
  return at;
}

const EBML = 0x1a45dfa3;
const SEGMENT = 0x18538067;

/** Where the segment would end: RFC 8794, 4 and RFC 9559, 5.1. One that was written as it was filmed need not say. */
async function endOfSegment(file: FileHandle, size: number): Promise<number> {
  let at = 0;
  while (at < size) {
    const head = await bytesAt(file, at, 12);
    if (head.length < 6) return at + 6;
    const id = head.readUInt32BE(0);
    const length = Math.clz32(head[4] ?? 0) - 23;
    if (length > 8 || head.length < 4 + length) return at + 4 + length;
    const first = (head[4] ?? 0) & (0xff >> length);
    const rest = [...head.subarray(5, 4 + length)];
    const content = rest.reduce((sum, byte) => sum * 256 + byte, first);
    if (id === SEGMENT) return content === 2 ** (7 * length) - 1 ? size : at + 4 + length + content;
    if (id !== EBML && at === 0) throw new Refused("damaged", "it does not begin as a WebM does");
    at += 4 + length + content;
  }
  throw new Refused("damaged", "there is nothing after its beginning");
}

async function bytesAt(file: FileHandle, at: number, length: number): Promise<Buffer> {
  const bytes = Buffer.alloc(length);
  const { bytesRead } = await file.read(bytes, 0, length, at);
  return bytes.subarray(0, bytesRead);
}
