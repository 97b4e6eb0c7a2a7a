import { defined } from "../defined.ts";
import { readFileSync } from "node:fs";
import { recordState } from "../archive/bag/payload.ts";
import type { Serialisation } from "../archive/bag/serialise.ts";
import { writeBag } from "../archive/bag/write.ts";
import { PagesRefused } from "../archive/refused.ts";
import { prepare } from "../check.ts";
import { reckon } from "../evidence/evidence.ts";
import type { Problem } from "../problem.ts";
import { bytesWords } from "../words/numbers.ts";
import { outBeside, type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { bytesProgress, notesWords, problemWords, tellerFor } from "./teller.ts";

interface BagOptions extends RecordOptions {
  readonly out?: string;
  readonly baggingDate?: string;
  readonly serialise?: Serialisation;
  readonly split?: number;
  readonly paper?: boolean;
}

export async function bagCommand(
  { out: typed, baggingDate, serialise, split, paper = false, ...options }: BagOptions,
  surroundings: Surroundings,
): Promise<number> {
  const request = recordRequest(options, surroundings);
  const out = typed ?? outBeside(request.content, options, "archive");
  const path = await bagOf({ ...request, paper }, out, surroundings, defined({ baggingDate, serialise, split }));
  if (path === undefined) return EXIT.problems;
  tellerFor(surroundings).line(`Check it at any time, here or elsewhere: scarfline verify ${path}`);
  return EXIT.fine;
}

/** Where the bag of a record stands now; undefined where problems in it, which are told, left nothing written. */
export async function bagOf(
  request: ReturnType<typeof recordRequest> & { readonly paper?: boolean },
  out: string,
  surroundings: Surroundings,
  form: Pick<BagOptions, "baggingDate" | "serialise" | "split"> = {},
): Promise<string | undefined> {
  const { content, plain } = request;
  const state = await recordState(content);
  const prepared = await prepare(request, tellerFor(surroundings));
  const refuse = (problems: readonly Problem[]): undefined =>
    void surroundings.err(`${problemWords(problems, surroundings.hasColours)}\nNothing was written to ${out}.\n`);
  if ("problems" in prepared) return refuse(prepared.problems);
  if (prepared.notes.length > 0) surroundings.out(`${notesWords(prepared.notes)}\n`);
  const { version } = JSON.parse(readFileSync(new URL("package.json", surroundings.program), "utf8")) as {
    version: string;
  };
  const { record, ready, seal, maker } = prepared;
  const tell = tellerFor(surroundings, bytesProgress("Bagging"));
  const bagging = defined({ content, program: request.program, out, state, version, seal, maker, plain, ...form });
  const bagged = await writeBag(bagging, record, reckon(record), ready, tell.progress).catch((error: unknown) => {
    if (error instanceof PagesRefused) return refuse(error.problems);
    throw error;
  });
  if (bagged === undefined) return undefined;
  const { path, parts, files, bytes, stood } = bagged;
  const what = `${parts === 1 ? "the bag" : `${parts} bags`}: ${files} files, ${bytesWords(bytes)}`;
  tell.line(
    stood
      ? `${path} already holds ${what}, the same to the last byte; nothing was written.`
      : `Wrote ${path}, ${what}.`,
  );
  return path;
}
