/** What one edition shows: the only things a page may read. */
import type { Say } from "../evidence/saying.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Memo } from "../memo.ts";
import type { Audience, Day, FilePath, Passage, Record, Ref } from "../facts/types.ts";

export type Edition = Audience;

/** What a page needs to know of a picture that has been made ready. Paths are from the site's root. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** A CSS colour to stand in its place until it has come. */
  readonly colour: string;
  /** Of each format from the best to the most common, widths from narrow to wide. */
  readonly sources: readonly {
    readonly type: string;
    readonly files: readonly { readonly path: string; readonly width: number }[];
  }[];
}

/** What a page needs to know of a clip that has been made ready; its path is from the site's root. */
export interface ReadyClip {
  /** As it is shown. */
  readonly width: number;
  readonly height: number;
  readonly seconds: number;
  readonly bytes: number;
  readonly type: "video/mp4" | "video/webm";
  readonly path: string;
}

/** A seal as pages name it: by what tells nothing of what is in the record, and yet proves that it was so. */
export interface NamedSeal {
  /** Its line in `seals.txt`, from 1. */
  readonly number: number;
  readonly date: Day;
  /** SHA-256 of `seals.txt` up to and with its line, and so of every seal before it too. */
  readonly digest: string;
  /**
   * By an entry that the edition shows: since which seal its file is unchanged. One that no seal holds as it is is not in it. Of an entry
   * with withheld passages it tells no more than the last seal's date does: that its file was changed, as any file may be.
   */
  readonly since: ReadonlyMap<string, SealedSince>;
  /** Every seal from the first, in the archive edition alone. */
  readonly all?: readonly ListedSeal[];
}

/** A seal as an archive lists it. */
export interface ListedSeal {
  readonly number: number;
  readonly date: Day;
  /** SHA-256 of `seals.txt` up to and with its line. */
  readonly digest: string;
  /** The list of files, such as `seals/2026-11-20.sha256`, and its SHA-256. */
  readonly manifest: string;
  readonly record: string;
  readonly isSigned: boolean;
  /** Whether it has a time stamp, and the authority's certificates beside it. */
  readonly stamp?: "with certificates" | "alone";
}

export interface SealedSince {
  /** The seal's line in `seals.txt`, from 1. */
  readonly number: number;
  readonly date: Day;
}

/**
 * A record and its evidence as an edition shows them. Made by `editionOf` and nowhere else:
 * what is withheld is not in it. Verdicts are those of the whole record, so that withholding can never better one.
 */
export interface Shown {
  readonly edition: Edition;
  readonly record: Record;
  readonly evidence: Evidence;
  /** Whether the edition shows a thing of the record; a page links only to what is shown. */
  readonly shows: (ref: Ref) => boolean;
  /** Full or public name of a person, or words for someone the edition does not name. */
  readonly nameOf: (person: string) => string;
  /** Makes the sentence of what evidence says, in the language of the site and the units of the aircraft. */
  readonly say: Say;
  /** Kinds of fact that this edition leaves out, in words, without counts. */
  readonly leavesOut: readonly string[];
  /** What pages make of all this once for all of them. */
  readonly memo: Memo;
  /** The last seal that was set on the record, if there is one. */
  readonly seal?: NamedSeal;
}

type Prose = Pick<Passage, "markdown" | "blocks">;

/** What the builder adds to the look of the story, made for one edition. */
export interface OwnSite {
  readonly pages: readonly OwnPage[];
  /** Main parts that own layouts made, by the path of their page. */
  readonly mains: ReadonlyMap<string, string>;
  /** The sheet of one's own. */
  readonly css?: string;
}

export interface OwnPage {
  readonly path: string;
  readonly title: string;
  readonly description?: string;
  readonly content: string;
  readonly isInNavigation: boolean;
}

/** Everything that templates are given. `prose` renders Markdown passages; `root` is added to it by each page. */
export interface Site {
  readonly shown: Shown;
  readonly pictures: ReadonlyMap<FilePath, Picture>;
  readonly clips: ReadonlyMap<FilePath, ReadyClip>;
  /** Path of an attachment or drawing in the site, from its root. */
  readonly files: ReadonlyMap<FilePath, string>;
  /**
   * HTML of a passage, or only of its first paragraph (nothing if it has none), its links leading from a page at `from` (a path such as
   * `entry/2025-03-08-caps.html`).
   */
  readonly prose: (passage: Prose, from: string, part?: "first paragraph") => string;
  /** Of the program that makes it. */
  readonly version?: string;
  /** Whether PDFs are made beside its pages. */
  readonly hasPapers?: boolean;
  readonly own?: OwnSite;
  /** CSS of the sheets that the first page carries within itself. */
  readonly firstSheets?: string;
}

/** One file of the site, made when it is asked for. `path` is from the site's root, such as `batch/B-014.html`. */
export interface PageFile {
  readonly path: string;
  readonly make: () => string;
  /** Of a page of the story that an own layout may lay out. */
  readonly story?: StoryPart;
}

/** The layouts of the story that may be replaced by name. */
export const STORY_LAYOUTS = ["home", "entries", "entry", "assemblies", "hours", "forecast"] as const;
export type StoryLayout = (typeof STORY_LAYOUTS)[number];

interface StoryPart {
  readonly layout: StoryLayout;
  /** Id of the entry that it tells, if it tells one. */
  readonly entry?: string;
  readonly main: () => { readonly title: string; readonly content: string };
}
