import { join } from "node:path";
import { bytesOf, digestsOf } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { linesOf, UnreadableText } from "../lines.ts";
import { manifestLineOf } from "../manifest.ts";
import { pathFault } from "../safe-path.ts";
import { MOST_FILES } from "../source/source.ts";
import { chainDigest, readChain, type Seal, SEALS, type SetSeal } from "./chain.ts";
import { tellLeftOver } from "./left-over.ts";
import { recordDigests } from "./record-files.ts";
import { tellSignatures } from "./signed.ts";
import { History, sealWords } from "./since.ts";
import { tellStamps } from "../stamp/tell.ts";

export interface RecordVerified {
  readonly seals: readonly Seal[];
  /** Files of the record now. */
  readonly files: number;
}

/** What is known of a record's seals from elsewhere. */
export interface KnownElsewhere {
  /** File of allowed signers. */
  readonly signers?: string;
  /** The digest of a seal, or how it begins, from a page, a print or a letter. */
  readonly seal?: string;
  /** File of certificates of an authority of time stamps, PEM. */
  readonly authority?: string;
}

/**
 * Holds a record against its seals: whether the chain of seals is whole, and what was changed, renamed, taken away or added since which of them.
 * The chain shows lines that were altered, put in or taken out, but not that it was cut off at its end, or written anew from its beginning:
 * that is proven only by what is known of a seal from elsewhere. What no seal has held yet is told as a note; it is no fault.
 */
export async function verifyRecord(
  content: string,
  { signers, seal: known, authority }: KnownElsewhere,
  now: Date,
  findings: Tellings,
  progress: (done: number, of: number) => void,
): Promise<RecordVerified> {
  const chain = await readChain(content, findings);
  const { seals } = chain;
  const history = new History(findings);
  for (const seal of seals) {
    const digests = await sealedDigests(content, seal, findings);
    if (digests !== undefined) history.add(seal, digests);
  }
  if (known !== undefined) tellKnown(seals, known, findings);
  await tellSignatures(content, seals, signers, findings);
  await tellStamps(content, seals, authority, now, findings);
  await tellLeftOver(content, chain, signers, findings);
  const digests = await recordDigests(content, progress);
  history.tellNow(digests);
  return { seals, files: digests.size };
}

/** What a seal's manifest says, if it is the one that was sealed. */
export async function sealedDigests(
  content: string,
  seal: Seal,
  findings: Tellings,
): Promise<ReadonlyMap<string, string> | undefined> {
  const { manifest } = seal;
  const digests = new Map<string, string>();
  try {
    const { digests: found } = await digestsOf(bytesOf(join(content, manifest)), ["sha256"]);
    if (found.get("sha256") !== seal.record) {
      findings.fault(
        "chain",
        manifest,
        `changed: its SHA-256 is not the one that the seal of ${seal.date} has in ${SEALS}`,
      );
      return undefined;
    }
    for await (const line of linesOf(bytesOf(join(content, manifest)), "utf-8")) {
      const said = manifestLineOf(line.text, "sha256");
      if (said === undefined || pathFault(said.path) !== undefined)
        findings.fault("form", `${manifest}:${line.number}`, "this line is none of a manifest");
      else digests.set(said.path, said.digest);
      if (digests.size > MOST_FILES) throw new UnreadableText(`names more than ${MOST_FILES} files`, line.number);
    }
  } catch (error) {
    if (
      !(error instanceof UnreadableText) &&
      !["ENOENT", "ELOOP"].includes((error as NodeJS.ErrnoException).code ?? "")
    )
      throw error;
    findings.fault(
      "chain",
      manifest,
      error instanceof UnreadableText
        ? `this file ${error.message}`
        : `missing: the manifest of the seal of ${seal.date}`,
    );
    return undefined;
  }
  if (digests.size !== seal.files)
    findings.fault("count", manifest, `has ${digests.size} files, and the seal of ${seal.date} says ${seal.files}`);
  return digests;
}

/** Whether a seal that someone knows of from elsewhere is among these: then neither it nor any before it was lost or altered. */
function tellKnown(seals: readonly SetSeal[], known: string, findings: Tellings): void {
  const index = seals.findIndex((seal) => chainDigest(seal.upTo).startsWith(known) || seal.record.startsWith(known));
  const found = seals[index];
  const after = seals.length - index - 1;
  if (found === undefined)
    findings.fault(
      "chain",
      SEALS,
      `no seal here has the digest ${known}: the list has lost seals, was written anew, or is of another record`,
    );
  else
    findings.note(
      "chain",
      `${SEALS}:${index + 1}`,
      `this is the seal with the digest ${known}, ${sealWords(found)}${after === 0 ? ", the last" : `; ${after} more came after it`}`,
    );
}
