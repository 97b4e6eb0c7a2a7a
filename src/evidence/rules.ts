/** Every rule that findings name, and where it comes from. Its words are in `src/words/findings/rules.ts`. */
import {
  EQUIVALENT_AGE,
  AC_43_13_MIXING,
  AC_43_13_SAMPLE,
  FROM_PROCEDURE,
  FROM_RECORD,
  FROM_SHEET,
  GUARDED_ACCEPTANCE,
  HANDBOOK_MOISTURE,
  PAINT_RULE,
  STATICS,
  TRACE,
} from "./sources.ts";
import type { RuleId } from "./codes/rules.ts";
import type { Source } from "./types/source.ts";

export const RULES: { readonly [id in RuleId]: Source } = {
  "mix-ratio": AC_43_13_MIXING,
  "mix-doubt": GUARDED_ACCEPTANCE,
  "lot-known": TRACE,
  "lot-in-date": FROM_SHEET,
  "lot-recalled": TRACE,
  "shop-temperature": FROM_SHEET,
  "shop-humidity": FROM_SHEET,
  "wood-moisture": HANDBOOK_MOISTURE,
  "dew-point": PAINT_RULE,
  "working-life": FROM_SHEET,
  "test-pieces": AC_43_13_SAMPLE,
  "cure-temperature": FROM_SHEET,
  "trial-pieces": FROM_RECORD,
  "builders-rejection": FROM_RECORD,
  amended: FROM_RECORD,
  "piece-broken": AC_43_13_SAMPLE,
  "failure-mode": AC_43_13_SAMPLE,
  "full-cure": FROM_PROCEDURE,
  "cure-warmth": EQUIVALENT_AGE,
  overlap: STATICS,
  "piece-load": FROM_PROCEDURE,
  "piece-timber": TRACE,
  stock: TRACE,
  "joint-glued": FROM_RECORD,
  "joint-quarantine": TRACE,
};
