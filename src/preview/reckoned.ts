import { reckon } from "../evidence/evidence.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Record } from "../facts/types.ts";
import { deepDigest } from "../publish/output/digest.ts";

/**
 * What one record after another proves. The reckoning is given none of the texts of entries, so that where nothing else is
 * other than in the record before, what that proved stands.
 */
export class Reckoned {
  #last: { readonly digest: string | undefined; readonly evidence: Evidence } | undefined;

  of(record: Record): Evidence {
    const facts = withoutTexts(record);
    const digest = deepDigest(facts);
    const last = this.#last;
    if (last?.digest !== undefined && last.digest === digest) return last.evidence;
    const evidence = reckon(facts);
    this.#last = { digest, evidence };
    return evidence;
  }
}

const withoutTexts = ({ entries, before, ...rest }: Record): Record => ({
  ...rest,
  entries: entries.map((entry) => ({ ...entry, body: [] })),
  ...(before !== undefined && { before: before.map(withoutTexts) }),
});
