/** A change after a signature, with the fact of the record that it is. */
import type { Ref } from "../../facts/types.ts";
import type { ChangeValues } from "../codes/hold-points.ts";
import { distinct } from "../finding.ts";
import type { Saying } from "../saying.ts";
import type { Change } from "../types.ts";

export interface Told {
  readonly fact: { readonly entry: string };
  readonly change: Change;
}

export function told(
  about: Ref,
  fact: { readonly entry: string },
  saying: Saying<keyof ChangeValues>,
  alsoOn: readonly Ref[] = [],
): Told {
  return {
    fact,
    change: { ...saying, about, restsOn: distinct([about, { kind: "entry", id: fact.entry }, ...alsoOn]) },
  };
}
