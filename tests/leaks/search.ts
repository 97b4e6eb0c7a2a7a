/** Looks for words in every byte of a folder: in names, as they stand, and within what they may be wrapped in. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { brotliDecompressSync, gunzipSync, inflateRawSync, inflateSync } from "node:zlib";
import { decode } from "./entities.ts";
import type { Word } from "./words.ts";

/** For each word the files it was found in; words that were not found are not in it. */
export function found(folder: string, words: readonly Word[]): Map<Word, string[]> {
  const hits = new Map<Word, string[]>();
  const needles = new Map(words.flatMap((word) => (word.number ? [] : variants(word.text).map((needle) => [needle, word] as const))));
  const numbers = words.filter(({ number }) => number);
  for (const path of filesIn(folder)) {
    const bytes = readFileSync(join(folder, path));
    const hit = new Set<Word>();
    for (const view of [path, ...viewsOf(bytes)]) {
      for (const [needle, word] of inText(view, needles)) if (needle !== "") hit.add(word);
      if (!path.endsWith(".js")) for (const word of numbers) if (isNumberIn(view, word.text)) hit.add(word);
    }
    for (const word of hit) hits.set(word, [...(hits.get(word) ?? []), path]);
  }
  return hits;
}

export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => statSync(join(folder, path)).isFile()).map((path) => relative(folder, join(folder, path))).sort();
}

/** Every planted word begins and ends alike, so that one pass finds them all; what wraps it letter by letter is looked for form by form. */
function inText(view: string, needles: ReadonlyMap<string, Word>): (readonly [string, Word])[] {
  const lower = view.toLowerCase();
  const plain = (lower.match(/zq[a-z]+?qz/g) ?? []).flatMap((text) => { const word = needles.get(text); return word === undefined ? [] : [[text, word] as const]; });
  return [...plain, ...[...needles].filter(([needle]) => !needle.startsWith("zq") && view.includes(needle))];
}

/** A word as it stands, in hexadecimal, and in base64 from each of the three places it can begin at. */
function variants(text: string): string[] {
  const bytes = Buffer.from(text);
  const base64 = [0, 1, 2].map((shift) => Buffer.concat([Buffer.alloc(shift), bytes]).toString("base64").slice(shift === 0 ? 0 : shift + 1, -4));
  return [text, bytes.toString("hex"), bytes.toString("hex").toUpperCase(), ...base64];
}

/** The same digits, with the point where it stood or moved by whole thousands: 61.7301 mm is 0.0617301 m. */
function isNumberIn(view: string, text: string): boolean {
  const digits = text.replace(".", "");
  if (!view.includes(digits.slice(2)) && !view.includes(digits)) return false;
  return [text, digits, `0.0${digits}`, `0.${digits}`, `0.00${digits}`].some((form) => new RegExp(`(?<![0-9])${form.replaceAll(".", "\\.")}(?![0-9])`).test(view));
}

/** The bytes as text, and as what they are when each wrapping is taken off. */
export function viewsOf(bytes: Buffer): string[] {
  const latin = bytes.toString("latin1");
  const text = bytes.toString("utf8");
  const views = [latin, bytes.toString("utf16le"), bytes.subarray(1).toString("utf16le"), swapped(bytes), swapped(bytes.subarray(1))];
  if (text.includes("&")) views.push(decode(text));
  if (/%[0-9A-Fa-f]{2}/.test(text)) views.push(text.replace(/%([0-9A-Fa-f]{2})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))));
  if (/\\u[0-9A-Fa-f]{4}/.test(text)) views.push(text.replace(/\\u([0-9A-Fa-f]{4})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))));
  return [...views, ...packed(bytes).map((inner) => inner.toString("latin1"))];
}

function swapped(bytes: Buffer): string {
  return Buffer.from(bytes.subarray(0, bytes.length - (bytes.length % 2))).swap16().toString("utf16le");
}

/** Whatever in the bytes can be unpacked, from each place at which a packed stream may begin. */
function packed(bytes: Buffer): Buffer[] {
  const isText = bytes.subarray(0, 2000).every((byte) => byte >= 9);
  if (isText) return [];
  const out: Buffer[] = [];
  const keep = (unpack: () => Buffer): void => {
    try {
      const inner = unpack();
      if (inner.length > 3) out.push(inner);
    } catch {
      // Nothing was packed here.
    }
  };
  for (let at = 0; at + 2 < bytes.length; at++) {
    if (bytes[at] === 0x1f && bytes[at + 1] === 0x8b) keep(() => gunzipSync(bytes.subarray(at)));
    if (bytes[at] === 0x78 && [0x01, 0x5e, 0x9c, 0xda].includes(bytes[at + 1] ?? 0)) keep(() => inflateSync(bytes.subarray(at), { finishFlush: 2 }));
  }
  keep(() => inflateRawSync(bytes));
  keep(() => brotliDecompressSync(bytes));
  return out;
}
