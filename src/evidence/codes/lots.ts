/** What is found of lots. */
import type { LotPart } from "../../facts/build/adhesive-kind.ts";
import type { Day } from "../../facts/types.ts";
import type { NoValues } from "./no-values.ts";

interface Recalled {
  readonly lot: string;
  readonly day: Day;
  readonly why: string;
}

interface Dated {
  readonly lot: string;
  readonly used: Day;
  readonly until: Day;
}

interface Sloped {
  readonly lot: string;
  readonly slope: string;
}

interface Graded {
  readonly lot: string;
  readonly what: "rings" | "density" | "moisture";
  readonly found: string;
}

/** `left` as typed; `least` and `most` in `unit`, by what the batches took. */
interface Left {
  readonly lot: string;
  readonly day: string;
  readonly left: string;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

/** °C */
interface Kept {
  readonly lot: string;
  readonly least: number;
  readonly greatest: number;
}

export interface LotValues {
  /** Slope of grain as typed. */
  "timber-grade/slope-within": Sloped;
  "timber-grade/slope-steep": Sloped;
  /** What the drawings ask of the lot beside its slope, as typed. */
  "timber-grade/within": Graded;
  "timber-grade/outside": Graded;
  "timber-grade/not-noted": Pick<Graded, "lot" | "what">;
  "timber-grade/slope-not-noted": { readonly lot: string };
  "lot-storage/not-known": { readonly lot: string };
  "lot-storage/kept": Kept;
  "lot-storage/kept-in-part": Kept;
  "lot-storage/outside": {
    readonly lot: string;
    readonly where: "below" | "above";
    readonly found: number;
    readonly limit: number;
  };
  "lot-known/not-noted": { readonly material: LotPart };
  "lot-known/noted": { readonly material: LotPart; readonly lot: string };
  "lot-known/timber": { readonly lots: readonly string[] };
  "lot-known/no-timber": NoValues;
  "lot-in-date/no-date": { readonly lot: string };
  "lot-in-date/good": Dated;
  "lot-in-date/past": Dated;
  /** How many were looked at. */
  "lot-recalled/none": { readonly lots: number };
  "lot-recalled/recalled": Recalled;
  "piece-timber/recalled": Recalled;
  /** `used` and `amount` in `unit`; `came` as typed. */
  "stock/overdrawn": {
    readonly by: "cuts" | "batches";
    readonly used: number;
    readonly amount: number;
    readonly unit: string;
    readonly lot: string;
    readonly came: string;
  };
  "stock/left-agrees": Left;
  "stock/left-differs": Left & { readonly where: "less" | "more" };
  "stock/left-not-known": Pick<Left, "lot" | "day" | "left">;
}
