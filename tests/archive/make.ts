import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { Findings } from "../../src/archive/finding.ts";
import { Members } from "../../src/archive/source/members.ts";
import { lookAt } from "../../src/archive/source/open.ts";
import type { BagSource } from "../../src/archive/source/source.ts";
import { verifyBag } from "../../src/archive/verify/bag.ts";
import { verifyBags } from "../../src/archive/verify/verify.ts";
import { command } from "../cli/command.ts";
import { writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

/** A record of a few files without problems. */
export async function recordIn(folder: string): Promise<string> {
  const content = join(folder, "content");
  writeAll(content, await smallRecord());
  return content;
}

export function hex(algorithm: string, bytes: string | Buffer): string {
  return createHash(algorithm).update(bytes).digest("hex");
}

export interface BagShape {
  /** Below the bag's folder, `data/` included. */
  readonly files: { readonly [path: string]: string | Buffer };
  readonly algorithms?: readonly string[];
  readonly tagAlgorithms?: readonly string[];
  readonly declaration?: string;
}

/** Writes a bag without any of this program's code: payload manifests first, then tag manifests over all other files. */
export function bagIn(
  folder: string,
  {
    files,
    algorithms = ["sha256"],
    tagAlgorithms = [],
    declaration = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
  }: BagShape,
): string {
  const of = (names: readonly string[], all: { readonly [path: string]: string | Buffer }, algorithm: string): string =>
    names.map((path) => `${hex(algorithm, all[path] ?? "")}  ${path}\n`).join("");
  const payload = Object.keys(files).filter((path) => path.startsWith("data/"));
  const whole: { [path: string]: string | Buffer } = { "bagit.txt": declaration };
  for (const algorithm of algorithms) whole[`manifest-${algorithm}.txt`] = of(payload, files, algorithm);
  Object.assign(whole, files);
  const tags = Object.keys(whole).filter((path) => !path.startsWith("data/"));
  for (const algorithm of tagAlgorithms) whole[`tagmanifest-${algorithm}.txt`] ??= of(tags, whole, algorithm);
  mkdirSync(folder, { recursive: true });
  writeAll(folder, whole);
  return folder;
}

export function linkIn(folder: string, path: string, target: string): void {
  symlinkSync(target, join(folder, path));
}

/** What is found of a bag, as `fault|note place: message`. */
export async function found(path: string): Promise<string[]> {
  const looked = await lookAt(path);
  if (looked.kind !== "bags") throw new Error(`no bag: ${JSON.stringify(looked)}`);
  const findings = new Findings();
  await verifyBags(looked, findings, () => undefined);
  return [
    ...findings.all.map(({ severity, place, message }) => `${severity} ${place}: ${message}`),
    ...findings.untold.map(({ kind, count }) => `and ${count} more: ${kind}`),
  ];
}

/** The same of a bag whose files are held in memory. */
export async function foundIn(files: ReadonlyMap<string, Buffer>): Promise<string[]> {
  const findings = new Findings();
  const source: BagSource = {
    name: "memory",
    list: (tellings) => {
      const members = new Members(tellings);
      for (const [path, bytes] of files) members.add(path, bytes.length);
      return Promise.resolve(members.end());
    },
    visit: async (wanted, use) => {
      for (const [path, bytes] of files) if (wanted(path)) await use(path, Readable.from([bytes]));
    },
    close: () => Promise.resolve(),
  };
  await verifyBag(source, findings, () => undefined);
  return findings.all.map(({ severity, place, message }) => `${severity} ${place}: ${message}`);
}

/** Runs a common tool; its exit code and what it said. */
export function tool(
  name: string,
  words: readonly string[],
  cwd: string,
  input?: string,
): { readonly code: number; readonly out: string } {
  try {
    return {
      code: 0,
      out: execFileSync(name, words, {
        cwd,
        encoding: "utf8",
        stdio: "pipe",
        ...(input === undefined ? {} : { input }),
      }),
    };
  } catch (error) {
    const { status, stdout, stderr } = error as { status?: number; stdout?: string; stderr?: string };
    return { code: status ?? -1, out: `${stdout ?? ""}${stderr ?? ""}` };
  }
}

/** The small record with more files, sealed and bagged by the command; where the bag stands. */
export async function bagged(
  folder: string,
  more: { readonly [path: string]: string } = {},
  words: readonly string[] = [],
): Promise<string> {
  const content = await recordIn(folder);
  writeAll(content, more);
  await command(["seal", "--content", content, "--date", "2021-04-01"]);
  const { code, err } = await command(["bag", "--content", content, "--out", join(folder, "archive"), ...words]);
  if (code !== 0) throw new Error(err);
  return join(folder, "archive", readdirSync(join(folder, "archive"))[0] ?? "");
}
