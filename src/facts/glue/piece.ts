/** A test piece made from a batch. */
import type * as z from "zod";
import { type Decisions, each, ifShown, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, choice, clock, list, quantity, note } from "../field.ts";
import { idOf, ownId, ownPieceId } from "../id.ts";
import { PAST_MIDNIGHT } from "../time/clock.ts";
import { factOf, type InEntry, maybe } from "../typing.ts";
import type { Moment, Path, Placed, Quantity } from "../values.ts";
import type { Visibility } from "../visibility.ts";
import { type Leg, legOf, legSchema, legShown } from "./leg.ts";

export const pieceSchema = block({
  id: ownPieceId("The batch's id, a slash and a number."),
  procedure: idOf("procedure", "The procedure it was made by.", "three-leg"),
  lot: idOf("lot", "The timber lot it was made from.", "S-2").optional(),
  legs: list(legSchema, "Its legs where they are of several lots, the one that is pressed or pulled first.").optional(),
  scraps: choice(["yes"], "It was made from scraps of the joint's own parts.").optional(),
  glued: clock("When it was glued, where not with the last joint of the cup.", PAST_MIDNIGHT).optional(),
  thickness: quantity({ dimension: "length" }, "Thickness of the leg that is pressed or pulled.").optional(),
  width: quantity({ dimension: "length" }, "Width across the piece.").optional(),
  overlap: quantity({ dimension: "length", example: "5/8 in" }, "Length of the glued overlap.").optional(),
  trial: idOf("trial", "The trial it was made for; it does not count for its batch then.", "cured-surfaces").optional(),
  preparation: ownId("Which of the trial's preparations it had.", "abraded").optional(),
  note: note(),
});

/** Pieces of which everything but the id is the same: spelled out before the record is read. */
export const severalPiecesSchema = pieceSchema
  .omit({ id: true })
  .extend({ ids: list(ownPieceId("The batch's id, a slash and a number."), "Their ids, in order.") });

export interface Piece extends Placed {
  readonly batch: string;
  readonly procedure: string;
  /** The timber lot it was made from. */
  readonly lot?: string;
  /** Where its legs are of several lots, the one that is pressed or pulled first. */
  readonly legs?: readonly Leg[];
  /** Whether it was made from scraps of the joint's own parts. */
  readonly scraps?: boolean;
  /** When it was glued, where that was not with the last joint of the cup. */
  readonly glued?: Moment;
  readonly thickness?: Quantity;
  readonly width?: Quantity;
  readonly overlap?: Quantity;
  /** A piece made for a trial is judged by the trial and never counts for its batch. */
  readonly trial?: string;
  readonly preparation?: string;
  readonly note?: string;
}

export function pieceOf(spec: z.output<typeof pieceSchema>, path: Path, batch: string, of: InEntry): Piece {
  return factOf<Piece>({
    id: spec.id,
    place: of.at(path),
    batch,
    procedure: spec.procedure,
    lot: spec.lot,
    legs: spec.legs?.map(legOf),
    scraps: spec.scraps && true,
    glued: spec.glued && of.moment(spec.glued, "later"),
    thickness: maybe(spec.thickness),
    width: maybe(spec.width),
    overlap: maybe(spec.overlap),
    trial: spec.trial,
    preparation: spec.preparation,
    note: spec.note,
  });
}

export const pieceShown: Decisions<Piece> = {
  id: show,
  place: show,
  batch: show,
  procedure: show,
  lot: ifShown("lots"),
  legs: each(legShown),
  scraps: show,
  glued: show,
  thickness: show,
  width: show,
  overlap: show,
  trial: show,
  preparation: show,
  note: show,
};

/** Goes with its batch's entry and with its trial. */
export const isPieceShown = ({ id: piece }: Piece, seer: Visibility): boolean => seer.pieces.has(piece);

export const pieceAmended = foundBy({ keys: ["id"], kind: "piece", named: true, word: "Piece", several: "Pieces" });
