/** Every rule that findings name. A rule has a title and says what it asks: two codes each. */
import type { NoValues } from "./no-values.ts";

export type RuleId =
  | "mix-ratio"
  | "mix-doubt"
  | "lot-known"
  | "lot-in-date"
  | "lot-recalled"
  | "lot-storage"
  | "timber-grade"
  | "shop-temperature"
  | "shop-humidity"
  | "wood-moisture"
  | "dew-point"
  | "working-life"
  | "spread"
  | "service-heat"
  | "test-pieces"
  | "sample-wood"
  | "cure-temperature"
  | "trial-pieces"
  | "builders-rejection"
  | "amended"
  | "seconded"
  | "piece-broken"
  | "failure-mode"
  | "full-cure"
  | "cure-warmth"
  | "overlap"
  | "piece-load"
  | "piece-timber"
  | "piece-wood"
  | "stock"
  | "joint-glued"
  | "joint-cure"
  | "joint-quarantine";

export type RuleValues = { readonly [code in `rule/${RuleId}` | `title/${RuleId}`]: NoValues };
