/**
 * The record once it has been read and found without problems. Everything here may be trusted:
 * ids resolve, files exist, dates are real, quantities carry units. What the builder typed is kept.
 */
import type { ClimateLog } from "./climate-log-type.ts";
import type { Entry } from "./entry/entry-types.ts";
import type { Adhesive, Aircraft, Assembly, Lot, Procedure, Trial } from "./settings-types.ts";
import type { Day } from "./values.ts";

export type * from "./entry/amendment.ts";
export type * from "./climate-log-type.ts";
export type * from "./entry/entry-types.ts";
export type * from "./settings-types.ts";
export type * from "./values.ts";

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
