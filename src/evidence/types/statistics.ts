/** Statistics of the build. They change no verdict. */
import type { Interval } from "../../reckoning/statistics/exact-interval.ts";
import type { IndividualsChart } from "../../reckoning/statistics/individuals-chart.ts";
import type { Day } from "../../facts/types.ts";

/** What makes pieces alike: only such are counted together. */
export interface Alike {
  readonly adhesive: string;
  readonly procedure: string;
  /** Pieces of a trial are alike only within one of its preparations. */
  readonly trial?: string;
  readonly preparation?: string;
}

export interface SharePassed extends Alike {
  readonly batches: number;
  readonly passed: number;
  readonly failed: number;
  /** Broken, and nothing shown. */
  readonly silent: number;
  readonly notBroken: number;
  /** Exact at 95 %, of those that passed or failed; none where there are none. */
  readonly interval?: Interval;
  readonly atLeast?: number;
}

export interface Point {
  readonly batch: string;
  readonly day: Day;
  readonly value: number;
  /** How many pieces it is the mean of. */
  readonly pieces?: number;
}

/** Batches that are alike, in the order in which they were mixed. */
export interface BatchSeries {
  readonly quantity: "ratio error" | "stress";
  readonly adhesive: string;
  /** How the ratio was measured. */
  readonly by?: "mass" | "volume";
  readonly procedure?: string;
  readonly points: readonly Point[];
  readonly chart: IndividualsChart;
  /** Of stress, from eight batches on. */
  readonly tolerance?: StressBound;
}

/** With that confidence, at least the share `coverage` of batches break at a mean stress above `bound`, if these are normally distributed. Pa. */
export interface StressBound {
  readonly mean: number;
  readonly deviation: number;
  readonly factor: number;
  readonly bound: number;
  readonly coverage: number;
  readonly confidence: number;
}

export interface Statistics {
  readonly shares: readonly SharePassed[];
  readonly series: readonly BatchSeries[];
}
