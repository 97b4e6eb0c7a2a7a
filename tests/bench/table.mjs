/** Tables of results. */

/** Seconds and processor seconds, each with its ratio to those of the yardstick. */
export function times(took, yardstick) {
  return ["seconds", "cpu"].flatMap((what) => [told(took[what], 2), told(took[what] / yardstick[what], 2)]);
}

export const TIMES = ["seconds", "ratio", "CPU s", "ratio"];

export function told(value, decimals) {
  return value === undefined || Number.isNaN(value) ? "–" : value.toFixed(decimals);
}

/** Of the line of least squares through points. */
export function slope(points) {
  const mean = (at) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  return (
    points.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) / points.reduce((sum, [a]) => sum + (a - x) ** 2, 0)
  );
}

export function asText({ title, heads, rows, notes = [] }) {
  const widths = heads.map((head, at) => Math.max(head.length, ...rows.map((row) => row[at].length)));
  const line = (cells) =>
    cells.map((cell, at) => (at === 0 ? cell.padEnd(widths[at]) : cell.padStart(widths[at]))).join("  ");
  return `${[title, "", line(heads), ...rows.map(line), ...notes.map((note) => `\n${note}`)].join("\n")}\n`;
}

export function asMarkdown({ title, heads, rows, notes = [] }) {
  const line = (cells) => `| ${cells.join(" | ")} |`;
  return `${[`## ${title}`, "", line(heads), line(heads.map((_, at) => (at === 0 ? "---" : "---:"))), ...rows.map(line), ...notes.map((note) => `\n${note}`)].join("\n")}\n`;
}
