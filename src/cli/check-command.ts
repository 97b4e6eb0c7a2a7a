import { existsSync } from "node:fs";
import { check, openPictures, openReadings } from "../check.ts";
import { defined } from "../defined.ts";
import { compiledProgram } from "../publish/output/standing.ts";
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
  const request = recordRequest(options, surroundings);
  // Where nothing was built yet nothing is put beside the record.
  const readings = existsSync(request.cache)
    ? openReadings(request, await compiledProgram(request.program))
    : undefined;
  const kept = defined({ pictures: openPictures(request.cache), readings });
  const { problems, notes, missed } = await check(request, json ? silent : tellerFor(surroundings), kept);
  if (notes.length > 0) (json ? surroundings.err : surroundings.out)(`${notesWords(notes)}\n`);
  if (json) surroundings.out(`${problemsJson(problems)}\n`);
  else if (problems.length === 0)
    surroundings.out(`No problems in the record.\n${missed === undefined ? "" : `${missed}\n`}`);
  else surroundings.err(`${problemWords(problems, surroundings.hasColours)}\n`);
  return problems.length === 0 ? EXIT.fine : EXIT.problems;
}
