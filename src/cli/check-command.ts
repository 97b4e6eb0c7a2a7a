import { check } from "../check.ts";
import { problemsJson } from "../problem.ts";
import { type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface CheckOptions extends RecordOptions {
  readonly json?: boolean;
}

export async function checkCommand(
  { json = false, ...options }: CheckOptions,
  surroundings: Surroundings,
): Promise<number> {
  const silent = { line: () => undefined, progress: () => undefined };
  const { problems, notes, missed } = await check(
    recordRequest(options, surroundings),
    json ? silent : tellerFor(surroundings),
  );
  if (notes.length > 0) (json ? surroundings.err : surroundings.out)(`${notesWords(notes)}\n`);
  if (json) surroundings.out(`${problemsJson(problems)}\n`);
  else if (problems.length === 0)
    surroundings.out(`No problems in the record.\n${missed === undefined ? "" : `${missed}\n`}`);
  else surroundings.err(`${problemWords(problems, surroundings.hasColours)}\n`);
  return problems.length === 0 ? EXIT.fine : EXIT.problems;
}
