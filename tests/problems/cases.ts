/**
 * Cases of records with problems, as text files that people read:
 *
 *   == What is wrong, as a plain sentence
 *   @ entries/2025-03-08-caps.md        a file of tests/record/small, in which
 *   - mass: 42.0 g                      this text, found there once,
 *   + mass: 42                          becomes this one
 *   @ new lots/R-2.md                   or a file of its own, or `@ delete FILE`
 *   + …
 *   | entries/2025-03-08-caps.md:15:32  …   all that the builder sees, exactly
 */
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { noteText, problemText } from "../../src/problem.ts";
import { readRecord } from "../../src/record/read.ts";
import { change } from "../record/change.ts";
import { readerOfCopies, TODAY } from "../record/read-changed.ts";

export { TODAY };

const SMALL = new URL("../record/small", import.meta.url).pathname;
const readCopy = readerOfCopies(SMALL);

export interface Case {
  readonly title: string;
  /** The lines that make the case, as they stand in its file. */
  readonly changes: readonly string[];
  readonly expected: string;
}

export function casesIn(path: string): Case[] {
  return readFileSync(path, "utf8")
    .split(/^== /m)
    .slice(1)
    .map((text) => {
      const [title = "", ...lines] = text.trimEnd().split("\n");
      const said = lines.filter((line) => line.startsWith("|")).map((line) => line.slice(2));
      return {
        title,
        changes: lines.filter((line) => line !== "" && !line.startsWith("|")),
        expected: said.join("\n"),
      };
    });
}

export function caseText({ title, changes }: Case, said: string): string {
  return [`== ${title}`, ...changes, ...(said === "" ? [] : said.split("\n").map((line) => `| ${line}`)), "", ""].join(
    "\n",
  );
}

/** A copy of the small record in a folder of its own, for as long as `use` needs it. */
export async function withSmall<T>(use: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-record-"));
  try {
    cpSync(SMALL, folder, { recursive: true });
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** All that the builder sees of a record in a folder. */
export async function saidOf(folder: string): Promise<string> {
  return saidIn(await readRecord(folder, { today: TODAY }));
}

function saidIn(read: Awaited<ReturnType<typeof readRecord>>): string {
  return [...read.notes.map(noteText), ...("problems" in read ? read.problems.map(problemText) : [])].join("\n");
}

export async function saidOfCase({ changes }: Case): Promise<string> {
  return withSmall(async (folder) => {
    change(folder, changes);
    return saidIn(await readCopy(folder));
  });
}
