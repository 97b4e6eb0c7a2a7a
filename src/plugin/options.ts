/** What a site that a chronicle is a part of says of it. */
export interface ChronicleOptions {
  /** The record's folder, from the folder that Eleventy runs in. */
  readonly record: string;
  /** Which edition; without it the public one. */
  readonly edition?: "public" | "inspector" | "archive";
  /** Folder of the chronicle within the site; without it `chronicle`. */
  readonly at?: string;
  /** The date of the record, such as `2026-11-20`; without it that of its last entry. */
  readonly date?: string;
}

/** As much of Eleventy's configuration as is asked for. */
export interface ConfigAsked {
  readonly ignores: { add: (glob: string) => unknown };
  on: (
    event: "eleventy.before" | "eleventy.after",
    then: (told: { readonly directories: { readonly output: string } }) => Promise<void>,
  ) => unknown;
  addGlobalData: (key: string, make: () => unknown) => unknown;
  addWatchTarget: (path: string) => unknown;
}

/**
 * Makes a chronicle a part of an Eleventy site: its pages stand in a folder of the site, and every template is given `chronicle`, an
 * `EditionView`. With any problem in the record the build stops with all of them, and the chronicle that stands stays.
 */
export type ScarflinePlugin = (config: ConfigAsked, options: ChronicleOptions) => void;
