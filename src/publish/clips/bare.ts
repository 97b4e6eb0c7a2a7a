/** What may be noted within the coded picture and sound, taken out. */
import { Refused } from "./refused.ts";

type Bytes = Uint8Array | AllowSharedBufferSource | undefined;

/**
 * Of units in H.264 those that a decoder needs (ITU-T H.264, table 7-1): slices, sets of parameters, ends; of
 * supplements, access marks and filler none.
 */
const NEEDED = new Set([1, 2, 3, 4, 5, 7, 8, 10, 11, 13, 15, 20]);

/**
 * Takes supplements (SEI) out of frames of H.264: cameras note place, time and settings in them, and no decoder needs
 * one.
 * `description` is the track's AVCDecoderConfigurationRecord, ISO/IEC 14496-15, which says how the lengths of units
 * are written.
 */
export function bareAvc(description: Bytes): (frame: Uint8Array) => Uint8Array {
  const lengthSize = ((bytesOf(description)[4] ?? 0xff) & 3) + 1;
  return (frame) => {
    const units = unitsOf(frame, lengthSize);
    const kept = units.filter((unit) => NEEDED.has((unit[lengthSize] ?? 0) & 0x1f));
    return kept.length === units.length ? frame : Buffer.concat(kept);
  };
}

/** Each with its length before it. */
function unitsOf(frame: Uint8Array, lengthSize: number): Uint8Array[] {
  const units: Uint8Array[] = [];
  for (let at = 0; at < frame.length; ) {
    const size = frame.subarray(at, at + lengthSize).reduce((sum, byte) => sum * 256 + byte, 0);
    const end = at + lengthSize + size;
    if (end > frame.length) throw new Refused("damaged", "a frame is longer than its place");
    units.push(frame.subarray(at, end));
    at = end;
  }
  return units;
}

/** A comment header of Vorbis I with no maker's name and no comment. */
const NO_COMMENTS = Buffer.from("\u0003vorbis\0\0\0\0\0\0\0\0\u0001", "latin1");

/**
 * The three headers of Vorbis as Matroska keeps them (two lengths by Xiph's lacing before them), with an empty one
 * for comments.
 */
export function bareVorbis(description: Bytes): Uint8Array {
  const bytes = bytesOf(description);
  let at = 1;
  const laced = (): number => {
    let size = 0;
    for (;;) {
      const byte = bytes[at++];
      if (byte === undefined) throw new Refused("damaged", "the sound's headers are cut short");
      size += byte;
      if (byte < 255) return size;
    }
  };
  const [first, comments] = [laced(), laced()];
  if (bytes[0] !== 2 || at + first + comments > bytes.length)
    throw new Refused("damaged", "the sound's headers are cut short");
  const identification = bytes.subarray(at, at + first);
  const setup = bytes.subarray(at + first + comments);
  return Buffer.concat([
    Buffer.from([2]),
    lacing(first),
    lacing(NO_COMMENTS.length),
    identification,
    NO_COMMENTS,
    setup,
  ]);
}

function lacing(size: number): Buffer {
  return Buffer.from([...Array<number>(Math.floor(size / 255)).fill(255), size % 255]);
}

function bytesOf(description: Bytes): Uint8Array {
  if (description instanceof Uint8Array) return description;
  if (description === undefined) return new Uint8Array();
  return ArrayBuffer.isView(description)
    ? new Uint8Array(description.buffer, description.byteOffset, description.byteLength)
    : new Uint8Array(description);
}
