/** What is written down while mutants are tried, so that a run which hangs can be stopped and taken up again. */
import { appendFileSync, existsSync, readFileSync } from "node:fs";

/** Two runs at a time need a place each. */
export const CACHE = process.env["MUTANTS_CACHE"] ?? ".cache/mutation";
export const COPIES = `${CACHE}/copies`;
const JOURNAL = `${CACHE}/journal.jsonl`;

export interface Mutant {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  readonly kind: string;
  readonly original: string;
  readonly replacement: string;
}

export type Note =
  | { readonly note: "chosen"; readonly ids: readonly string[] }
  | { readonly note: "covered"; readonly file: string; readonly ids: readonly string[]; readonly onImport: boolean }
  | { readonly note: "took"; readonly test: string; readonly ms: number }
  | { readonly note: "trying"; readonly test: string; readonly id: string }
  | { readonly note: "killed" | "timed out" | "remembered" | "afresh"; readonly id: string; readonly by: string }
  | { readonly note: "done"; readonly test: string };

export const JOURNAL_FILE = JOURNAL;
export const write = (note: Note): void => appendFileSync(JOURNAL, `${JSON.stringify(note)}\n`);
export const read = (): Note[] =>
  existsSync(JOURNAL)
    ? readFileSync(JOURNAL, "utf8")
        .trim()
        .split("\n")
        .filter((line) => line !== "")
        .map((line) => JSON.parse(line) as Note)
    : [];
