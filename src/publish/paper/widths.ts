/** Letters that a line of a table holds, over the whole width of a page. */
const LINE = 124;
/** Of the room between two columns. */
const GAP = 2;
/** An id or a word beyond this may be broken. */
const LONGEST = 24;
/** What stays on one line though it has blanks. */
const SHORT = 12;
/** Letters given out at a time. */
const STEP = 0.5;

/**
 * Widths of columns in letters: each at least its longest word, none more than its longest cell. What is left goes, a
 * little at a time, to the column that makes the table shorter by it: a row is as tall as its tallest cell.
 */
export function columnWidths(titles: readonly string[], rows: readonly (readonly string[])[]): number[] {
  const bounds = titles.map((title, at) => {
    const cells = rows.map((row) => row[at] ?? "");
    const least = Math.max(3, Math.ceil(title.length / 2), longestWord(title), ...cells.map(unbroken));
    return { least, most: Math.max(least, title.length, ...cells.map((text) => text.length)) };
  });
  const widths = bounds.map(({ least }) => least);
  const lengths = [titles, ...rows].map((row) => row.map((text) => text.length));
  let left = LINE - GAP * widths.length - widths.reduce((all, width) => all + width, 0);
  for (; left >= STEP; left -= STEP) {
    const gains = gainsOf(lengths, widths).map((gain, at) => ((widths[at] ?? 0) < (bounds[at]?.most ?? 0) ? gain : 0));
    const best = Math.max(...gains);
    if (!(best > 0)) break;
    const at = gains.indexOf(best);
    widths[at] = (widths[at] ?? 0) + STEP;
  }
  return widths.map((width) => width + GAP);
}

/** By how much the rows become shorter with each letter more of a column. */
function gainsOf(lengths: readonly (readonly number[])[], widths: readonly number[]): number[] {
  const gains = widths.map(() => 0);
  for (const row of lengths) {
    const heights = row.map((length, at) => length / (widths[at] ?? 1));
    const tallest = Math.max(...heights);
    const at = heights.indexOf(tallest);
    if (tallest > 1) gains[at] = (gains[at] ?? 0) + tallest / (widths[at] ?? 1);
  }
  return gains;
}

/** A date, a quantity or a few words stay on one line. */
const unbroken = (text: string): number => (text.length <= SHORT ? text.length : longestWord(text));

const longestWord = (text: string): number =>
  Math.max(0, ...text.split(/\s+/).map((word) => Math.min(word.length, LONGEST)));
