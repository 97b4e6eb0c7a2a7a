import { constants, copyFile, link, lstat, readlink, symlink } from "node:fs/promises";

/** Puts a file at another place without copying its bytes where the disk can do so; a symbolic link stays one. The folder it goes into must be there. */
export async function linkOrCopy(from: string, to: string): Promise<void> {
  if ((await lstat(from)).isSymbolicLink()) return symlink(await readlink(from), to);
  await link(from, to).catch((error: NodeJS.ErrnoException) => {
    if (error.code === "EEXIST") throw error;
    return copyFile(from, to, constants.COPYFILE_FICLONE);
  });
}
