/** The words of a text as they are kept and looked for: in small letters without accents, an id whole. */

/** Letters and digits, and what joins them within an id, a number or a word: `WR-J04`, `B-001/2`, `19.5`, `push-rod`. */
const TERM = /[\p{L}\p{N}]+(?:[-./_’'][\p{L}\p{N}]+)*/gu;
const MARKS = /\p{M}+/gu;
/** `the shop’s stove` is found by `shop`. */
const POSSESSIVE = /[’']s$/;

export const hasDigit = (term: string): boolean => /\p{N}/u.test(term);

const folded = (text: string): string => text.normalize("NFKD").replace(MARKS, "").toLowerCase();

/** In the order of the text; every one as often as it stands there. */
export function wordsIn(text: string): string[] {
  return (folded(text).match(TERM) ?? []).map((term) => term.replace(POSSESSIVE, "").replace(/[’']/g, ""));
}

/** What a word is also found by: words joined by hyphens by each of them, a piece by its batch. Numbers and other ids have no parts. */
export function partsOf(term: string): string[] {
  if (!hasDigit(term)) return /[-./_]/.test(term) ? term.split(/[-./_]/) : [];
  const ends = [...term.matchAll(/\//g)].map(({ index }) => index);
  return ends.map((end) => term.slice(0, end)).filter((part) => /\p{L}/u.test(part));
}

/** All that a text is found by. */
export const termsOf = (text: string): string[] => wordsIn(text).flatMap((term) => [term, ...partsOf(term)]);

/** How else an id may be typed: `wr j04`, `wrj04`. */
export function spellingsOf(id: string): string[] {
  const parts = folded(id).split(/[^\p{L}\p{N}]+/u);
  return parts.length > 1 ? [...parts, parts.join("")] : [];
}
