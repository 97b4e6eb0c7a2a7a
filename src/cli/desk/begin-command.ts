import { join } from "node:path";
import { begin, refuseTaken } from "../../desk/begin/begin.ts";
import { filesOf, type WholeAnswers } from "../../desk/begin/files.ts";
import { type BeginAnswers, questions, without } from "../../desk/begin/questions.ts";
import { localDay } from "../../facts/time/local-day.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";
import { problemWords } from "../teller.ts";
import { answersTo } from "./answers.ts";

/** Throws FolderRefused where the folder is not new or empty. */
export async function beginCommand(folder: string, given: BeginAnswers, surroundings: Surroundings): Promise<number> {
  refuseTaken(folder);
  const contradiction = without(given);
  if (contradiction !== undefined) throw new WrongUse(contradiction);
  const today = localDay(surroundings.now());
  const asked = questions({ today, timeZone: surroundings.timeZone });
  const answers = (await answersTo(asked, given, surroundings)) as WholeAnswers;
  const files = filesOf(answers);
  const problems = await begin(folder, files, today);
  if (problems.length > 0) {
    surroundings.err(`${problemWords(problems, surroundings.hasColours)}\nNothing was written to ${folder}.\n`);
    return EXIT.problems;
  }
  const paths = [...files.keys()];
  surroundings.out(
    `${["Wrote", ...paths.map((path) => `  ${join(folder, path)}`), "", ...nextWords(folder, paths)].join("\n")}\n`,
  );
  return EXIT.fine;
}

function nextWords(folder: string, paths: readonly string[]): string[] {
  const record = folder === "." ? "" : ` ${folder}`;
  const adhesive = paths.find((path) => path.startsWith("adhesives/"));
  const copied = `  Copy the limits of the data sheet into ${join(folder, adhesive ?? "")}: until they stand there, no joint is shown by it.`;
  return [
    "Next",
    ...(adhesive === undefined ? [] : [copied]),
    "  Write in the files what you know; their comments tell what may stand there, and scarfline fields how.",
    `  scarfline check${record}`,
    `  scarfline preview${record}`,
  ];
}
