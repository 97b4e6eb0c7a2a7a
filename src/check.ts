/**
 * What every work on a record begins with, and all that a check of it is. What only a site is made with is loaded only
 * where it is wanted: loading it takes longer than checking a small record.
 */
import { hash } from "node:crypto";
import { realpathSync } from "node:fs";
import { join } from "node:path";
import { defined } from "./defined.ts";
import { lastSeal } from "./archive/seal/held-since.ts";
import type { NamedSeal } from "./editions/shown.ts";
import { counted } from "./words/lists.ts";
import { inOrder, type Note, type Problem } from "./problem.ts";
import { PictureCache } from "./publish/pictures/cache.ts";
import { NO_TYPESETTER } from "./publish/paper/no-typesetter.ts";
import type { Maker } from "./publish/paper/typst.ts";
import { readyFiles, type ReadyFiles } from "./publish/pictures/ready.ts";
import { wantedFiles } from "./publish/pictures/wanted.ts";
import type { Known } from "./record/filed.ts";
import { hasOwn } from "./record/own.ts";
import { readRecord } from "./record/read.ts";
import { Readings } from "./record/readings.ts";
import type { Day, Record } from "./facts/types.ts";
import { AUDIENCES } from "./facts/values.ts";

/** What every work on a record begins with. */
export interface PrepareRequest {
  /** The record's folder. */
  readonly content: string;
  /** No entry may be later than this. */
  readonly today: Day;
  /** The date of the record, if not that of its last entry. */
  readonly day?: Day;
  /** Whether own pages, layouts and sheet are left out. */
  readonly plain?: boolean;
  /** Whether PDFs are made too. */
  readonly paper?: boolean;
  /** Folder for what need not be made twice. */
  readonly cache: string;
}

export interface CheckRequest extends PrepareRequest {
  /** Folder the program is installed in. */
  readonly program: string;
}

/** What a build tells while it runs. */
export interface Teller {
  /** A step is done. */
  readonly line: (text: string) => void;
  readonly progress: (done: number, of: number) => void;
}

export type Prepared = (
  | { readonly problems: readonly Problem[] }
  | { readonly record: Record; readonly ready: ReadyFiles; readonly seal?: NamedSeal; readonly maker?: Maker }
) & { readonly notes: readonly Note[] };

/** What is known from before; `memory`, of whoever prepares the same record again and again, takes as much room as the record. */
export interface Kept extends Known {
  readonly pictures: PictureCache;
}

/**
 * What the record's files were read as by the same program, `running`; nothing where it cannot be told which one runs.
 * With `fresh` it is only kept for the next time.
 */
export function openReadings(
  { content, cache }: Pick<PrepareRequest, "content" | "cache">,
  running: string | undefined,
  fresh = false,
): Readings | undefined {
  if (running === undefined) return undefined;
  const root = realpathSync(content);
  const file = join(cache, "readings", hash("sha256", root, "hex").slice(0, 24));
  return Readings.open(file, JSON.stringify([running, root]), !fresh);
}

export function openPictures(cache: string): PictureCache {
  return PictureCache.open(join(cache, "pictures"));
}

/** Reads a record and makes its pictures ready; nothing is written but the cache. */
export async function prepare(request: PrepareRequest, tell: Teller, kept?: Kept): Promise<Prepared> {
  const { pictures, ...known }: Kept = kept ?? { pictures: openPictures(request.cache) };
  const read = await readRecord(request.content, { ...dates(request), ...known });
  const maker = request.paper === true ? await makerOfPapers() : undefined;
  const lacking = request.paper === true && maker === undefined ? [NO_TYPESETTER] : [];
  if ("problems" in read) return { ...read, problems: [...lacking, ...read.problems] };
  const { notes } = read;
  tell.line(readWords(read.record));
  const ready = await readyPictures(request.content, read.record, pictures, tell);
  const problems = [...lacking, ...inOrder(ready.problems)];
  if (problems.length > 0) return { problems, notes };
  const seal = await lastSeal(request.content, read.record.entries);
  if (seal === "broken") return defined({ record: read.record, notes: [...notes, SEALS_BROKEN], ready, maker });
  return defined({ record: read.record, notes, ready, seal, maker });
}

const SEALS_BROKEN: Note = {
  file: "seals.txt",
  line: 1,
  column: 1,
  message: "the list of seals is not whole, so no page names a seal; see what is wrong: scarfline verify",
};

const MISSED =
  "Without `address:` in aircraft.md the public edition has no feeds to follow it by, no map of the site, no pictures for those who share a page and no codes on tags for the workshop.";

/** All problems and notes of a record, its pictures included, and what its site will miss; nothing is written but the cache. */
export async function check(
  request: CheckRequest,
  tell: Teller,
  kept?: Kept,
): Promise<{ readonly problems: readonly Problem[]; readonly notes: readonly Note[]; readonly missed?: string }> {
  const prepared = await prepare(request, tell, kept);
  const { notes } = prepared;
  if ("problems" in prepared) return { problems: prepared.problems, notes };
  const problems = await ownProblems(prepared, request);
  if (problems.length > 0) return { problems, notes };
  return prepared.record.aircraft.address === undefined
    ? { problems: [], notes, missed: MISSED }
    : { problems: [], notes };
}

/** What is wrong with own pages in any edition, each told once. */
async function ownProblems(
  { record, ready, seal }: Extract<Prepared, { readonly record: Record }>,
  request: CheckRequest,
): Promise<readonly Problem[]> {
  if (request.plain === true || !hasOwn(request.content)) return [];
  const [{ reckon }, { editionOf }, { layOutWhole }] = await Promise.all([
    import("./evidence/evidence.ts"),
    import("./editions/edition.ts"),
    import("./publish/publish.ts"),
  ]);
  const evidence = reckon(record);
  const told = new Map<string, Problem>();
  for (const edition of AUDIENCES) {
    const laidOut = await layOutWhole(editionOf(record, evidence, edition, seal), ready, request);
    if ("problems" in laidOut) for (const problem of laidOut.problems) told.set(JSON.stringify(problem), problem);
  }
  return inOrder([...told.values()]);
}

async function readyPictures(content: string, record: Record, cache: PictureCache, tell: Teller): Promise<ReadyFiles> {
  const wanted = wantedFiles(record);
  const ready = await readyFiles(content, wanted, cache, tell.progress);
  await cache.close();
  if (wanted.length > 0)
    tell.line(`Pictures, documents and clips: ${wanted.length}, of which ${ready.decoded} made ready now.`);
  return ready;
}

function dates({ today, day }: Pick<PrepareRequest, "today" | "day">): { today: Day; day?: Day } {
  return defined({ today, day });
}

function readWords({ aircraft, entries, assemblies, day }: Record): string {
  const batches = entries.reduce((sum, entry) => sum + entry.batches.length, 0);
  return `Read the record of ${aircraft.name} up to ${day}: ${counted(entries.length, "entry", "entries")}, ${counted(assemblies.size, "assembly", "assemblies")}, ${counted(batches, "batch", "batches")}.`;
}

async function makerOfPapers(): Promise<Maker | undefined> {
  return (await import("./publish/paper/typst.ts")).openMaker();
}
