/** What a trial shows, and what so few pieces could have shown. */
import type { Interval } from "../../reckoning/statistics/exact-interval.ts";
import type { LeastShown } from "../../reckoning/statistics/least-shown-effect.ts";
import type { Preparation, Ref } from "../../facts/types.ts";
import type { CautionValues, ConclusionValues, StandingValues } from "../codes/trials.ts";
import type { Saying } from "../saying.ts";
import type { Source } from "./source.ts";

export type Caution = Saying<keyof CautionValues>;
export type Conclusion = Saying<keyof ConclusionValues | "withheld">;

/** The outcomes of one preparation, in pieces. */
export interface PreparationOutcome {
  readonly preparation: Preparation;
  readonly pieces: readonly string[];
  /** Passed: the bond held. */
  readonly held: number;
  /** The bond failed. */
  readonly failed: number;
  /** Broken, and nothing shown: inconclusive, or too early. */
  readonly silent: number;
  readonly notBroken: number;
  /** Exact two-sided interval at 95 % for the share of such bonds that hold; none where no piece shows anything. */
  readonly interval?: Interval;
  /** Exact one-sided lower bound at 95 % for the same. */
  readonly atLeast?: number;
}

export interface Comparison {
  /** The preparations compared: those of which a piece shows something. */
  readonly preparations: readonly string[];
  /** p of Fisher's exact test, two-sided. */
  readonly p: number;
  readonly least: LeastShown;
}

export interface TrialFile {
  /** The trial's id. */
  readonly trial: string;
  readonly outcomes: readonly PreparationOutcome[];
  /** What has to be said before anything else, the gravest first. */
  readonly cautions: readonly Caution[];
  readonly comparison?: Comparison;
  /** What the outcomes show and what they do not. */
  readonly conclusion: readonly Conclusion[];
  /** What the conclusion rests on; an edition that withholds any of it withholds the conclusion. */
  readonly restsOn: readonly Ref[];
}

/** A rule that stands whatever a trial shows. */
export type StandingRule = Saying<keyof StandingValues> & { readonly source: Source };
