/**
 * The record once it has been read and found without problems. Everything here may be trusted:
 * ids resolve, files exist, dates are real, quantities carry units. What the builder typed is kept.
 */
import type { ClimateLog } from "./types/climate.ts";
import type { Entry } from "./types/day.ts";
import type { Adhesive, Aircraft, Assembly, Lot, Procedure, Trial } from "./types/settings.ts";
import type { Day } from "./types/values.ts";

export type * from "./types/amendment.ts";
export type * from "./types/climate.ts";
export type * from "./types/day.ts";
export type * from "./types/settings.ts";
export type * from "./types/values.ts";

export interface Record {
  readonly aircraft: Aircraft;
  readonly assemblies: ReadonlyMap<string, Assembly>;
  readonly adhesives: ReadonlyMap<string, Adhesive>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly lots: ReadonlyMap<string, Lot>;
  readonly trials: ReadonlyMap<string, Trial>;
  /** By day, then by file name. */
  readonly entries: readonly Entry[];
  /** Logger files, by their first reading. */
  readonly climate: readonly ClimateLog[];
  /** The date of the record: that of its last entry, or the one given. */
  readonly day: Day;
}
