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
}

/** Sorts by file, line and column, so that the same record gives the same list. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  const key = (p: Problem): string =>
    `${p.file}\u0000${String(p.line).padStart(7, "0")}${String(p.column).padStart(7, "0")}${p.code}${p.message}`;
  return [...problems].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}

/** The text a builder sees for one problem, ending without a line feed; its code ends the first line. */
export function problemText(problem: Problem): string {
  const lines = [`${problem.file}:${problem.line}:${problem.column}  ${problem.message}  [${problem.code}]`];
  if (problem.expected !== undefined) lines.push(`    expected  ${problem.expected}`);
  if (problem.found !== undefined) lines.push(`    found     ${problem.found}`);
  lines.push(`    mend      ${problem.mend}`);
  return lines.join("\n");
}
