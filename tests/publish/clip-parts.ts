/** The parts that clips are made of, read straight from their bytes. */

export interface Box {
  readonly kind: string;
  readonly content: Buffer;
}

/** Boxes that hold boxes, and how many bytes stand before those. */
const HOLDERS: { readonly [kind: string]: number } = {
  moov: 0,
  trak: 0,
  mdia: 0,
  minf: 0,
  stbl: 0,
  dinf: 0,
  edts: 0,
  udta: 0,
  stsd: 8,
  dref: 8,
  avc1: 78,
  mp4a: 28,
};

/** Every box of an MP4, outer before inner. */
export function boxesIn(bytes: Buffer): Box[] {
  const boxes: Box[] = [];
  for (let at = 0; at + 8 <= bytes.length; ) {
    const [size, kind] = [bytes.readUInt32BE(at), bytes.toString("latin1", at + 4, at + 8)];
    const head = size === 1 ? 16 : 8;
    const end = size === 0 ? bytes.length : at + (size === 1 ? Number(bytes.readBigUInt64BE(at + 8)) : size);
    if (end <= at) break;
    const content = bytes.subarray(at + head, end);
    const skip = HOLDERS[kind];
    boxes.push({ kind, content }, ...(skip === undefined ? [] : boxesIn(content.subarray(skip))));
    at = end;
  }
  return boxes;
}

const NAMES: { readonly [id: string]: string } = {
  "1a45dfa3": "EBML",
  "18538067": "Segment",
  "114d9b74": "SeekHead",
  ec: "Void",
  bf: "CRC-32",
  "1549a966": "Info",
  "1654ae6b": "Tracks",
  "1f43b675": "Cluster",
  "1c53bb6b": "Cues",
  "1254c367": "Tags",
  "1941a469": "Attachments",
  "1043a770": "Chapters",
};

/** Names of the elements of a WebM, at the top and within its segment. */
export function elementsIn(bytes: Buffer): string[] {
  const names: string[] = [];
  for (let at = 0; at < bytes.length; ) {
    const idLength = Math.clz32(bytes[at] ?? 0) - 23;
    const id = bytes.toString("hex", at, at + idLength);
    const sizeAt = at + idLength;
    const sizeLength = Math.clz32(bytes[sizeAt] ?? 0) - 23;
    const size = [...bytes.subarray(sizeAt + 1, sizeAt + sizeLength)].reduce(
      (sum, byte) => sum * 256 + byte,
      (bytes[sizeAt] ?? 0) & (0xff >> sizeLength),
    );
    names.push(NAMES[id] ?? id);
    at = sizeAt + sizeLength + (id === "18538067" ? 0 : size);
  }
  return names;
}
