import type { BuildRequest, Built } from "../build.ts";
import { AUDIENCES } from "../facts/values.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Edition } from "../editions/shown.ts";
import { compiledProgram, keepStanding, madeFrom, standing } from "../publish/output/standing.ts";
import { counted } from "../words/lists.ts";
import { outBeside, type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface BuildOptions extends RecordOptions {
  readonly out?: string;
  readonly edition: Edition | "all" | "bench";
  readonly prune?: boolean;
  /** Whether all is made anew, though nothing has changed. */
  readonly fresh?: boolean;
  readonly paper?: boolean;
}

export async function buildCommand(
  { out: typed, edition, prune = false, fresh = false, paper = false, ...options }: BuildOptions,
  surroundings: Surroundings,
): Promise<number> {
  if (edition === "bench") {
    const { benchCommand } = await import("./bench-command.ts");
    return benchCommand({ ...options, ...(typed !== undefined && { out: typed }) }, surroundings);
  }
  const began = surroundings.now().getTime();
  const tell = tellerFor(surroundings);
  const editions: readonly Edition[] = edition === "all" ? AUDIENCES : [edition];
  if (paper && edition === "public")
    throw new WrongUse(
      "PDFs are made in the inspector’s and the archive edition. Say which: --edition inspector, archive or all",
    );
  const request = recordRequest(options, surroundings);
  const out = typed ?? outBeside(request.content, options, "site");
  const asked = { ...request, out, editions, prune, paper, apart: edition === "all" };
  const running = await compiledProgram(request.program);
  const from = await sourcesOf(asked, running);
  // What sets PDFs is no part of the program, and may be another since.
  const stands = fresh || prune || paper ? undefined : standing(asked, from);
  if (stands !== undefined) {
    for (const line of stands) tell.line(line);
    tell.line(`Nothing that it is made from has changed, so ${out} stands as it was built. To build it anew: --fresh`);
    return EXIT.fine;
  }
  const { build } = await import("../build.ts");
  const built = await build(asked, tell);
  const notes = built.notes.length > 0 ? [notesWords(built.notes)] : [];
  for (const line of notes) tell.line(line);
  if ("problems" in built) {
    surroundings.err(`${problemWords(built.problems, surroundings.hasColours)}\nNothing was written to ${out}.\n`);
    return EXIT.problems;
  }
  const reckoned = `Reckoned: ${verdictWords(built.evidence)}.`;
  for (const line of [reckoned, ...editionLines(built)]) tell.line(line);
  // Where that cannot be noted, the next build is one like this.
  if (from === (await sourcesOf(asked, running)))
    await keepStanding(asked, from, [...notes, reckoned]).catch(() => undefined);
  tell.line(`Done in ${((surroundings.now().getTime() - began) / 1000).toFixed(1)} s.`);
  return EXIT.fine;
}

/** As one digest: whatever a build is asked, but for where its files lie. */
async function sourcesOf(
  { content, out, cache, program, ...options }: BuildRequest,
  running: string | undefined,
): Promise<string | undefined> {
  return madeFrom({ content, options, program: running });
}

const editionLines = ({ editions }: Extract<Built, { readonly evidence: Evidence }>): string[] =>
  editions.map(
    ({ edition, pages, files, papers, folder }) =>
      `Wrote the ${edition} edition to ${folder}: ${counted(pages, "page")}, ${files} pictures and documents${papers === 0 ? "" : `, ${counted(papers, "PDF")}`}.`,
  );

function verdictWords({ batches, joints }: Evidence): string {
  const of = (verdict: string): number => [...batches.values()].filter((file) => file.verdict === verdict).length;
  const verdicts = ["shown", "pending", "not shown", "rejected"].map((verdict) => `${of(verdict)} ${verdict}`);
  for (const loose of ["in no joint", "thrown away"]) if (of(loose) > 0) verdicts.push(`${of(loose)} ${loose}`);
  return `${counted(batches.size, "batch", "batches")} (${verdicts.join(", ")}) and ${counted(joints.size, "joint")}`;
}
