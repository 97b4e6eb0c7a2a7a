import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Problem, problemText } from "../../src/problem.ts";
import { readRecord } from "../../src/record/read.ts";
import { change } from "../record/change.ts";
import { type Case, casesIn, TODAY, withSmall } from "./cases.ts";

const FOLDER = new URL("cases", import.meta.url).pathname;
const cases = readdirSync(FOLDER)
  .sort()
  .flatMap((name) => casesIn(join(FOLDER, name)));

/** A mend that says which value to write; with such words there must be something that can be tried. */
const DEFINITE = /^(?:did you mean|rename it to|move it up to|write (?!(?:the|a|an|what|one|it|where|how) )) ?/;
/** Of several values only the builder knows which was meant. */
const AS_MEANT = /, as it was meant$/;

function isRenamed({ edit }: Problem, file: string): boolean {
  return edit !== undefined && "rename" in edit && edit.rename === file;
}

async function problemsOf(folder: string): Promise<readonly Problem[]> {
  const read = await readRecord(folder, { today: TODAY });
  return "problems" in read ? read.problems : [];
}

/** Does in the folder what the mend of a problem says. */
function apply(folder: string, { file, line, column, edit }: Problem): void {
  if (edit === undefined) return;
  const path = join(folder, file);
  if ("rename" in edit) {
    mkdirSync(dirname(join(folder, edit.rename)), { recursive: true });
    renameSync(path, join(folder, edit.rename));
    return;
  }
  const lines = readFileSync(path, "utf8").split("\n");
  const at = lines.slice(0, line - 1).join("\n").length + (line === 1 ? 0 : 1) + column - 1;
  const text = lines.join("\n");
  expect(text.slice(at, at + edit.replace.length)).toBe(edit.replace);
  writeFileSync(path, text.slice(0, at) + edit.with + text.slice(at + edit.replace.length));
}

/** What is told of a record with a case's changes, after the mend of its n-th problem; all of it without one. */
async function toldAfter({ changes }: Case, n?: number): Promise<readonly Problem[]> {
  return withSmall(async (folder) => {
    change(folder, changes);
    const before = await problemsOf(folder);
    const mended = n === undefined ? undefined : before[n];
    if (mended === undefined) return before;
    apply(folder, mended);
    return problemsOf(folder);
  });
}

/** Without places, which an edit may move; how often each is told. */
function tally(problems: readonly Problem[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { code } of problems) counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
}

describe("A mend", () => {
  it.each(cases.map((one) => [one.title, one] as const))("is tried, or left to the builder: %s", async (_, one) => {
    const before = await toldAfter(one);
    for (const [n, problem] of before.entries()) {
      if (problem.edit === undefined) {
        expect(DEFINITE.test(problem.mend) && !AS_MEANT.test(problem.mend), problem.mend).toBe(false);
        continue;
      }
      const all = await toldAfter(one, n);
      // A file that nothing read before may have problems of its own, which only now can be told.
      const after = "rename" in problem.edit ? all.filter(({ file }) => !isRenamed(problem, file)) : all;
      const told = after.map(problemText).join("\n\n");
      expect(after.length, `${problemText(problem)}\n\nafter it:\n${told}`).toBeLessThan(before.length);
      const counts = tally(before);
      for (const [code, count] of tally(after))
        expect(count, `${problemText(problem)}\n\nafter it:\n${told}`).toBeLessThanOrEqual(counts.get(code) ?? 0);
    }
  });

  it("is tried more than fifty times here", async () => {
    const all = await Promise.all(cases.map((one) => toldAfter(one)));
    expect(all.flat().filter(({ edit }) => edit !== undefined).length).toBeGreaterThan(50);
  });
});
