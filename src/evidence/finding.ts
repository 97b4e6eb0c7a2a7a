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

export function finder(about: Ref, restsOn: readonly Ref[]): Finder {
  // Most findings rest on no more, and share it.
  const own = distinct([about, ...restsOn]);
  return (code, severity, values, beside = {}) => {
    const { limit, alsoOn = [] } = beside;
    const rests = alsoOn.length === 0 ? own : distinct(alsoOn, own);
    const rule = ruleOf(code);
    return (
      limit === undefined
        ? { rule, code, values, severity, about, restsOn: rests }
        : { rule, code, values, severity, about, limit, restsOn: rests }
    ) as Finding;
  };
}

const ruleOf = <R extends RuleId>(code: `${R}/${string}`): R => code.slice(0, code.indexOf("/")) as R;

/** From so many on a set is quicker than going through those that were kept. */
const MANY = 12;

/** Each once, where it is named first: after those that are there, which are distinct. */
export function distinct(refs: readonly Ref[], there: readonly Ref[] = []): Ref[] {
  const kept = [...there];
  if (there.length + refs.length < MANY) {
    for (const ref of refs) if (!holds(kept, ref)) kept.push(ref);
    return kept;
  }
  const seen = new Set(there.map(keyOf));
  for (const ref of refs) {
    if (!seen.has(keyOf(ref))) kept.push(ref);
    seen.add(keyOf(ref));
  }
  return kept;
}

const keyOf = ({ kind, id }: Ref): string => `${kind}\u0000${id}`;

function holds(refs: readonly Ref[], { kind, id }: Ref): boolean {
  for (const one of refs) if (one.id === id && one.kind === kind) return true;
  return false;
}
