import type { BuildRequest, Built } from "../build.ts";
import type { Teller } from "../check.ts";
import { AUDIENCES } from "../facts/values.ts";
import type { Evidence } from "../evidence/types.ts";
import type { Edition } from "../editions/shown.ts";
import { compiledProgram, keepStanding, madeFrom, madeWith, standing } from "../publish/output/standing.ts";
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
  const done = await buildUnlessStanding(asked, await compiledProgram(request.program), tell, fresh);
  if ("stands" in done) {
    for (const line of done.stands) tell.line(line);
    tell.line(`Nothing that it is made from has changed, so ${out} stands as it was built. To build it anew: --fresh`);
    return EXIT.fine;
  }
  for (const line of notesOf(done)) tell.line(line);
  if ("problems" in done) {
    surroundings.err(`${problemWords(done.problems, surroundings.hasColours)}\nNothing was written to ${out}.\n`);
    return EXIT.problems;
  }
  for (const line of [reckonedWords(done.evidence), ...editionLines(done)]) tell.line(line);
  tell.line(`Done in ${((surroundings.now().getTime() - began) / 1000).toFixed(1)} s.`);
  return EXIT.fine;
}

/**
 * Builds, or gives what was told when the site that stands was built, where `running`, the digest of the program, would
 * make the same of the same.
 */
export async function buildUnlessStanding(
  asked: BuildRequest,
  running: string | undefined,
  tell: Teller,
  fresh = false,
): Promise<Built | { readonly stands: readonly string[] }> {
  const from = await sourcesOf(asked, running);
  // What sets PDFs is no part of the program, and may be another since.
  const anew = fresh || asked.prune === true || asked.paper === true;
  const stands = anew ? undefined : standing(asked, from);
  if (stands !== undefined) return { stands };
  const [{ build }, { openReadings }, { KeptPages }] = await Promise.all([
    import("../build.ts"),
    import("../check.ts"),
    import("../publish/output/kept-pages.ts"),
  ]);
  const pages = running === undefined ? undefined : KeptPages.open(asked, madeWith(running, optionsOf(asked)), !fresh);
  const built = await build(asked, tell, { readings: openReadings(asked, running, fresh), pages });
  // Where that cannot be noted, the next build is one like this.
  if (!("problems" in built) && from === (await sourcesOf(asked, running))) {
    const told = [...notesOf(built), reckonedWords(built.evidence)];
    await keepStanding(asked, from, told, pages?.digests).catch(() => undefined);
  }
  return built;
}

/** As one digest: whatever a build is asked, but for where its files lie. */
async function sourcesOf(asked: BuildRequest, running: string | undefined): Promise<string | undefined> {
  return madeFrom({ content: asked.content, options: optionsOf(asked), program: running });
}

const optionsOf = ({ content, out, cache, program, ...options }: BuildRequest): object => options;

const editionLines = ({ editions }: Extract<Built, { readonly evidence: Evidence }>): string[] =>
  editions.map(
    ({ edition, pages, files, papers, folder }) =>
      `Wrote the ${edition} edition to ${folder}: ${counted(pages, "page")}, ${files} pictures and documents${papers === 0 ? "" : `, ${counted(papers, "PDF")}`}.`,
  );

const notesOf = ({ notes }: Built): readonly string[] => (notes.length > 0 ? [notesWords(notes)] : []);

const reckonedWords = (evidence: Evidence): string => `Reckoned: ${verdictWords(evidence)}.`;

function verdictWords({ batches, joints }: Evidence): string {
  const of = (verdict: string): number => [...batches.values()].filter((file) => file.verdict === verdict).length;
  const verdicts = ["shown", "pending", "not shown", "rejected"].map((verdict) => `${of(verdict)} ${verdict}`);
  for (const loose of ["in no joint", "thrown away"]) if (of(loose) > 0) verdicts.push(`${of(loose)} ${loose}`);
  return `${counted(batches.size, "batch", "batches")} (${verdicts.join(", ")}) and ${counted(joints.size, "joint")}`;
}
