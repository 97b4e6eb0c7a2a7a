import type { Inline } from "./blocks.ts";

/** An id, a name of a file, a day: letters and digits with signs between them and a digit somewhere, not too long for a line. */
const UNBROKEN = /(?<![\p{L}\p{N}])(?=[^\s]*\d)[\p{L}\p{N}]+(?:[-/.][\p{L}\p{N}]+)+(?![\p{L}\p{N}])/gu;
const LONGEST = 24;
/** What no line is broken within, and is longer than a cell of a table may be wide: not the signs that turn the direction of writing. */
const OVERLONG = /(?:[^\s/\-\u202a-\u202e\u2066-\u2069]|[-/](?=\d)){25,}/gu;
/** Letters of it that stay together. */
const PIECE = 12;
const GRAPHEMES = new Intl.Segmenter("en", { granularity: "grapheme" });
/** Typst breaks a line after these, if no digit follows. */
const BREAKS = /[-/](?!\d)/;
/** Signs that turn the direction of whatever follows, and those that end it. */
const OPENS = /[\u202a\u202b\u202d\u202e]/g;
const ISOLATES = /[\u2066-\u2068]/g;

/**
 * Text as it stands, its ids kept on one line, and a word that no cell could hold in pieces that a line may end between; a sign within it
 * that turns the direction of writing reaches no further than it.
 */
export function wordsOf(text: string): Inline[] {
  return parted(contained(text), OVERLONG, piecesOf, (between) =>
    parted(
      between,
      UNBROKEN,
      (id) => (id.length > LONGEST || !BREAKS.test(id) ? undefined : [{ i: "id", t: id }]),
      (words) => [words],
    ),
  );
}

function parted(
  text: string,
  at: RegExp,
  found: (match: string) => readonly Inline[] | undefined,
  others: (between: string) => readonly Inline[],
): Inline[] {
  const parts: Inline[] = [];
  let from = 0;
  for (const { 0: match, index } of text.matchAll(at)) {
    const instead = found(match);
    if (instead === undefined) continue;
    if (index > from) parts.push(...others(text.slice(from, index)));
    parts.push(...instead);
    from = index + match.length;
  }
  if (from < text.length) parts.push(...others(text.slice(from)));
  return parts;
}

function piecesOf(word: string): Inline[] {
  const letters = Array.from(GRAPHEMES.segment(word), ({ segment }) => segment);
  return Array.from({ length: Math.ceil(letters.length / PIECE) }, (_, at) => ({
    i: "id",
    t: letters.slice(at * PIECE, (at + 1) * PIECE).join(""),
  }));
}

/** Each direction that is begun in a text is ended with it. */
export function contained(text: string): string {
  const turned = text.match(OPENS)?.length ?? 0;
  const isolated = text.match(ISOLATES)?.length ?? 0;
  return turned + isolated === 0 ? text : `\u2068${text}${"\u202c".repeat(turned)}${"\u2069".repeat(isolated)}\u2069`;
}
