/** Whether bags that lie together are all the parts of one, and of the same one. */
import type { Tellings } from "../finding.ts";
import { linesOf } from "../lines.ts";
import { manifestLineOf } from "../manifest.ts";
import { openBag } from "../source/open.ts";
import type { BagVerified } from "./bag.ts";
import { INFO, infoOf } from "./info.ts";
import { RECORD_LIST } from "./ours.ts";

export type BagAt = BagVerified & { readonly path: string };

interface Part {
  readonly bag: BagAt;
  readonly part: number;
  /** Undefined where the bag does not know of how many, which RFC 8493 writes as `?`. */
  readonly of: number | undefined;
  readonly group: string;
}

/** More parts than anyone makes; a bag that speaks of more cannot make this one count for ever. */
const MOST_PARTS = 10_000;

/**
 * `Bag-Count: 2 of 5` says that there are others. Of one bag that someone gives by itself that is only told, since RFC 8493 finds it
 * valid; of a folder that is given as the whole, any part that is not in it is missing.
 * @param asWhole whether the folder that holds the bags was given
 */
export async function tellGroup(bags: readonly BagAt[], asWhole: boolean, findings: Tellings): Promise<void> {
  const parts = bags.flatMap((bag) => partOf(bag, bags.length > 1 ? `${bag.path}: ${INFO}` : INFO, findings));
  for (const group of new Set(parts.map((each) => each.group))) {
    const ofGroup = parts.filter((each) => each.group === group);
    const lacking = tellLacking(ofGroup, asWhole, findings);
    if (ofGroup.length > 1) await tellMixed(ofGroup, lacking === 0, findings);
  }
}

function partOf(bag: BagAt, place: string, findings: Tellings): Part[] {
  const said = infoOf(bag.info, "Bag-Count");
  if (said === undefined) return [];
  const [, part, of] = /^(\d{1,9}) of (\d{1,9}|\?)$/.exec(said) ?? [];
  if (part === undefined || of === undefined) {
    findings.note(
      "group",
      place,
      `Bag-Count is not of the form \`2 of 5\`, so nothing is known of other parts: ${said}`,
    );
    return [];
  }
  const count = of === "?" ? undefined : Number(of);
  if (Number(part) === 0 || (count !== undefined && Number(part) > count))
    findings.fault("group", place, `Bag-Count says part ${part} of ${of}, and there can be none such`);
  return [{ bag, part: Number(part), of: count, group: infoOf(bag.info, "Bag-Group-Identifier") ?? "" }];
}

/** Returns how many parts are not here. */
function tellLacking(parts: readonly Part[], asWhole: boolean, findings: Tellings): number {
  const said = new Set(parts.flatMap(({ of }) => of ?? []));
  if (said.size > 1)
    findings.fault("group", INFO, `these parts do not agree on how many there are: ${[...said].sort().join(", ")}`);
  for (const part of new Set(parts.map((each) => each.part))) {
    const same = parts.filter((each) => each.part === part);
    if (same.length > 1)
      findings.fault(
        "group",
        INFO,
        `part ${part} is here ${same.length} times: ${same.map(({ bag }) => bag.path).join(", ")}`,
      );
  }
  const of = Math.min(Math.max(...said, ...parts.map(({ part }) => part)), MOST_PARTS);
  const here = new Set(parts.map(({ part }) => part));
  const lacking = Array.from({ length: of }, (_, index) => index + 1).filter((part) => !here.has(part));
  const words = `${parts.length === 1 ? "this is one part" : `these are ${parts.length} parts`} of ${of}`;
  if (lacking.length > 0)
    findings[asWhole ? "fault" : "note"](
      "group",
      INFO,
      `${words}; not here: ${lacking.slice(0, 20).join(", ")}${lacking.length > 20 ? ", …" : ""}`,
    );
  else if (said.size === 0)
    findings.note("group", INFO, `${words.replace(/ of \d+$/, "")}; of how many, nobody knew when they were bagged`);
  return lacking.length;
}

/** Parts of two bags, such as one made before a correction and one after it, are each sound and yet not one record. */
async function tellMixed(parts: readonly Part[], areAll: boolean, findings: Tellings): Promise<void> {
  const first = new Map<string, { readonly digest: string; readonly bag: string }>();
  for (const { bag } of parts)
    for (const { path } of bag.members) {
      const digest = path.startsWith("data/") ? bag.vouched.digestOf(path, "sha256") : undefined;
      const known = first.get(path);
      if (digest === undefined) continue;
      if (known === undefined) first.set(path, { digest, bag: bag.path });
      else if (known.digest !== digest)
        findings.fault(
          "group",
          path,
          `is another file in ${bag.path} than in ${known.bag}: these are not parts of one bag`,
        );
    }
  const [one] = parts;
  if (areAll && one !== undefined && first.has(RECORD_LIST)) await tellUnlisted(one.bag, first, findings);
}

/** Holds all parts together against the list of the whole record. */
async function tellUnlisted(
  bag: BagAt,
  together: ReadonlyMap<string, { readonly digest: string }>,
  findings: Tellings,
): Promise<void> {
  const source = await openBag(bag.path);
  const listed = new Set<string>();
  try {
    await source.list({ fault: () => undefined, note: () => undefined });
    await source.visit(
      (member) => member === RECORD_LIST,
      async (_member, chunks) => {
        for await (const { text } of linesOf(chunks, "utf-8")) {
          const line = manifestLineOf(text, "sha256");
          if (line === undefined) continue;
          listed.add(`data/${line.path}`);
          if (together.get(`data/${line.path}`)?.digest !== line.digest)
            findings.fault("missing", `data/${line.path}`, `is in no part as ${RECORD_LIST} says`);
        }
      },
    );
  } finally {
    await source.close();
  }
  for (const path of together.keys())
    if (path.startsWith("data/record/") && !listed.has(path))
      findings.fault("unexpected", path, `${RECORD_LIST} does not name it`);
}
