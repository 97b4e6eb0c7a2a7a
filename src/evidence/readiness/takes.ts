/** What a need takes to be met. */
import type { TakeValues } from "../codes/hold-points.ts";

export function takes<C extends keyof TakeValues>(code: C) {
  return { code, values: {} };
}
