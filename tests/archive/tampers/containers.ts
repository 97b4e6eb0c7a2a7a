/** Ways of tampering with a zip or a tar.gz as such. */
import { gunzipSync, gzipSync } from "node:zlib";
import { Header } from "tar";
import type { Chance } from "./chance.ts";
import { bytesTampered } from "./edits.ts";

interface Tampered {
  readonly bytes: Buffer;
  readonly what: string;
}

const MARKS = ["PK\u0001\u0002", "PK\u0003\u0004", "PK\u0005\u0006"].map((mark) => Buffer.from(mark));

/** In the heads of files and of the list, where each byte means something. */
export function zipTampered(bytes: Buffer, chance: Chance): Tampered {
  if (chance.below(3) === 0) return bytesTampered(bytes, chance);
  const mark = chance.of(MARKS);
  const places: number[] = [];
  for (let at = bytes.indexOf(mark); at >= 0; at = bytes.indexOf(mark, at + 4)) places.push(at);
  const head = chance.of(places);
  const at = head + 4 + chance.below(60);
  if (chance.below(6) === 0)
    return {
      bytes: Buffer.concat([bytes.subarray(0, head), Buffer.alloc(1 + chance.below(60)), bytes.subarray(head)]),
      what: `bytes before the head at ${head}`,
    };
  const changed = Buffer.from(bytes);
  if (at < changed.length) changed[at] = (changed[at] ?? 0) ^ (1 << chance.below(8));
  return { bytes: changed, what: `a bit in the head at ${head}, byte ${at - head}` };
}

export function tarTampered(bytes: Buffer, chance: Chance): Tampered {
  const tar = gunzipSync(bytes);
  const end = tar.length - 1024;
  switch (chance.below(6)) {
    case 0:
      return bytesTampered(bytes, chance);
    case 1:
      return {
        bytes: Buffer.concat([bytes, gzipSync(chance.of([tar, Buffer.alloc(0), Buffer.from("x")]))]),
        what: "a second gzip member",
      };
    case 2: {
      const inner = bytesTampered(tar, chance);
      return { bytes: gzipSync(inner.bytes), what: `in the tar, ${inner.what}` };
    }
    case 3: {
      const name = tar.subarray(0, 100).toString("latin1").replace(/\0.*$/s, "");
      const path = chance.of([
        name,
        name.replace(/[^/]+$/, "data/new.txt"),
        name.replace(/[^/]+$/, "data/record/aircraft.md"),
      ]);
      const where = chance.of([0, end, tar.length]);
      return {
        bytes: gzipSync(Buffer.concat([tar.subarray(0, where), entryOf(path), tar.subarray(where)])),
        what: `${path} once more at ${where}`,
      };
    }
    case 4:
      return {
        bytes: gzipSync(Buffer.concat([tar.subarray(0, end), Buffer.alloc(512), tar.subarray(0, end)])),
        what: "one empty block, and all again",
      };
    default: {
      const changed = Buffer.from(tar);
      const at = 512 * chance.below(tar.length / 512) + chance.below(512);
      changed[at] = (changed[at] ?? 0) ^ (1 << chance.below(8));
      return { bytes: gzipSync(changed), what: `a bit at ${at} of the tar` };
    }
  }
}

function entryOf(path: string): Buffer {
  const head = Buffer.alloc(512);
  new Header({ path, mode: 0o644, size: 5, type: "File", mtime: new Date(0) }).encode(head, 0);
  return Buffer.concat([head, Buffer.from("other"), Buffer.alloc(507)]);
}
