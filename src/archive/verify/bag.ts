import { ALGORITHMS, digestsOf } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { UnreadableText } from "../lines.ts";
import { Damaged, type BagSource, type Member } from "../source/source.ts";
import { readDeclaration } from "./declaration.ts";
import { checkFetch, FETCH } from "./fetch.ts";
import { checkOxum, type Info, INFO, readInfo } from "./info.ts";
import { isOurs, tellForm, tellLackingOfOurs, tellRules } from "./ours.ts";
import { type ManifestFile, manifestFileOf, Vouched } from "./vouched.ts";

export interface BagVerified {
  readonly members: readonly Member[];
  readonly info: Info;
  readonly vouched: Vouched;
  /** Bytes whose digests were reckoned. */
  readonly bytes: number;
}

/**
 * Verifies a bag by RFC 8493, anyone's, and tells what is wrong with it.
 *
 * Every file that is read is one that the source itself lists; what a manifest names is only looked up among those. Manifests and files
 * stream, so that memory grows with the number of files in the bag and with nothing else. Nothing is fetched.
 */
export async function verifyBag(
  source: BagSource,
  findings: Tellings,
  progress: (done: number, of: number) => void,
): Promise<BagVerified> {
  let members: readonly Member[] = [];
  let info: Info = [];
  let bytes = 0;
  let vouched = new Vouched([], findings);
  try {
    members = await source.list(findings);
    vouched = new Vouched(members, findings);
    info = await readTags(source, members, vouched, findings);
    vouched.tellUnlisted();
    vouched.tellWeak();
    checkOxum(info, members, findings);
    if (isOurs(members, info)) {
      tellForm(info, findings);
      tellRules(info, findings);
      tellLackingOfOurs(members, info, findings);
    }
    bytes = await checkFiles(source, members, vouched, findings, progress);
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    findings.fault("container", source.name, `this archive ${error.message}; no more of it was read`);
  }
  return { members, info, vouched, bytes };
}

async function readTags(
  source: BagSource,
  members: readonly Member[],
  vouched: Vouched,
  findings: Tellings,
): Promise<Info> {
  const here = new Map(members.map(({ path, size }) => [path, size]));
  if (!here.has("bagit.txt")) findings.fault("missing", "bagit.txt", "missing: without it this is no bag");
  if (![...here.keys()].some((path) => path.startsWith("data/")))
    findings.note("missing", "data/", "there is no file below data/: an empty bag");
  let declared = { version: "1.0", encoding: "UTF-8" };
  let info: Info = [];
  await source.visit(
    (path) => path === "bagit.txt",
    (path, chunks) => readable(path, findings, async () => void (declared = await readDeclaration(chunks, findings))),
  );
  const manifests = members.flatMap(({ path }) => manifestFileOf(path) ?? []);
  tellAlgorithms(manifests, findings);
  await source.visit(
    (path) => path === INFO || path === FETCH || manifestFileOf(path) !== undefined,
    (path, chunks) =>
      readable(path, findings, async () => {
        const manifest = manifestFileOf(path);
        if (path === INFO) info = await readInfo(chunks, declared.encoding, findings);
        else if (path === FETCH) await checkFetch(chunks, declared.encoding, here, findings);
        else if (manifest !== undefined && ALGORITHMS.has(manifest.algorithm))
          await vouched.read(manifest, chunks, declared);
      }),
  );
  return info;
}

function tellAlgorithms(manifests: readonly ManifestFile[], findings: Tellings): void {
  const payload = manifests.filter(({ isTag }) => !isTag);
  if (payload.length === 0)
    findings.fault("missing", "manifest-sha512.txt", "missing: there is no manifest of the payload");
  else if (!payload.some(({ algorithm }) => ALGORITHMS.has(algorithm)))
    findings.fault(
      "not vouched for",
      payload[0]?.path ?? "",
      "no manifest of the payload is of an algorithm that is known here",
    );
  const ofTags = manifests.filter(({ isTag }) => isTag);
  for (const { path, algorithm } of payload) {
    const isAlone = ofTags.length > 0 && !ofTags.some((tag) => tag.algorithm === algorithm);
    if (isAlone)
      findings.note(
        "missing",
        `tagmanifest-${algorithm}.txt`,
        `not here, though ${path} and a tag manifest of another algorithm are`,
      );
  }
  for (const { path, algorithm } of manifests)
    if (!ALGORITHMS.has(algorithm))
      findings.note("not checked", path, `not checked: the algorithm ${algorithm} is not known here`);
}

async function checkFiles(
  source: BagSource,
  members: readonly Member[],
  vouched: Vouched,
  findings: Tellings,
  progress: (done: number, of: number) => void,
): Promise<number> {
  const sizes = new Map(members.map(({ path, size }) => [path, size]));
  const of = members.reduce((sum, { path, size }) => sum + (vouched.algorithmsOf(path).length > 0 ? size : 0), 0);
  let done = 0;
  const passed = (bytes: number): void => progress((done += bytes), of);
  await source.visit(
    (path) => vouched.algorithmsOf(path).length > 0,
    async (path, chunks) => {
      try {
        const found = await digestsOf(chunks, vouched.algorithmsOf(path), passed);
        if (found.size !== sizes.get(path))
          findings.fault("count", path, `${found.size} bytes, where the archive says ${sizes.get(path)}`);
        vouched.check(path, found);
      } catch (error) {
        if (!["ELOOP", "ENOENT"].includes((error as NodeJS.ErrnoException).code ?? "")) throw error;
        findings.fault("changed", path, "changed while it was checked");
      }
    },
  );
  return done;
}

async function readable(path: string, findings: Tellings, read: () => Promise<void>): Promise<void> {
  try {
    await read();
  } catch (error) {
    if (!(error instanceof UnreadableText)) throw error;
    findings.fault("encoding", `${path}:${error.line}`, `this file ${error.message}; the rest of it was not read`);
  }
}
