/** Whether as many test pieces as asked were made, broken and passed. Trial pieces never count. */
import type { Ref } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import type { Limit } from "../types/source.ts";
import { AC_43_13_SAMPLE, procedureOf } from "../sources.ts";
import type { Finding, PieceFile, PieceVerdict } from "../types.ts";
import { entryRef, type BatchCase } from "./case.ts";

export function testPieces(c: BatchCase): Finding[] {
  const counting = c.pieces.filter((file) => file.piece.trial === undefined);
  return [...outcome(c, counting), ...trials(c, c.pieces.length - counting.length)];
}

function outcome(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const { asked, limit } = askedOf(c, counting);
  const beside = { limit, alsoOn: counting.flatMap(restsOn) };
  const failed = counting.filter((file) => file.verdict === "fail").map((file) => file.piece.id);
  if (failed.length > 0) return [c.find("test-pieces/failed", "rejects", { pieces: failed }, beside)];
  if (c.batch.joints.length === 0) return [];
  if (counting.length === 0) return [c.find("test-pieces/none", "unproven", {}, beside)];
  const values = { asked, tally: tallyOf(counting) };
  const made = counting.length;
  if (made < asked) return [c.find("test-pieces/too-few-made", "unproven", { ...values, made }, beside)];
  const passed = counting.filter((file) => file.verdict === "pass").length;
  const unbroken = counting.filter((file) => file.verdict === "not broken").length;
  // A failing test that was left out would stand as a piece not broken: so enough passes do not settle it while one waits.
  if (passed >= asked)
    return [c.find("test-pieces/passed", unbroken > 0 ? "waits" : "meets", { ...values, passed }, beside)];
  return passed + unbroken >= asked
    ? [c.find("test-pieces/not-all-broken", "waits", values, beside)]
    : [c.find("test-pieces/too-few-left", "unproven", values, beside)];
}

function askedOf(c: BatchCase, counting: readonly PieceFile[]): { asked: number; limit: Limit } {
  const procedures = counting.map((file) => lookUp(c.index.record.procedures, file.piece.procedure, "procedure"));
  const most = procedures.filter((p) => p.pieces !== undefined).sort((a, b) => (b.pieces ?? 0) - (a.pieces ?? 0))[0];
  const asked = Math.max(1, most?.pieces ?? 1);
  const from = most ? procedureOf(most) : AC_43_13_SAMPLE;
  return { asked, limit: { code: "limit/test-pieces", values: { pieces: asked }, from } };
}

// Where one failed there is no tally.
const ORDER: readonly PieceVerdict[] = ["pass", "inconclusive", "too early", "not broken"];

function tallyOf(files: readonly PieceFile[]): { readonly verdict: PieceVerdict; readonly n: number }[] {
  return ORDER.map((verdict) => ({ verdict, n: files.filter((file) => file.verdict === verdict).length })).filter(
    ({ n }) => n > 0,
  );
}

const restsOn = ({ piece, test }: PieceFile): Ref[] => [
  { kind: "piece", id: piece.id },
  ...(test ? [entryRef(test.entry)] : []),
];

function trials(c: BatchCase, n: number): Finding[] {
  if (n === 0) return [];
  const pieces = c.pieces.filter((file) => file.piece.trial !== undefined);
  const alsoOn = pieces.map(({ piece }): Ref => ({ kind: "piece", id: piece.id }));
  return [c.find("trial-pieces/not-counted", "caution", { pieces: n }, { alsoOn })];
}
