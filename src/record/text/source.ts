import { type Place, placed, type Problem } from "../../problem.ts";
import type { Fault } from "../../facts/reading.ts";

/** The text of one file of the record, with LF line ends, and where each line of it begins. */
export class Source {
  readonly file: string;
  readonly text: string;
  #starts: number[] | undefined;

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
  }

  /** The place of a character, counted from 0. */
  at(offset: number): Place {
    const starts = (this.#starts ??= lineStarts(this.text));
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { file: this.file, line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
  }

  /** Where a line begins, counted from 1. */
  lineStart(line: number): number {
    return (this.#starts ??= lineStarts(this.text))[line - 1] ?? this.text.length;
  }

  /** `typed` is what stands there, where the mend may write something in its place. */
  problem(offset: number, fault: Fault, typed = ""): Problem {
    return placed(this.at(offset), fault, typed);
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) starts.push(end + 1);
  return starts;
}
