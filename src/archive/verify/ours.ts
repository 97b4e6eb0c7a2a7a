/** What every bag of this program has, so that one which lost it all alike can still be told. */
import { FORM_LABEL, MANIFEST_ALGORITHMS } from "../bag/tags.ts";
import type { Tellings } from "../finding.ts";
import { BAG_FORM } from "../form.ts";
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

/** Bags from before versions were written down are of the first form; of what a later form asks nothing is known. */
export function tellForm(info: Info, findings: Tellings): void {
  const said = infoOf(info, FORM_LABEL) ?? "1";
  const form = /^[1-9]\d{0,2}$/.test(said) ? Number(said) : undefined;
  if (form === undefined) findings.fault("form", INFO, `${FORM_LABEL} is no number: ${said}`);
  else if (form > BAG_FORM)
    findings.fault(
      "form",
      INFO,
      `this bag is of a form (${form}) that is later than this program knows (${BAG_FORM}), so not all of it can be checked; use a later one`,
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
