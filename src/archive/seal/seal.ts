import { defined } from "../../defined.ts";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { sha256Of } from "../digest.ts";
import { replaceFile } from "../durable.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import { Findings } from "../finding.ts";
import { SEAL_FORM } from "../form.ts";
import { ArchiveRefused } from "../refused.ts";
import { chainDigest, nextManifest, readChain, type Seal, SEALS, sealLine, signatureFileOf } from "./chain.ts";
import { beginSeal } from "./left-over.ts";
import { manifestOf, recordDigests } from "./record-files.ts";
import { signatureOf } from "./signature.ts";

export interface SealRequest {
  readonly content: string;
  /** `YYYY-MM-DD` */
  readonly date: string;
  /** File of a private SSH key to sign with. */
  readonly key?: string;
}

export type Sealed = { readonly seal: Seal; readonly signature?: string } | { readonly unchanged: Seal };

/**
 * Seals a record without problems: writes a manifest that `sha256sum -c` checks, and then adds one line to `seals.txt`.
 * The line comes last and in one go, so that a seal broken off at any instant leaves the former seals whole and none that is half made.
 *
 * The signature is of `seals.txt` up to and with the new line, and so of every seal before it too.
 * @throws ArchiveRefused where the seals so far are not whole or seem to have lost some, or the last is of a later day
 */
export async function seal(
  { content, date, key }: SealRequest,
  progress: (done: number, of: number) => void,
): Promise<Sealed> {
  const findings = new Findings();
  const chain = await readChain(content, findings);
  const { text, seals } = chain;
  const broken = findings.all.find(({ severity }) => severity === "fault");
  if (broken)
    throw new ArchiveRefused(
      `The seals so far are not whole, so no other is set after them. ${broken.place}: ${broken.message}. Bring back ${SEALS} as it was, and see: scarfline verify`,
    );
  const last = seals.at(-1);
  if (last !== undefined && last.date > date)
    throw new ArchiveRefused(`The last seal is of ${last.date}; one of ${date} cannot come after it.`);
  const digests = await recordDigests(content, progress);
  const manifest = manifestOf(digests);
  const record = sha256Of(manifest);
  if (last?.record === record) return { unchanged: last };
  const next: Seal = {
    date,
    record,
    before: chainDigest(text),
    files: digests.size,
    manifest: nextManifest(seals, date),
    form: SEAL_FORM,
    rules: RULES_VERSION,
  };
  const whole = text + sealLine(next);
  const making = await beginSeal(content, chain, next.manifest);
  await replaceFile(join(content, next.manifest), manifest);
  const signature = key === undefined ? undefined : signatureFileOf(next.manifest);
  if (key !== undefined && signature !== undefined)
    await replaceFile(join(content, signature), await signatureOf(whole, key));
  await addLine(content, text, whole);
  await making.end();
  return defined({ seal: next, signature });
}

async function addLine(content: string, former: string, whole: string): Promise<void> {
  const path = join(content, SEALS);
  const now = await readFile(path, "latin1").catch(() => "");
  if (now !== former)
    throw new ArchiveRefused(`Another seal was set while this one was in the making. See what it is: scarfline verify`);
  await replaceFile(path, Buffer.from(whole, "latin1"));
}
