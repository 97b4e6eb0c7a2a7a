/** What is found of the shop, the surfaces and the wood. What was noted as typed; what was reckoned or logged in °C, K, s and shares. */
import type { NoValues } from "./no-values.ts";

interface Found {
  readonly found: string;
}

interface Asked {
  readonly asked: string;
}

/** What the logger read while it was glued, °C or shares. */
interface Ends {
  readonly least: number;
  readonly greatest: number;
}

/** What was noted beside it, and only estimated. */
interface Guessed {
  readonly estimate?: string | undefined;
}

interface Outside extends Asked {
  readonly where: "above" | "below";
}

interface DewPoint {
  readonly dewPoint: number;
  readonly warmth: string;
  /** Whether the surfaces were read, or the shop stands for them. */
  readonly of: "surfaces" | "shop";
  readonly apart: number;
}

interface Estimated {
  readonly temperature: string;
  readonly humidity: string;
  /** Whether there is a logger, which has not the two weeks before whole. */
  readonly shortLog: boolean;
  readonly estimate: number;
}

interface Logged {
  readonly over: number;
  /** Of `over`, how long is logged, where that is not all. */
  readonly known?: number;
  readonly least: number;
  readonly greatest: number;
  /** The sheet's least, that no reading is rounded onto. */
  readonly limit?: number;
}

/** °C; the sheet's limit as typed. */
interface Heat extends Asked {
  readonly greatest: number;
}

/** Of one joint, s; what was found and asked as typed. */
interface Heated {
  readonly joint: string;
  readonly found: string;
  readonly lasted: number;
}

interface HeatAsked {
  readonly temperature: string;
  readonly time: string;
}

export interface ClimateValues {
  "post-cure/not-noted": HeatAsked & { readonly joint: string };
  /** Test pieces that did not lie in the heat with their joints, as far as anything says. */
  "post-cure/pieces": { readonly pieces: readonly string[] };
  /** Heated by themselves, by a sheet that asks no heat. */
  "post-cure/pieces-alone": { readonly pieces: readonly string[] };
  "post-cure/done": Heated;
  "post-cure/estimate": Heated & HeatAsked;
  "post-cure/outside": Heated & HeatAsked;
  /** Heat that the sheet asks for nowhere. */
  "post-cure/while-it-cured": Heated & Asked;
  "post-cure/above-service": Heated & Asked;
  "service-heat/below": Heat;
  "service-heat/below-in-part": Heat;
  "service-heat/above": Heat & { readonly limit: number };
  "shop-temperature/not-noted": NoValues;
  "shop-temperature/estimate": Found;
  "shop-temperature/no-limits": Found;
  "shop-temperature/within": Found;
  "shop-temperature/outside": Found & Asked;
  "shop-temperature/part-outside": Found & Asked & { readonly of: "surfaces" | "wood" };
  "shop-temperature/logged": Ends & Guessed;
  "shop-temperature/logged-outside": Ends & Asked;
  "shop-temperature/witnesses": Found & Ends;
  "shop-humidity/logged": Ends & Guessed;
  "shop-humidity/logged-outside": Ends & Asked;
  "shop-humidity/witnesses": Found & Ends;
  "shop-humidity/not-noted": NoValues;
  "shop-humidity/estimate": Found;
  "shop-humidity/no-limits": Found;
  "shop-humidity/within": Found;
  "shop-humidity/outside": Found & Asked;
  "dew-point/clear": DewPoint;
  "dew-point/near": DewPoint;
  "wood-moisture/by-meter": Found;
  "wood-moisture/by-meter-outside": Found & Outside;
  "wood-moisture/part-outside": Found & Outside & { readonly lot: string };
  "wood-moisture/estimate": Found;
  "wood-moisture/no-climate": NoValues;
  "wood-moisture/no-estimate": { readonly temperature: string; readonly humidity: string };
  "wood-moisture/estimated": Estimated;
  "wood-moisture/estimated-outside": Estimated & Outside;
  "wood-moisture/logged": Pick<Estimated, "estimate">;
  /** Nothing says what wood was glued, so that none is known to have been in the shop. */
  "wood-moisture/no-timber": Pick<Estimated, "estimate">;
  /** Received less than two weeks before. */
  "wood-moisture/came-late": Pick<Estimated, "estimate"> & { readonly lots: readonly string[] };
  "wood-moisture/logged-outside": Pick<Estimated, "estimate"> & Outside;
  "cure-temperature/assumed": Pick<Logged, "over">;
  "cure-temperature/to-come": Pick<Logged, "over">;
  "cure-temperature/so-far": Logged;
  "cure-temperature/above": Logged & Asked;
  /** After the least cure, `over`; `limit` is the most that the sheet allows at any time of the cure. */
  "cure-temperature/above-later": Pick<Logged, "over" | "greatest"> & Asked & { readonly limit: number };
  "wood-moisture/logged-in-part": Pick<Estimated, "estimate"> & Outside;
  "cure-temperature/no-limit": Logged;
  "cure-temperature/below": Logged & Asked;
  "cure-temperature/within": Logged;
  "cure-temperature/within-in-part": Logged;
}
