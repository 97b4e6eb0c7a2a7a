/** The lots that a piece is of, and their wood. */
import type { Batch, Lot, Piece } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";

/** The lots of its legs; of a piece said to be of the joint's scraps those that were glued. Empty where nothing says. */
export function lotsOfPiece({ record }: RecordIndex, piece: Piece, batch: Batch): Lot[] {
  const own = piece.legs?.map(({ lot }) => lot) ?? (piece.lot === undefined ? undefined : [piece.lot]);
  const ids = own ?? (piece.scraps === true ? batch.timber : []);
  return [...new Set(ids)].map((id) => lookUp(record.lots, id));
}

/** Of a name that leaves the species open, or says that it is none of that name. */
const OPEN_NAME = new RegExp(
  "\\?|\\b(?:unknown|unidentified|unnamed|uncertain|unsure|not|non?|none|nor|or|any|" +
    "various|several|mixed|other|perhaps|maybe|possibly|probably|as|like)\\b",
);

/**
 * The kind of wood: what it is and of which species, however that is written; undefined where no species is noted, or
 * none for sure.
 */
export function kindOf({ material, species }: Lot): string | undefined {
  const name = species?.trim().replace(/\s+/g, " ").toLowerCase();
  if (name === undefined || !/\p{L}/u.test(name) || OPEN_NAME.test(name)) return undefined;
  return `${material} ${name}`;
}

/** For sure: spruce, or that by one or two words before it. What is added otherwise may say that it is none. */
export const isSpruce = (lot: Lot): boolean => /^timber (?:\p{L}[\p{L}'-]* ){0,2}spruce$/u.test(kindOf(lot) ?? "");

/** What no name says to be another species. */
export const maybeSpruce = (lot: Lot): boolean =>
  lot.material !== "plywood" && (kindOf(lot) === undefined || /\bspruce\b/i.test(lot.species ?? ""));
