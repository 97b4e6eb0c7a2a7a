import { CommanderError } from "commander";
import { ArchiveRefused } from "../archive/refused.ts";
import { FolderRefused } from "../desk/whole-folder.ts";
import { OutputRefused } from "../publish/output/refused.ts";
import { programFor } from "./program.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";

/** The message of each says what to do. */
const REFUSALS = [WrongUse, OutputRefused, ArchiveRefused, FolderRefused];

/**
 * Runs one command and returns its exit code. Mistakes in use, refusals of the disk and bugs of the program are told
 * apart.
 */
export async function run(words: readonly string[], surroundings: Surroundings): Promise<number> {
  let code: number = EXIT.fine;
  const program = await programFor(words, surroundings, (found) => (code = found));
  try {
    await program.parseAsync(words, { from: "user" });
    return code;
  } catch (error) {
    return told(error, surroundings);
  }
}

function told(error: unknown, { err }: Surroundings): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.wrongUse;
  if (REFUSALS.some((kind) => error instanceof kind)) {
    err(`${(error as Error).message}\n`);
    return EXIT.wrongUse;
  }
  const refusal = refusalIn(error);
  if (refusal !== undefined) {
    const isFull = refusal.code === "ENOSPC" || refusal.code === "EDQUOT";
    err(
      `${isFull ? "The disk is full" : "The system refused"}: ${refusal.message}\nThe record, and what was written earlier, are as they were.\n`,
    );
    return EXIT.disk;
  }
  err(`${bugWords(error)}\n`);
  return EXIT.bug;
}

/** What the system said, which a library may have wrapped in errors of its own. */
function refusalIn(error: unknown): NodeJS.ErrnoException | undefined {
  if (isFromDisk(error)) return error;
  if (!(error instanceof Error)) return undefined;
  const { originalError } = error as { originalError?: unknown };
  return refusalIn(originalError ?? error.cause);
}

function isFromDisk(error: unknown): error is NodeJS.ErrnoException {
  return (
    error instanceof Error &&
    "syscall" in error &&
    ["EACCES", "EPERM", "EROFS", "ENOSPC", "EDQUOT", "EMFILE", "EIO", "ENOTDIR", "EADDRINUSE"].includes(
      (error as NodeJS.ErrnoException).code ?? "",
    )
  );
}

function bugWords(error: unknown): string {
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const cause =
    error instanceof Error && error.cause instanceof Error
      ? `\ncaused by ${error.cause.stack ?? error.cause.message}`
      : "";
  return [
    "This is a mistake in Scarfline, not in your record. The record and the site that was there before are as they were.",
    "Please report it with the lines below and, if you can, with the entry that brings it about.",
    "",
    trace + cause,
  ].join("\n");
}
