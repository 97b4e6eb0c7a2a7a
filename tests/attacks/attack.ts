/**
 * Attacks: records that would be called shown, passed or ready if a rule believed what it cannot check, each a small change of one sound record:
 *
 *   == What was tried, as a plain sentence
 *   why The reason for the right answer, with its source where it has one
 *   @ entries/2025-03-03-caps.md        changes as in alter.ts
 *   - moisture: 10 %
 *   + moisture: 17 %
 *   > batch B-001: rejected             what must be found then; or `> problem CODE`, where it must not build;
 *   > told B-001: sample-wood/other-lot or the code of what is told of a batch, piece, joint or hold point
 */
import { readFileSync } from "node:fs";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import type { Record } from "../../src/facts/types.ts";
import { problemText } from "../../src/problem.ts";
import { alter } from "./alter.ts";
import type { Workbench } from "./workbench.ts";

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

type Read = Awaited<ReturnType<Workbench["read"]>>;

/** What was read of each attack: mutants of the evidence are tried on it without reading it anew. */
const reads = new WeakMap<object, Promise<Read>>();

function readOf(bench: Workbench, attack: Pick<Attack, "changes">): Promise<Read> {
  const read = reads.get(attack) ?? bench.read(bench.changed((folder) => alter(folder, attack.changes)));
  reads.set(attack, read);
  return read;
}

/** The same record as nobody has reckoned it yet. */
const afresh = (record: Record): Record => ({ ...record, ...(record.before && { before: record.before.map(afresh) }) });

/** What the program says of the things that the attack expects something of, in the same words. */
export async function answer(bench: Workbench, attack: Pick<Attack, "changes" | "expected">): Promise<string[]> {
  const read = await readOf(bench, attack);
  if ("problems" in read) {
    const codes = read.problems.map(({ code }) => `problem ${code}`);
    return attack.expected.every((line) => codes.includes(line))
      ? [...attack.expected]
      : read.problems.map(problemText);
  }
  const evidence = reckon(afresh(read.record));
  return attack.expected.map((line) => stated(evidence, line));
}

function stated(evidence: Evidence, line: string): string {
  const [, kind = "", id = "", code = ""] =
    /^(batch|joint|piece|hold point|pair|measurement|departure|told) ([^:]+): (.+)$/.exec(line) ?? [];
  if (kind === "told")
    return codesOf(evidence, id).includes(code) ? line : `told ${id}: ${codesOf(evidence, id).join(", ")}`;
  const measured = [...evidence.assemblies.values()].flatMap(({ measurements }) => measurements);
  const states: { readonly [kind: string]: string | undefined } = {
    batch: evidence.batches.get(id)?.verdict,
    joint: evidence.joints.get(id)?.state,
    piece: evidence.pieces.get(id)?.verdict,
    "hold point": evidence.holdPoints.get(id)?.state,
    pair: evidence.pairs.get(id)?.verdict,
    departure: evidence.standings.get(id),
    measurement: measured.find(({ measurement: { what } }) => what === id)?.verdict,
  };
  return `${kind} ${id}: ${states[kind] ?? "not in the record"}`;
}

/** The codes of all that is told of a thing: findings, needs, changes. */
function codesOf(evidence: Evidence, id: string): string[] {
  const files = [evidence.batches.get(id), evidence.joints.get(id), evidence.pieces.get(id)];
  const point = evidence.holdPoints.get(id);
  const told: readonly { readonly code: string }[] = [
    ...files.flatMap((file) => file?.findings ?? []),
    ...(point === undefined ? [] : [...point.needs, ...point.changes, ...point.remarks]),
  ];
  return told.map(({ code }) => code);
}
