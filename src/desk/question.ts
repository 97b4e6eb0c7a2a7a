/** Questions that are asked on a terminal, or answered by a flag each. */
import type * as z from "zod";
import { faultOf } from "../facts/field.ts";
import { plainly } from "../problem.ts";

export interface Question<K extends string = string> {
  readonly key: K;
  /** `--time-zone <zone>` */
  readonly flag: string;
  readonly asks: string;
  /** The form of the fact in the record: what is not of it is asked again. */
  readonly form: z.ZodType;
  readonly example: string;
  readonly choices?: readonly string[];
  /** What is likely: offered on a terminal, taken only when somebody says so. */
  readonly suggestion?: string;
  /** Whether nothing may be the answer. */
  readonly optional?: boolean;
  /** What it goes with, as its help tells it. */
  readonly with?: string;
  /** Whether it is asked at all, by what was answered before. */
  readonly asked?: (before: Answers<K>) => boolean;
}

export type Answers<K extends string = string> = { readonly [key in K]?: string };

/** Asks whoever sits at a terminal. Undefined stands for no answer, where that may be. */
export interface Asker {
  readonly ask: (question: Question) => Promise<string | undefined>;
}

/** What is missing and what cannot be read, all of it. */
export interface Unanswered<K extends string> {
  readonly missing: readonly Question<K>[];
  readonly wrong: readonly { readonly question: Question<K>; readonly typed: string; readonly why: string }[];
}

export const isWhole = (left: Unanswered<string>): boolean => left.missing.length === 0 && left.wrong.length === 0;

export function unanswered<K extends string>(questions: readonly Question<K>[], answers: Answers<K>): Unanswered<K> {
  const asked = questions.filter((one) => one.asked?.(answers) ?? true);
  return {
    missing: asked.filter((one) => answers[one.key] === undefined && one.optional !== true),
    wrong: questions.flatMap((question) => {
      const typed = answers[question.key];
      const why = typed === undefined ? undefined : answerFault(question, typed);
      return typed === undefined || why === undefined ? [] : [{ question, typed, why }];
    }),
  };
}

/** Asks what no flag has answered. */
export async function askAll<K extends string>(
  questions: readonly Question<K>[],
  given: Answers<K>,
  asker: Asker,
): Promise<Answers<K>> {
  let answers = given;
  for (const question of questions) {
    if (answers[question.key] !== undefined || question.asked?.(answers) === false) continue;
    const answer = await asker.ask(question);
    if (answer !== undefined) answers = { ...answers, [question.key]: answer };
  }
  return answers;
}

const ONE_LINE = "it is one line of text, without marks that cannot be seen";

/** Why an answer cannot stand in the record; what the record's own form says of it. */
export function answerFault({ form, choices }: Question, typed: string): string | undefined {
  if (plainly(typed) !== typed || /\p{Cs}/u.test(typed)) return ONE_LINE;
  if (choices !== undefined && !choices.includes(typed)) return `it is one of ${choices.join(", ")}`;
  const issue = form.safeParse(typed).error?.issues[0];
  if (issue === undefined) return undefined;
  const fault = "params" in issue ? faultOf(issue.params) : undefined;
  return fault === undefined ? issue.message : `${fault.message}; ${fault.mend}`;
}
