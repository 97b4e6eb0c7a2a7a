/** Makes findings about one thing, each resting on what the thing rests on and whatever else its values speak of. */
import type { Ref } from "../facts/types.ts";
import type { FindingValues } from "./codes/findings.ts";
import type { RuleId } from "./codes/rules.ts";
import type { FindingCode } from "./saying.ts";
import type { Limit } from "./types/source.ts";
import type { Finding, Severity } from "./types.ts";

interface Beside {
  readonly limit?: Limit;
  /** What it rests on beyond the thing itself and its entry. */
  readonly alsoOn?: readonly Ref[];
}

/** A finding's code begins with its rule. */
export type Finder = <C extends FindingCode>(
  code: C,
  severity: Severity,
  values: FindingValues[C],
  beside?: Beside,
) => Finding;

export const finder =
  (about: Ref, restsOn: readonly Ref[]): Finder =>
  (code, severity, values, { limit, alsoOn = [] } = {}) =>
    ({
      rule: ruleOf(code),
      code,
      values,
      severity,
      about,
      ...(limit === undefined ? {} : { limit }),
      restsOn: distinct([about, ...restsOn, ...alsoOn]),
    }) as Finding;

const ruleOf = <R extends RuleId>(code: `${R}/${string}`): R => code.slice(0, code.indexOf("/")) as R;

/** From so many on a set is quicker than going through those that were kept. */
const MANY = 12;

export function distinct(refs: readonly Ref[]): Ref[] {
  if (refs.length < MANY) return refs.filter((ref, i) => refs.findIndex((one) => isSame(one, ref)) === i);
  const seen = new Set<string>();
  return refs.filter((ref) => {
    const key = `${ref.kind}\u0000${ref.id}`;
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}

const isSame = (a: Ref, b: Ref): boolean => a.id === b.id && a.kind === b.kind;
