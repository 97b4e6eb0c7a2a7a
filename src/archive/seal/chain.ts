/** The list of seals: one line each, every line holding the digest of all that stands before it. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { sha256Of } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { SEAL_FORM } from "../form.ts";
import { ArchiveRefused } from "../refused.ts";

export const SEALS = "seals.txt";
const LARGEST = 4 * 1024 * 1024;

export interface Seal {
  /** `YYYY-MM-DD` */
  readonly date: string;
  /** SHA-256 of the manifest file: what `sha256sum` prints for it. */
  readonly record: string;
  /** SHA-256 of `seals.txt` as it was before this line. */
  readonly before: string;
  readonly files: number;
  /** From the record's folder, such as `seals/2026-11-20.sha256`. */
  readonly manifest: string;
  /** Version of the line's form, and of the rules when it was set. Lines that say none are of the first. */
  readonly form: number;
  readonly rules: number;
}

export function sealLine({ date, record, before, files, manifest, form, rules }: Seal): string {
  const versions = form === 1 ? "" : ` form=${form} rules=${rules}`;
  return `${date} ${record} ${before} ${files} ${manifest}${versions}\n`;
}

/** Files that may stand beside a seal's manifest, with its name. */
export const BESIDE = {
  /** An SSH signature. */
  signature: "sig",
  /** What was asked of an authority of time stamps, and what it replied (RFC 3161). */
  query: "tsq",
  reply: "tsr",
  /** Certificates of that authority. */
  authority: "pem",
} as const;

/** From the record's folder, such as `seals/2026-11-20.tsr`. */
export function fileBeside(manifest: string, kind: keyof typeof BESIDE): string {
  return `${manifest.replace(/\.sha256$/, "")}.${BESIDE[kind]}`;
}

export function signatureFileOf(manifest: string): string {
  return fileBeside(manifest, "signature");
}

/** All that may stand beside it. */
export function filesBeside(manifest: string): string[] {
  return (Object.keys(BESIDE) as (keyof typeof BESIDE)[]).map((kind) => fileBeside(manifest, kind));
}

/** A seal that stands in the list. */
export interface SetSeal extends Seal {
  /** All of `seals.txt` up to and with its line, one letter a byte. */
  readonly upTo: string;
}

export interface Chain {
  /** All of `seals.txt`, one letter a byte. */
  readonly text: string;
  readonly seals: readonly SetSeal[];
}

/** Reads `seals.txt`, telling each line that is none and each whose digest is not that of the lines before it. No such file is an empty chain. */
export async function readChain(content: string, findings: Tellings): Promise<Chain> {
  const bytes = await readFile(join(content, SEALS)).catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT") return Buffer.alloc(0);
    throw error;
  });
  if (bytes.length > LARGEST) throw new ArchiveRefused(`${SEALS} is larger than any list of seals can be.`);
  const text = bytes.toString("latin1");
  const lines = text.match(/[^\n]*\n|[^\n]+$/g) ?? [];
  const seals: SetSeal[] = [];
  let at = 0;
  for (const [index, line] of lines.entries()) {
    const seal = sealOf(line);
    const place = `${SEALS}:${index + 1}`;
    if (seal === undefined) findings.fault("chain", place, "this line is no seal: it is not as the program wrote it");
    else if (seal.form > SEAL_FORM)
      findings.fault(
        "chain",
        place,
        `this seal is of a form (${seal.form}) that is later than this program knows (${SEAL_FORM}); use a later one`,
      );
    else if (seal.before !== chainDigest(text.slice(0, at)))
      findings.fault(
        "chain",
        place,
        "the lines before this seal are not those it was set after: one was changed, added or taken away",
      );
    at += line.length;
    if (seal !== undefined) seals.push({ ...seal, upTo: text.slice(0, at) });
  }
  return { text, seals };
}

/** What `sha256sum` prints for the first lines of the list. */
export function chainDigest(text: string): string {
  return sha256Of(Buffer.from(text, "latin1"));
}

function sealOf(line: string): Seal | undefined {
  const [, date, record, before, files, manifest, form = "1", rules = "1"] =
    /^(\d{4}-\d{2}-\d{2}) ([0-9a-f]{64}) ([0-9a-f]{64}) (\d{1,9}) (seals\/\d{4}-\d{2}-\d{2}(?:-\d{1,4})?\.sha256)(?: form=([2-9]\d{0,2}) rules=([1-9]\d{0,4}))?\n$/.exec(
      line,
    ) ?? [];
  if (date === undefined || record === undefined || before === undefined || manifest === undefined) return undefined;
  return { date, record, before, files: Number(files), manifest, form: Number(form), rules: Number(rules) };
}

/** The name of the manifest of the next seal on a day. */
export function nextManifest(seals: readonly Seal[], date: string): string {
  const sameDay = seals.filter((seal) => seal.date === date).length;
  return `seals/${date}${sameDay === 0 ? "" : `-${sameDay + 1}`}.sha256`;
}
