import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Tellings } from "../finding.ts";
import { ArchiveRefused } from "../refused.ts";
import { SEALS, type SetSeal, signatureFileOf } from "./chain.ts";
import { sealFiles } from "./left-over.ts";
import { type Checked, NAMESPACE, signatureChecked } from "./signature.ts";
import { sealWords } from "./since.ts";

/**
 * Tells how each seal is signed. Who names signers asks for proof of each: then a seal that is not signed by one of them is a fault,
 * and so is a record without any seal. A signature holds for the list up to its own line, so an earlier seal needs one of its own.
 * @param signers a file of allowed signers
 */
export async function tellSignatures(
  content: string,
  seals: readonly SetSeal[],
  signers: string | undefined,
  findings: Tellings,
): Promise<void> {
  if (signers !== undefined) await refuseUnreadable(signers);
  if (signers !== undefined && seals.length === 0)
    findings.fault("signature", SEALS, `there is no seal, so none is signed by one of those in ${signers}`);
  const there = new Set(await sealFiles(content));
  for (const [index, seal] of seals.entries()) {
    const file = signatureFileOf(seal.manifest);
    if (!there.has(file)) {
      if (signers !== undefined)
        findings.fault(
          "signature",
          file,
          `missing: ${sealWords(seal)} is not signed by one of those in ${signers}. Whoever set it can still sign it: head -n ${index + 1} ${SEALS} | ssh-keygen -Y sign -n ${NAMESPACE} -f KEY > ${file}`,
        );
      continue;
    }
    const checked = await signatureChecked(seal.upTo, join(content, file), signers);
    tellOne(seal, file, checked, signers !== undefined, findings);
  }
}

function tellOne(seal: SetSeal, file: string, checked: Checked, isNamed: boolean, findings: Tellings): void {
  if (!checked.good)
    findings.fault("signature", file, `the signature of ${sealWords(seal)} does not hold: ${checked.why}`);
  else if (isNamed) findings.note("signature", file, `${sealWords(seal)} is signed by ${checked.by}`);
  else
    findings.note(
      "not checked",
      file,
      `${sealWords(seal)} is signed with ${checked.by}; whose key that is was not checked, which needs --signers`,
    );
}

async function refuseUnreadable(signers: string): Promise<void> {
  const text = await readFile(signers, "utf8").catch((error: NodeJS.ErrnoException) => {
    throw new ArchiveRefused(
      `The file of allowed signers cannot be read: ${signers} (${error.code ?? error.message}).`,
    );
  });
  if (!text.split("\n").some((line) => line.trim() !== "" && !line.startsWith("#")))
    throw new ArchiveRefused(`${signers} names no signer. A line of it: you@example.org ssh-ed25519 AAAA…`);
}
