/**
 * What own pages and own layouts are given of a record, and what a site that a chronicle is a part of is given: what the
 * edition shows, as plain data. Verdicts are those of the whole record. Each `url` begins at the root of the chronicle's site.
 */
export interface EditionView {
  readonly edition: "public" | "inspector" | "archive";
  readonly aircraft: AircraftView;
  /** The date of the record, such as `2026-11-20`. */
  readonly day: string;
  /** Worked in all that the edition shows. */
  readonly minutes: number;
  /** The oldest first. */
  readonly entries: readonly EntryData[];
  readonly assemblies: readonly AssemblyData[];
  readonly joints: readonly JudgedView[];
  readonly batches: readonly JudgedView[];
  readonly holdPoints: readonly JudgedView[];
  /** Whatever else has a page or a place on one: lots, trials, departures, open items. */
  readonly things: readonly ThingView[];
}

export interface AircraftView {
  readonly name: string;
  readonly type: string;
  readonly start: string;
  readonly firstFlight?: string;
  /** How to visit the workshop. */
  readonly visit?: string;
  readonly html: string;
  readonly picture?: PictureView;
}

export interface PictureView {
  readonly alt: string;
  readonly caption?: string;
  /** URL of its widest file in the format that every browser shows. */
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

export interface EntryData {
  readonly id: string;
  readonly url: string;
  readonly day: string;
  readonly title: string;
  /** Id of the assembly that was worked on. */
  readonly assembly?: string;
  readonly minutes: number;
  /** The story as it is shown, with what was struck out shown as struck out. */
  readonly html: string;
  readonly pictures: readonly PictureView[];
  /** Ids of batches mixed. */
  readonly batches: readonly string[];
}

export interface AssemblyData {
  readonly id: string;
  readonly url: string;
  readonly title: string;
  /** Id of the assembly that this one is a part of. */
  readonly parent?: string;
  /** Worked on it and on all within it. */
  readonly minutes: number;
  readonly html: string;
}

/** What has a verdict or a state. */
export interface JudgedView {
  readonly id: string;
  readonly url: string;
  readonly title: string;
  /** The verdict or state, in the words of the site. */
  readonly verdict: string;
  /** Sentences that say why, the gravest first. */
  readonly reasons: readonly string[];
}

interface ThingView {
  readonly kind: string;
  readonly id?: string;
  readonly url: string;
  readonly title: string;
  readonly lead: string;
}
