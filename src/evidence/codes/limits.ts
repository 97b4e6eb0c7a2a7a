/** What findings are held against, and the warmths that stand in for readings. Limits of the record as typed. */
import type { PartPair } from "../../facts/build/adhesive-kind.ts";
import type { Ask, Day } from "../../facts/types.ts";
import type { Coded } from "./coded.ts";
import type { NoValues } from "./no-values.ts";
import type { SourceValues } from "./sources.ts";

interface Asked {
  readonly asked: string;
}

export interface LimitValues {
  "limit/mix-ratio": { readonly parts: PartPair; readonly ratio: string; readonly tolerance: string };
  /** A share. */
  "limit/mix-doubt": { readonly tolerance: number };
  "limit/working-life": { readonly life: string; readonly mass?: string; readonly temperature: string };
  "limit/shop": Asked;
  "limit/spread": Asked;
  "limit/glue-up": Asked & { readonly ask: Ask };
  "limit/storage": Asked;
  /** Length to a rise of one. */
  "limit/grain-slope": { readonly length: number };
  /** Of a slope the steepest that is allowed. */
  "limit/measured": { readonly asked: string; readonly isSlope: boolean };
  /** As typed on the lot. */
  "limit/timber-asked": { readonly what: "grain slope" | "rings" | "density" | "moisture"; readonly asked: string };
  /** As typed. */
  "limit/post-cure": { readonly temperature: string; readonly time: string };
  "limit/service": Asked;
  /** After the coat before. */
  "limit/recoat-after": Asked;
  "limit/recoat-within": Asked;
  "limit/drying": Asked;
  "limit/humidity": Asked;
  "limit/wood-moisture": Asked;
  /** K */
  "limit/dew-point": { readonly least: number };
  "limit/expiry": { readonly day: Day };
  "limit/shelf-life": { readonly life: string; readonly received: Day };
  "limit/test-pieces": { readonly pieces: number };
  /** `time` is undefined for the program's own; `counted` says at which warmth, °C, and who says so. */
  "limit/least-cure": {
    readonly time?: string;
    readonly temperature?: string;
    readonly counted?: { readonly reference: number; readonly from: Coded<SourceValues> };
  };
  /** What a joint asks before it may be loaded; `time` is undefined for the program's own. */
  "limit/joint-cure": { readonly time?: string; readonly temperature?: string };
  "limit/doubling": NoValues;
  "limit/sheet-times": { readonly times: "cure times" | "working life" };
  "limit/overlap": Asked;
  "limit/usual-overlap": { readonly least: number; readonly most: number };
  "limit/wood-failure": Asked;
  "limit/stress": Asked;
}

export interface WarmthValues {
  "warmth/noted": { readonly temperature: string };
  "warmth/asked": { readonly temperature: string };
  /** °C */
  "warmth/last-logged": { readonly celsius: number };
}
