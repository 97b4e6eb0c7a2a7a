/**
 * Compression in the centre leg of a three-leg piece, Pa: σ = P/(w·t).
 * P load (N), w width and t thickness of the leg (m). Statics. Domain: all positive, else undefined.
 */
import { positive } from "../domain.ts";

export function legCompression(load: number, width: number, thickness: number): number | undefined {
  return positive(load, width, thickness) ? load / (width * thickness) : undefined;
}
