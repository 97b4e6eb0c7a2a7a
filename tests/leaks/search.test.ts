import { expect, it } from "vitest";
import { brotliCompressSync, deflateRawSync, deflateSync, gzipSync } from "node:zlib";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { found } from "./search.ts";
import type { Word } from "./words.ts";

const scratch = scratchFolders();
const word: Word = { text: "zqhbdfgqz", where: "here", audience: "archive", told: true, number: false, typed: true };
const number: Word = { ...word, text: "61.700031", number: true };
const each = (write: (char: string) => string): string => [...word.text].map(write).join("");
const hex = (char: string, length: number): string => char.charCodeAt(0).toString(16).padStart(length, "0");
const base64 = (bytes: string | Buffer): string => Buffer.from(bytes).toString("base64");

it.each<[string, string | Buffer]>([
  ["plain, in capitals too", "of ZQHBDFGQZ."],
  ["character references of HTML", `<p>${each((char) => `&#${char.charCodeAt(0)};`)}</p>`],
  ["those in hexadecimal", each((char) => `&#x${hex(char, 2)};`)],
  [
    "those within JSON within an attribute",
    `data-x="{&quot;a&quot;:&quot;${each((char) => `\\u${hex(char, 4)}`)}&quot;}"`,
  ],
  ["escapes of JSON, of JavaScript and of CSS", each((char) => `\\u${hex(char, 4)}`)],
  ["short escapes of JavaScript", each((char) => `\\x${hex(char, 2)}`)],
  ["escapes of CSS", `content: "${each((char) => `\\${hex(char, 2)} `)}"`],
  ["percent signs of an address", `href="a/${each((char) => `%${hex(char, 2)}`)}.html"`],
  ["percent signs, written twice", each((char) => `%25${hex(char, 2)}`)],
  ["quoted-printable", each((char) => `=${hex(char, 2).toUpperCase()}`)],
  ["base64 in the middle of something", `x.${base64(`ab ${word.text} cd`)}`],
  ["hexadecimal", `id="${Buffer.from(`a${word.text}`).toString("hex")}"`],
  ["UTF-16 of both kinds", Buffer.concat([Buffer.from("a"), Buffer.from(word.text, "utf16le").swap16()])],
  ["a gzip file", Buffer.concat([Buffer.from([0, 1]), gzipSync(`{"a":"${word.text}"}`)])],
  ["a packed stream", Buffer.concat([Buffer.from([0, 9, 9]), deflateSync(`well ${word.text}`)])],
  ["a bare packed stream", deflateRawSync(`bare ${word.text} bare ${word.text}`)],
  ["a file packed by Brotli", brotliCompressSync(`packed ${word.text}`.repeat(9))],
  [
    "a packed file in a page's own address",
    `<img src="data:image/png;base64,${base64(Buffer.concat([Buffer.from([0, 7]), deflateSync(`${"much ".repeat(90)}${word.text}${Math.PI}`, { level: 0 })]))}">`,
  ],
  ["character references within what is packed", gzipSync(each((char) => `&#${char.charCodeAt(0)};`))],
  ["words with soft hyphens and breaks between their letters", each((char) => `${char}\u00ad`)],
  ["letters in elements of their own", `<b>zqhb</b><span class="x">dfgqz</span>`],
])("The search finds a word that is wrapped in %s", (_how, bytes) => {
  const folder = scratch();
  writeAll(folder, { "a.bin": bytes, "b.bin": "zqhbdfgq zqhbdfggqz" });
  expect([...found(folder, [word])]).toEqual([[word, ["a.bin"]]]);
});

it("The search finds words in the names of files and folders, and numbers in whatever unit, but not within other digits", () => {
  const folder = scratch();
  writeAll(folder, { "deep/zqhbdfgqz/x.txt": "", "a.txt": "0.061700031 m", "b.txt": "161.7000319" });
  expect([...found(folder, [word, number])]).toEqual([
    [number, ["a.txt"]],
    [word, ["deep/zqhbdfgqz/x.txt"]],
  ]);
});
