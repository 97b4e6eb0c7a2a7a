/** What files are, by their first bytes. */
import { posix } from "node:path";
import type { Fault } from "../facts/reading.ts";
import type { FilePath } from "../facts/types.ts";

const PICTURES = "a JPEG, PNG, WebP, GIF, AVIF, TIFF or SVG picture";

/** What keeps a file that begins so from being shown as a picture. */
export function pictureFault(head: Buffer, path: FilePath): Fault | undefined {
  if (head.length === 0)
    return {
      code: "no-picture",
      message: "this picture is empty",
      expected: PICTURES,
      found: path,
      mend: "copy the picture from the camera again",
    };
  if (isPicture(head)) return undefined;
  const heic = head.toString("latin1", 4, 8) === "ftyp" && /hei[cxms]|hevc|mif1/.test(head.toString("latin1", 8, 12));
  const mend = heic ? "export it as JPEG; browsers do not show HEIC" : "put the picture itself in its place";
  return {
    code: "no-picture",
    message: heic ? "this is a HEIC picture" : "this is no picture",
    expected: PICTURES,
    found: path,
    mend,
  };
}

function isPicture(head: Buffer): boolean {
  const text = head.toString("latin1");
  const starts = (...bytes: number[]): boolean => bytes.every((byte, index) => head[index] === byte);
  return (
    starts(0xff, 0xd8, 0xff) ||
    starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a) ||
    /^GIF8[79]a/.test(text) ||
    /^RIFF.{4}WEBP/s.test(text) ||
    /^.{4}ftypavi[fs]/s.test(text) ||
    starts(0x49, 0x49, 0x2a, 0) ||
    starts(0x4d, 0x4d, 0, 0x2a) ||
    /^(?:\xef\xbb\xbf)?\s*(?:<\?[^>]*\?>\s*|<!--.*?-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/s.test(text)
  );
}

const CLIPS = "a clip that every browser plays: .mp4 or .m4v (H.264 with AAC), or .webm";
const CLIP = /\.(?:mp4|m4v|webm)$/i;
const OTHER_FILM = /\.(?:mov|qt|avi|mkv|wmv|flv|f4v|mpe?g|mts|m2ts|vob|ogv|3gp|3g2|divx|asf)$/i;

/** What keeps a file that begins so from being played as a clip. */
export function clipFault(head: Buffer, path: FilePath): Fault | undefined {
  const said = (message: string, mend: string): Fault => ({
    code: "no-clip",
    message,
    expected: CLIPS,
    found: path,
    mend,
  });
  if (head.length === 0) return said("this clip is empty", "copy the clip from the camera again");
  if (OTHER_FILM.test(path)) return said("not every browser plays clips of this kind", converted(path));
  if (!CLIP.test(path))
    return said("this is no clip", "name a clip here; pictures stand under `photos`, papers under `attachments`");
  const kind = kindOf(head);
  if (kind === undefined)
    return said("this is no clip", "put the clip itself in its place, copied from the camera again");
  if (kind === "quicktime" || kind === "matroska")
    return said(
      `this is a ${kind === "quicktime" ? "QuickTime" : "Matroska"} film under another name`,
      converted(path),
    );
  const isNamedSo = (kind === "webm") === /\.webm$/i.test(path);
  return isNamedSo
    ? undefined
    : said(
        "this is a clip of another kind than its name says",
        `name it ${posix.basename(path).replace(CLIP, kind === "webm" ? ".webm" : ".mp4")}`,
      );
}

/** A command that makes of any clip one that every browser plays. */
export function conversion(from: string, to: string): string {
  const quoted = (name: string): string => (/^[\w.-]+$/.test(name) ? name : `"${name}"`);
  return `ffmpeg -i ${quoted(from)} -c:v libx264 -pix_fmt yuv420p -c:a aac ${quoted(to)}`;
}

function converted(path: FilePath): string {
  const name = posix.basename(path);
  const bare = name.replace(/\.\w+$/, "");
  return `make an MP4 of it and name that, for example by: ${conversion(name, `${bare}${/\.mp4$/i.test(name) ? "-2" : ""}.mp4`)}`;
}

function kindOf(head: Buffer): "mp4" | "webm" | "quicktime" | "matroska" | undefined {
  const text = head.toString("latin1");
  if (/^.{4}ftyp/s.test(text)) return text.slice(8, 12) === "qt  " ? "quicktime" : "mp4";
  if (/^.{4}(?:moov|mdat|wide|free|skip|pnot)/s.test(text)) return "quicktime";
  if (head.subarray(0, 4).equals(Buffer.from([0x1a, 0x45, 0xdf, 0xa3])))
    return text.includes("webm") ? "webm" : "matroska";
  return undefined;
}
