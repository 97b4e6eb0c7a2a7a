/** The cells of a table, and where they stand in its file. */
import { CsvError, parse } from "csv-parse/sync";
import { LIMITS } from "../../facts/limits.ts";

export type Delimiter = "," | ";" | "\t";

export type Rows = readonly (readonly string[])[];

const OPTIONS = {
  relax_column_count: true,
  relax_quotes: true,
  skip_empty_lines: true,
  max_record_size: LIMITS.rowLength,
} as const;

/** The line, from 1, on which a row begins that cannot be read: too long, or with a quotation mark never closed. */
export interface Unread {
  readonly line: number;
  readonly isLong: boolean;
}

/** All rows, blank lines left out; or where one cannot be read. */
export function rowsOf(text: string, delimiter: Delimiter): Rows | Unread {
  if (!text.includes('"')) return unquotedRows(text, delimiter);
  try {
    return withoutTraces(() => parse(text, { ...OPTIONS, delimiter }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { line: linesOf(text, delimiter).at(-1) ?? 1, isLong: error.code === "CSV_MAX_RECORD_SIZE" };
  }
}

/**
 * Without a quotation mark every line is a row and every delimiter parts two cells (RFC 4180, 2); so it takes a fifth
 * of the library's time, and rows of uneven length no more than others. The tests hold it against the library.
 */
function unquotedRows(text: string, delimiter: Delimiter): Rows | Unread {
  const lines = text.split("\n");
  const long = lines.findIndex((line) => line.length > LIMITS.rowLength);
  if (long >= 0) return { line: long + 1, isLong: true };
  return lines.filter((line) => line !== "").map((line) => line.split(delimiter));
}

/** The library makes an error of each row of another length, and lets it go: to trace it takes ten times the reading. */
function withoutTraces<T>(work: () => T): T {
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    Error.stackTraceLimit = stackTraceLimit;
  }
}

/** The line on which each row begins, from 1. Needed only where something is wrong. */
export function linesOf(text: string, delimiter: Delimiter): number[] {
  if (!text.includes('"')) return text.split("\n").flatMap((line, at) => (line === "" ? [] : [at + 1]));
  const starts: number[] = [];
  let next = 1;
  try {
    const on_record = (cells: readonly string[], { lines }: { lines: number }): null => {
      if (cells.length > 1 || cells[0] !== "") starts.push(next);
      next = lines + 1;
      return null;
    };
    withoutTraces(() => parse(text, { ...OPTIONS, delimiter, skip_empty_lines: false, on_record }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    starts.push(next);
  }
  return starts;
}

/** A text from one of its lines on, counted from 1. */
export function fromLine(text: string, line: number): string {
  let at = 0;
  for (let n = 1; n < line && at >= 0; n += 1) at = text.indexOf("\n", at) + 1 || -1;
  return at < 0 ? "" : text.slice(at);
}

/** The column, from 1, at which a cell begins in a line; 1 where the line has no such cell. */
export function columnOf(line: string, delimiter: Delimiter, cell: number): number {
  let at = 0;
  let quoted = false;
  for (let i = 0; i < line.length && at < cell; i += 1) {
    if (line[i] === '"') quoted = !quoted;
    else if (!quoted && line[i] === delimiter) {
      at += 1;
      if (at === cell) return i + 2;
    }
  }
  return 1;
}
