/** One thing that the search of an edition finds, and what it is found by. */
import { plain } from "../../words/plain.ts";
import type { Shown, Site } from "../../editions/shown.ts";
import type { Passage, Ref } from "../../facts/types.ts";
import type { Findable } from "../../words/search/packed.ts";

export interface Searched extends Findable {
  /** As it is called to readers. */
  readonly kind: SearchedKind;
}

export type SearchedKind =
  | "Entry"
  | "Assembly"
  | "Joint"
  | "Hold point"
  | "Batch"
  | "Lot"
  | "Departure"
  | "Open item"
  | "Trial"
  | "Page";

type Maybe = string | undefined;

/** What is there of it. */
export const said = (...words: readonly Maybe[]): string[] =>
  words.filter((word) => word !== undefined && word !== "") as string[];

/** Ids of things, of those that the edition shows. */
export const idsShown = (shown: Shown, kind: Ref["kind"], ids: readonly Maybe[]): string[] =>
  said(...ids).filter((id) => shown.shows({ kind, id }));

/** Passages as they are shown, in plain words. */
export const prose = (site: Site, body: readonly Passage[]): string =>
  body.map((passage) => plain(site.prose(passage, "search.html"))).join(" ");

/** So much of a text is told beside what was found, characters. */
const LEAD = 110;

/** Its beginning, at most so long, ending with a whole word. */
export function leadOf(text: string): string {
  if (text.length <= LEAD) return text;
  const end = text.lastIndexOf(" ", LEAD);
  return `${text.slice(0, end < LEAD / 2 ? LEAD : end)} …`;
}
