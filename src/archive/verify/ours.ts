/** What every bag of this program has, so that one which lost it all alike can still be told. */
import { MANIFEST_ALGORITHMS } from "../bag/tags.ts";
import type { Tellings } from "../finding.ts";
import type { Member } from "../source/source.ts";
import { RECORD_LIST } from "./group.ts";
import { type Info, INFO, infoOf } from "./info.ts";

const TAGS = [
  "bagit.txt",
  INFO,
  ...MANIFEST_ALGORITHMS.flatMap((name) => [`manifest-${name}.txt`, `tagmanifest-${name}.txt`]),
];

/** By what it says of itself, or by what is in it: the payload's manifests vouch for that, and nothing for `bag-info.txt` when the tag manifests are gone. */
export function isOurs(members: readonly Member[], info: Info): boolean {
  return (
    infoOf(info, "Bag-Software-Agent")?.startsWith("Scarfline ") === true ||
    members.some(({ path }) => path === RECORD_LIST || path === "data/rules.json")
  );
}

/** Other people's bags may lack tag manifests, or have more tag files; none of ours does. */
export function tellLackingOfOurs(members: readonly Member[], info: Info, findings: Tellings): void {
  const here = new Set(members.map(({ path }) => path));
  for (const path of TAGS)
    if (!here.has(path)) findings.fault("missing", path, "missing: every bag that this program writes has it");
  for (const path of here)
    if (!path.startsWith("data/") && !TAGS.includes(path))
      findings.fault("unexpected", path, "unexpected: no bag that this program writes has it");
  if (here.has(INFO) && infoOf(info, "Payload-Oxum") === undefined)
    findings.fault("missing", INFO, "Payload-Oxum is missing: every bag that this program writes has it");
}
