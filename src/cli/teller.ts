import type { Teller } from "../check.ts";
import { bytesWords } from "../words/numbers.ts";
import { inOrder, type Note, noteText, type Problem, problemCount, problemText } from "../problem.ts";
import type { Surroundings } from "./surroundings.ts";

const CLEAR_LINE = "\r\u001B[K";
/** Shorter work is over before a rate means anything. */
const QUIET_MS = 700;
const TERMINAL_EVERY_MS = 100;
const LINE_EVERY_MS = 10_000;
/** Lengths that a bar may have: few, so that it does not change with each digit of the text. */
const BARS = [24, 16, 10, 6];

/** Tells of long work as it goes on: one line that changes on a terminal, a line now and then elsewhere. */
export function tellerFor({ out, isTerminal, columns, now }: Surroundings, words = progressWords): Teller {
  let began: number | undefined;
  let told = 0;
  let isOpen = false;
  const close = (): void => {
    if (isOpen) out(CLEAR_LINE);
    isOpen = false;
  };
  return {
    line: (text) => {
      close();
      out(`${text}\n`);
    },
    progress: (done, of) => {
      const time = now().getTime();
      began ??= time;
      const spent = time - began;
      if (spent < QUIET_MS || time - told < (isTerminal ? TERMINAL_EVERY_MS : LINE_EVERY_MS)) return;
      told = time;
      const text = words(done, of, spent / 1000);
      isOpen = isTerminal;
      out(isTerminal ? CLEAR_LINE + barred(text, of > 0 ? done / of : 0, columns - 1) : `${text}\n`);
    },
  };
}

/**
 * A text with a bar before it, if the line leaves room for one; where it leaves too little, the text alone, cut to
 * the line.
 */
export function barred(text: string, share: number, width: number): string {
  const room = width - text.length - "[] ".length;
  const cells = BARS.find((length) => length <= room);
  if (cells === undefined) return text.slice(0, Math.max(0, width));
  const full = Math.floor(Math.min(1, Math.max(0, share)) * cells);
  return `[${"#".repeat(full)}${"-".repeat(cells - full)}] ${text}`;
}

/** `seconds` since the work began. */
export function progressWords(done: number, of: number, seconds: number): string {
  const rate = done / seconds;
  const time = timeLeft(done, of, seconds);
  return `Making pictures ready: ${done} of ${of}, ${rate.toFixed(rate < 10 ? 1 : 0)} a second, ${time} left`;
}

/** Of work whose measure is bytes. */
export function bytesProgress(what: string): typeof progressWords {
  return (done, of, seconds) =>
    `${what}: ${bytesWords(done)} of ${bytesWords(of)}, ${bytesWords(done / seconds)} a second, ${timeLeft(done, of, seconds)} left`;
}

function timeLeft(done: number, of: number, seconds: number): string {
  const left = Math.ceil(((of - done) * seconds) / done);
  return left < 90 ? `${left} s` : `${Math.round(left / 60)} min`;
}

/** All notes, a line each. */
export function notesWords(notes: readonly Note[]): string {
  return notes.map(noteText).join("\n");
}

/** All problems, and then how many there are. */
export function problemWords(problems: readonly Problem[], hasColours: boolean): string {
  const bold = (text: string): string => (hasColours ? text.replace(/^.*/, "\u001B[1m$&\u001B[22m") : text);
  return `${inOrder(problems)
    .map((problem) => bold(problemText(problem)))
    .join("\n\n")}\n\n${problemCount(problems)} in the record.`;
}
