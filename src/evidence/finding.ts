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
  // Most findings rest on no more, and share it; so do those that rest on the same besides.
  const own = distinct([about, ...restsOn]);
  let also: readonly Ref[] = NONE;
  let rests = own;
  return (code, severity, values, { limit, alsoOn = NONE } = {}) => {
    if (alsoOn !== also) rests = distinct(alsoOn, own);
    also = alsoOn;
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
const MANY = 100;

/** Shared by all findings that rest on no more. */
const NONE: readonly Ref[] = Object.freeze([]);

/** Each once, where it is named first: after those that are there, which are distinct, or those themselves where there are no others. */
export function distinct(refs: readonly Ref[], there: readonly Ref[] = NONE): readonly Ref[] {
  const kept = refs.length < MANY ? few(refs, there) : many(refs, there);
  return kept.length === there.length ? there : kept;
}

function few(refs: readonly Ref[], there: readonly Ref[]): readonly Ref[] {
  const kept = there.slice();
  for (const ref of refs) if (!holds(kept, ref)) kept.push(ref);
  return kept;
}

function many(refs: readonly Ref[], there: readonly Ref[]): readonly Ref[] {
  const kept = there.slice();
  const seen = new Set(there.map(keyOf));
  for (const ref of refs) {
    const key = keyOf(ref);
    if (!seen.has(key)) kept.push(ref);
    seen.add(key);
  }
  return kept;
}

const keyOf = ({ kind, id }: Ref): string => `${kind}\u0000${id}`;

const holds = (refs: readonly Ref[], { kind, id }: Ref): boolean =>
  refs.some((one) => one.id === id && one.kind === kind);
