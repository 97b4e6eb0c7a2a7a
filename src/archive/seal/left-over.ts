/** Manifests of seals that no line of `seals.txt` names: of a seal that was broken off, or of lines that the list has lost. */
import { readdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { bytesOf, digestsOf } from "../digest.ts";
import { replaceFile, syncFolder } from "../durable.ts";
import type { Tellings } from "../finding.ts";
import { linesOf, UnreadableText } from "../lines.ts";
import { ArchiveRefused } from "../refused.ts";
import { type Chain, chainDigest, sealLine, SEALS, signatureFileOf } from "./chain.ts";
import { signatureChecked } from "./signature.ts";

/** Names the manifest of a seal in the making, from before its first file until its line stands in the list. */
const MARKER = "seals/.unfinished";
const MANIFEST = /^seals\/\d{4}-\d{2}-\d{2}(?:-\d{1,4})?\.sha256$/;
const OF_A_SEAL = /^seals\/\d{4}-\d{2}-\d{2}(?:-\d{1,4})?\.(?:sha256|sig)$/;

/** Files in `seals/` that are not hidden, from the record's folder. */
export async function sealFiles(content: string): Promise<string[]> {
  return (await readdir(join(content, "seals")).catch(() => []))
    .filter((name) => !name.startsWith("."))
    .map((name) => `seals/${name}`)
    .sort();
}

/** Those that no seal in the list has for its manifest or signature; `begun` are of a seal that was broken off before it was set. */
export async function leftOver(
  content: string,
  { seals }: Chain,
): Promise<{ readonly begun: readonly string[]; readonly others: readonly string[] }> {
  const known = new Set(seals.flatMap(({ manifest }) => [manifest, signatureFileOf(manifest)]));
  const left = (await sealFiles(content)).filter((path) => !known.has(path));
  const marked = await markedFiles(content);
  return { begun: left.filter((path) => marked.includes(path)), others: left.filter((path) => !marked.includes(path)) };
}

/** Files of the seal that was begun last and, as far as the marker tells, not set. */
async function markedFiles(content: string): Promise<string[]> {
  const manifest = (await readFile(join(content, MARKER), "utf8").catch(() => "")).trim();
  return MANIFEST.test(manifest) ? [manifest, signatureFileOf(manifest)] : [];
}

/**
 * Makes room for the next seal: clears away what one that was broken off left, and notes which is in the making now.
 * @throws ArchiveRefused where the list seems to have lost seals, for none could be put back once others follow
 */
export async function beginSeal(
  content: string,
  chain: Chain,
  manifest: string,
): Promise<{ readonly end: () => Promise<void> }> {
  const { begun, others } = await leftOver(content, chain);
  const lost = others.find((path) => OF_A_SEAL.test(path));
  if (lost !== undefined)
    throw new ArchiveRefused(
      `No line of ${SEALS} names ${lost}, so no other seal is set: the list seems to have lost its end. See what it was: scarfline verify`,
    );
  for (const path of begun) await rm(join(content, path), { force: true });
  await replaceFile(join(content, MARKER), `${manifest}\n`);
  return {
    end: async () => {
      await rm(join(content, MARKER), { force: true });
      await syncFolder(join(content, "seals"));
    },
  };
}

/** Lines that the list has lost can be written again from the manifests they named, as long as those are there. */
export async function tellLeftOver(
  content: string,
  chain: Chain,
  signers: string | undefined,
  findings: Tellings,
): Promise<void> {
  const { begun, others } = await leftOver(content, chain);
  for (const path of begun)
    findings.note("unexpected", path, "of a seal that was broken off before it was set; the next seal clears it away");
  let list = chain.text;
  for (const path of inOrderOfSeals(others)) {
    if (!MANIFEST.test(path)) {
      if (!others.some((other) => MANIFEST.test(other) && signatureFileOf(other) === path))
        findings.note("unexpected", path, `no seal in ${SEALS} names it`);
      continue;
    }
    findings.fault(
      "chain",
      path,
      `no line of ${SEALS} names it: the list has lost its end, or someone put this file there`,
    );
    const line = await lineOf(content, path, list);
    const last = chain.seals.at(-1);
    if (line === undefined || (last !== undefined && line < last.date)) continue;
    findings.note("chain", path, `as a seal after those in the list its line would be: ${line.trimEnd()}`);
    list += line;
    const signature = signatureFileOf(path);
    if (others.includes(signature)) await tellSigned(content, signature, list, signers, findings);
  }
}

async function tellSigned(
  content: string,
  signature: string,
  list: string,
  signers: string | undefined,
  findings: Tellings,
): Promise<void> {
  const checked = await signatureChecked(list, join(content, signature), signers);
  if (checked.good)
    findings.fault(
      "chain",
      signature,
      `this signature by ${checked.by} holds for the list with that line: such a seal was signed, and the list has lost it`,
    );
  else findings.note("unexpected", signature, "this signature is not of the list with that line");
}

async function lineOf(content: string, manifest: string, list: string): Promise<string | undefined> {
  try {
    const { digests } = await digestsOf(bytesOf(join(content, manifest)), ["sha256"]);
    let files = 0;
    for await (const _line of linesOf(bytesOf(join(content, manifest)), "utf-8")) files += 1;
    return sealLine({
      date: manifest.slice("seals/".length, "seals/".length + 10),
      record: digests.get("sha256") ?? "",
      before: chainDigest(list),
      files,
      manifest,
    });
  } catch (error) {
    if (error instanceof UnreadableText || (error as NodeJS.ErrnoException).code === "ELOOP") return undefined;
    throw error;
  }
}

/** By day and by number within it, as seals follow each other. */
function inOrderOfSeals(paths: readonly string[]): string[] {
  const numberOf = (path: string): number => Number(/^.{10}-(\d+)\./.exec(path.slice("seals/".length))?.[1] ?? 1);
  return [...paths].sort((a, b) => a.slice(0, 16).localeCompare(b.slice(0, 16), "en") || numberOf(a) - numberOf(b));
}
