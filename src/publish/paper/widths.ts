interface Column {
  readonly title: string;
  /** What its cells say. */
  readonly cells: readonly string[];
}

/** Letters that a line of a table holds, over the whole width of a page. */
const LINE = 124;
/** Of the room between two columns. */
const GAP = 2;
/** An id or a word beyond this may be broken. */
const LONGEST = 24;
/** What stays on one line though it has blanks. */
const SHORT = 12;

/**
 * Widths of columns in letters: each at least its longest word, none more than its longest cell, and what is left by
 * the root of how much a column has to say, so that few rows become tall.
 */
export function columnWidths(columns: readonly Column[]): number[] {
  const bounds = columns.map(({ title, cells }) => {
    const least = Math.max(3, Math.ceil(title.length / 2), longestWord(title), ...cells.map(unbroken));
    const most = Math.max(least, title.length, ...cells.map((text) => text.length));
    const mean = cells.reduce((sum, { length }) => sum + length, 0) / Math.max(1, cells.length);
    return { least: least + GAP, most: most + GAP, weight: Math.sqrt(mean * most) };
  });
  const at = (scale: number): number[] =>
    bounds.map(({ least, most, weight }) => Math.max(least, Math.min(most, scale * weight)));
  const sum = (widths: readonly number[]): number => widths.reduce((all, width) => all + width, 0);
  let [low, high] = [0, 100];
  for (let step = 0; step < 30; step++) {
    const middle = (low + high) / 2;
    if (sum(at(middle)) > LINE) high = middle;
    else low = middle;
  }
  return at(low).map((width) => Math.round(width * 10) / 10);
}

/** A date, a quantity or a few words stay on one line. */
const unbroken = (text: string): number => (text.length <= SHORT ? text.length : longestWord(text));

const longestWord = (text: string): number =>
  Math.max(0, ...text.split(/\s+/).map((word) => Math.min(word.length, LONGEST)));
