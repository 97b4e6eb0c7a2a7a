/**
 * Bytes of a record file to text. UTF-8 and marked UTF-16 are read, of tables Windows-1252 too; lines may end in LF or
 * CRLF.
 */
import { isUtf8 } from "node:buffer";
import type { Problem } from "../../problem.ts";
import { type Fault, onlyYouKnow, shown } from "../../facts/reading.ts";
import { Source } from "./source.ts";

/** What a file is read from that is not plain UTF-8 with LF: told in a note. */
export type Form = "byte order mark" | "UTF-16" | "CRLF" | "Windows-1252";

export interface ReadText {
  readonly source: Source;
  readonly forms: readonly Form[];
}

interface Decoded {
  readonly text: string;
  readonly form?: Form;
}

/** `isTable` says that the bytes were written by a logger or a spreadsheet, and not by hand. */
export function readText(
  file: string,
  bytes: Uint8Array,
  { isTable = false }: { readonly isTable?: boolean } = {},
): ReadText | { readonly problem: Problem } {
  const decoded = decodedFrom(file, bytes, isTable);
  if ("problem" in decoded) return decoded;
  const isCrlf = decoded.text.includes("\r\n");
  const source = new Source(file, isCrlf ? decoded.text.replaceAll("\r\n", "\n") : decoded.text);
  const control = CONTROL.exec(source.text);
  if (control) return { problem: source.problem(control.index, controlFault(control[0])) };
  return { source, forms: [...(decoded.form === undefined ? [] : [decoded.form]), ...(isCrlf ? CRLF : [])] };
}

const CRLF: readonly Form[] = ["CRLF"];
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f\u0080-\u009f\u2028\u2029\ufeff]/;

function decodedFrom(file: string, bytes: Uint8Array, isTable: boolean): Decoded | { readonly problem: Problem } {
  const [first, second, third] = bytes;
  const wide =
    first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : undefined;
  if (wide !== undefined) {
    const text = decode(wide, bytes);
    return text === undefined ? { problem: brokenUtf16(file) } : { text, form: "UTF-16" };
  }
  const isMarked = first === 0xef && second === 0xbb && third === 0xbf;
  if (isUtf8(bytes)) {
    const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("utf8");
    return isMarked ? { text: text.slice(1), form: "byte order mark" } : { text };
  }
  const windows = decode("windows-1252", bytes);
  if (isTable && !isMarked && windows !== undefined && !UNDEFINED.test(windows))
    return { text: windows, form: "Windows-1252" };
  return { problem: badByte(file, bytes, windows) };
}

/** Places that Windows-1252 leaves empty; the decoder of the web's standard makes control characters of them. */
const UNDEFINED = /[\u0080-\u009f]/;

/** The text without a mark at its head; undefined where the bytes are none in the encoding. */
function decode(encoding: string, bytes: Uint8Array): string | undefined {
  try {
    // Node 20 to 23 take a whole text in Windows-1252 for Latin-1, but no part of one; of one byte a letter, no part is cut.
    return new TextDecoder(encoding, { fatal: true }).decode(bytes, { stream: encoding === "windows-1252" });
  } catch {
    return undefined;
  }
}

function brokenUtf16(file: string): Problem {
  return {
    file,
    line: 1,
    column: 1,
    code: "encoding",
    message: "the file begins as UTF-16 and is none, or was cut off",
    expected: "text in UTF-8, or whole UTF-16",
    mend: "open it in the program that wrote it and save it as UTF-8",
  };
}

/** `windows` is the text as Windows-1252 has it. */
function badByte(file: string, bytes: Uint8Array, windows: string | undefined): Problem {
  const at = firstBadByte(bytes);
  const before = new TextDecoder("utf-8").decode(bytes.subarray(0, at)).replaceAll("\r\n", "\n");
  const byte = bytes[at] ?? 0;
  const line = windows?.slice(windows.lastIndexOf("\n", at) + 1).split(/\r?\n/, 1)[0];
  const isLikely = line !== undefined && !UNDEFINED.test(line);
  return new Source(file, before).problem(before.length, {
    code: "encoding",
    message: "the file is not UTF-8",
    expected: "UTF-8 text",
    found: `byte ${byte.toString(16).toUpperCase().padStart(2, "0")}${isLikely ? `; read as Windows-1252 the line would be: ${shown(line.trim())}` : ""}`,
    ...onlyYouKnow(
      isLikely
        ? "if the line reads rightly so, open the file as Windows-1252 (ANSI, Western) and save it as UTF-8; else in the encoding it was saved in"
        : "open it in the encoding it was saved in and save it as UTF-8",
    ),
  });
}

/** The first byte that begins no character of UTF-8: found by halves, since a head of UTF-8 is UTF-8 but for its end. */
function firstBadByte(bytes: Uint8Array): number {
  const isSound = (length: number): boolean =>
    [0, 1, 2, 3].some((cut) => cut <= length && isUtf8(bytes.subarray(0, length - cut)));
  let [low, high] = [0, bytes.length];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (isSound(middle)) low = middle;
    else high = middle - 1;
  }
  while (!isUtf8(bytes.subarray(0, low))) low -= 1;
  return low;
}

function controlFault(character: string): Fault {
  const name =
    character === "\r"
      ? "a carriage return"
      : character === "\0"
        ? "a NUL"
        : `the control character U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`;
  return {
    code: "control-character",
    message: `${name} stands here, which no editor shows`,
    expected: "text and line feeds",
    mend: character === "\r" ? "save the file with line ends of one kind, LF or CRLF" : "take it out",
  };
}
