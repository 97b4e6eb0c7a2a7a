/** Runs a tool of the system that this program leaves cryptography to. */
import { spawn } from "node:child_process";
import { ArchiveRefused } from "./refused.ts";

export interface Ran {
  readonly code: number;
  readonly out: Buffer;
  readonly err: string;
}

/** Tools, with what needs each and where it comes from. */
const TOOLS = {
  "ssh-keygen": "Signatures need OpenSSH's ssh-keygen (Debian: the package openssh-client), which is not here.",
  openssl: "Time stamps need OpenSSL's openssl ts (Debian: the package openssl), which is not here.",
} as const;

/**
 * @param input one letter a byte
 * @throws ArchiveRefused where the tool is not here, saying what needs it
 */
export function ran(tool: keyof typeof TOOLS, words: readonly string[], input: string): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(tool, words, { stdio: ["pipe", "pipe", "pipe"] });
    const out: Buffer[] = [];
    let err = "";
    child.once("error", (error: NodeJS.ErrnoException) =>
      reject(error.code === "ENOENT" ? new ArchiveRefused(TOOLS[tool]) : error),
    );
    child.stdout.on("data", (chunk: Buffer) => out.push(chunk));
    child.stderr.on("data", (chunk: Buffer) => (err += chunk.toString("utf8")));
    child.stdin.on("error", () => undefined);
    child.stdin.end(input, "latin1");
    child.once("close", (code) => resolve({ code: code ?? 1, out: Buffer.concat(out), err }));
  });
}

/** @throws ArchiveRefused where it is not here, so that nothing is begun that cannot be ended */
export async function refuseWithout(tool: "openssl"): Promise<void> {
  await ran(tool, ["version"], "");
}

export function lastLine(text: string): string {
  return text.trim().split("\n").at(-1) ?? "it gave no reason";
}
