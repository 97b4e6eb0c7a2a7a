/** One test piece of one batch, and what is found of it. */
import { reckon } from "./reckoned.ts";
import type { SaidPiece } from "./reckoned.ts";
import type { Batch, Piece, PieceTest, Procedure } from "../../src/facts/types.ts";
import { batch, glued, piece, procedure, test } from "./make.ts";

export interface Case {
  readonly piece?: Partial<Piece>;
  readonly test?: Partial<PieceTest>;
  readonly procedure?: Partial<Procedure>;
  readonly batch?: Partial<Batch>;
}

export function fileOf(c: Case): SaidPiece {
  const made = glued([batch("B-1", { ...c.batch, pieces: [piece("B-1", 1, c.piece)] })], [test("B-1/1", c.test)], {
    procedures: [procedure(c.procedure)],
  });
  const file = reckon(made).pieces.get("B-1/1");
  if (!file) throw new Error("no piece");
  return file;
}

export const verdict = (c: Case): string => fileOf(c).verdict;
export const finding = (c: Case, rule: string) => fileOf(c).findings.find((one) => one.rule === rule);
