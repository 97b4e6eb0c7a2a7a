import { constants } from "node:fs";
import { mkdir, open, readdir, rename, rm, rmdir, stat, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { Digester } from "./digest.ts";
import { clearBeside, nameBeside, syncFolder, syncTree } from "./durable.ts";
import type { Findings } from "./finding.ts";
import { linesOf } from "./lines.ts";
import { manifestLineOf } from "./manifest.ts";
import { ArchiveRefused } from "./refused.ts";
import { type BagsFound, openBag } from "./source/open.ts";
import type { BagAt } from "./verify/group.ts";
import { RECORD_LIST } from "./verify/ours.ts";
import { verifyBags } from "./verify/verify.ts";
import { hasOwn, NOT_RUN } from "../record/own.ts";
import { madeFolder } from "../publish/output/made.ts";

const RECORD = "data/record/";

export interface Restored {
  readonly files: number;
}

/**
 * Brings the record of a bag, or of all parts of one, back into a folder that is new or empty.
 * The bags are verified first, and what is written is held against their manifests once more. With any fault nothing is written.
 * @returns undefined where there are faults, which are told
 * @throws ArchiveRefused where the folder holds something, or the bags no record
 */
export async function restore(
  bagsFound: BagsFound,
  folder: string,
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<Restored | undefined> {
  await refuseFull(folder);
  const { bags } = await verifyBags(bagsFound, findings, progress);
  return findings.faults > 0 ? undefined : bringBackRecord(bags, folder);
}

/**
 * The same of bags that were verified and found without faults.
 * @throws ArchiveRefused where they hold no record, or changed since
 */
export async function bringBackRecord(bags: readonly BagAt[], folder: string): Promise<Restored> {
  if (!bags.some(({ members }) => members.some(({ path }) => path === `${RECORD}aircraft.md`)))
    throw new ArchiveRefused(`There is no record in it: no ${RECORD}aircraft.md.`);
  madeFolder(dirname(folder));
  await clearBeside(folder);
  const making = nameBeside(folder);
  try {
    const written = new Map<string, string>();
    for (const bag of bags) await bringBack(bag, making, written);
    await checkWhole(bags, written);
    if (hasOwn(making)) await writeFile(join(making, NOT_RUN), "");
    await syncTree(making);
    await rmdir(folder).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== "ENOENT") throw error;
    });
    await rename(making, folder);
    await syncFolder(dirname(folder));
    return { files: written.size };
  } finally {
    await rm(making, { recursive: true, force: true });
  }
}

async function refuseFull(folder: string): Promise<void> {
  const found = await stat(folder).catch(() => undefined);
  if (found === undefined) return;
  const holds = found.isDirectory() ? await readdir(folder) : [folder];
  if (holds.length > 0)
    throw new ArchiveRefused(
      `${folder} is not empty (${holds.slice(0, 3).join(", ")}${holds.length > 3 ? ", …" : ""}); a record is brought back only into a new or an empty folder.`,
    );
}

async function bringBack({ path, vouched }: BagAt, making: string, written: Map<string, string>): Promise<void> {
  const source = await openBag(path);
  try {
    await source.list({ fault: () => undefined, note: () => undefined });
    await source.visit(
      (member) => member.startsWith(RECORD),
      async (member, chunks) => {
        if (written.has(member.slice("data/".length)))
          throw new ArchiveRefused(
            `${member} stands in more than one bag, so these are not the parts of one record. Give one bag.`,
          );
        const expected = vouched.strongest(member);
        const algorithms = [
          "sha256",
          ...(expected === undefined || expected.algorithm === "sha256" ? [] : [expected.algorithm]),
        ];
        const digests = await writeMember(join(making, member.slice(RECORD.length)), chunks, algorithms);
        if (expected === undefined || digests.get(expected.algorithm) !== expected.digest)
          throw new ArchiveRefused(`${member} changed while it was brought back. Nothing was written.`);
        written.set(member.slice("data/".length), digests.get("sha256") ?? "");
      },
    );
  } finally {
    await source.close();
  }
}

async function writeMember(
  to: string,
  chunks: AsyncIterable<Uint8Array>,
  algorithms: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  await mkdir(dirname(to), { recursive: true });
  const digester = new Digester(algorithms);
  const handle = await open(to, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL, 0o644);
  try {
    for await (const chunk of chunks) {
      digester.take(chunk);
      await handle.writeFile(chunk);
    }
  } finally {
    await handle.close();
  }
  return digester.end().digests;
}

/** Every file that the list of the whole record names must be there: a record in parts may lack some. */
async function checkWhole(
  bags: readonly { readonly path: string }[],
  written: ReadonlyMap<string, string>,
): Promise<void> {
  for (const { path } of bags) {
    const source = await openBag(path);
    await source.list({ fault: () => undefined, note: () => undefined });
    const lacking: string[] = [];
    await source.visit(
      (member) => member === RECORD_LIST,
      async (_member, chunks) => {
        for await (const { text } of linesOf(chunks, "utf-8")) {
          const line = manifestLineOf(text, "sha256");
          if (line !== undefined && written.get(line.path) !== line.digest && lacking.length < 4)
            lacking.push(line.path);
        }
      },
    );
    await source.close();
    if (lacking.length > 0)
      throw new ArchiveRefused(
        `The record is not whole: ${lacking.slice(0, 3).join(", ")}${lacking.length > 3 ? ", …" : ""} is not in it as ${RECORD_LIST} says. If the bag was split, all parts must be in one folder; give that folder.`,
      );
  }
}
