import { Findings } from "../archive/finding.ts";
import { restore } from "../archive/restore.ts";
import { lookAt } from "../archive/source/open.ts";
import { join } from "node:path";
import { cameInBag, NOT_RUN } from "../record/own.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { bytesProgress, tellerFor } from "./teller.ts";
import { tellAll } from "./verify-command.ts";

export async function restoreCommand(bag: string, folder: string, surroundings: Surroundings): Promise<number> {
  const found = await lookAt(bag);
  if (found.kind !== "bags")
    throw new WrongUse(found.kind === "nothing" ? found.why : `${bag} is a record's folder, not a bag.`);
  const findings = new Findings();
  const tell = tellerFor(surroundings, bytesProgress("Checking"));
  const restored = await restore(found, folder, findings, tell.progress);
  if (restored === undefined) {
    tellAll(
      findings,
      `Nothing was written to ${folder}: a record is brought back only from a bag without faults.`,
      tell.line,
      surroundings,
    );
    return EXIT.problems;
  }
  tellAll(
    findings,
    `Brought ${restored.files} files of the record back to ${folder}, as they were bagged.`,
    tell.line,
    surroundings,
  );
  tell.line(`Build it: scarfline build --content ${folder}`);
  if (cameInBag(folder))
    tell.line(
      `It has pages, layouts or a sheet of its builder's own, which are code. They are left out of all that is built here. If you trust who made them: build with --no-plain, or delete ${join(folder, NOT_RUN)}`,
    );
  return EXIT.fine;
}
