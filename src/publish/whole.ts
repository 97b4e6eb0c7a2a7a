import { deepDigest, Undigestible } from "./output/digest.ts";
import type { LaidOutSite } from "./publish.ts";

/**
 * A digest of all that a page may have read besides texts of entries: of `madeWith`, which is in no record, of the edition and its evidence,
 * and of what the site is told besides. What its fields cannot tell has none; functions of a site, which only say what they find in all
 * that, are left out by name, so that no other one is.
 */
export function wholeOf(madeWith: string, { site, placings }: LaidOutSite): string | undefined {
  const { prose: _prose, shown, ...told } = site;
  const { shows: _shows, nameOf: _nameOf, say: _say, memo: _memo, ...seen } = shown;
  try {
    return deepDigest([madeWith, seen, told, placings]);
  } catch (error) {
    if (error instanceof Undigestible) return undefined;
    throw error;
  }
}
