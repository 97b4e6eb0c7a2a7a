import type { ProblemCode } from "./problems/codes.ts";

/** Where something stands in a file. Lines and columns count from 1; `file` is relative to the record's folder, with `/`. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/**
 * One thing in the record that is wrong, and how to mend it.
 * `expected` holds an example; `found` is what stood there, as typed.
 */
export interface Problem extends Place {
  /** The kind of problem, such as `unknown-key`; `scarfline explain CODE` tells of it. */
  readonly code: ProblemCode;
  readonly message: string;
  readonly expected?: string;
  readonly found?: string;
  readonly mend: string;
  /** What the mend writes; where there is none, only the builder knows. */
  readonly edit?: Edit;
  /** Other problems that this one stands for and that are not told one by one. */
  readonly more?: number;
}

/** A text at the place of the problem that becomes another, or a file that gets another name. */
type Edit = { readonly replace: string; readonly with: string } | { readonly rename: string };

/** A fault as it is found in text, before its place is known. */
type Placeless = Omit<Problem, keyof Place | "edit" | "more"> & { readonly instead?: string };

/** A problem at a place where `typed` stands, raw: what the mend writes comes in its place. */
export function placed(place: Place, { instead, ...fault }: Placeless, typed = ""): Problem {
  const { file, line, column } = place;
  const at = { file, line, column, ...fault };
  return instead === undefined || typed === ""
    ? at
    : { ...at, edit: { replace: typed, with: quotedAs(typed, instead) } };
}

/** Text that YAML reads as itself, within brackets too; anything else needs quotation marks. */
const PLAIN = /^[\p{L}\p{N}.±+-](?:[^\n,#:{}[\]"'\\]|:(?=\S))*$/u;

function quotedAs(typed: string, value: string): string {
  return /^["']/.test(typed) || !PLAIN.test(value) ? JSON.stringify(value) : value;
}

/** Something that the builder should know of how the record was read, and that keeps nothing from being read. */
export interface Note extends Place {
  readonly message: string;
}

const LAST = "\uffff";

/** Sorts by file, line and column, so that the same record gives the same list; what stands for others comes last. */
export function inOrder<T extends Note & Partial<Pick<Problem, "code" | "more">>>(told: readonly T[]): T[] {
  return told
    .map((one) => ({
      one,
      key: `${one.more === undefined ? "" : LAST}${one.file}\u0000${String(one.line).padStart(9, "0")}${String(one.column).padStart(9, "0")}${one.code ?? ""}${one.message}`,
    }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .map(({ one }) => one);
}

/**
 * Marks that a terminal or an editor obeys in place of showing: control characters, those that turn the direction of
 * text, and invisible letters of the tag block.
 */
const OBEYED =
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\u{e0000}-\u{e007f}]/gu;

/** Text in which such marks are written out, as U+202E, so that what is printed is what stands there. */
export function plainly(text: string): string {
  return text.replace(
    OBEYED,
    (mark) => `‹U+${(mark.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}›`,
  );
}

/** Problems as JSON in which such marks are escaped as JSON escapes them. */
export function problemsJson(problems: readonly Problem[]): string {
  return JSON.stringify(problems, undefined, 2).replace(OBEYED, (mark) =>
    mark === "\n"
      ? mark
      : [...Array(mark.length).keys()].map((i) => `\\u${mark.charCodeAt(i).toString(16).padStart(4, "0")}`).join(""),
  );
}

/** The text a builder sees for one note, ending without a line feed. */
export function noteText({ file, line, column, message }: Note): string {
  return plainly(`${file}:${line}:${column}  note: ${message}`);
}

/** The text a builder sees for one problem, ending without a line feed; its code ends the first line. */
export function problemText(problem: Problem): string {
  const lines = [`${problem.file}:${problem.line}:${problem.column}  ${problem.message}  [${problem.code}]`];
  if (problem.expected !== undefined) lines.push(`    expected  ${problem.expected}`);
  if (problem.found !== undefined) lines.push(`    found     ${problem.found}`);
  lines.push(`    mend      ${problem.mend}`);
  return lines.map(plainly).join("\n");
}

/** How many problems there are, those too that are not told one by one. */
export function problemCount(problems: readonly Problem[]): string {
  const number = problems.reduce((sum, { more = 1 }) => sum + more, 0);
  return number === 1 ? "1 problem" : `${number} problems`;
}
