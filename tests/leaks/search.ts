/** Looks for words in every byte of a folder: in names, as they stand, and within what they may be wrapped in. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { brotliDecompressSync, gunzipSync, inflateRawSync, inflateSync } from "node:zlib";
import { decode } from "./entities.ts";
import type { Word } from "./words.ts";

/** For each word the files it was found in; words that were not found are not in it. */
export function found(folder: string, words: readonly Word[]): Map<Word, string[]> {
  const hits = new Map<Word, string[]>();
  const byText = new Map(words.map((word) => [word.number ? digitsOf(word.text) : word.text, word]));
  for (const path of filesIn(folder)) {
    const hit = new Set(
      [path, ...viewsOf(readFileSync(join(folder, path)))].flatMap((view) => wordsIn(view, byText, !isProgram(path))),
    );
    for (const word of hit) hits.set(word, [...(hits.get(word) ?? []), path]);
  }
  return hits;
}

/** Scripts that are the same in every site are full of numbers; the index of a search is not one of them. */
const isProgram = (path: string): boolean => /(^|\/)assets\/[^/]+\.js$/.test(path);

/** Every planted word begins and ends alike, so that one pass finds them all; a number counts wherever its point stands: 61.7301 mm is 0.0617301 m. */
function wordsIn(view: string, byText: ReadonlyMap<string, Word>, numbers: boolean): Word[] {
  const texts = view.toLowerCase().match(/zq[a-z]+?qz/g) ?? [];
  const digits = numbers ? (view.replace(DIGEST, "").match(/\d[\d.]{2,}/g) ?? []).map(digitsOf) : [];
  return [...texts, ...digits].flatMap((text) => byText.get(text) ?? []);
}

/** What files are called by in a site: chance has any digits in it. */
const DIGEST = /[0-9a-f]{20}/g;

const digitsOf = (number: string): string => number.replaceAll(".", "").replace(/^0+/, "");

export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => statSync(join(folder, path)).isFile())
    .map((path) => relative(folder, join(folder, path)))
    .sort();
}

/** The bytes as text, and as what they are when each wrapping is taken off, and the wrapping within that. */
function viewsOf(bytes: Buffer, deeper = 2): string[] {
  const latin = bytes.toString("latin1");
  const text = bytes.toString("utf8");
  const views = [
    latin,
    bytes.toString("utf16le"),
    bytes.subarray(1).toString("utf16le"),
    swapped(bytes),
    swapped(bytes.subarray(1)),
    ...unwrapped(text, 1),
  ];
  const inner = [...packed(bytes), ...longBase64(latin)].flatMap((each) =>
    deeper > 0 ? viewsOf(each, deeper - 1) : [each.toString("latin1")],
  );
  return [
    ...views,
    ...(latin.match(/[0-9a-f]{20,}/gi) ?? []).flatMap(fromHex),
    ...(latin.match(/[A-Za-z0-9+/_-]{14,}/g) ?? []).flatMap(fromBase64),
    ...inner,
  ];
}

/** A text without each way of writing its letters, and without another within that. */
function unwrapped(text: string, deeper: number): string[] {
  const inner = new Set(UNWRAPPED.map((unwrap) => unwrap(text)));
  inner.delete(text);
  return [...inner].flatMap((each) => (deeper > 0 ? [each, ...unwrapped(each, deeper - 1)] : [each]));
}

const charOf = (_: string, hex: string): string => String.fromCharCode(Number.parseInt(hex, 16));

/** Ways in which letters of a text are written by others. */
const UNWRAPPED: readonly ((text: string) => string)[] = [
  (text) => (text.includes("&") ? decode(text) : text),
  (text) => text.replace(/%([0-9A-Fa-f]{2})/g, charOf),
  (text) =>
    text
      .replace(/\\u([0-9A-Fa-f]{4})/g, charOf)
      .replace(/\\u\{([0-9A-Fa-f]{1,6})\}/g, charOf)
      .replace(/\\x([0-9A-Fa-f]{2})/g, charOf),
  (text) => text.replace(/\\([0-9A-Fa-f]{2,6}) ?/g, charOf),
  (text) => text.replace(/=\r?\n/g, "").replace(/=([0-9A-F]{2})/g, charOf),
  (text) => text.replace(/[\u200b-\u200f\u00ad\u2060\ufeff]|<\/?(?:wbr|b|i|em|strong|span|mark)[^>]*>/g, ""),
];

/** Whole files in a page, such as `data:` addresses, in which something may be packed. */
function longBase64(latin: string): Buffer[] {
  return (latin.match(/[A-Za-z0-9+/]{80,}={0,2}/g) ?? []).map((run) => Buffer.from(run, "base64"));
}

function fromHex(run: string): string[] {
  return [0, 1].map((shift) => Buffer.from(run.slice(shift), "hex").toString("latin1"));
}

/** From each place at which a group of four may begin. */
function fromBase64(run: string): string[] {
  return [0, 1, 2, 3].map((shift) => Buffer.from(run.slice(shift), "base64").toString("latin1"));
}

function swapped(bytes: Buffer): string {
  return Buffer.from(bytes.subarray(0, bytes.length - (bytes.length % 2)))
    .swap16()
    .toString("utf16le");
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
    if (bytes[at] === 0x78 && [0x01, 0x5e, 0x9c, 0xda].includes(bytes[at + 1] ?? 0))
      keep(() => inflateSync(bytes.subarray(at), { finishFlush: 2 }));
  }
  keep(() => inflateRawSync(bytes));
  keep(() => brotliDecompressSync(bytes));
  return out;
}
