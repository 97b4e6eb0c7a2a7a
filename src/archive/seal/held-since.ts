import { join } from "node:path";
import { defined } from "../../defined.ts";
import type { ListedSeal, NamedSeal, SealedSince } from "../../editions/shown.ts";
import type { Entry } from "../../facts/types.ts";
import { bytesOf, digestsOf } from "../digest.ts";
import { Findings } from "../finding.ts";
import { type Chain, chainDigest, fileBeside, readChain } from "./chain.ts";
import { sealFiles } from "./left-over.ts";
import { sealedDigests } from "./verify-record.ts";

/** The last seal as pages name it; undefined where none is set. */
export async function lastSeal(
  content: string,
  entries: readonly Pick<Entry, "id" | "file">[],
): Promise<NamedSeal | "broken" | undefined> {
  const findings = new Findings();
  const chain = await readChain(content, findings);
  const last = chain.seals.at(-1);
  if (findings.faults > 0) return "broken";
  if (last === undefined) return undefined;
  const since = await heldSince(content, chain, entries);
  const all = await listedSeals(content, chain);
  return { number: chain.seals.length, date: last.date, digest: chainDigest(last.upTo), since, all };
}

async function listedSeals(content: string, { seals }: Chain): Promise<ListedSeal[]> {
  const there = new Set(await sealFiles(content));
  return seals.map(({ date, manifest, record, upTo }, index) => {
    const has = (kind: Parameters<typeof fileBeside>[1]): boolean => there.has(fileBeside(manifest, kind));
    const stamp = has("reply") ? (has("authority") ? "with certificates" : "alone") : undefined;
    const digest = chainDigest(upTo);
    return defined({ number: index + 1, date, digest, manifest, record, isSigned: has("signature"), stamp });
  });
}

/**
 * For each entry whose file is as the last seal holds it: the first seal since when it has been the same in every one.
 * Entries that were changed or written since the last seal are not in it, and none is where a list of files cannot be read.
 */
async function heldSince(
  content: string,
  { seals }: Chain,
  entries: readonly Pick<Entry, "id" | "file">[],
): Promise<ReadonlyMap<string, SealedSince>> {
  let held = new Map<string, { readonly digest: string; readonly since: SealedSince }>();
  for (const [index, seal] of seals.entries()) {
    const digests = await sealedDigests(content, seal, new Findings());
    if (digests === undefined) return new Map();
    const now: typeof held = new Map();
    for (const { id, file } of entries) {
      const digest = digests.get(file);
      const before = held.get(id);
      if (digest === undefined) continue;
      const since = before?.digest === digest ? before.since : { number: index + 1, date: seal.date };
      now.set(id, { digest, since });
    }
    held = now;
  }
  const since = new Map<string, SealedSince>();
  for (const { id, file } of entries) {
    const last = held.get(id);
    if (last === undefined) continue;
    const { digests } = await digestsOf(bytesOf(join(content, file), { followLinks: true }), ["sha256"]);
    if (digests.get("sha256") === last.digest) since.set(id, last.since);
  }
  return since;
}
