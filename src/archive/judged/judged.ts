/** The record of an archive, reckoned once more by the rules of today. What was published stays as it was. */
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { editionOf } from "../../editions/edition.ts";
import { reckon } from "../../evidence/evidence.ts";
import type { Day } from "../../facts/types.ts";
import { filledLedgers } from "../../pages/ledgers/ledgers.ts";
import type { Problem } from "../../problem.ts";
import { readRecord } from "../../record/read.ts";
import { bringBackRecord } from "../restore.ts";
import type { BagAt } from "../verify/group.ts";
import { type Compared, compared, LEDGERS_JUDGED } from "./compare.ts";
import { publishedIn } from "./published.ts";

/** What the rules of today say, or why they cannot read the record. */
export type JudgedAnew = { readonly rules: number; readonly day: Day } & (
  | Compared
  | { readonly problems: readonly Problem[] }
);

/**
 * Judges the record of bags that were found without faults anew, as of the day that they were made for. A record that lies in an unpacked
 * bag is read where it is; else it is brought back into a folder of the system’s for the while.
 * @throws ArchiveRefused where they hold no record, or no verdicts
 */
export async function judgeAnew(bags: readonly BagAt[], today: Day): Promise<JudgedAnew> {
  const { ledgers: published, day, rules } = await publishedIn(bags);
  const [one] = bags;
  if (bags.length === 1 && one !== undefined && (await stat(one.path)).isDirectory())
    return { rules, day, ...(await heldAgainst(join(one.path, "data/record"), published, day, rules, today)) };
  const folder = await mkdtemp(join(tmpdir(), "scarfline-"));
  try {
    const record = join(folder, "record");
    await bringBackRecord(bags, record);
    return { rules, day, ...(await heldAgainst(record, published, day, rules, today)) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function heldAgainst(
  record: string,
  published: Parameters<typeof compared>[0],
  day: Day,
  rules: number,
  today: Day,
): Promise<Compared | { readonly problems: readonly Problem[] }> {
  const read = await readRecord(record, { today, day });
  if ("problems" in read) return { problems: read.problems };
  const shown = editionOf(read.record, reckon(read.record), "archive");
  const wanted = filledLedgers(shown).filter(({ ledger: { name } }) => LEDGERS_JUDGED.includes(name));
  const present = new Map(wanted.map(({ ledger }) => [ledger.name, ledger.rows(shown)]));
  return compared(published, present, rules);
}
