import { existsSync } from "node:fs";
import { sealLine } from "../../archive/seal/chain.ts";
import { Findings } from "../../archive/finding.ts";
import { handOver } from "../../desk/hand-over/hand-over.ts";
import { idFrom } from "../../desk/id-from.ts";
import { bagOf } from "../bag-command.ts";
import { outBeside, type RecordOptions, recordRequest } from "../record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";
import { bytesProgress, problemWords, tellerFor } from "../teller.ts";

interface HandOverOptions extends RecordOptions {
  /** Full name of who builds on. */
  readonly to: string;
  readonly public?: string;
  readonly id?: string;
  readonly out?: string;
}

/** Writes an archive of a record as it is, and beside it the record that goes on with its next builder. */
export async function handOverCommand(
  folder: string,
  { to, public: publicName = to.trim().split(/\s+/)[0] ?? to, id, out: typed, ...options }: HandOverOptions,
  surroundings: Surroundings,
): Promise<number> {
  if (existsSync(folder))
    throw new WrongUse(`${folder} is there already; give a new folder for the record that goes on.`);
  const request = recordRequest(options, surroundings);
  const out = typed ?? outBeside(request.content, options, "archive");
  const bag = await bagOf(request, out, surroundings);
  if (bag === undefined) return EXIT.problems;
  const tell = tellerFor(surroundings, bytesProgress("Handing over"));
  const findings = new Findings();
  const next = { id: id ?? idFrom(publicName, "next-builder"), name: to, publicName };
  const handed = await handOver({ bag, folder, next, today: request.today }, findings, tell.progress);
  if ("problems" in handed) {
    surroundings.err(`${problemWords(handed.problems, surroundings.hasColours)}\nNothing was written to ${folder}.\n`);
    return EXIT.problems;
  }
  tell.line(`The record as it was handed over: ${bag}. Its own folder, ${request.content}, is as it was.`);
  tell.line(`The record that goes on: ${folder}, ${handed.files} files, with ${to} (${next.id}) as its builder.`);
  tell.line("All who stood in it stand in it still. It begins with the seal on what was handed over:");
  tell.line(`  ${sealLine(handed.former).trimEnd()}`);
  tell.line(`Write on: scarfline entry ${folder}`);
  return EXIT.fine;
}
