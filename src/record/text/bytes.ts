/** Bytes of a record file to text: UTF-8 only, no marks, no control characters. LF and CRLF line ends are both read. */
import { isUtf8 } from "node:buffer";
import type { Problem } from "../../problem.ts";
import type { Fault } from "../../facts/reading.ts";
import { Source } from "./source.ts";

export function readText(file: string, bytes: Buffer): Source | { readonly problem: Problem } {
  const mark = markFault(bytes);
  if (mark) return { problem: { file, line: 1, column: 1, ...mark } };
  if (!isUtf8(bytes)) return { problem: badByte(file, bytes) };
  const raw = bytes.toString("utf8");
  const source = new Source(file, raw.includes("\r") ? raw.replaceAll("\r\n", "\n") : raw);
  const control = /[\u0000-\u0008\u000b-\u001f\u007f\u0085\u2028\u2029\ufeff]/.exec(source.text);
  return control ? { problem: source.problem(control.index, controlFault(control[0])) } : source;
}

function markFault(bytes: Buffer): Fault | undefined {
  const starts = (...head: readonly number[]): boolean => head.every((byte, index) => bytes[index] === byte);
  const expected = "plain UTF-8, without a mark before the first line";
  if (starts(0xef, 0xbb, 0xbf)) {
    return {
      code: "encoding",
      message: "the file begins with a byte order mark",
      expected,
      mend: "save it as UTF-8 without BOM",
    };
  }
  if (starts(0xff, 0xfe) || starts(0xfe, 0xff)) {
    return { code: "encoding", message: "the file is UTF-16", expected, mend: "save it as UTF-8 without BOM" };
  }
  return undefined;
}

function badByte(file: string, bytes: Buffer): Problem {
  const text = bytes.toString("utf8");
  let index = text.indexOf("\ufffd");
  while (isWritten(bytes, text, index)) index = text.indexOf("\ufffd", index + 1);
  const byte = bytes[Buffer.byteLength(text.slice(0, index))] ?? 0;
  const latin = byte >= 0xa0 ? ` (${String.fromCharCode(byte)} in Latin-1)` : "";
  return new Source(file, text.replaceAll("\r\n", "\n")).problem(text.slice(0, index).replaceAll("\r\n", "\n").length, {
    code: "encoding",
    message: "the file is not UTF-8",
    expected: "UTF-8 text",
    found: `byte ${byte.toString(16).toUpperCase().padStart(2, "0")}${latin}`,
    mend: "open it in the encoding it was saved in and save it as UTF-8",
  });
}

/** Whether the replacement character at an index was itself written in the file. */
function isWritten(bytes: Buffer, text: string, index: number): boolean {
  const offset = Buffer.byteLength(text.slice(0, index));
  return bytes[offset] === 0xef && bytes[offset + 1] === 0xbf && bytes[offset + 2] === 0xbd;
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
