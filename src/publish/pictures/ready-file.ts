/** What a file of the record becomes in a site. */
import type { Picture, ReadyClip } from "../../editions/shown.ts";
import type { Problem } from "../../problem.ts";

/**
 * One file to be put into a site: `from` on this disk, `to` from the site's root. A builder's original is copied,
 * never linked to.
 */
export interface Placing {
  readonly from: string;
  readonly to: string;
  readonly original: boolean;
}

/** A file of the record made ready. `path` is where a document or drawing stands in the site. */
export interface Ready {
  readonly placings: readonly Placing[];
  readonly picture?: Picture;
  readonly clip?: ReadyClip;
  readonly path?: string;
}

/** A clip as editions show it: a copy with nothing noted in it, and for the archive the builder's own file. */
export interface ReadyFilm {
  readonly bare: Ready;
  readonly own: Ready;
}

export type Outcome<Made = Ready> =
  | { readonly ready: Made; readonly decoded: boolean }
  | { readonly problems: readonly Problem[] };
