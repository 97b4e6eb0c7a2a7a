/** What a logger in the workshop wrote down. */
import type { Audience, FilePath, Passage, Placed } from "./values.ts";

/**
 * The readings of one file in `climate/`, oldest first, one a moment. The arrays are of one length; NaN stands where a reading was missing.
 * All files of a record tell of one workshop: where two overlap they say the same.
 */
export interface ClimateLog extends Placed {
  readonly file: FilePath;
  readonly audience: Audience;
  /** Where the logger hangs and what else the builder says of it. */
  readonly title: string;
  /** Seconds since 1970-01-01T00:00Z, rising. */
  readonly times: Float64Array;
  /** °C */
  readonly temperatures: Float64Array;
  /** Relative humidity as a share. */
  readonly humidities: Float64Array;
  /** The longest time between two readings that is no gap, s; and whether that is the program's default. */
  readonly gap: number;
  readonly gapIsDefault: boolean;
  readonly body: readonly Passage[];
}
