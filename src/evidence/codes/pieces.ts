/** What is found of test pieces. Sizes, loads and shares as typed; times in s, temperatures in °C, stresses in Pa. */
import type { Day, FailureMode } from "../../facts/types.ts";
import type { Coded } from "./coded.ts";
import type { LimitValues, WarmthValues } from "./limits.ts";
import type { NoValues } from "./no-values.ts";
import type { SourceValues } from "./sources.ts";

interface Tally {
  readonly asked: number;
  readonly tally: readonly { readonly verdict: string; readonly n: number }[];
}

interface Named {
  readonly pieces: readonly string[];
}

interface Broke {
  readonly failure: FailureMode;
  readonly share?: string;
}

/** By what the warmth of a cure is known. */
export interface WarmthBy {
  readonly warmth?: "logged" | "logged in part" | "assumed" | "unknown";
  readonly stated?: Coded<WarmthValues>;
}

interface Cured {
  readonly cured: number;
  readonly closedNoted: boolean;
  /** Whether the piece has a time of its own. */
  readonly ownTime: boolean;
  readonly brokenNoted: boolean;
  /** What the days are worth at the reference, where that tells more than the days. */
  readonly worth?: WarmthBy & { readonly age: number; readonly reference: number };
}

interface GluedAt {
  readonly began: "mixed" | "spread";
  readonly mixed: string;
  readonly glued: string;
  /** s */
  readonly stood: number;
  readonly life: string;
}

interface Shape {
  readonly overlap: string;
  readonly thickness: string;
  /** Overlap over thickness. */
  readonly ratio: number;
}

interface Stressed {
  readonly load: string;
  readonly stress: number;
  readonly limit: number;
}

type Law = Coded<Pick<LimitValues, "limit/doubling" | "limit/sheet-times">>;

export interface PieceValues {
  "test-pieces/failed": { readonly pieces: readonly string[] };
  "test-pieces/none": NoValues;
  "test-pieces/no-sample": { readonly asked: number };
  "test-pieces/mixed-unmeasured": Named;
  /** Glued when the cup could not be worked any more, or when nobody can tell. */
  "test-pieces/glued-late": Named;
  /** Numbers missing between those of its pieces. */
  "test-pieces/gap": Named;
  /** Passed before the sheet's own cure. */
  "test-pieces/before-sheet": Named;
  /** Not on the day on which it was glued, but by an amendment of a later one. */
  "test-pieces/declared-later": { readonly piece: string; readonly day: Day; readonly glued: Day };
  "sample-wood/nothing-noted": NoValues;
  "sample-wood/no-lot": Named;
  "sample-wood/other-wood": Named;
  "sample-wood/covered": { readonly lots: readonly string[] };
  "sample-wood/lacking": { readonly lots: readonly string[] };
  "sample-wood/other-lot": { readonly lots: readonly string[] };
  "piece-wood/leg-of-lot": {
    readonly lot: string;
    readonly material: string;
    readonly leg?: string | undefined;
    /** Thickness of the lot, where it is noted. */
    readonly of?: string | undefined;
  };
  "test-pieces/too-few-made": Tally & { readonly made: number };
  "test-pieces/passed": Tally & { readonly passed: number };
  "test-pieces/not-all-broken": Tally;
  "test-pieces/too-few-left": Tally;
  "trial-pieces/not-counted": { readonly pieces: number };
  "piece-broken/waits": {
    /** `2025-03-14 09:00` */
    readonly until: string;
    readonly by: "logged" | "logged in part" | "assumed" | "unknown" | "too cold" | "withheld";
    readonly assumed?: Coded<WarmthValues>;
  };
  "piece-glued/within": GluedAt;
  "piece-glued/too-late": GluedAt;
  "piece-glued/not-known": Pick<GluedAt, "glued">;
  "failure-mode/held": Broke;
  "failure-mode/glue-line": Broke;
  "failure-mode/not-the-bond": Broke;
  "failure-mode/face-ply": Broke;
  "failure-mode/too-little-wood": Broke & { readonly asked: string };
  "failure-mode/estimate": Broke & { readonly asked?: string | undefined };
  "failure-mode/no-share": Broke & { readonly asked?: string };
  "failure-mode/no-limit": Broke;
  "full-cure/reached": Cured;
  /** The sheet's own cure, as typed. */
  "full-cure/before-sheet": { readonly time: string; readonly temperature: string };
  "full-cure/too-early": Cured & { readonly least: number };
  "cure-warmth/unknown": { readonly reference: number };
  "cure-warmth/reckoned": WarmthBy & { readonly reference: number; readonly law: Law };
  "overlap/not-noted": { readonly missing: readonly ("overlap" | "thickness")[] };
  /** The thinnest outer leg and the middle one, as typed. */
  "overlap/thin-outer": { readonly outer: string; readonly thickness: string };
  "overlap/within": Shape;
  "overlap/too-long": Shape & {
    readonly bound: number;
    /** The weakest glue line that it would let pass, and whose strengths of the wood that is reckoned with. */
    readonly lets?: { readonly share: number; readonly wood: Coded<SourceValues> };
  };
  "overlap/wood-not-known": Shape;
  "overlap/below-floor": Shape & {
    readonly revealing: number;
    readonly floor: number;
    readonly wood: Coded<SourceValues>;
  };
  "overlap/too-short": Shape & { readonly bound: number };
  "piece-load/not-read": { readonly asked: string };
  "piece-load/estimate": { readonly load: string; readonly asked: string };
  "piece-load/no-stress": { readonly load: string; readonly missing: readonly ("width" | "overlap")[] };
  "piece-load/cannot-be": Stressed & { readonly wood: Coded<SourceValues> };
  "piece-load/no-wood-so-weak": Stressed & { readonly wood: Coded<SourceValues> };
  "piece-load/reached": Stressed;
  "piece-load/too-low": Stressed & { readonly asked: string };
}
