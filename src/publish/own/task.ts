/** What goes to the process in which own pages are made, and what comes back: nothing else of a record is there. */
import type { EditionView } from "../../pages/own/edition-view.ts";

export interface OwnTask {
  readonly view: EditionView;
  readonly story: readonly StoryTask[];
}

/** A page of the story, to be laid out by the own layout of its name. */
export interface StoryTask {
  readonly layout: string;
  readonly path: string;
  readonly title: string;
  /** Its main part as it is without an own layout. */
  readonly content: string;
  /** Id of the entry that it tells, if it tells one. */
  readonly entry?: string;
}

export interface OwnReply {
  readonly pages: readonly OwnMade[];
  readonly links: readonly OwnLink[];
  readonly faults: readonly OwnFault[];
}

export interface OwnMade {
  /** From the folder of the record. */
  readonly file: string;
  /** From the root of the site. */
  readonly path: string;
  readonly content: string;
  readonly title?: string;
  readonly description?: string;
  /** Whether it is among the ways at the head of the story. */
  readonly nav: boolean;
}

/** A link within the site that an own page or layout has. */
export interface OwnLink {
  readonly file: string;
  readonly typed: string;
  readonly path: string;
}

/** Found in what an own page came to, `typed` as it stands there. */
export type OwnFault =
  | { readonly kind: "element" | "attribute"; readonly file: string; readonly name: string; readonly typed: string }
  | { readonly kind: "elsewhere"; readonly file: string; readonly typed: string }
  | { readonly kind: "audience" | "late" | "late layout"; readonly file: string; readonly typed: string }
  | { readonly kind: "passage"; readonly file: string; readonly typed: string };

/** What an own page threw, and where as far as that is known. */
export interface OwnFailure {
  readonly failed: string;
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
}
