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
}

/** A text at the place of the problem that becomes another, or a file that gets another name. */
type Edit = { readonly replace: string; readonly with: string } | { readonly rename: string };

/** A fault as it is found in text, before its place is known. */
type Placeless = Omit<Problem, keyof Place | "edit"> & { readonly instead?: string };

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

/** Sorts by file, line and column, so that the same record gives the same list. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  const key = (p: Problem): string =>
    `${p.file}\u0000${String(p.line).padStart(7, "0")}${String(p.column).padStart(7, "0")}${p.code}${p.message}`;
  return [...problems].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
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

/** The text a builder sees for one problem, ending without a line feed; its code ends the first line. */
export function problemText(problem: Problem): string {
  const lines = [`${problem.file}:${problem.line}:${problem.column}  ${problem.message}  [${problem.code}]`];
  if (problem.expected !== undefined) lines.push(`    expected  ${problem.expected}`);
  if (problem.found !== undefined) lines.push(`    found     ${problem.found}`);
  lines.push(`    mend      ${problem.mend}`);
  return lines.map(plainly).join("\n");
}
