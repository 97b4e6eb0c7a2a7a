/** What one test piece is judged by, and what one check says of it. */
import { cureTime } from "../../reckoning/cure/cure-time.ts";
import { saidEnds } from "../../facts/quantity/ends.ts";
import { overlapRatio } from "../../reckoning/pieces/overlap.ts";
import { shearStress } from "../../reckoning/pieces/shear-stress.ts";
import type { Batch, Lot, Piece, PieceTest, Procedure, Ref } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import { cureOf } from "../cure/cure.ts";
import { finder, type Finder } from "../finding.ts";
import type { Cure } from "../types/cure.ts";
import type { Finding, PieceVerdict } from "../types.ts";
import { shapeShows, type Strengths, strengthsOf } from "./strength.ts";
import { type LegsThick, legsThick } from "./legs.ts";
import { lotsOfPiece } from "./lots.ts";

export interface PieceCase {
  readonly index: RecordIndex;
  readonly piece: Piece;
  readonly batch: Batch;
  readonly procedure: Procedure;
  readonly test?: PieceTest;
  readonly legs: LegsThick;
  readonly overlapRatio?: number;
  /** The lots that it is of, which were glued with it where it is of the joint's scraps. */
  readonly lots: readonly Lot[];
  /** By its shape alone: the weakest glue line that it would still have let pass, as a share of the wood's own shear strength. */
  readonly revealing?: number;
  /** Undefined where nothing says of what wood it is. */
  readonly strengths?: Strengths;
  readonly curedFor?: number;
  readonly cure: Cure;
  /** At the least load that was said, be that an estimate. */
  readonly stress?: number;
  readonly find: Finder;
}

/** A finding, and the verdict that it forces if nothing graver does. */
export interface Check {
  readonly finding: Finding;
  readonly verdict?: Exclude<PieceVerdict, "pass">;
}

export function caseOf(index: RecordIndex, batch: Batch, piece: Piece, test: PieceTest | undefined): PieceCase {
  const procedure = lookUp(index.record.procedures, piece.procedure);
  const { width, overlap } = piece;
  const legs = legsThick(index, piece, procedure.form);
  const { thickness } = legs;
  const ratio = overlap && thickness ? overlapRatio(overlap.value, thickness.value) : undefined;
  const faces = procedure.form === "three-leg" ? 2 : 1;
  const load = test?.load && saidEnds(test.load);
  const stress = load && width && overlap ? shearStress(load.least, width.value, overlap.value, faces) : undefined;
  const brokenAt = test && (test.at?.epoch ?? lookUp(index.entries, test.entry).dayStart);
  const cure = cureOf(index, batch, procedure, { glued: piece.glued?.epoch, brokenAt });
  const curedFor = brokenAt === undefined ? undefined : cureTime(cure.from, brokenAt);
  const lots = lotsOfPiece(index, piece, batch);
  const strengths = strengthsOf(procedure, lots);
  const revealing = ratio === undefined || !strengths ? undefined : shapeShows(procedure.form, ratio, strengths);
  const about: Ref = { kind: "piece", id: piece.id };
  const restsOn: Ref[] = [
    { kind: "batch", id: batch.id },
    { kind: "entry", id: batch.entry },
    ...(test ? [{ kind: "entry", id: test.entry } as const] : []),
  ];
  return {
    index,
    piece,
    batch,
    procedure,
    test,
    lots,
    legs,
    overlapRatio: ratio,
    revealing,
    strengths,
    curedFor,
    cure,
    stress,
    find: finder(about, restsOn),
  };
}
