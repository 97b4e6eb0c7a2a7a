/** The parts of an adhesive as headings name them. */
import type { AdhesivePart } from "../../facts/build/adhesive-kind.ts";

export const PART_WORDS: { readonly [part in AdhesivePart]: string } = {
  resin: "Resin",
  hardener: "Hardener",
  glue: "Glue",
  powder: "Powder",
  water: "Water",
};
