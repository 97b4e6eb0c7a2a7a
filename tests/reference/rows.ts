import { readFileSync } from "node:fs";

export type Row = (column: string) => string;

/** Rows of a reference file: the line that says which R made it or which source it was taken from, the names of the columns, then one row a line. */
export function referenceRows(name: string): Row[] {
  const [made, header = "", ...lines] = readFileSync(new URL(`${name}.csv`, import.meta.url), "utf8").trimEnd().split("\n");
  if (!/^# (R version|Source: )/.test(made ?? ""))
    throw new Error(`${name}.csv does not say which R made it, or its source`);
  const columns = header.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    return (column) => {
      const cell = cells[columns.indexOf(column)];
      if (cell === undefined) throw new Error(`${name}.csv has no ${column} in: ${line}`);
      return cell;
    };
  });
}

export const numbers = (cell: string): number[] => cell.split(" ").filter((part) => part !== "").map(Number);

/** How far two figures are apart, relative to the greater of them and never finer than `floor`. */
export function apart(got: number | undefined, want: number, floor = 1e-300): number {
  if (got === undefined || !Number.isFinite(got)) return Number.POSITIVE_INFINITY;
  return Math.abs(got - want) / Math.max(Math.abs(got), Math.abs(want), floor);
}
