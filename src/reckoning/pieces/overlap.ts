/**
 * Overlap of a test piece as a multiple of its thickness: L/t. Domain: both positive, else undefined.
 */
import { positive } from "../domain.ts";

export function overlapRatio(overlap: number, thickness: number): number | undefined {
  return positive(overlap, thickness) ? overlap / thickness : undefined;
}

/** Overlap of a three-leg piece in thicknesses: 2 to 3, common practice, no source. */
export const USUAL_OVERLAP = { least: 2, most: 3 } as const;
