/** Judges a folder of bags laid out as the published conformance suite of BagIt is: VERSION/CATEGORY/BAG. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { Findings } from "../../../src/archive/finding.ts";
import { lookAt } from "../../../src/archive/source/open.ts";
import { verifyBags } from "../../../src/archive/verify/verify.ts";

export interface Judged {
  /** Such as `v0.97/invalid/corrupt-data-file`. */
  readonly bag: string;
  readonly verdict: "as expected" | "differs, by RFC 8493" | "unexplained";
  /** What was found, or the words of RFC 8493 that the difference stands on. */
  readonly why: string;
}

/** A bag of this category must be called faultless, or faulty; `warned` must be faultless and yet say something. */
const EXPECTED: { readonly [category: string]: "faultless" | "faulty" | "warned" } = {
  valid: "faultless",
  invalid: "faulty",
  warning: "warned",
  "linux-only": "faulty",
  "windows-only": "faulty",
};

/**
 * A bag that the suite lets pass with a warning may lack a file on this disk: two names that differ in capitals, or in the form of their
 * letters, are one file on some disks, and hidden files get lost on the way. RFC 8493, section 3.
 */
const LACKS =
  'a file that the manifest names is not here, and RFC 8493 (section 3) says of a complete bag: "Every file listed in every payload manifest MUST be present."';
const OF_A_LACK = new Set(["missing", "same name", "count"]);

export async function judged(suite: string): Promise<Judged[]> {
  const bags = foldersIn(suite)
    .filter((name) => /^v\d+\.\d+$/.test(name))
    .flatMap((version) => foldersIn(join(suite, version)).map((category) => join(version, category)))
    .flatMap((category) => foldersIn(join(suite, category)).map((bag) => join(category, bag)));
  const all: Judged[] = [];
  for (const bag of bags.sort()) all.push(await judge(suite, bag));
  return all;
}

async function judge(suite: string, bag: string): Promise<Judged> {
  const [, category = ""] = bag.split("/");
  const expected = EXPECTED[category];
  const found = await lookAt(join(suite, bag));
  if (expected === undefined) return { bag, verdict: "unexplained", why: `no category of the suite: ${category}` };
  if (found.kind !== "bags") return { bag, verdict: "unexplained", why: `taken for no bag: ${found.kind}` };
  const findings = new Findings();
  await verifyBags(found, findings, () => undefined);
  const faults = findings.all.filter(({ severity }) => severity === "fault");
  const [first] = expected === "faultless" ? findings.all : [...faults, ...findings.all];
  const why = first === undefined ? "nothing was found" : `${first.severity} ${first.place}: ${first.message}`;
  const isAsExpected =
    expected === "faulty"
      ? faults.length > 0
      : faults.length === 0 && (expected === "faultless" || first !== undefined);
  if (isAsExpected) return { bag, verdict: "as expected", why };
  const isLack = expected === "warned" && faults.length > 0 && faults.every(({ kind }) => OF_A_LACK.has(kind));
  return isLack
    ? { bag, verdict: "differs, by RFC 8493", why: `${LACKS} ${why}` }
    : { bag, verdict: "unexplained", why };
}

function foldersIn(path: string): string[] {
  return readdirSync(path, { withFileTypes: true })
    .filter((item) => item.isDirectory())
    .map(({ name }) => name);
}
