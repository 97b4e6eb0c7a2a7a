/**
 * What must be known of a logger's file before its rows can be read, and what a builder may say of it beside the
 * file.
 */

/** Stands in problem texts for the file beside a logger file, until it is known which that is. */
export const BESIDE = "climate/NAME.md";

export type TemperatureUnit = "°C" | "°F" | "K";
export type Mark = "." | ",";
export type Delimiter = "," | ";" | "\t";

/**
 * What a builder says in `climate/NAME.md` of a file whose form does not show by itself. Everything may be left out.
 */
export interface Stated {
  readonly delimiter?: Delimiter;
  readonly decimal?: Mark;
  /** Such as `DD/MM/YYYY HH:mm`. */
  readonly time?: string;
  readonly timeColumn?: string;
  /** `local`, `UTC`, `+01:00` or the name of a time zone. */
  readonly zone?: string;
  /** Of the hour that the clock passes twice in autumn, where only one passage was written down. */
  readonly doubledHour?: "first" | "second";
  readonly temperature?: { readonly column?: string; readonly unit?: TemperatureUnit };
  readonly humidity?: { readonly column?: string; readonly unit?: "%" };
  /** s */
  readonly gap?: number;
}

/** Columns by their place in a row, with what the header says of them. */
export interface Columns {
  /** One for a whole stamp, or two for a day and a time of day. */
  readonly time: readonly number[];
  /** The zone that the header of the time names, as typed. */
  readonly zone?: string;
  readonly temperature?: { readonly at: number; readonly unit?: TemperatureUnit };
  readonly humidity?: { readonly at: number; readonly unit?: "%" };
}
