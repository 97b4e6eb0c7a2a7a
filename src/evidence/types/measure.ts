/** What is found of measurements, and of two sides held against each other. */
import type { Measurement, Quantity } from "../../facts/types.ts";

export interface MeasurementFile {
  readonly measurement: Measurement;
  /** Found minus drawing, in the unit of reckoning. */
  readonly off?: number;
  /** "estimated" where it is within by an estimate, which shows nothing. */
  readonly verdict: "within" | "out" | "no tolerance" | "estimated";
  /** Of one that was out or only estimated: a measurement of a later day of the same against the same limits that is within them. */
  readonly again?: Measurement;
  /** Entries whose amendments would better the verdict, and that no second person saw: it stays what it was. */
  readonly stands?: readonly string[];
}

/** Two sides held against each other. */
export interface PairFile {
  readonly id: string;
  /** "one side" while the other has not been measured. */
  readonly verdict: "within" | "out" | "no tolerance" | "one side" | "estimated";
  /** What counts of each side, left, front or upper first; and what later measurements took the place of. */
  readonly now: readonly Measurement[];
  readonly before: readonly Measurement[];
  /** How far they may differ, and the entry that says so first. */
  readonly tolerance?: Quantity & { readonly entry: string };
  /** Left, front or upper minus the other, where they are furthest apart, in the unit of reckoning. */
  readonly difference?: number;
  /** Entries whose amendments would better the verdict, and that no second person saw: it stays what it was. */
  readonly stands?: readonly string[];
}
