/** Which page lists which entries. */
import type { Entry, Record } from "../../facts/types.ts";

/** The newest entry first. */
export interface EntryList {
  readonly path: string;
  /** Where a page lists one year alone. */
  readonly year?: string;
  readonly entries: readonly Entry[];
}

/** A page of more entries than that takes long to load. */
const MOST_ON_A_PAGE = 400;
const FIRST_PAGE = "entries.html";

/** All on one page, or where they are many each year on a page of its own, the newest on the first. */
export function entryLists({ entries }: Record): EntryList[] {
  const newestFirst = [...entries].reverse();
  if (entries.length <= MOST_ON_A_PAGE) return [{ path: FIRST_PAGE, entries: newestFirst }];
  const years = new Map<string, Entry[]>();
  for (const entry of newestFirst) {
    const year = entry.day.slice(0, 4);
    const known = years.get(year);
    if (known === undefined) years.set(year, [entry]);
    else known.push(entry);
  }
  return [...years].map(([year, ofYear], at) => ({
    path: at === 0 ? FIRST_PAGE : `entries/${year}.html`,
    year,
    entries: ofYear,
  }));
}
