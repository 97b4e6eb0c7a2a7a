/** What became of a file that was given. */
import type { Day, Record } from "../../facts/types.ts";
import type { Problem } from "../../problem.ts";
import type { Answers, Question } from "../question.ts";

export interface Outcome {
  readonly from: string;
  /** `there`: it had been taken before. `left`: it was not taken, and why is told. */
  readonly became: "taken" | "there" | "left";
  /** Where it is in the record, or why it is not. */
  readonly says: readonly string[];
  readonly problems?: readonly Problem[];
}

/** The record into which something is taken. */
export interface Desk {
  readonly content: string;
  readonly today: Day;
  readonly record: Record;
  /** Paths of all files of the record. */
  readonly files: readonly string[];
  readonly ask: Ask;
}

/** Gets answers by flags or from whoever sits at a terminal. */
type Ask = (questions: readonly Question[], given: Answers) => Promise<Answers>;

export const left = (from: string, says: readonly string[], problems?: readonly Problem[]): Outcome =>
  problems === undefined ? { from, became: "left", says } : { from, became: "left", says, problems };
