/** How derivatives are made. The cache is keyed by all of this, so a change here makes them anew. */
export const RECIPE = {
  /** Pixels across; no picture is ever enlarged. */
  widths: [480, 960, 1600],
  /** Effort 4, which is usual, takes 2.3 times as long for files 1 to 3 % smaller and 0.3 dB nearer to the original. */
  webp: { quality: 76, effort: 2 },
  /** For the few readers whose programs know no WebP. Progressive takes twice as long, for files 2 % larger. */
  jpeg: { quality: 80 },
  /** Scans and other pictures offered as documents keep their size up to this many pixels on the longer side. */
  document: { longest: 4000, quality: 88 },
  /** Counted up whenever drawings are written otherwise. */
  drawing: 3,
  /** Counted up whenever clips are copied otherwise. */
  clip: 1,
  /** Pixels in all; a picture beyond this is refused before it is decoded. */
  mostPixels: 200_000_000,
} as const;

/** Of a digest, in names that tell nothing. */
export const NAME_LENGTH = 20;

/** A width this near to the widest is not worth a file of its own. */
const WORTH_IT = 0.85;

/** Widths of the derivatives of a picture so many pixels wide, narrowest first. */
export function widthsFor(width: number): number[] {
  const widest = Math.min(width, RECIPE.widths[RECIPE.widths.length - 1] ?? width);
  return [...RECIPE.widths.filter((each) => each < widest * WORTH_IT), widest];
}
