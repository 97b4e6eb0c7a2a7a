/** What every bag of this program has, so that one which lost it all alike can still be told. */
import { EARLIER_WORDS, RULES_VERSION } from "../../evidence/version.ts";
import { FORM_LABEL, MANIFEST_ALGORITHMS, RULES_LABEL } from "../bag/tags.ts";
import type { Tellings } from "../finding.ts";
import { README } from "../bag/readme.ts";
import { BAG_FORM } from "../form.ts";
import type { Member } from "../source/source.ts";
import { type Info, INFO, infoOf } from "./info.ts";

/** The list of the whole record, which each part of a bag of ours holds. */
export const RECORD_LIST = "data/record.sha256";

/** What lies beside the payload, by the form of the bag. */
const tagsOf = (form: number): readonly string[] => (form < 3 ? TAGS : [...TAGS, README]);

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
  const form = versionIn(info, FORM_LABEL, findings);
  if (form === undefined) return;
  if (form > BAG_FORM)
    findings.fault(
      "form",
      INFO,
      `this bag is of a form (${form}) that is later than this program knows (${BAG_FORM}), so not all of it can be checked; use a later one`,
    );
}

/** Verdicts in a bag stay those of the rules it was made by: whoever reads them now is told in which words they are. */
export function tellRules(info: Info, findings: Tellings): void {
  const rules = versionIn(info, RULES_LABEL, findings);
  if (rules === undefined || rules === RULES_VERSION) return;
  const words = EARLIER_WORDS.filter(({ until }) => rules <= until).map(({ word, now }) => `${word} is now ${now}`);
  findings.note(
    "form",
    INFO,
    rules > RULES_VERSION
      ? `its verdicts are by later rules (${rules}) than those of this program (${RULES_VERSION})`
      : `its verdicts are by earlier rules (${rules}) than those of this program (${RULES_VERSION}), which may judge otherwise${words.map((each) => `; what it calls ${each}`).join("")}`,
  );
}

function versionIn(info: Info, label: string, findings: Tellings): number | undefined {
  const said = infoOf(info, label) ?? "1";
  if (/^[1-9]\d{0,2}$/.test(said)) return Number(said);
  findings.fault("form", INFO, `${label} is no number: ${said}`);
  return undefined;
}

/** Other people's bags may lack tag manifests, or have more tag files; none of ours does. */
export function tellLackingOfOurs(members: readonly Member[], info: Info, findings: Tellings): void {
  const here = new Set(members.map(({ path }) => path));
  const tags = tagsOf(formOf(members, info));
  for (const path of tags)
    if (!here.has(path)) findings.fault("missing", path, "missing: every bag that this program writes has it");
  for (const path of here)
    if (!path.startsWith("data/") && !tags.includes(path))
      findings.fault("unexpected", path, "unexpected: no bag that this program writes has it");
  if (here.has(INFO) && infoOf(info, "Payload-Oxum") === undefined)
    findings.fault("missing", INFO, "Payload-Oxum is missing: every bag that this program writes has it");
}

/** As it says; one that lost that line is of the last form before the README moved if it has one in its payload. */
function formOf(members: readonly Member[], info: Info): number {
  const said = infoOf(info, FORM_LABEL);
  if (said !== undefined && /^[1-9]\d{0,2}$/.test(said)) return Number(said);
  return members.some(({ path }) => path === `data/${README}`) ? 2 : BAG_FORM;
}
