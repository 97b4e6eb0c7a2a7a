import { plainly } from "../../problem.ts";
import { type Answers, askAll, isWhole, type Question, type Unanswered, unanswered } from "../../desk/question.ts";
import { type Surroundings, WrongUse } from "../surroundings.ts";

/**
 * What flags say, and for the rest, where something must still be said, whoever sits at the terminal.
 * @throws WrongUse with all that is missing or cannot be read
 */
export async function answersTo<K extends string>(
  questions: readonly Question<K>[],
  given: Answers<K>,
  { asker }: Pick<Surroundings, "asker">,
): Promise<Answers<K>> {
  const left = unanswered(questions, given);
  if (isWhole(left)) return given;
  if (left.wrong.length > 0 || asker === undefined) throw new WrongUse(unansweredWords(left));
  const answers = await askAll(questions, given, await asker());
  const still = unanswered(questions, answers);
  if (!isWhole(still)) throw new WrongUse(unansweredWords(still));
  return answers;
}

function unansweredWords({ missing, wrong }: Unanswered<string>): string {
  const width = Math.max(...missing.map(({ flag }) => flag.length));
  return [
    "Nothing was written.",
    ...wrong.map(({ question, typed, why }) => `${question.flag.replace(/ .*/, "")} ${plainly(typed)}: ${why}`),
    ...(missing.length === 0 ? [] : ["These are still to be said; on a terminal they are asked:"]),
    ...missing.map(
      ({ flag, asks, choices, example }) =>
        `  ${flag.padEnd(width)}  ${asks}${choices === undefined ? `, such as "${example}"` : `: ${choices.join(", ")}`}`,
    ),
  ].join("\n");
}
