import { ArchiveRefused } from "../refused.ts";
import type { Piece } from "./payload.ts";

const UNITS: { readonly [unit: string]: number } = {
  kB: 1e3,
  MB: 1e6,
  GB: 1e9,
  TB: 1e12,
  KiB: 2 ** 10,
  MiB: 2 ** 20,
  GiB: 2 ** 30,
  TiB: 2 ** 40,
};

/** Bytes, of a text such as `650 MB` or `4.7 GB`; undefined where it is none. */
export function sizeOf(text: string): number | undefined {
  const [, number, unit = ""] = /^(\d+(?:\.\d+)?) ?([kKMGT]i?B)$/.exec(text.trim()) ?? [];
  const factor = UNITS[unit === "KB" ? "kB" : unit];
  return number === undefined || factor === undefined ? undefined : Math.floor(Number(number) * factor);
}

/** Tag files but for the lines of manifests and the README, and the end of a zip or tar. */
const FRAME = 12_288;

/**
 * Shares out the payload, in its order, to bags that each fit into `most` bytes with their manifests, serialised or
 * not.
 * `always` is in the payload of every bag, so that each can be checked by itself; `beside` lies beside that of each.
 * @throws ArchiveRefused where a file alone is larger
 */
export function partsOf(pieces: readonly Piece[], always: readonly Piece[], beside: Piece, most: number): Piece[][] {
  const frame = FRAME + [...always, beside].reduce((sum, piece) => sum + weightOf(piece), 0);
  const parts: Piece[][] = [];
  let room = 0;
  for (const piece of pieces) {
    const weight = weightOf(piece);
    if (frame + weight > most)
      throw new ArchiveRefused(
        `${piece.path} has ${piece.size} bytes and does not fit into a bag of ${most} bytes. Give a larger size: --split`,
      );
    if (weight > room) {
      parts.push([...always]);
      room = most - frame;
    }
    parts.at(-1)?.push(piece);
    room -= weight;
  }
  return parts.map((part) => part.sort((a, b) => (a.path < b.path ? -1 : 1)));
}

/**
 * More than a file can come to take: its bytes, incompressible; two lines of manifests; heads and padding of a tar or
 * a zip.
 */
function weightOf({ path, size }: Piece): number {
  const name = Buffer.byteLength(path) + 64;
  return Math.ceil(size * 1.001) + 4 * name + 2_304;
}
