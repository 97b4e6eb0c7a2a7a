/** The parts that picture files are made of, read straight from their bytes. */

/** Names of markers of a JPEG up to the picture's data, such as `APP1`, `COM`, `DQT`. */
export function jpegMarkers(bytes: Buffer): string[] {
  const names: string[] = [];
  for (let at = 2; at < bytes.length && bytes[at] === 0xff; ) {
    const marker = bytes[at + 1] ?? 0;
    names.push(marker >= 0xe0 && marker <= 0xef ? `APP${marker - 0xe0}` : (NAMES[marker] ?? marker.toString(16)));
    if (marker === 0xda) break;
    at += 2 + bytes.readUInt16BE(at + 2);
  }
  return names;
}

const NAMES: { readonly [marker: number]: string } = {
  0xc0: "SOF0",
  0xc2: "SOF2",
  0xc4: "DHT",
  0xda: "SOS",
  0xdb: "DQT",
  0xdd: "DRI",
  0xfe: "COM",
};

/** Names of chunks of a WebP, such as `VP8 `, `EXIF`. */
export function webpChunks(bytes: Buffer): string[] {
  const names: string[] = [];
  for (let at = 12; at + 8 <= bytes.length; ) {
    names.push(bytes.toString("latin1", at, at + 4));
    const size = bytes.readUInt32LE(at + 4);
    at += 8 + size + (size % 2);
  }
  return names;
}

/** Names of chunks of a PNG, such as `IHDR`, `tEXt`. */
export function pngNames(bytes: Buffer): string[] {
  const names: string[] = [];
  for (let at = 8; at + 8 <= bytes.length; at += 12 + bytes.readUInt32BE(at))
    names.push(bytes.toString("latin1", at + 4, at + 8));
  return names;
}
