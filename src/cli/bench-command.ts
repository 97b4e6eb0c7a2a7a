import { existsSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { editionOf } from "../editions/edition.ts";
import { reckon } from "../evidence/evidence.ts";
import { snapshotOf } from "../bench/snapshot-of.ts";
import { writeBench } from "../publish/bench.ts";
import { beginOutput, MARKER } from "../publish/output/folder.ts";
import { OutputRefused } from "../publish/output/refused.ts";
import { readRecord } from "../record/read.ts";
import { counted } from "../words/lists.ts";
import { outBeside, type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { notesWords, problemWords } from "./teller.ts";

/** Writes the page at the bench into a folder of its own. Throws OutputRefused where that cannot be used. */
export async function benchCommand(
  { out: typed, ...options }: RecordOptions & { readonly out?: string },
  surroundings: Surroundings,
): Promise<number> {
  const request = recordRequest(options, surroundings);
  const out = typed ?? outBeside(request.content, options, "bench");
  refuseWithinSite(out);
  const making = await beginOutput(out, request.content);
  try {
    const read = await readRecord(request.content, request);
    if (read.notes.length > 0) surroundings.out(`${notesWords(read.notes)}\n`);
    if ("problems" in read) {
      surroundings.err(`${problemWords(read.problems, surroundings.hasColours)}\nNothing was written to ${out}.\n`);
      return EXIT.problems;
    }
    const made = Math.floor(surroundings.now().getTime() / 1000);
    const shown = editionOf(read.record, reckon(read.record), "archive");
    const { made: _, ...given } = snapshotOf(shown, made, read.record.before);
    await writeBench(given, made, request.program, making.folder);
    await making.moveIntoPlace();
    const joints = given.assemblies.reduce((sum, one) => sum + one.joints.length, 0);
    surroundings.out(
      `Wrote the page at the bench to ${out}: ${counted(joints, "joint")} to glue, ${counted(given.due.length, "piece")} to break.\nIt is for you alone. Open index.html on the phone, or serve the folder to it.\n`,
    );
    return EXIT.fine;
  } finally {
    await making.giveUp();
  }
}

/** A site keeps whatever else lies in its folder, and would be put on a host with it. */
function refuseWithinSite(out: string): void {
  for (let folder = dirname(resolve(out)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, MARKER)))
      throw new OutputRefused(
        `${out} is within a site (${folder}), and the page at the bench is never part of one. Give a folder of its own: --out DIR`,
      );
    if (folder === dirname(folder)) return;
  }
}
