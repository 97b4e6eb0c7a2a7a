import { existsSync, renameSync } from "node:fs";
import { mkdir, readdir, readFile, realpath, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import { exchangeAtOnce } from "./exchange.ts";
import { linkOrCopy } from "./link.ts";
import { madeFolder } from "./made.ts";
import { OutputRefused } from "./refused.ts";

/** Lists what was written into an output folder, so that the next build can tell it from what a builder put there. */
export const MARKER = ".scarfline";

/**
 * A folder in the making beside the output folder. Nothing of the output changes before `moveIntoPlace`,
 * which swaps whole folders: whoever reads or is killed sees the former site or the new one. Only where the system's
 * tools cannot let
 * two folders change places at once is there an instant without either; the former site then stands beside until the
 * next build.
 */
export interface Making {
  /** Where to write. */
  readonly folder: string;
  readonly moveIntoPlace: () => Promise<void>;
  /** Leaves the output as it was. */
  readonly giveUp: () => Promise<void>;
}

/**
 * Refuses folders that hold, or are held by, the record or the place the command runs in, and those that hold files
 * of someone else's.
 */
export async function beginOutput(out: string, content: string): Promise<Making> {
  const target = await realPath(out);
  await refuseOverlap(target, await realPath(content));
  await tidy(target);
  await refuseForeign(target);
  const folder = beside(target, "new", process.pid);
  madeFolder(folder);
  return {
    folder,
    moveIntoPlace: () => swap(folder, target),
    giveUp: () => rm(folder, { recursive: true, force: true }),
  };
}

async function swap(folder: string, target: string): Promise<void> {
  await writeFile(join(folder, MARKER), `${(await filesIn(folder)).sort().join("\n")}\n`);
  if (!existsSync(target)) {
    await rename(folder, target);
    return;
  }
  const former = beside(target, "former", process.pid);
  for (const file of await foreignFiles(target)) {
    if (existsSync(join(folder, file)))
      throw new OutputRefused(
        `${join(target, file)} is not from an earlier build, and this one has a file of that name. Move it elsewhere and build again.`,
      );
    await mkdir(dirname(join(folder, file)), { recursive: true });
    linkOrCopy(join(target, file), join(folder, file));
  }
  if (exchangeAtOnce(folder, target)) return rm(folder, { recursive: true });
  oneAfterTheOther(target, folder, former);
  await rm(former, { recursive: true });
}

/** Without a turn for anything else between the two; what is killed there the next build puts right. */
function oneAfterTheOther(target: string, folder: string, former: string): void {
  try {
    renameSync(target, former);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== "EBUSY" && code !== "EXDEV") throw error;
    throw new OutputRefused(
      `${target} cannot be replaced, because a disk is mounted on it. Give a folder within it: --out ${join(target, "site")}`,
    );
  }
  renameSync(folder, target);
}

/**
 * Puts right what a killed build left: brings a former site back if there is none, and clears away what nobody works
 * on.
 */
async function tidy(target: string): Promise<void> {
  const parent = dirname(target);
  const left = (await readdir(parent).catch(() => [])).flatMap((name) => {
    const [, kind, pid] =
      new RegExp(`^\\.${escaped(basename(target))}\\.scarfline-(new|former)-(\\d+)$`).exec(name) ?? [];
    return kind === undefined || isRunning(Number(pid)) ? [] : [{ kind, path: join(parent, name) }];
  });
  for (const { kind, path } of left.sort((a, b) => (a.kind < b.kind ? -1 : 1))) {
    if (kind === "former" && !existsSync(target)) await rename(path, target);
    else await rm(path, { recursive: true });
  }
}

async function refuseForeign(target: string): Promise<void> {
  if (!existsSync(target)) return;
  if (!(await stat(target)).isDirectory())
    throw new OutputRefused(`${target} is a file. Give a folder for the site: --out DIR`);
  if (existsSync(join(target, MARKER))) return;
  const foreign = (await readdir(target)).filter((name) => !name.startsWith("."));
  if (foreign.length === 0) return;
  throw new OutputRefused(
    `${target} holds files that no build wrote (${foreign.slice(0, 3).join(", ")}${foreign.length > 3 ? ", …" : ""}). Nothing was touched. Give an empty folder, or one of an earlier build: --out DIR`,
  );
}

async function refuseOverlap(target: string, content: string): Promise<void> {
  if (isWithin(target, content))
    throw new OutputRefused(
      `The site cannot be written into the record's folder (${content}). Give a folder outside it: --out DIR`,
    );
  if (isWithin(content, target))
    throw new OutputRefused(
      `${target} holds the record itself (${content}); the site would take its place. Give another folder: --out DIR`,
    );
  if (isWithin(await realPath("."), target))
    throw new OutputRefused(
      `${target} holds the folder this command runs in. Give a folder of its own for the site: --out DIR`,
    );
}

/** Files in the output folder that no build wrote, from its root. */
async function foreignFiles(target: string): Promise<string[]> {
  const listed = await readFile(join(target, MARKER), "utf8").catch(() => "");
  const ours = new Set([...listed.split("\n"), MARKER]);
  return (await filesIn(target)).filter((file) => !ours.has(file));
}

/** Paths with `/`, from the folder. Links are files here. */
export async function filesIn(folder: string): Promise<string[]> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  return found
    .filter((each) => !each.isDirectory())
    .map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join("/"));
}

function beside(target: string, kind: "new" | "former", pid: number): string {
  return join(dirname(target), `.${basename(target)}.scarfline-${kind}-${pid}`);
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** The path with every link on the way followed, as far as it exists. */
async function realPath(path: string): Promise<string> {
  const whole = resolve(path);
  if (existsSync(whole)) return realpath(whole);
  const parent = dirname(whole);
  return parent === whole ? whole : join(await realPath(parent), basename(whole));
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(outer.endsWith(sep) ? outer : outer + sep);
}

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
