import type { Record } from "../facts/types.ts";
import { deepDigest } from "./output/digest.ts";
import type { LaidOutSite } from "./publish.ts";

/**
 * Gives a digest of all that a page of an edition may rest on besides texts of entries: `madeWith`, which is in no record; the whole record,
 * since what it hides decides which passages an edition shows and which links it cuts out of them; the edition and its evidence; and what
 * the site is told besides. What its fields cannot tell has none; functions of a site, which only say what they find in all that, are left
 * out by name, so that no other one is.
 */
export function wholesOf(madeWith: string, record: Record): (laidOut: LaidOutSite) => string | undefined {
  // By itself: what an edition shares with it changes with the texts.
  const from = deepDigest([madeWith, record]);
  return ({ site, placings }) => {
    const { prose: _prose, shown, ...told } = site;
    const { shows: _shows, nameOf: _nameOf, say: _say, memo: _memo, ...seen } = shown;
    return from && deepDigest([from, seen, told, placings]);
  };
}
