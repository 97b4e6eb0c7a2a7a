/** A spreadsheet's table as it was exported: its header, and the cells of its columns. */
import { type Delimiter, linesOf, type Rows, rowsOf } from "../../../record/table/csv.ts";
import { DELIMITERS } from "../../../record/earlier/columns.ts";

export interface Sheet {
  readonly delimiter: Delimiter;
  /** The line of the header, from 1. */
  readonly headerLine: number;
  readonly header: readonly string[];
  readonly rows: Rows;
}

/** Lines within which the header must stand; a title may stand before it. */
const PREAMBLE = 30;
const FEWEST = 3;

/** Undefined where no line within the first is a header of words. */
export function sheetIn(text: string): Sheet | undefined {
  const found = DELIMITERS.flatMap((delimiter) => sheetBy(text, delimiter) ?? []);
  return found.sort((a, b) => widthOf(b) - widthOf(a))[0];
}

const widthOf = ({ header }: Sheet): number => header.filter((cell) => cell !== "").length;

function sheetBy(text: string, delimiter: Delimiter): Sheet | undefined {
  const rows = rowsOf(text, delimiter);
  if ("line" in rows) return undefined;
  const at = rows.slice(0, PREAMBLE).findIndex(isHeader);
  const header = rows[at];
  if (header === undefined) return undefined;
  const headerLine = linesOf(text, delimiter)[at] ?? 1;
  return { delimiter, headerLine, header: header.map((cell) => cell.trim()), rows: rows.slice(at + 1) };
}

/** Words beside each other, and no figure among them. */
function isHeader(cells: readonly string[]): boolean {
  const words = cells.map((cell) => cell.trim()).filter((cell) => cell !== "");
  return new Set(words).size >= FEWEST && words.every((cell) => !/^[\d.,:/-]+(?:\s*h)?$/u.test(cell));
}

/** What stands in a column, by the name in its header, row by row; rows of nothing are left out. */
export function cellsUnder({ header, rows }: Sheet, column: string | undefined): readonly string[] {
  const at = column === undefined ? -1 : header.indexOf(column);
  if (at < 0) return [];
  return rows.filter((cells) => cells.some((cell) => cell.trim() !== "")).map((cells) => (cells[at] ?? "").trim());
}

/** Each thing that stands in a column once, in the order in which it comes. */
export const wordsUnder = (sheet: Sheet, column: string | undefined): readonly string[] => [
  ...new Set(cellsUnder(sheet, column).filter((cell) => cell !== "")),
];
