/**
 * What is wrong in one logger file, gathered by row and cell and placed in the end, so that a sound file costs
 * nothing.
 */
import type { Problem } from "../problem.ts";
import type { Fault } from "../facts/reading.ts";
import { columnOf, fromLine, linesOf } from "./csv.ts";
import type { Delimiter } from "./form.ts";

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
