import { existsSync } from "node:fs";
import { mkdir, realpath, rename, rm } from "node:fs/promises";
import { basename, dirname, join, resolve, sep } from "node:path";
import type { Evidence } from "../../evidence/types.ts";
import { editionOf } from "../../editions/edition.ts";
import { ledgersOf } from "../../pages/ledgers/ledgers.ts";
import type { NamedSeal, Shown } from "../../editions/shown.ts";
import type { ReadyFiles } from "../../publish/pictures/ready.ts";
import type { Maker } from "../../publish/paper/typst.ts";
import { publish } from "../../publish/publish.ts";
import type { Record } from "../../facts/types.ts";
import { Digester } from "../digest.ts";
import { clearBeside, nameBeside, syncFolder, syncTree } from "../durable.ts";
import { manifestOf } from "../seal/record-files.ts";
import { ArchiveRefused, PagesRefused } from "../refused.ts";
import { partsOf } from "./parts.ts";
import { folderPieces, type Piece, recordPieces, recordState, textPiece } from "./payload.ts";
import { sameTree } from "./same.ts";
import { type Serialisation, serialise } from "./serialise.ts";
import { chunksOf, writeOne } from "./write-one.ts";
import { infoOf } from "./info.ts";
import { README, readmeText } from "./readme.ts";
import { rulesText } from "./texts.ts";
import { isOfRecord, Work } from "./work.ts";
import { madeFolder } from "../../publish/output/made.ts";

export interface BagRequest {
  readonly content: string;
  /** Folder that the bag is put into. */
  readonly out: string;
  /** Folder the program is installed in, and its version. */
  readonly program: string;
  readonly version: string;
  readonly baggingDate?: string;
  readonly serialise?: Serialisation;
  /** Bytes that no bag may exceed. */
  readonly split?: number;
  readonly maker?: Maker;
  /** Whether own pages, layouts and sheet are left out of its site. */
  readonly plain?: boolean;
  /** The last seal of the record, for the pages to name; `recordState` from before the record was read. */
  readonly seal?: NamedSeal;
  readonly state: string;
}

export interface Bagged {
  /** Where it stands now: the bag, or the folder of its parts. */
  readonly path: string;
  readonly parts: number;
  readonly files: number;
  readonly bytes: number;
  /** The same bag stood there already, to the last byte; nothing was written. */
  readonly stood: boolean;
}

/**
 * Writes a bag by RFC 8493 of a record that was found without problems, with its archive edition as a site.
 * It is made in a hidden folder beside and moved into place in one go when all of it is on the disk; a bag that
 * stands is never written over.
 * @throws ArchiveRefused where another bag of this name stands there, or the record changed meanwhile
 * @throws PagesRefused where own pages cannot be made
 */
export async function writeBag(
  request: BagRequest,
  record: Record,
  evidence: Evidence,
  ready: ReadyFiles,
  progress: (done: number, of: number) => void,
): Promise<Bagged> {
  const name = `${slugOf(record.aircraft.name)}-${record.day}`;
  const target = join(
    request.out,
    request.split === undefined && request.serialise !== undefined ? `${name}.${request.serialise}` : name,
  );
  await refuseWithin(request.out, request.content);
  madeFolder(request.out);
  await clearBeside(target);
  const folder = nameBeside(target);
  await rm(folder, { recursive: true, force: true });
  try {
    const made = await make(request, record, evidence, ready, folder, name, progress);
    if ((await recordState(request.content)) !== request.state)
      throw new ArchiveRefused(
        "The record was changed while the bag was in the making. Nothing was written; bag it again.",
      );
    return { ...made, path: target, stood: await moveIntoPlace(made.whole, target) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function make(
  request: BagRequest,
  record: Record,
  evidence: Evidence,
  ready: ReadyFiles,
  folder: string,
  name: string,
  progress: (done: number, of: number) => void,
): Promise<{ parts: number; files: number; bytes: number; whole: string }> {
  const shown = editionOf(record, evidence, "archive", request.seal);
  const pieces = await gather(request, shown, ready, join(folder, "site"));
  const readme = readmeText(shown, request.version, request.maker !== undefined);
  const work = new Work(pieces, request.serialise !== undefined, progress);
  const always = [textPiece("record.sha256", await recordManifest(pieces, work.passed))];
  const parts =
    request.split === undefined
      ? [[...pieces, ...always].sort((a, b) => (a.path < b.path ? -1 : 1))]
      : partsOf(pieces, always, textPiece(README, readme), request.split);
  const bags = join(folder, "bags");
  let [files, bytes] = [0, 0];
  for (const [index, part] of parts.entries()) {
    const bag = parts.length === 1 ? name : `${name}-${index + 1}-of-${parts.length}`;
    const info = infoOf(request, record, name, part, { part: index + 1, of: parts.length });
    const written = await writeOne(join(bags, bag), part, info, readme, work.passed);
    files += written.paths.length;
    bytes += written.bytes;
    if (request.serialise !== undefined) {
      await serialise(
        bags,
        bag,
        written.paths,
        request.serialise,
        join(bags, `${bag}.${request.serialise}`),
        work.passed,
      );
      await rm(join(bags, bag), { recursive: true });
    }
  }
  await syncTree(bags);
  work.end();
  const path =
    request.split === undefined
      ? join(bags, request.serialise === undefined ? name : `${name}.${request.serialise}`)
      : bags;
  return { parts: parts.length, files, bytes, whole: path };
}

async function gather(request: BagRequest, shown: Shown, ready: ReadyFiles, site: string): Promise<Piece[]> {
  const { content, version, maker } = request;
  await mkdir(site, { recursive: true });
  const published = await publish(shown, ready, request, site, { maker });
  if ("problems" in published) throw new PagesRefused(published.problems);
  const ledgers = ledgersOf(shown).map(({ path, text }) => textPiece(`ledgers/${basename(path)}`, text));
  const pieces = [
    ...(await recordPieces(content)),
    ...(await folderPieces(site, "site")),
    ...ledgers,
    textPiece("rules.json", rulesText(version)),
  ];
  return pieces.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** So that a record that lies in several bags can be checked when it is together again. */
async function recordManifest(pieces: readonly Piece[], passed: (bytes: number) => void): Promise<string> {
  const digests = new Map<string, string>();
  for (const { path, from } of pieces.filter(isOfRecord)) {
    const digester = new Digester(["sha256"]);
    for await (const chunk of chunksOf(from)) {
      digester.take(chunk);
      passed(chunk.length);
    }
    digests.set(path, digester.end().digests.get("sha256") ?? "");
  }
  return manifestOf(digests);
}

/** Whether the same stood there already. */
async function moveIntoPlace(whole: string, target: string): Promise<boolean> {
  if (existsSync(target)) {
    if (await sameTree(whole, target)) return true;
    throw new ArchiveRefused(
      `Another bag stands at ${target}, and no bag is ever written over. Move it elsewhere, or give another folder: --out DIR`,
    );
  }
  await rename(whole, target);
  await syncFolder(dirname(target));
  return false;
}

async function refuseWithin(out: string, content: string): Promise<void> {
  const record = await realpath(content);
  let target = resolve(out);
  while (!existsSync(target)) target = dirname(target);
  const real = await realpath(target);
  if (real === record || real.startsWith(record + sep))
    throw new ArchiveRefused(
      `The bag cannot be written into the record's own folder (${content}). Give a folder outside it: --out DIR`,
    );
}

function slugOf(name: string): string {
  return (
    name
      .normalize("NFKD")
      .replaceAll(/\p{M}/gu, "")
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "-")
      .replaceAll(/^-+|-+$/g, "")
      .slice(0, 60) || "record"
  );
}
