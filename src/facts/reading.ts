import type { ProblemCode } from "../problems/codes.ts";

/** What is wrong with a piece of typed text, before it is known where in which file it stands. */
export interface Fault {
  readonly code: ProblemCode;
  readonly message: string;
  readonly expected?: string;
  readonly found?: string;
  readonly mend: string;
  /** The value that the mend writes in place of the one that was typed; without it only the builder knows. */
  readonly instead?: string;
}

/** A mend in words, and the value it writes, so that the two say the same. */
export type Mending = Pick<Fault, "mend" | "instead">;

export const writes = (value: string): Mending => ({ mend: `write ${value}`, instead: value });
export const writesQuoted = (value: string): Mending => ({ mend: `write "${value}"`, instead: value });
export const meaning = (value: string): Mending => ({ mend: `did you mean ${value}?`, instead: value });
/** What nothing but the builder's own knowledge can mend. */
export const onlyYouKnow = (mend: string): Mending => ({ mend });

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
