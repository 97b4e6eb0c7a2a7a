import { isDeepStrictEqual } from "node:util";
import { reckon } from "../evidence/evidence.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Record } from "../facts/types.ts";

/**
 * What one record after another proves. The reckoning is given none of the texts of entries, so that where nothing else is
 * other than in the record before, what that proved stands.
 */
export class Reckoned {
  #last: { readonly facts: Record; readonly evidence: Evidence } | undefined;

  of(record: Record): Evidence {
    const facts = withoutTexts(record);
    const last = this.#last;
    if (last !== undefined && isDeepStrictEqual(last.facts, facts)) return last.evidence;
    const evidence = reckon(facts);
    this.#last = { facts, evidence };
    return evidence;
  }
}

const withoutTexts = ({ entries, before, ...rest }: Record): Record => ({
  ...rest,
  entries: entries.map((entry) => ({ ...entry, body: [] })),
  ...(before !== undefined && { before: before.map(withoutTexts) }),
});
