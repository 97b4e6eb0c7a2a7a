/** The index of the search as a classic script, so that it can be had from a disk too; asked for when somebody searches. */
import type { Site } from "../../src/editions/shown.ts";
import { searchedOf } from "../../src/pages/search/searched.ts";
import { packed } from "../../src/words/search/packed.ts";

export const SEARCH_INDEX = "search-index.js";

/** Text that is parsed as JSON is read faster than a script that says the same. */
export function searchIndex(site: Site): string {
  const text = JSON.stringify(packed(searchedOf(site)));
  return `scarflineIndex=JSON.parse('${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}')\n`;
}
