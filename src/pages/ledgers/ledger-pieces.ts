/** The ledger of test pieces. */
import type { PieceFile } from "../../evidence/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { type Column, figure, type Ledger, ledger, moment, quantity, told, typed } from "./column.ts";

const PIECE: readonly Column<PieceFile>[] = [
  typed("piece", "entry: batches[].pieces[].id", ({ piece }) => piece.id),
  told("batch", "The batch it was glued from.", ({ piece }) => piece.batch),
  told("verdict", "What its break shows.", ({ verdict }) => verdict),
  typed("procedure", "entry: batches[].pieces[].procedure", ({ piece }) => piece.procedure),
  typed("form", "procedure: form", ({ piece }, { record }) => record.procedures.get(piece.procedure)?.form),
  typed("lot", "entry: batches[].pieces[].lot", ({ piece }) => piece.lot),
  typed("trial", "entry: batches[].pieces[].trial", ({ piece }) => piece.trial),
  typed("preparation", "entry: batches[].pieces[].preparation", ({ piece }) => piece.preparation),
  ...quantity<PieceFile>("thickness", "m", "entry: batches[].pieces[].thickness", ({ piece }) => piece.thickness),
  ...quantity<PieceFile>("width", "m", "entry: batches[].pieces[].width", ({ piece }) => piece.width),
  ...quantity<PieceFile>("overlap", "m", "entry: batches[].pieces[].overlap", ({ piece }) => piece.overlap),
  figure("overlap_over_thickness", "Overlap over thickness.", ({ overlapRatio }) => overlapRatio, "1"),
  figure(
    "revealing_share",
    "Weakest glue line that the piece would still have let pass, as a share of the wood’s own strength.",
    ({ atMost }) => atMost,
  ),
  told("leg_thickness_typed", "Thickness of each leg, with semicolons between.", ({ piece }) =>
    piece.legs?.map(({ thickness }) => thickness?.typed ?? "").join("; "),
  ),
  told(
    "legs",
    "The lot of each leg, where legs are noted.",
    ({ piece }) => (piece.legs ?? []).map(({ lot }) => (lot === WITHHELD ? "withheld" : lot)),
    "ids",
  ),
  typed("scraps", "entry: batches[].pieces[].scraps", ({ piece }) => (piece.scraps ? "yes" : "no"), "yes or no"),
  ...moment<PieceFile>("glued", "entry: batches[].pieces[].glued", ({ piece }) => piece.glued),
];

/** Empty where it was not broken, or where the edition does not show its test. */
const TEST: readonly Column<PieceFile>[] = [
  told("broken_entry", "Id of the entry that notes its break.", ({ test }) => test?.entry),
  told("broken_day", "The day it was broken.", ({ test }) => test?.day, "day"),
  ...moment<PieceFile>("broken", "entry: tests[].at", ({ test }) => test?.at),
  figure("cured_for_s", "Time of cure that the record proves, as it passed.", ({ curedFor }) => curedFor),
  figure("cure_worth_s", "What that time is worth at the temperature in cure_worth_at_degc.", ({ cure }) => cure.age),
  figure("cure_worth_at_degc", "The temperature that the least cure is for.", ({ cure }) => cure.reference),
  told("cure_warmth", "How warmth during the cure is known.", ({ cure }) => cure.warmth),
  figure("least_cure_s", "The least cure that is asked for.", ({ cure }) => cure.least),
  typed("failure", "entry: tests[].failure", ({ test }) => test?.failure),
  ...quantity<PieceFile>("wood_failure", "share", "entry: tests[].wood_failure", ({ test }) => test?.woodFailure),
  ...quantity<PieceFile>("load", "n", "entry: tests[].load", ({ test }) => test?.load),
  figure("stress_pa", "Shear stress on the glued faces at that load.", ({ stress }) => stress),
  typed("witness", "entry: tests[].witness", ({ test }, { nameOf }) =>
    test?.witness === undefined ? undefined : nameOf(test.witness),
  ),
  typed("note", "entry: tests[].note", ({ test }) => test?.note),
  typed("judged_by", "entry: tests[].judged_by", ({ test }, { nameOf }) =>
    test?.judgedBy === undefined ? undefined : nameOf(test.judgedBy),
  ),
];

export const PIECES: Ledger = ledger<PieceFile>(
  "pieces",
  "One test piece, in the order of their batches.",
  (shown) => traceIndex(shown).batches.flatMap(({ id }) => shown.evidence.batches.get(id)?.pieces ?? []),
  [...PIECE, ...TEST],
  "piece",
);
