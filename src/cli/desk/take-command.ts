import { defined } from "../../defined.ts";
import { givenAt } from "../../desk/take/given.ts";
import type { Answers, Question } from "../../desk/question.ts";
import type { Desk, Outcome } from "../../desk/take/outcome.ts";
import { take } from "../../desk/take/take.ts";
import { plainly } from "../../problem.ts";
import { listFolder } from "../../record/folder.ts";
import { readRecord } from "../../record/read.ts";
import { localDay } from "../../facts/time/local-day.ts";
import { recordFolder } from "../record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";
import { problemWords } from "../teller.ts";
import { answersTo } from "./answers.ts";
import type { TakeFlags } from "./take-flags.ts";
import { saidBy } from "./take-said.ts";

interface TakeOptions extends TakeFlags {
  readonly content?: string;
}

/** Throws FolderRefused where a file is not there, WrongUse where something is still to be said. */
export async function takeCommand(
  files: readonly string[],
  { content: named, ...flags }: TakeOptions,
  surroundings: Surroundings,
): Promise<number> {
  const content = recordFolder(defined({ content: named }), surroundings);
  const given = givenAt(files);
  if (given.length === 0) throw new WrongUse("There is no file in what was given.");
  let isLeft = false;
  await take(
    given,
    saidBy(flags),
    () => deskOf(content, surroundings),
    (outcome) => {
      isLeft ||= outcome.became === "left";
      tellOutcome(outcome, surroundings);
    },
  );
  return isLeft ? EXIT.problems : EXIT.fine;
}

async function deskOf(content: string, surroundings: Surroundings): Promise<Desk> {
  const today = localDay(surroundings.now());
  const read = await readRecord(content, { today });
  const folder = listFolder(content);
  if ("problems" in read || "problem" in folder)
    throw new WrongUse(
      "The record has problems, and what is taken could not be held against it. Mend them first: scarfline check",
    );
  return {
    content,
    today,
    record: read.record,
    files: folder.files,
    ask: (questions, given) => asked(questions, given, surroundings),
  };
}

/** What was taken before stays taken. */
async function asked(questions: readonly Question[], given: Answers, surroundings: Surroundings): Promise<Answers> {
  const keys = new Set(questions.map(({ key }) => key));
  const of = Object.fromEntries(Object.entries(given).filter(([key]) => keys.has(key)));
  try {
    return await answersTo(questions, of, surroundings);
  } catch (error) {
    if (!(error instanceof WrongUse)) throw error;
    throw new WrongUse(error.message.replace("Nothing was written.", "Nothing more was written."));
  }
}

const BECAME = { taken: "Took", there: "Is there already", left: "Left" } as const;

function tellOutcome({ from, became, says, problems }: Outcome, { out, err, hasColours }: Surroundings): void {
  const tell = became === "left" ? err : out;
  tell(`${BECAME[became]} ${plainly(from)}\n${says.map((line) => `  ${plainly(line)}\n`).join("")}`);
  if (problems !== undefined) tell(`\n${problemWords(problems, hasColours)}\n\n`);
}
