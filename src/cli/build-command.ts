import { build, type Built } from "../build.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Edition } from "../editions/shown.ts";
import { counted } from "../words/lists.ts";
import { outBeside, type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface BuildOptions extends RecordOptions {
  readonly out?: string;
  readonly edition: Edition | "all";
  readonly prune?: boolean;
}

export async function buildCommand(
  { out: typed, edition, prune = false, ...options }: BuildOptions,
  surroundings: Surroundings,
): Promise<number> {
  const began = surroundings.now().getTime();
  const tell = tellerFor(surroundings);
  const editions: readonly Edition[] = edition === "all" ? ["public", "inspector", "archive"] : [edition];
  const request = recordRequest(options, surroundings);
  const out = typed ?? outBeside(request.content, options, "site");
  const built = await build({ ...request, out, editions, prune, apart: edition === "all" }, tell);
  if (built.notes.length > 0) tell.line(notesWords(built.notes));
  if ("problems" in built) {
    surroundings.err(`${problemWords(built.problems, surroundings.hasColours)}\nNothing was written to ${out}.\n`);
    return EXIT.problems;
  }
  for (const line of resultLines(built)) tell.line(line);
  tell.line(`Done in ${((surroundings.now().getTime() - began) / 1000).toFixed(1)} s.`);
  return EXIT.fine;
}

function resultLines({ evidence, editions }: Extract<Built, { readonly evidence: Evidence }>): string[] {
  return [
    `Reckoned: ${verdictWords(evidence)}.`,
    ...editions.map(
      ({ edition, pages, files, folder }) =>
        `Wrote the ${edition} edition to ${folder}: ${counted(pages, "page")}, ${files} pictures and documents.`,
    ),
  ];
}

function verdictWords({ batches, joints }: Evidence): string {
  const of = (verdict: string): number => [...batches.values()].filter((file) => file.verdict === verdict).length;
  const verdicts = ["shown", "pending", "not shown", "rejected"].map((verdict) => `${of(verdict)} ${verdict}`);
  for (const loose of ["in no joint", "thrown away"]) if (of(loose) > 0) verdicts.push(`${of(loose)} ${loose}`);
  return `${counted(batches.size, "batch", "batches")} (${verdicts.join(", ")}) and ${counted(joints.size, "joint")}`;
}
