/** Makes findings about one thing, each resting on what the thing rests on and whatever else its sentence speaks of. */
import type { Ref } from "../facts/types.ts";
import type { RuleId } from "./rules.ts";
import type { Finding, Severity, Source } from "./types.ts";

export interface Limit {
  readonly text: string;
  readonly from: Source;
}

interface Said {
  readonly sentence: string;
  readonly limit?: Limit;
  /** What it rests on beyond the thing itself and its entry. */
  readonly alsoOn?: readonly Ref[];
}

export type Finder = (rule: RuleId, severity: Severity, said: Said) => Finding;

export const finder =
  (about: Ref, restsOn: readonly Ref[]): Finder =>
  (rule, severity, { sentence, limit, alsoOn = [] }) => ({
    rule,
    severity,
    about,
    sentence,
    ...(limit === undefined ? {} : { limit }),
    restsOn: distinct([about, ...restsOn, ...alsoOn]),
  });

export function distinct(refs: readonly Ref[]): Ref[] {
  const seen = new Set<string>();
  return refs.filter((ref) => {
    const key = `${ref.kind}\u0000${ref.id}`;
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}
