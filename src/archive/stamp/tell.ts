import { defined } from "../../defined.ts";
import { join } from "node:path";
import type { Tellings } from "../finding.ts";
import { chainDigest, fileBeside, SEALS, type SetSeal } from "../seal/chain.ts";
import { sealFiles } from "../seal/left-over.ts";
import { sealWords } from "../seal/since.ts";
import { timeFault, timeWords } from "./stamp.ts";
import { queryDigest, readReply, replyFault } from "./token.ts";

/**
 * Holds each time stamp against its seal, at the stamp's own time, so that it holds long after the authority's certificates have run out.
 * A stamp of a seal proves every seal before it too. Without `authority` a reply is held against the certificates that were kept with
 * it, and whose those are is told as not checked; who names an authority gets a fault where no stamp of it is here.
 * @param authority a file of the authority's certificates, PEM
 */
export async function tellStamps(
  content: string,
  seals: readonly SetSeal[],
  authority: string | undefined,
  now: Date,
  findings: Tellings,
): Promise<void> {
  const there = new Set(await sealFiles(content));
  let stamped = 0;
  for (const [index, seal] of seals.entries()) {
    const [query, reply, chain] = (["query", "reply", "authority"] as const).map((kind) =>
      there.has(fileBeside(seal.manifest, kind)) ? fileBeside(seal.manifest, kind) : undefined,
    );
    if (reply !== undefined) {
      if (await tellOne(content, seal, { query, reply, chain }, authority, now, findings)) stamped = index + 1;
    } else if (query !== undefined) await tellUnanswered(content, seal, query, findings);
    else if (chain !== undefined)
      findings.fault("stamp", chain, `certificates for a time stamp of ${sealWords(seal)}, and the stamp is gone`);
  }
  if (authority !== undefined && stamped === 0)
    findings.fault("stamp", SEALS, `no seal is stamped by an authority in ${authority}`);
  else if (stamped > 0 && stamped < seals.length)
    findings.note("stamp", SEALS, `the last stamp is of line ${stamped}; the lines after it are not stamped`);
}

interface Files {
  readonly query: string | undefined;
  readonly reply: string;
  readonly chain: string | undefined;
}

/** Whether it holds. */
async function tellOne(
  content: string,
  seal: SetSeal,
  { query, reply: file, chain }: Files,
  authority: string | undefined,
  now: Date,
  findings: Tellings,
): Promise<boolean> {
  const fault = (why: string): false => {
    findings.fault("stamp", file, `the time stamp of ${sealWords(seal)} does not hold: ${why}`);
    return false;
  };
  const reply = await readReply(join(content, file));
  if ("why" in reply) return fault(reply.why);
  if (reply.digest !== chainDigest(seal.upTo)) return fault("it stamps another digest than this seal's");
  const trusted = authority ?? (chain === undefined ? undefined : join(content, chain));
  const why = await replyFault(
    join(content, file),
    reply,
    defined({
      digest: reply.digest,
      query: query === undefined ? undefined : join(content, query),
      authority: trusted,
    }),
  );
  const wrong = why ?? timeFault(seal, reply, now);
  if (wrong !== undefined) return fault(wrong);
  if (query === undefined)
    findings.note("not checked", file, "the query it answers is gone, so its nonce was not checked");
  const stamped = `${sealWords(seal)}, and every seal before it, was set by ${timeWords(reply.at)}, as ${reply.by || "the authority"} stamped`;
  if (authority === undefined)
    findings.note(
      "not checked",
      file,
      `${stamped}; whose certificate that is was not checked, which needs --authority`,
    );
  else findings.note("stamp", file, stamped);
  return true;
}

async function tellUnanswered(content: string, seal: SetSeal, query: string, findings: Tellings): Promise<void> {
  if ((await queryDigest(join(content, query))) !== chainDigest(seal.upTo))
    findings.fault("stamp", query, `this query is not of ${sealWords(seal)}`);
  else
    findings.note(
      "stamp",
      query,
      `asks for a time stamp of ${sealWords(seal)}, and no reply is here. Keep it: scarfline seal --reply FILE`,
    );
}
