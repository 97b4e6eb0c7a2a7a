/** What is found of the mix and of the time until the joint was closed. Amounts, ratios and times as typed; the rest as reckoned. */
import type { ByDefault, Day } from "../../facts/types.ts";
import type { PartPair } from "../../facts/build/adhesive-kind.ts";
import type { NoValues } from "./no-values.ts";

interface Mix {
  readonly parts: PartPair;
  readonly amounts: readonly [string, string];
  readonly found: number;
  readonly asTyped: string;
  readonly nominal: number;
  /** In which measure, where the sheet's ratio was turned into it. */
  readonly convertedTo?: "mass" | "volume";
  /** Share of the nominal ratio. */
  readonly error: number;
}

type Began = "mixed" | "spread";

interface Doubt {
  /** The noted reading step. */
  readonly step?: string;
  readonly doubt: number;
  readonly sum: number;
  readonly tolerance: number;
}

interface Stood {
  /** What began when it is said to have begun. */
  readonly began: Began;
  readonly mixed: string;
  readonly closed: string;
  /** s */
  readonly openFor: number;
}

/** kg, m², kg/m²; what was asked as typed, and in kg/m². */
interface Spread {
  readonly mass: number;
  /** What was noted as left over of the mass. */
  readonly waste?: number;
  readonly area: number;
  /** Of the least that may have been mixed less the most that may be left, where these were no figures. */
  readonly byWorseEnd: boolean;
  readonly spread: number;
  readonly asked: string;
  readonly limit: number;
}

export interface MixingValues {
  /** What stands as it was in use from a day on; sizes are those of pieces. */
  "by-default/in-use": {
    readonly day: Day;
    readonly what: readonly ByDefault["what"][];
    readonly pieces: readonly string[];
  };
  "spread/not-known": NoValues;
  "spread/estimate": NoValues;
  "spread/enough": Spread;
  "spread/too-little": Spread;
  "mix-ratio/not-noted": Pick<Mix, "parts">;
  "mix-ratio/not-in-one-measure": Pick<Mix, "parts">;
  "mix-ratio/applied-apart": NoValues;
  "mix-ratio/no-usable-ratio": { readonly by: "mass" | "volume" };
  "mix-ratio/no-tolerance": Mix;
  "mix-ratio/estimate": Mix & { readonly tolerance: number; readonly estimates: readonly string[] };
  "mix-ratio/within": Mix & { readonly tolerance: number };
  "mix-ratio/outside": Mix & { readonly tolerance: number; readonly asked: string };
  "mix-doubt/no-step": NoValues;
  "mix-doubt/within": Doubt;
  "mix-doubt/too-close": Doubt;
  "mix-doubt/too-coarse": Doubt;
  "working-life/no-times": Pick<Stood, "began">;
  "working-life/no-closing": NoValues;
  "working-life/no-mixing": Pick<Stood, "began">;
  "working-life/closed-first": Pick<Stood, "began" | "mixed" | "closed">;
  "working-life/no-temperature": Stood;
  "working-life/no-mass": Stood;
  /** `mass` in kg; undefined where the sheet is asked for none. */
  "working-life/no-row": Stood & { readonly mass?: number | undefined; readonly temperature: string };
  "working-life/estimate": Stood & { readonly life: string; readonly estimates: readonly string[] };
  "working-life/within": Stood & { readonly life: string };
  /** `waited` in s, until the clamps were tight. */
  "working-life/clamped-later": Pick<Stood, "began"> & {
    readonly on: string;
    readonly waited: number;
    readonly life: string;
  };
  "working-life/exceeded": Stood & { readonly life: string };
}
