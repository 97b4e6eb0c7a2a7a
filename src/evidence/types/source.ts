/** Where rules and limits come from. */
import type { LimitValues } from "../codes/limits.ts";
import type { SourceValues } from "../codes/sources.ts";
import type { Saying } from "../saying.ts";

/** Where a rule or a limit comes from, and how its text was known to the authors of this program. Of a second-hand one the text says by whom. */
export type Source = Saying<keyof SourceValues> & {
  readonly known: "seen" | "second-hand" | "memory" | "common practice" | "record";
};

export type Limit = Saying<keyof LimitValues> & { readonly from: Source };
