/** A witness outside: an authority that stamps the digest of a seal with its own time. This program sends nothing; the builder does. */
import { DAY_MS } from "../../facts/quantity/conversions.ts";
import { defined } from "../../defined.ts";
import { copyFile, mkdtemp, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { replaceFile } from "../durable.ts";
import { Findings } from "../finding.ts";
import { ArchiveRefused } from "../refused.ts";
import { chainDigest, fileBeside, readChain, SEALS, type SetSeal } from "../seal/chain.ts";
import { sealWords } from "../seal/since.ts";
import { queryFor, readReply, type Reply, replyFault } from "./token.ts";

/** Longer than any reply with the certificates in it. */
const LONGEST = 1024 * 1024;

export interface Asked {
  readonly seal: SetSeal;
  /** From the record's folder. */
  readonly query: string;
  /** The query was there already, and is the one to send; another would not fit the reply to it. */
  readonly stood: boolean;
}

/**
 * Writes the query for a stamp of the last seal's digest: what `head -n N seals.txt | sha256sum` prints.
 * @throws ArchiveRefused where there is no seal, its list is not whole, or it has been stamped
 */
export async function askForStamp(content: string): Promise<Asked> {
  const seal = (await wholeChain(content)).at(-1);
  if (seal === undefined) throw new ArchiveRefused("There is no seal to be stamped.");
  if (await isThere(join(content, fileBeside(seal.manifest, "reply"))))
    throw new ArchiveRefused(`${capital(sealWords(seal))} has been stamped: ${fileBeside(seal.manifest, "reply")}`);
  const query = fileBeside(seal.manifest, "query");
  const stood = await isThere(join(content, query));
  if (!stood) await replaceFile(join(content, query), await queryFor(chainDigest(seal.upTo)));
  return { seal, query, stood };
}

export interface Kept {
  readonly seal: SetSeal;
  readonly reply: Reply;
  /** Files that were put beside the seal, from the record's folder. */
  readonly files: readonly string[];
}

/**
 * Checks a reply against the query and the seal it answers, and keeps it beside the seal, with the certificates it was held against.
 * @param authority a file of the authority's certificates, PEM
 * @throws ArchiveRefused where it does not hold, saying why; nothing is kept then
 */
export async function keepReply(
  content: string,
  file: string,
  authority: string | undefined,
  now: Date,
): Promise<Kept> {
  await refuseUnreadable(file);
  if (authority !== undefined) await refuseUnreadable(authority);
  const folder = await mkdtemp(join(tmpdir(), "scarfline-reply-"));
  try {
    // A copy, so that what is checked is what is kept.
    const copy = join(folder, "reply.tsr");
    const chain = authority === undefined ? undefined : join(folder, "authority.pem");
    await copyFile(file, copy);
    if (authority !== undefined && chain !== undefined) await copyFile(authority, chain);
    const { seal, reply } = await checked(content, file, copy, chain, now);
    const files = [fileBeside(seal.manifest, "reply")];
    if (chain !== undefined) {
      files.push(fileBeside(seal.manifest, "authority"));
      await replaceFile(join(content, fileBeside(seal.manifest, "authority")), await readFile(chain));
    }
    await replaceFile(join(content, fileBeside(seal.manifest, "reply")), await readFile(copy));
    return { seal, reply, files };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function checked(
  content: string,
  file: string,
  copy: string,
  authority: string | undefined,
  now: Date,
): Promise<{ seal: SetSeal; reply: Reply }> {
  const refused = (why: string): ArchiveRefused => new ArchiveRefused(`${file} is not kept: ${why}.`);
  const reply = await readReply(copy);
  if ("why" in reply) throw refused(reply.why);
  const seals = await wholeChain(content);
  const seal = seals.find((each) => chainDigest(each.upTo) === reply.digest);
  if (seal === undefined)
    throw refused(`it stamps ${reply.digest || "no SHA-256"}, which is the digest of no seal in ${SEALS}`);
  const query = fileBeside(seal.manifest, "query");
  if (await isThere(join(content, fileBeside(seal.manifest, "reply"))))
    throw refused(`${sealWords(seal)} has been stamped`);
  if (!(await isThere(join(content, query))))
    throw refused(
      `the query it answers is not here (${query}), so it may be an old reply. Ask anew: scarfline seal --stamp`,
    );
  const against = defined({ digest: reply.digest, query: join(content, query), authority });
  const fault = (await replyFault(copy, reply, against)) ?? timeFault(seal, reply, now);
  if (fault !== undefined) throw refused(fault);
  return { seal, reply };
}

/**
 * What the clocks show, as the end of a sentence: a stamp before the seal's day, or one of a day that is still to come.
 * A day is let pass either way, since a seal's day is that of the builder's own time zone.
 */
export function timeFault({ date }: Pick<SetSeal, "date">, { at }: Pick<Reply, "at">, now: Date): string | undefined {
  if (at < Date.parse(date) - DAY_MS)
    return `it was stamped at ${timeWords(at)}, before the day that the seal says it was set on, ${date}: one of the two is wrong`;
  if (at > now.getTime() + DAY_MS)
    return `it was stamped at ${timeWords(at)}, which is still to come by the clock of this machine: one of the two is wrong`;
  return undefined;
}

/** Such as `2026-11-20 18:04:05 UTC`. */
export function timeWords(at: number): string {
  return `${new Date(at).toISOString().slice(0, 19).replace("T", " ")} UTC`;
}

async function wholeChain(content: string): Promise<readonly SetSeal[]> {
  const findings = new Findings();
  const { seals } = await readChain(content, findings);
  const [broken] = findings.all;
  if (broken !== undefined)
    throw new ArchiveRefused(
      `The list of seals is not whole. ${broken.place}: ${broken.message}. See: scarfline verify`,
    );
  return seals;
}

async function refuseUnreadable(file: string): Promise<void> {
  const found = await stat(file).catch(() => undefined);
  if (found?.isFile() !== true) throw new ArchiveRefused(`There is no file at ${file}.`);
  if (found.size > LONGEST) throw new ArchiveRefused(`${file} is longer than any reply or certificate is.`);
}

async function isThere(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
