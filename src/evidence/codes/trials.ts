/** What is to be said of a trial first, and what it shows. Shares of one. */
import type { NoValues } from "./no-values.ts";

export interface CautionValues {
  /** How many of the pieces are of a shape that could not reveal a weak glue line, and the weakest that would have passed. */
  "caution/blind": { readonly blind: number; readonly pieces: number; readonly share: number };
  "caution/shapeless": { readonly shapeless: number; readonly pieces: number };
  "caution/held": { readonly share: number };
  "caution/batches": { readonly batches: readonly string[] };
  "caution/mixed-up": { readonly batches: readonly string[] };
  "caution/one-preparation": NoValues;
  "caution/one-with-pieces": { readonly preparation: string };
  "caution/unnamed": { readonly pieces: number };
  "caution/waiting": { readonly pieces: number };
}

export interface ConclusionValues {
  "conclusion/nothing-broken": NoValues;
  "conclusion/nothing-shown": NoValues;
  "conclusion/held": {
    readonly counts: readonly { readonly preparation: string; readonly held: number; readonly of: number }[];
  };
  "conclusion/left-out": { readonly preparations: readonly string[] };
  "conclusion/too-many": NoValues;
  "conclusion/alone": { readonly atLeast: number };
  /** `alpha` is the level that `p` is held against. */
  "conclusion/differs": {
    readonly p: number;
    readonly alpha: number;
    readonly preparations: number;
    readonly mixedUp: boolean;
  };
  "conclusion/no-difference": { readonly p: number; readonly alpha: number };
  "conclusion/could-have": {
    readonly preparations: number;
    readonly alpha: number;
    readonly clearest: number;
    readonly effect?: number;
  };
}

export interface StandingValues {
  "standing/sanding": NoValues;
}
