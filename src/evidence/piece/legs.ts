/** How thick the legs of a piece are by which its shape is judged. */
import type { Piece, Procedure, Quantity } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";

export interface LegsThick {
  /** Of the leg that gives way first: of three the middle one, which is pressed; of a lap the thinner. */
  readonly thickness?: Quantity | undefined;
  /** Of three legs the thinnest outer one. */
  readonly outer?: Quantity | undefined;
}

/** Nothing where one of them is not noted. */
export function legsThick(index: RecordIndex, piece: Piece, form: Procedure["form"]): LegsThick {
  const { legs } = piece;
  if (legs === undefined) return { thickness: piece.thickness };
  const all = legs.map((leg) => leg.thickness ?? piece.thickness);
  if (form !== "three-leg") return { thickness: thinnest(all) };
  const outer = all.filter((_, at) => at > 0 && isOuter(index, legs, at));
  const thin = thinnest(outer);
  return outer.length > 0 && thin === undefined ? {} : { thickness: all[0], outer: thin };
}

/** A strip of plywood may lie between two legs of timber; the last one that is named does not. */
const isOuter = ({ record }: RecordIndex, legs: NonNullable<Piece["legs"]>, at: number): boolean =>
  at === legs.length - 1 || lookUp(record.lots, legs[at]?.lot ?? "").material !== "plywood";

function thinnest(all: readonly (Quantity | undefined)[]): Quantity | undefined {
  const known = all.filter((one) => one !== undefined);
  return known.length < all.length || known.length === 0
    ? undefined
    : known.reduce((a, b) => (b.value < a.value ? b : a));
}
