/**
 * Attacks: records that would be called shown, passed or ready if a rule believed what it cannot check, each a small change of one sound record:
 *
 *   == What was tried, as a plain sentence
 *   why The reason for the right answer, with its source where it has one
 *   @ entries/2025-03-03-caps.md        changes as in tests/record/change.ts
 *   - moisture: 10 %
 *   + moisture: 17 %
 *   > batch B-001: rejected             what must be found then; or `> problem`, where it must not build
 */
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import { problemText } from "../../src/problem.ts";
import { readRecord } from "../../src/record/read.ts";
import { change } from "../record/change.ts";

const BASE = new URL("base", import.meta.url).pathname;
const TODAY = "2025-12-31";

export interface Attack {
  readonly title: string;
  readonly why: string;
  readonly changes: readonly string[];
  /** `batch B-001: rejected` and the like, each a line. */
  readonly expected: readonly string[];
}

/** Throws where an attack has no reason or expects nothing. */
export function attacksIn(path: string): Attack[] {
  return readFileSync(path, "utf8")
    .split(/^== /m)
    .slice(1)
    .map((text) => {
      const [title = "", ...lines] = text.trimEnd().split("\n");
      const why = lines.find((line) => line.startsWith("why "))?.slice(4) ?? "";
      const expected = lines.filter((line) => line.startsWith("> ")).map((line) => line.slice(2));
      if (why === "" || expected.length === 0) throw new Error(`${path}: "${title}" lacks its why or what is expected`);
      return { title, why, expected, changes: lines.filter((line) => /^[@+-]/.test(line)) };
    });
}

/** What the program says of the things that the attack expects something of, in the same words. */
export async function answer(attack: Pick<Attack, "changes" | "expected">): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-attack-"));
  try {
    cpSync(BASE, folder, { recursive: true });
    change(folder, attack.changes);
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) return attack.expected[0] === "problem" ? ["problem"] : read.problems.map(problemText);
    const evidence = reckon(read.record);
    return attack.expected.map((line) => stated(evidence, line));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function stated(evidence: Evidence, line: string): string {
  const [, kind = "", id = ""] = /^(batch|joint|piece|hold point|pair|measurement) ([^:]+):/.exec(line) ?? [];
  const measured = [...evidence.assemblies.values()].flatMap(({ measurements }) => measurements);
  const states: { readonly [kind: string]: string | undefined } = {
    batch: evidence.batches.get(id)?.verdict,
    joint: evidence.joints.get(id)?.state,
    piece: evidence.pieces.get(id)?.verdict,
    "hold point": evidence.holdPoints.get(id)?.state,
    pair: evidence.pairs.get(id)?.verdict,
    measurement: measured.find(({ measurement: { what } }) => what === id)?.verdict,
  };
  return `${kind} ${id}: ${states[kind] ?? "not in the record"}`;
}
