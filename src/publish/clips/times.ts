/** The times of making that a container of MP4 states, set to zero, which means: not known. */
import { open } from "node:fs/promises";

/** Boxes with a time of creation and one of change at their beginning, by their path within `moov`: ISO/IEC 14496-12, 8.2.2, 8.3.2 and 8.4.2. */
const WITHIN = new Set(["trak", "mdia"]);
const TIMED = new Set(["mvhd", "tkhd", "mdhd"]);
const HEAD = 8;

/** `moov` is where that box stands in the file, or -1 where there is none. */
export async function withoutTimes(path: string, { moov }: { readonly moov: number }): Promise<void> {
  if (moov < 0) return;
  const file = await open(path, "r+");
  try {
    const head = Buffer.alloc(HEAD);
    await file.read(head, 0, HEAD, moov);
    const box = Buffer.alloc(head.readUInt32BE(0));
    await file.read(box, 0, box.length, moov);
    clear(box.subarray(HEAD));
    await file.write(box, 0, box.length, moov);
  } finally {
    await file.close();
  }
}

function clear(boxes: Buffer): void {
  for (let at = 0; at + HEAD <= boxes.length;) {
    const size = boxes.readUInt32BE(at);
    if (size < HEAD || at + size > boxes.length) throw new Error("a box of the copy does not end where it should");
    const kind = boxes.toString("latin1", at + 4, at + HEAD);
    const within = boxes.subarray(at + HEAD, at + size);
    if (WITHIN.has(kind)) clear(within);
    // Version 0 has two times of 32 bits after its version and flags, version 1 two of 64.
    if (TIMED.has(kind)) within.fill(0, 4, within[0] === 1 ? 20 : 12);
    at += size;
  }
}
