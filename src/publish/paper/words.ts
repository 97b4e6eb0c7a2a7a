import type { Inline } from "./blocks.ts";

/** An id, a name of a file, a day: letters and digits with signs between them and a digit somewhere, not too long for a line. */
const UNBROKEN = /(?<![\p{L}\p{N}])(?=[^\s]*\d)[\p{L}\p{N}]+(?:[-/.][\p{L}\p{N}]+)+(?![\p{L}\p{N}])/gu;
const LONGEST = 24;
/** Typst breaks a line after these, if no digit follows. */
const BREAKS = /[-/](?!\d)/;
/** Signs that turn the direction of whatever follows, and those that end it. */
const OPENS = /[\u202a\u202b\u202d\u202e]/g;
const ISOLATES = /[\u2066-\u2068]/g;

/** Text as it stands, its ids kept on one line; a sign within it that turns the direction of writing reaches no further than it. */
export function wordsOf(text: string): Inline[] {
  const kept = contained(text);
  const words: Inline[] = [];
  let from = 0;
  for (const { 0: id, index } of kept.matchAll(UNBROKEN)) {
    if (id.length > LONGEST || !BREAKS.test(id)) continue;
    if (index > from) words.push(kept.slice(from, index));
    words.push({ i: "id", t: id });
    from = index + id.length;
  }
  if (from < kept.length) words.push(kept.slice(from));
  return words;
}

/** Each direction that is begun in a text is ended with it. */
export function contained(text: string): string {
  const turned = text.match(OPENS)?.length ?? 0;
  const isolated = text.match(ISOLATES)?.length ?? 0;
  return turned + isolated === 0 ? text : `\u2068${text}${"\u202c".repeat(turned)}${"\u2069".repeat(isolated)}\u2069`;
}
