/** The verdict of a test piece: the gravest that any of its checks forces, else pass. */
import { isEstimate } from "../../facts/quantity/ends.ts";
import type { Batch, Piece, PieceTest } from "../../facts/types.ts";
import { amendedFindings } from "../amended.ts";
import { gravest, PIECE } from "../gravity.ts";
import type { RecordIndex } from "../record-index.ts";
import type { PieceFile, PieceVerdict } from "../types.ts";
import { caseOf, type Check, type PieceCase } from "./case.ts";
import { beforeSheet, cureWarmth, fullCure, notBroken, worthOf } from "./cure.ts";
import { failureMode } from "./failure.ts";
import { pieceLoad, plausibleLoad } from "./load.ts";
import { gluedInTime } from "./glued.ts";
import { overlap } from "./overlap.ts";
import { legsOfLots } from "./wood.ts";

/** A piece can be broken only once; should the record hold several tests of it, the gravest stands. */
export function pieceFile(index: RecordIndex, batch: Batch, piece: Piece): PieceFile {
  const tests = index.tests.get(piece.id) ?? [undefined];
  const files = tests.map((test) => judged(caseOf(index, batch, piece, test)));
  return files.reduce((a, b) => (PIECE[b.verdict] > PIECE[a.verdict] ? b : a));
}

function judged(c: PieceCase): PieceFile {
  const checks = checksOf(c, c.test);
  const { piece, test, overlapRatio, revealing, curedFor, cure, stress } = c;
  const amended = amendedFindings(c.index, { kind: "piece", id: piece.id }, c.find);
  const forced = checks.flatMap((check) => check.verdict ?? []);
  return {
    piece,
    test,
    verdict: gravest<PieceVerdict>(PIECE, "pass", forced),
    findings: [...checks.map((check) => check.finding), ...amended],
    overlapRatio,
    revealing,
    atMost: atMostShown(c),
    curedFor,
    cure,
    stress: isEstimate(test?.load) ? undefined : stress,
  };
}

/** What the piece can have shown: by its shape, and no more than the stress that its faces carried where a load was read. */
function atMostShown({ revealing, stress, strengths }: PieceCase): number | undefined {
  if (revealing === undefined || stress === undefined || !strengths) return revealing;
  return Math.min(revealing, stress / strengths.shear);
}

function checksOf(c: PieceCase, test: PieceTest | undefined): Check[] {
  const checks = test
    ? [failureMode(c, test), gluedInTime(c), ...cureOf(c, test), overlap(c), pieceLoad(c, test), plausibleLoad(c, test)]
    : [notBroken(c), gluedInTime(c), overlap(c)];
  return [...checks, legsOfLots(c), timber(c)].filter((check) => check !== undefined);
}

function timber(c: PieceCase): Check | undefined {
  const own = c.piece.lot === undefined && c.piece.legs === undefined ? [] : c.lots;
  const [recall] = own.flatMap(({ id }) => c.index.recalls.get(id) ?? []);
  if (!recall) return undefined;
  const alsoOn = [
    { kind: "lot", id: recall.lot },
    { kind: "entry", id: recall.entry },
  ] as const;
  const { day, why } = recall;
  return { finding: c.find("piece-timber/recalled", "caution", { lot: recall.lot, day, why }, { alsoOn }) };
}

function cureOf(c: PieceCase, test: PieceTest): (Check | undefined)[] {
  const worth = worthOf(c);
  const cure = fullCure(c, test, worth);
  return [cure, cure.verdict === undefined ? beforeSheet(c) : undefined, cureWarmth(c, worth)];
}
