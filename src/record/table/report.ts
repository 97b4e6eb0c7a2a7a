/** What is reported of a table, and that it is larger than may be. */
import type { Problem } from "../../problem.ts";
import type { Fault } from "../../facts/reading.ts";
import { type Delimiter, type Unread, columnOf, fromLine, linesOf } from "./csv.ts";
import { LIMITS, beyond, inThousands } from "../../facts/limits.ts";

/** Stands for the header where a row is asked for. */
export const HEADER = -1;

/** Where a file's header and its first row begin, from 1, and what parts its cells. */
export interface Whereabouts {
  readonly delimiter: Delimiter;
  readonly headerLine: number;
  readonly bodyLine: number;
}

/** Problems of one kind that are told one by one; of the rest only the number is. */
const MOST = 8;

interface Note {
  readonly row: number;
  readonly cell: number;
  readonly fault: Fault;
}

export class Report {
  readonly #notes = new Map<string, { readonly first: Note[]; more: number }>();

  /** `row` counts rows after the header from 0, `cell` from 0. */
  say(row: number, cell: number, fault: Fault): void {
    const kind = this.#notes.get(fault.code);
    if (kind === undefined) this.#notes.set(fault.code, { first: [{ row, cell, fault }], more: 0 });
    else if (kind.first.length < MOST) kind.first.push({ row, cell, fault });
    else kind.more += 1;
  }

  get isEmpty(): boolean {
    return this.#notes.size === 0;
  }

  problems(file: string, text: string, { delimiter, headerLine, bodyLine }: Whereabouts): Problem[] {
    if (this.isEmpty) return [];
    const starts = linesOf(fromLine(text, bodyLine), delimiter).map((line) => line + bodyLine - 1);
    const lines = text.split("\n");
    return [...this.#notes.values()].flatMap(({ first, more }) =>
      first.map(({ row, cell, fault }, i) => {
        const line = row === HEADER ? headerLine : (starts[row] ?? headerLine);
        const last = i === first.length - 1 && more > 0;
        const message = last ? `${fault.message}; and ${more} more of the kind in this file` : fault.message;
        return { file, line, column: columnOf(lines[line - 1] ?? "", delimiter, cell), ...fault, message };
      }),
    );
  }
}

/** A fault, and the line it begins on, from 1. */
export interface Bound {
  readonly line: number;
  readonly fault: Fault;
}

export function boundOf(text: string): Bound | undefined {
  let lines = 1;
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) lines += 1;
  if (lines <= LIMITS.tableLines) return undefined;
  const most = `${inThousands(LIMITS.tableLines)} lines, a reading every minute for four years`;
  return {
    line: LIMITS.tableLines + 1,
    fault: beyond("this file has more lines than are read", most, "part it over several files", inThousands(lines)),
  };
}

export function columnsFault(count: number): Fault | undefined {
  if (count <= LIMITS.tableColumns) return undefined;
  return beyond(
    "this header has more columns than are read",
    `${LIMITS.tableColumns} columns`,
    "export the time, the temperature and the humidity alone",
    String(count),
  );
}

export function unreadFault({ isLong }: Unread): Fault {
  return isLong
    ? beyond(
        "this row is longer than is read",
        `${inThousands(LIMITS.rowLength)} characters`,
        "look for a quotation mark that is never closed, or line ends that were lost, and export the file again",
      )
    : {
        code: "climate-quote",
        message: "a quotation mark is opened on this line or after it and never closed",
        mend: "export the file again, or close it",
      };
}
