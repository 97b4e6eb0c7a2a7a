/** A record that moves on: what the former builder wrote, as it was, with the next builder in it. */
import { existsSync } from "node:fs";
import { readFile, rename, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { clearBeside, nameBeside, replaceFile, syncFolder, syncTree } from "../../archive/durable.ts";
import type { Findings } from "../../archive/finding.ts";
import { ArchiveRefused } from "../../archive/refused.ts";
import { restore } from "../../archive/restore.ts";
import { seal } from "../../archive/seal/seal.ts";
import { lookAt } from "../../archive/source/open.ts";
import type { Seal } from "../../archive/seal/chain.ts";
import type { Problem } from "../../problem.ts";
import { madeFolder } from "../../publish/output/made.ts";
import { readRecord } from "../../record/read.ts";
import { type Builder, handedOver, NotRewritten } from "./aircraft.ts";

export interface HandOverRequest {
  /** The bag of the record as it was handed over. */
  readonly bag: string;
  /** The new record’s folder, which is not there yet. */
  readonly folder: string;
  readonly next: Builder;
  /** `YYYY-MM-DD` */
  readonly today: string;
}

export type HandedOver = { readonly problems: readonly Problem[] } | { readonly files: number; readonly former: Seal };

/**
 * Brings the record back out of its bag into a new folder, sets a seal there on what was handed over, writes the next builder into
 * `aircraft.md`, and seals that. The folder is there whole or not at all; nothing else is written.
 * @throws ArchiveRefused where the folder is there, the bag has a fault, or `aircraft.md` cannot be changed in this one place
 */
export async function handOver(
  { bag, folder, next, today }: HandOverRequest,
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<HandedOver> {
  if (existsSync(folder)) throw new ArchiveRefused(`${folder} is there already; a record moves on into a new folder.`);
  const found = await lookAt(bag);
  if (found.kind !== "bags") throw new ArchiveRefused(`There is no archive at ${bag}.`);
  madeFolder(dirname(folder));
  await clearBeside(folder);
  const making = nameBeside(folder);
  try {
    const restored = await restore(found, making, findings, progress);
    if (restored === undefined)
      throw new ArchiveRefused(`The archive at ${bag} is not whole, so nothing moves on from it.`);
    const sealed = await seal({ content: making, date: today }, progress);
    const former = "seal" in sealed ? sealed.seal : sealed.unchanged;
    await rewrite(join(making, "aircraft.md"), next);
    const read = await readRecord(making, { today });
    if ("problems" in read) return { problems: read.problems };
    await seal({ content: making, date: today }, progress);
    await syncTree(making);
    await rename(making, folder);
    await syncFolder(dirname(folder));
    return { files: restored.files, former };
  } finally {
    await rm(making, { recursive: true, force: true });
  }
}

async function rewrite(path: string, next: Builder): Promise<void> {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await readFile(path));
  } catch {
    throw new ArchiveRefused("aircraft.md is no UTF-8. Save it as UTF-8 in an editor, and hand the record over again.");
  }
  try {
    await replaceFile(path, handedOver(text, next));
  } catch (error) {
    if (error instanceof NotRewritten)
      throw new ArchiveRefused(`The next builder could not be written: ${error.message}.`);
    throw error;
  }
}
