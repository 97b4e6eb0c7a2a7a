/** Whether as many test pieces as asked were made, broken and passed. Trial pieces never count. */
import type { Procedure, Ref } from "../../facts/types.ts";
import { declaredLater } from "../amended.ts";
import { lookUp } from "../record-index.ts";
import type { Limit } from "../types/source.ts";
import { AC_43_13_SAMPLE, procedureOf } from "../sources.ts";
import type { Finding, PieceFile, PieceVerdict } from "../types.ts";
import { entryRef, type BatchCase } from "./case.ts";
import { isSample } from "./sample.ts";

export function testPieces(c: BatchCase): Finding[] {
  const counting = c.pieces.filter((file) => file.piece.trial === undefined);
  return [...outcome(c, counting), ...trials(c, c.pieces.length - counting.length)];
}

function outcome(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const failed = counting.filter((file) => file.verdict === "fail").map((file) => file.piece.id);
  if (failed.length > 0) {
    const { limit } = askedOf(c, undefined);
    return [c.find("test-pieces/failed", "rejects", { pieces: failed }, { limit, alsoOn: counting.flatMap(restsOn) })];
  }
  if (c.batch.joints.length === 0) return [];
  if (counting.length === 0)
    return [c.find("test-pieces/none", "unproven", {}, { limit: askedOf(c, undefined).limit })];
  const procedures = [...new Set(counting.map(({ piece }) => piece.procedure))];
  return [
    ...procedures.map((id) => ofProcedure(c, lookUp(c.index.record.procedures, id), counting)),
    ...unmeasured(c, counting),
    ...early(c, counting),
    ...gluedLate(c, counting),
    ...gaps(c),
    ...late(c),
  ];
}

/** Each procedure has its own count, of its own pieces: none fills that of another. Only samples of the joint count. */
function ofProcedure(c: BatchCase, procedure: Procedure, all: readonly PieceFile[]): Finding {
  const own = all.filter(({ piece }) => piece.procedure === procedure.id);
  const counting = own.filter((file) => isSample(c, file));
  const { asked, limit } = askedOf(c, procedure);
  const beside = { limit, alsoOn: own.flatMap(restsOn) };
  const made = counting.length;
  const values = { asked, tally: tallyOf(counting) };
  if (made === 0) return c.find("test-pieces/no-sample", "unproven", { asked }, beside);
  if (made < asked) return c.find("test-pieces/too-few-made", "unproven", { ...values, made }, beside);
  const passed = counting.filter((file) => file.verdict === "pass").length;
  const unbroken = counting.filter((file) => file.verdict === "not broken").length;
  const waiting = own.some((file) => file.verdict === "not broken");
  // A failing test that was left out would stand as a piece not broken: so enough passes do not settle it while one waits.
  if (passed >= asked) return c.find("test-pieces/passed", waiting ? "waits" : "meets", { ...values, passed }, beside);
  return passed + unbroken >= asked
    ? c.find("test-pieces/not-all-broken", "waits", values, beside)
    : c.find("test-pieces/too-few-left", "unproven", values, beside);
}

/** A piece that broke partly in the glue line may have failed until its percentage is noted. */
function unmeasured(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const pieces = counting.filter(({ test }) => test?.failure === "mixed" && test.woodFailure === undefined);
  if (pieces.length === 0) return [];
  const ids = pieces.map(({ piece }) => piece.id);
  return [c.find("test-pieces/mixed-unmeasured", "unproven", { pieces: ids }, { alsoOn: pieces.flatMap(restsOn) })];
}

/** A pass before the sheet's own cure stands, and says so. */
function early(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const told = counting.flatMap(({ verdict, findings, piece }) =>
    findings
      .filter(({ code }) => verdict === "pass" && code === "full-cure/before-sheet")
      .map(({ restsOn: rests }) => ({ id: piece.id, rests })),
  );
  if (told.length === 0) return [];
  const alsoOn = told.flatMap(({ rests }) => rests);
  return [c.find("test-pieces/before-sheet", "caution", { pieces: told.map(({ id }) => id) }, { alsoOn })];
}

/** A piece glued too late is no sample of the joint, broken or not. */
function gluedLate(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const late = counting.filter(({ findings }) =>
    findings.some(({ code }) => code === "piece-glued/too-late" || code === "piece-glued/not-known"),
  );
  if (late.length === 0) return [];
  const pieces = late.map(({ piece }) => piece.id);
  return [c.find("test-pieces/glued-late", "caution", { pieces }, { alsoOn: late.flatMap(restsOn) })];
}

/** Numbers that are missing between the pieces' own: pieces that nobody declared. */
function gaps(c: BatchCase): Finding[] {
  const numbers = c.pieces.map(({ piece }) => Number(piece.id.slice(piece.id.lastIndexOf("/") + 1)));
  if (!numbers.every((n) => Number.isInteger(n) && n > 0 && n < 1000)) return [];
  const has = new Set(numbers);
  const all = Array.from({ length: Math.max(...numbers) }, (_, at) => at + 1);
  const missing = all.filter((n) => !has.has(n)).map((n) => `${c.batch.id}/${n}`);
  return missing.length === 0 ? [] : [c.find("test-pieces/gap", "caution", { pieces: missing })];
}

/** Pieces are declared the day they are glued. */
function late(c: BatchCase): Finding[] {
  return declaredLater(c.index, c.batch).map(({ piece, day, restsOn: alsoOn }) =>
    c.find(
      "test-pieces/declared-later",
      "caution",
      { piece, day, glued: c.batch.day },
      { alsoOn: [{ kind: "piece", id: piece }, ...alsoOn] },
    ),
  );
}

function askedOf(c: BatchCase, procedure: Procedure | undefined): { asked: number; limit: Limit } {
  const own = procedure ?? mostAsked(c);
  const asked = Math.max(1, own?.pieces ?? 1);
  const from = own?.pieces === undefined ? AC_43_13_SAMPLE : procedureOf(own);
  return { asked, limit: { code: "limit/test-pieces", values: { pieces: asked }, from } };
}

/** The procedure of its pieces that asks for most of them. */
function mostAsked(c: BatchCase): Procedure | undefined {
  const procedures = c.pieces
    .filter(({ piece }) => piece.trial === undefined)
    .map(({ piece }) => lookUp(c.index.record.procedures, piece.procedure));
  return procedures.sort((a, b) => (b.pieces ?? 0) - (a.pieces ?? 0))[0];
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
