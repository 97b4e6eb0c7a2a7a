/** The bytes of one file of the record, if there are no more of them than are read. */
import { closeSync, fstatSync, openSync, readFileSync, readSync } from "node:fs";
import { join } from "node:path";
import { beyond, inBytes } from "../facts/limits.ts";
import { type Fault, onlyYouKnow } from "../facts/reading.ts";
import type { Folder } from "./folder.ts";
import { placed, type Problem } from "../problem.ts";

const UNREADABLE: Fault = {
  code: "unreadable",
  message: "this file cannot be read",
  ...onlyYouKnow("look at its permissions"),
};

/** `head` is how the file begins, which is all that is known of what is named in it. */
export function bytesOf(
  { root, asIf }: Pick<Folder, "root" | "asIf">,
  file: string,
  most: number,
): Buffer | { readonly problem: Problem; readonly head: Buffer } {
  const given = asIf?.get(file);
  if (given !== undefined)
    return given.length <= most
      ? given
      : { problem: told(file, tooLarge(given.length, most)), head: given.subarray(0, most) };
  let handle: number | undefined;
  try {
    handle = openSync(join(root, file), "r");
    const small = smallBytes(handle, most);
    if (small !== undefined) return small;
    const { size } = fstatSync(handle);
    if (size <= most) return readFileSync(handle);
    const head = Buffer.alloc(most);
    readSync(handle, head, 0, most, 0);
    return { problem: told(file, tooLarge(size, most)), head };
  } catch {
    return { problem: told(file, UNREADABLE), head: Buffer.alloc(0) };
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}

/** Most files fit in, and are read without asking how large they are. */
const ROOM = Buffer.allocUnsafeSlow(2 ** 16);

/** Undefined where there is more than fits in. */
function smallBytes(handle: number, most: number): Buffer | undefined {
  const length = readSync(handle, ROOM, 0, ROOM.length, 0);
  const isAll = length < ROOM.length && length <= most && readSync(handle, ROOM, length, 1, length) === 0;
  return isAll ? Buffer.from(ROOM.subarray(0, length)) : undefined;
}

function told(file: string, fault: Fault): Problem {
  return placed({ file, line: 1, column: 1 }, fault);
}

function tooLarge(size: number, most: number): Fault {
  const mend = "part it over several files, or look for what was pasted into it and does not belong there";
  return beyond("this file is larger than is read", inBytes(most), mend, inBytes(size));
}
