import type { ProblemCode } from "../problems/codes.ts";

/** What is wrong with a piece of typed text, before it is known where in which file it stands. */
export interface Fault {
  readonly code: ProblemCode;
  readonly message: string;
  readonly expected?: string;
  readonly found?: string;
  readonly mend: string;
}

/** Either the value that a text means or the fault that keeps it from meaning anything. */
export type Reading<T> = { readonly value: T } | { readonly fault: Fault };

export function isFault<T>(reading: Reading<T>): reading is { readonly fault: Fault } {
  return "fault" in reading;
}

/** A problem text shows what was typed on one line. */
export function shown(typed: string): string {
  const line = typed.replaceAll("\r", "").replaceAll("\n", "⏎");
  return line.length > 80 ? `${line.slice(0, 77)}…` : line;
}
