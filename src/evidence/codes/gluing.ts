/** What is found of a glue-up. What was asked as typed; what was found as typed or as reckoned. */
import type { Ask } from "../../facts/types.ts";
import type { NoValues } from "./no-values.ts";

export type GlueUpFound =
  | { readonly typed: string }
  | { readonly seconds: number }
  | { readonly share: number }
  | { readonly lots: readonly string[]; readonly beaded: boolean };

interface Asked {
  readonly ask: Ask;
  readonly asked: string;
}

interface Found extends Asked {
  readonly found: GlueUpFound;
  /** The procedure that the session says it followed, where it stands by that. */
  readonly by?: string | undefined;
}

export interface GlueUpValues {
  "glue-up/as-asked": Found;
  "glue-up/not-as-asked": Found;
  "glue-up/not-noted": Asked;
  /** As typed. */
  "glue-up/estimate": Asked & { readonly found: string };
  /** As typed. */
  "glue-up/dry-spots": { readonly where: string };
  "glue-up/little-squeezed": { readonly squeezeOut: "in part" | "none" };
  "glue-up/beaded": { readonly lots: readonly string[] };
  "glue-up/one-face": NoValues;
  "glue-up/over-cured": NoValues;
}
