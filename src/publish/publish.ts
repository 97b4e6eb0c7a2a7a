import { copyFile, mkdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { defined } from "../defined.ts";
import { FIRST_SHEETS } from "../../layouts/shell/sheets.ts";
import { pagesOf } from "../../layouts/shell/site.tsx";
import { ledgersOf } from "../pages/ledgers/ledgers.ts";
import type { PageFile, Shown, Site } from "../editions/shown.ts";
import type { FilePath } from "../facts/types.ts";
import type { Problem } from "../problem.ts";
import { writeAssets } from "./assets.ts";
import { proseOf } from "./markdown.ts";
import { hasOwn } from "../record/own.ts";
import { ownOf, type OwnRequest } from "./own/own.ts";
import type { Maker } from "./paper/typst.ts";
import { writePapers } from "./paper/write.ts";
import type { Keeper } from "./output/kept-pages.ts";
import { linkOrCopy } from "./output/link.ts";
import type { ReadyFiles } from "./pictures/ready.ts";
import type { Placing, Ready } from "./pictures/ready-file.ts";
import { wantedFiles } from "./pictures/wanted.ts";
import { writePages } from "./written.ts";

type Usable = Pick<ReadyFiles, "pictures" | "documents" | "clips">;

export interface Published {
  /** How many pages, ledgers included. */
  readonly pages: number;
  /** How many photographs, drawings, documents and clips of the record. */
  readonly files: number;
  /** How many PDFs. */
  readonly papers: number;
}

/** All that an edition's site is made of besides what every site shares. No page is made yet. */
export interface Layout {
  readonly pages: readonly PageFile[];
  /** By their path in the site. */
  readonly placings: ReadonlyMap<string, Placing>;
  /** How many photographs, drawings, documents and clips of the record. */
  readonly files: number;
}

/** What a site is told besides the record. */
type Made = Pick<Site, "version" | "hasPapers" | "own" | "firstSheets">;

export type LaidOutSite = Layout & { readonly site: Site };

/** Lays out one edition with what the builder adds to it, or tells all that is wrong with that. */
export async function layOutWhole(
  shown: Shown,
  ready: Usable,
  request: OwnRequest,
  made: Pick<Site, "version" | "hasPapers"> = {},
): Promise<LaidOutSite | { readonly problems: readonly Problem[] }> {
  const whole = { ...made, firstSheets: await firstSheetsOf(request.program) };
  const plain = layOut(shown, ready, whole);
  if (request.plain === true || !hasOwn(request.content)) return plain;
  const own = await ownOf(request, plain);
  return "problems" in own ? own : layOut(shown, ready, { ...whole, own });
}

async function firstSheetsOf(program: string): Promise<string> {
  const sheets = FIRST_SHEETS.map((sheet) => readFile(join(program, ".build/styles", `${sheet}.css`), "utf8"));
  return (await Promise.all(sheets)).join("");
}

/** Lays out one edition; of `ready` only what the edition shows is used. */
export function layOut(
  shown: Shown,
  ready: Usable,
  { version, hasPapers = false, own, firstSheets }: Made = {},
): LaidOutSite {
  const used = usedBy(shown, ready);
  const site = siteOf(shown, used, defined({ version, hasPapers, own, firstSheets }));
  const pages = [
    ...pagesOf(site),
    ...ledgersOf(shown).map((file): PageFile => ({ path: file.path, make: () => file.text })),
  ];
  const placings = new Map(
    [...used.values()].flatMap(({ ready: { placings: all } }) => all).map((placing) => [placing.to, placing]),
  );
  return { site, pages, placings, files: used.size };
}

export interface Publishing {
  /** Of PDFs. */
  readonly maker?: Maker | undefined;
  /** What keeps pages of the same edition that stand. */
  readonly keeping?: ((laidOut: LaidOutSite) => Keeper) | undefined;
}

/** Writes one edition into an empty folder, with PDFs where there is a maker; nothing where something is wrong with what the builder adds. */
export async function publish(
  shown: Shown,
  ready: Usable,
  request: OwnRequest,
  folder: string,
  { maker, keeping }: Publishing = {},
): Promise<Published | { readonly problems: readonly Problem[] }> {
  const { program } = request;
  const made = defined({ version: await versionOf(program), hasPapers: maker !== undefined });
  const laidOut = await layOutWhole(shown, ready, request, made);
  return "problems" in laidOut ? laidOut : writeSite(laidOut, ready, program, folder, keeping?.(laidOut));
}

/** Writes an edition that was laid out into an empty folder. */
export async function writeSite(
  { site, pages, placings, files }: LaidOutSite,
  ready: Usable,
  program: string,
  folder: string,
  keeper?: Keeper,
): Promise<Published> {
  // First, while what pages are made of has not been reckoned: Typst takes much memory beside it.
  const papers =
    site.hasPapers === true
      ? await writePapers(site, (file) => ready.pictures.get(file)?.placings ?? [], program, folder)
      : 0;
  writePages(pages, folder, keeper);
  await writeAssets(program, folder);
  await place([...placings.values()], folder);
  return { pages: pages.length, files, papers };
}

/** Files that an edition shows, by the key of their use and path in the record. */
function usedBy(
  { edition, record }: Shown,
  { pictures, documents, clips }: Usable,
): ReadonlyMap<string, { file: FilePath; ready: Ready }> {
  const used = new Map<string, { file: FilePath; ready: Ready }>();
  const clipOf = (file: FilePath): Ready | undefined => clips.get(file)?.[edition === "archive" ? "own" : "bare"];
  for (const { file, use } of wantedFiles(record)) {
    const ready = use === "clip" ? clipOf(file) : (use === "picture" ? pictures : documents).get(file);
    if (ready !== undefined) used.set(`${use} ${file}`, { file, ready });
  }
  return used;
}

function siteOf(shown: Shown, used: ReadonlyMap<string, { file: FilePath; ready: Ready }>, made: Made): Site {
  const all = [...used.values()];
  const pictures = new Map(
    all.flatMap(({ file, ready: { picture } }) => (picture === undefined ? [] : [[file, picture] as const])),
  );
  const files = new Map(
    all.flatMap(({ file, ready: { path } }) => (path === undefined ? [] : [[file, path] as const])),
  );
  const clips = new Map(
    all.flatMap(({ file, ready: { clip } }) => (clip === undefined ? [] : [[file, clip] as const])),
  );
  const site: Site = { shown, pictures, clips, files, prose: (...asked: Asked) => prose(...asked), ...made };
  const prose = proseOf(site);
  return site;
}

type Asked = Parameters<Site["prose"]>;

/** The version of the program that is installed in a folder. */
export async function versionOf(program: string): Promise<string> {
  return (JSON.parse(await readFile(join(program, "package.json"), "utf8")) as { version: string }).version;
}

/** Puts files into a site's folder. */
export async function place(placings: readonly Placing[], folder: string): Promise<void> {
  const folders = new Set(placings.map(({ to }) => dirname(join(folder, to))));
  for (const each of folders) await mkdir(each, { recursive: true });
  for (const { from, to, original } of placings) {
    if (original) await copyFile(from, join(folder, to));
    else linkOrCopy(from, join(folder, to));
  }
}
