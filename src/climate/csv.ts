/** The cells of a logger's file, and where they stand in it. */
import { CsvError, parse } from "csv-parse/sync";
import type { Delimiter } from "./form.ts";

export type Rows = readonly (readonly string[])[];

const OPTIONS = { relax_column_count: true, relax_quotes: true, skip_empty_lines: true } as const;

/**
 * All rows, blank lines left out; or the line, from 1, on which a quotation mark is opened and never closed.
 * Many rows of another length than the first are slow to read, so what stands before the rows proper is better left
 * out.
 */
export function rowsOf(text: string, delimiter: Delimiter): Rows | { readonly line: number } {
  try {
    return parse(text, { ...OPTIONS, delimiter });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { line: linesOf(text, delimiter).at(-1) ?? 1 };
  }
}

/** The line on which each row begins, from 1. Slower than reading, and needed only where something is wrong. */
export function linesOf(text: string, delimiter: Delimiter): number[] {
  const starts: number[] = [];
  let next = 1;
  try {
    parse(text, {
      ...OPTIONS,
      delimiter,
      skip_empty_lines: false,
      on_record: (cells: readonly string[], { lines }: { lines: number }) => {
        if (cells.length > 1 || cells[0] !== "") starts.push(next);
        next = lines + 1;
        return null;
      },
    });
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
