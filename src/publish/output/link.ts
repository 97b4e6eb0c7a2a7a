import { constants, copyFileSync, linkSync, lstatSync, readlinkSync, symlinkSync } from "node:fs";

/**
 * Puts a file at another place without copying its bytes where the disk can do so; a symbolic link stays one. The
 * folder it goes into must be there.
 * Waiting for the disk takes a tenth of what it costs to be told later, and a site has some ten thousand files.
 */
export function linkOrCopy(from: string, to: string): void {
  if (lstatSync(from).isSymbolicLink()) symlinkSync(readlinkSync(from), to);
  else linkOrCopyFile(from, to);
}

/** The same of what is known to be a file. */
export function linkOrCopyFile(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw error;
    copyFileSync(from, to, constants.COPYFILE_FICLONE);
  }
}
