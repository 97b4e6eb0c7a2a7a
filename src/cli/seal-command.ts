import { sealLine } from "../archive/seal/chain.ts";
import { seal } from "../archive/seal/seal.ts";
import { check } from "../build.ts";
import { recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { problemWords, tellerFor } from "./teller.ts";

interface SealOptions {
  readonly content: string;
  /** The day of the seal; without it today. */
  readonly date?: string;
  readonly sign?: string;
}

export async function sealCommand({ content, date, sign }: SealOptions, surroundings: Surroundings): Promise<number> {
  const tell = tellerFor(surroundings);
  const request = recordRequest({ content }, surroundings);
  const day = date ?? request.today;
  if (day > request.today) throw new WrongUse(`${day} is still to come; a seal is set on its day or afterwards.`);
  const problems = await check(request, tell);
  if (problems.length > 0) {
    surroundings.err(`${problemWords(problems, surroundings.hasColours)}\nNothing was sealed.\n`);
    return EXIT.problems;
  }
  const files = tellerFor(surroundings, (done, of) => `Sealing: ${done} of ${of} files`);
  const sealed = await seal({ content, date: day, ...(sign === undefined ? {} : { key: sign }) }, files.progress);
  if ("unchanged" in sealed) {
    files.line(`Nothing changed since the seal of ${sealed.unchanged.date}; no other was set.`);
    return EXIT.fine;
  }
  files.line(`Sealed ${sealed.seal.files} files. This line was added to ${content}/seals.txt:`);
  files.line(`  ${sealLine(sealed.seal).trimEnd()}`);
  files.line(
    `The digest in it is that of ${content}/${sealed.seal.manifest}. Keep a copy of the line elsewhere, on paper or with someone: it is what proves the day.`,
  );
  if (sealed.signature !== undefined) files.line(`Signed: ${content}/${sealed.signature}`);
  return EXIT.fine;
}
