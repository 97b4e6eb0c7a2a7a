/** Manifests of seals that no line of `seals.txt` names: of a seal that was broken off, or of lines that the list has lost. */
import { readdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { bytesOf, digestsOf } from "../digest.ts";
import { replaceFile, syncFolder } from "../durable.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import type { Tellings } from "../finding.ts";
import { SEAL_FORM } from "../form.ts";
import { linesOf, UnreadableText } from "../lines.ts";
import { ArchiveRefused } from "../refused.ts";
import { BESIDE, type Chain, chainDigest, filesBeside, sealLine, SEALS, signatureFileOf } from "./chain.ts";
import { signatureChecked } from "./signature.ts";

/** Names the manifest of a seal in the making, from before its first file until its line stands in the list. */
const MARKER = "seals/.unfinished";
const MANIFEST = /^seals\/\d{4}-\d{2}-\d{2}(?:-\d{1,4})?\.sha256$/;
const OF_A_SEAL = new RegExp(
  `^seals/\\d{4}-\\d{2}-\\d{2}(?:-\\d{1,4})?\\.(?:${["sha256", ...Object.values(BESIDE)].join("|")})$`,
);

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
  const known = new Set(seals.flatMap(({ manifest }) => [manifest, ...filesBeside(manifest)]));
  const left = (await sealFiles(content)).filter((path) => !known.has(path));
  const marked = await markedFiles(content);
  return { begun: left.filter((path) => marked.includes(path)), others: left.filter((path) => !marked.includes(path)) };
}

/** Files of the seal that was begun last and, as far as the marker tells, not set. */
async function markedFiles(content: string): Promise<string[]> {
  const manifest = (await readFile(join(content, MARKER), "utf8").catch(() => "")).trim();
  return MANIFEST.test(manifest) ? [manifest, ...filesBeside(manifest)] : [];
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
      const isWithManifest = others.some((other) => MANIFEST.test(other) && filesBeside(other).includes(path));
      if (!isWithManifest && OF_A_SEAL.test(path))
        findings.fault(
          "chain",
          path,
          `is of a seal that no line of ${SEALS} names: the list has lost its end, or someone put this file there`,
        );
      else if (!isWithManifest) findings.note("unexpected", path, `no seal in ${SEALS} names it`);
      continue;
    }
    findings.fault(
      "chain",
      path,
      `no line of ${SEALS} names it: the list has lost its end, or someone put this file there`,
    );
    const lines = await linesFor(content, path, list);
    const last = chain.seals.at(-1);
    if (lines[0] === undefined || (last !== undefined && lines[0] < last.date)) continue;
    const signature = signatureFileOf(path);
    const signed = others.includes(signature) ? await signedLine(content, signature, list, lines, signers) : undefined;
    const line = signed?.line ?? lines[0];
    findings.note("chain", path, `as a seal after those in the list its line would be: ${line.trimEnd()}`);
    list += line;
    if (signed !== undefined)
      findings.fault(
        "chain",
        signature,
        `this signature by ${signed.by} holds for the list with that line: such a seal was signed, and the list has lost it`,
      );
    else if (others.includes(signature))
      findings.note("unexpected", signature, "this signature is not of the list with that line");
  }
}

/** The line that a signature holds for, since a manifest does not tell which version of this program set its seal. */
async function signedLine(
  content: string,
  signature: string,
  list: string,
  lines: readonly string[],
  signers: string | undefined,
): Promise<{ readonly line: string; readonly by: string } | undefined> {
  for (const line of lines) {
    const checked = await signatureChecked(list + line, join(content, signature), signers);
    if (checked.good) return { line, by: checked.by };
  }
  return undefined;
}

/** What its line can have been: as this version writes it, then as earlier ones did. */
async function linesFor(content: string, manifest: string, list: string): Promise<string[]> {
  try {
    const { digests } = await digestsOf(bytesOf(join(content, manifest)), ["sha256"]);
    let files = 0;
    for await (const _line of linesOf(bytesOf(join(content, manifest)), "utf-8")) files += 1;
    const seal = {
      date: manifest.slice("seals/".length, "seals/".length + 10),
      record: digests.get("sha256") ?? "",
      before: chainDigest(list),
      files,
      manifest,
    };
    const rules = Array.from({ length: RULES_VERSION }, (_, index) => RULES_VERSION - index);
    return [...rules.map((version) => ({ form: SEAL_FORM, rules: version })), { form: 1, rules: 1 }].map((versions) =>
      sealLine({ ...seal, ...versions }),
    );
  } catch (error) {
    if (error instanceof UnreadableText || (error as NodeJS.ErrnoException).code === "ELOOP") return [];
    throw error;
  }
}

/** By day and by number within it, as seals follow each other. */
function inOrderOfSeals(paths: readonly string[]): string[] {
  const numberOf = (path: string): number => Number(/^.{10}-(\d+)\./.exec(path.slice("seals/".length))?.[1] ?? 1);
  return [...paths].sort((a, b) => a.slice(0, 16).localeCompare(b.slice(0, 16), "en") || numberOf(a) - numberOf(b));
}
