/** The lots that a piece is of, and their wood. */
import type { Batch, Lot, Piece } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";

/** The lots of its legs; of a piece said to be of the joint's scraps those that were glued. Empty where nothing says. */
export function lotsOfPiece({ record }: RecordIndex, piece: Piece, batch: Batch): Lot[] {
  const own = piece.legs?.map(({ lot }) => lot) ?? (piece.lot === undefined ? undefined : [piece.lot]);
  const ids = own ?? (piece.scraps === true ? batch.timber : []);
  return [...new Set(ids)].map((id) => lookUp(record.lots, id));
}

/** The kind of wood: what it is and of which species, however that is written; undefined where no species is noted. */
export function kindOf({ material, species }: Lot): string | undefined {
  const name = species?.trim().replace(/\s+/g, " ").toLowerCase();
  return name === undefined || name === "" ? undefined : `${material} ${name}`;
}

export const isSpruce = ({ material, species }: Lot): boolean =>
  material !== "plywood" && /\bspruce\b/i.test(species ?? "");
