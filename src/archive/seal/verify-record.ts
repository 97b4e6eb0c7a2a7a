import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { bytesOf, digestsOf } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { linesOf, UnreadableText } from "../lines.ts";
import { manifestLineOf } from "../manifest.ts";
import { pathFault } from "../safe-path.ts";
import { readChain, type Seal, SEALS, type SetSeal } from "./chain.ts";
import { recordDigests } from "./record-files.ts";
import { signatureChecked } from "./signature.ts";

export interface RecordVerified {
  readonly seals: readonly Seal[];
  /** Files of the record now. */
  readonly files: number;
}

/**
 * Holds a record against its seals: whether the chain of seals is whole, and what was changed, taken away or added since the last one.
 * What no seal has held yet is told as a note; it is no fault.
 */
export async function verifyRecord(content: string, signers: string | undefined, findings: Tellings, progress: (done: number, of: number) => void): Promise<RecordVerified> {
  const { seals } = await readChain(content, findings);
  let former: { readonly seal: Seal; readonly digests: ReadonlyMap<string, string> } | undefined;
  for (const seal of seals) {
    const digests = await sealedDigests(content, seal, findings);
    if (digests === undefined) continue;
    if (former !== undefined) tellBetween(former, { seal, digests }, findings);
    former = { seal, digests };
  }
  await tellSignatures(content, seals, signers, findings);
  await tellLeftOver(content, seals, findings);
  const now = await recordDigests(content, progress);
  if (former !== undefined && former.seal === seals.at(-1)) tellSince(former.seal, former.digests, now, findings);
  return { seals, files: now.size };
}

/** What a seal's manifest says, if it is the one that was sealed. */
async function sealedDigests(content: string, seal: Seal, findings: Tellings): Promise<ReadonlyMap<string, string> | undefined> {
  const { manifest } = seal;
  const digests = new Map<string, string>();
  try {
    const { digests: found } = await digestsOf(bytesOf(join(content, manifest)), ["sha256"]);
    if (found.get("sha256") !== seal.record) {
      findings.fault("chain", manifest, `changed: its SHA-256 is not the one that the seal of ${seal.date} has in ${SEALS}`);
      return undefined;
    }
    for await (const line of linesOf(bytesOf(join(content, manifest)), "utf-8")) {
      const said = manifestLineOf(line.text, "sha256");
      if (said === undefined || pathFault(said.path) !== undefined) findings.fault("form", `${manifest}:${line.number}`, "this line is none of a manifest");
      else digests.set(said.path, said.digest);
    }
  } catch (error) {
    if (!(error instanceof UnreadableText) && !["ENOENT", "ELOOP"].includes((error as NodeJS.ErrnoException).code ?? "")) throw error;
    findings.fault("chain", manifest, error instanceof UnreadableText ? `this file ${error.message}` : `missing: the manifest of the seal of ${seal.date}`);
    return undefined;
  }
  if (digests.size !== seal.files) findings.fault("count", manifest, `has ${digests.size} files, and the seal of ${seal.date} says ${seal.files}`);
  return digests;
}

interface SealedFiles {
  readonly seal: Seal;
  readonly digests: ReadonlyMap<string, string>;
}

function tellBetween(former: SealedFiles, next: SealedFiles, findings: Tellings): void {
  const when = `between the seals of ${former.seal.date} and ${next.seal.date}`;
  for (const [path, digest] of former.digests) {
    const later = next.digests.get(path);
    if (later !== digest) findings.note("changed between seals", path, later === undefined ? `taken away ${when}` : `changed ${when}`);
  }
}

function tellSince(last: Seal, sealed: ReadonlyMap<string, string>, now: ReadonlyMap<string, string>, findings: Tellings): void {
  for (const [path, digest] of sealed) {
    const found = now.get(path);
    if (found === undefined) findings.fault("missing", path, `missing since the seal of ${last.date}`);
    else if (found !== digest) findings.fault("changed", path, `changed since the seal of ${last.date}`);
  }
  for (const path of now.keys()) if (!sealed.has(path)) findings.note("not sealed yet", path, `added since the seal of ${last.date}; not sealed yet`);
}

async function tellSignatures(content: string, seals: readonly SetSeal[], signers: string | undefined, findings: Tellings): Promise<void> {
  const there = new Set(await namesIn(join(content, "seals")));
  for (const seal of seals) {
    const file = `${seal.manifest.replace(/\.sha256$/, "")}.sig`;
    if (!there.has(file.slice("seals/".length))) continue;
    const checked = await signatureChecked(seal.upTo, join(content, file), signers);
    if (!checked.good) findings.fault("signature", file, `the signature of the seal of ${seal.date} does not hold: ${checked.why}`);
    else if (signers === undefined) findings.note("not checked", file, `the seal of ${seal.date} is signed with ${checked.by}; whose key that is was not checked, which needs --signers`);
    else findings.note("signature", file, `the seal of ${seal.date} is signed by ${checked.by}`);
  }
}

/** Manifests that no seal names: of a seal that was broken off, or put there. */
async function tellLeftOver(content: string, seals: readonly Seal[], findings: Tellings): Promise<void> {
  const known = new Set(seals.flatMap(({ manifest }) => [manifest, `${manifest.replace(/\.sha256$/, "")}.sig`]));
  for (const name of await namesIn(join(content, "seals"))) {
    const path = `seals/${name}`;
    if (!name.startsWith(".") && !known.has(path)) findings.note("unexpected", path, `no seal in ${SEALS} names it; a seal that was broken off leaves such a file, and so does a list that has lost its last lines`);
  }
}

async function namesIn(folder: string): Promise<string[]> {
  return (await readdir(folder).catch(() => [])).sort();
}

