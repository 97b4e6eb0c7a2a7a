/** A rule asked of one batch alone, whose pieces have any verdict. */
import { type BatchCase, batchCase, type BatchRule } from "../../src/evidence/batch/case.ts";
import { cureOf } from "../../src/evidence/cure/cure.ts";
import { lookUp, recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Finding, PieceFile, PieceVerdict } from "../../src/evidence/types.ts";
import type { Batch, ClimateLog, Piece, PieceTest } from "../../src/facts/types.ts";
import { batch, glued, type Made, piece, test } from "./make.ts";

/** A piece with its verdict, and what was noted of its test. */
export interface Judged extends Partial<Piece> {
  readonly verdict?: PieceVerdict;
  readonly test?: Partial<PieceTest>;
  readonly findings?: readonly Finding[];
}

export interface About extends Made {
  readonly batch?: Partial<Batch>;
  readonly pieces?: readonly Judged[];
  readonly climate?: readonly ClimateLog[];
}

/** B-1 with pieces numbered from one on, each as judged: passed, unless it says otherwise. */
export function caseOf({ batch: change, pieces = [], climate = [], ...made }: About): BatchCase {
  const parts = pieces.map(({ verdict: _, test: __, findings: ___, ...more }, i) => piece("B-1", i + 1, more));
  const glue = batch("B-1", { ...change, pieces: parts });
  const tests = pieces.map((one, i) => test(parts[i]?.id ?? "", one.test));
  const index = recordIndexOf({ ...glued([glue], tests, made), climate });
  const files = pieces.map((one, i): PieceFile => {
    const own = parts[i] ?? piece("B-1");
    const verdict = one.verdict ?? "pass";
    const procedure = lookUp(index.record.procedures, own.procedure);
    return {
      piece: own,
      verdict,
      findings: one.findings ?? [],
      cure: cureOf(index, glue, procedure, { glued: undefined, brokenAt: undefined }),
      ...(verdict === "not broken" ? {} : { test: tests[i] }),
    };
  });
  return batchCase(index, glue, files);
}

/** Each finding by what it does and its code, its values, and what it rests on beyond the batch and its entry. */
export const asked = (rule: BatchRule, about: About) => rule(caseOf(about)).map(told);

const told = ({ severity, code, values, restsOn }: Finding) =>
  [`${severity} ${code}`, values, restsOn.slice(2).map(({ kind, id }) => `${kind} ${id}`)] as const;
