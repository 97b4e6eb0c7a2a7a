/** Writing that is whole on the disk before anyone sees it, and that a cut of the power at any instant cannot leave half done. */
import { constants } from "node:fs";
import { mkdir, open, readdir, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Puts new bytes at a path in one go: whoever reads, or is killed, finds the former file or the new one. */
export async function replaceFile(path: string, bytes: string | Uint8Array): Promise<void> {
  const beside = nameBeside(path);
  await mkdir(dirname(path), { recursive: true });
  await clearBeside(path);
  try {
    await writeDurably(beside, [bytes]);
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
  await syncFolder(dirname(path));
}

/** Writes a new file of mode 644 and waits until it is on the disk. */
export async function writeDurably(
  path: string,
  chunks: Iterable<string | Uint8Array> | AsyncIterable<string | Uint8Array>,
): Promise<void> {
  const handle = await open(path, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL, 0o644);
  try {
    for await (const chunk of chunks) await handle.writeFile(chunk);
    await handle.chmod(0o644);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Waits until a folder's list of names is on the disk, where the system can tell. */
export async function syncFolder(path: string): Promise<void> {
  const handle = await open(path, "r");
  try {
    await handle.sync().catch(ignoreUnable);
  } finally {
    await handle.close();
  }
}

/** Waits until every file and folder below a folder is on the disk. */
export async function syncTree(folder: string): Promise<void> {
  for (const item of await readdir(folder, { withFileTypes: true })) {
    const path = join(folder, item.name);
    if (item.isDirectory()) await syncTree(path);
    else await syncFolder(path);
  }
  await syncFolder(folder);
}

/** For work in progress: hidden, in the same folder, with the number of the process that works on it. */
export function nameBeside(path: string): string {
  return join(dirname(path), `.${basename(path)}.scarfline-new-${process.pid}`);
}

/** Takes away what processes that were killed left beside a path. */
export async function clearBeside(path: string): Promise<void> {
  const start = `.${basename(path)}.scarfline-new-`;
  for (const name of await readdir(dirname(path)).catch(() => [])) {
    const pid = name.startsWith(start) ? Number(name.slice(start.length)) : Number.NaN;
    if (Number.isInteger(pid) && !isRunning(pid)) await rm(join(dirname(path), name), { recursive: true, force: true });
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

function ignoreUnable(error: NodeJS.ErrnoException): void {
  if (!["EINVAL", "ENOTSUP", "EPERM", "EISDIR"].includes(error.code ?? "")) throw error;
}
