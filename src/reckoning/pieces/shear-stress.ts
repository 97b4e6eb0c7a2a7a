/**
 * Mean shear stress on the glue faces of a test piece, Pa.
 *
 *   τ = P/(n·w·L)
 *
 * P load (N), w width (m), L overlap (m), n glue faces: 2 in a three-leg piece, 1 in a single lap or a block.
 * Statics: the load over
 * the area it is shared by; real stress peaks at the ends of the overlap. Domain: all positive, else undefined.
 */
import { positive } from "../domain.ts";

export function shearStress(load: number, width: number, overlap: number, faces: 1 | 2): number | undefined {
  return positive(load, width, overlap) ? load / (faces * width * overlap) : undefined;
}
