/**
 * The list of mutants that no test can kill, each with its reason: `survivors.md`. Lines move, so they are not compared; what is listed once
 * lets one mutant of that file and change live, what is listed twice lets two.
 */
import { readFileSync } from "node:fs";
import type { Mutant } from "./journal.ts";

/** Between single backticks, or double ones where the change holds a backtick itself. */
const ITEM = /^- `(?<file>[^`:]+)(?::\d+)?` (?<fence>`+)(?<change>.+?)\k<fence>$/;

const keyOf = ({ file, original, replacement }: Mutant): string => `${file} ${original} → ${replacement}`;

/** How often each change is listed. */
function listed(): Map<string, number> {
  const times = new Map<string, number>();
  for (const line of readFileSync(new URL("survivors.md", import.meta.url), "utf8").split("\n")) {
    const { file, change } = ITEM.exec(line)?.groups ?? {};
    if (file === undefined || change === undefined) continue;
    const key = `${file} ${change.trim()}`;
    times.set(key, (times.get(key) ?? 0) + 1);
  }
  return times;
}

/** Whether a mutant's change is listed at all. */
export function isListed(): (mutant: Mutant) => boolean {
  const times = listed();
  return (mutant) => times.has(keyOf(mutant));
}

/** Of mutants that lived, those that the list has; and what it has of these files that did not live. */
export function heldAgainstList(
  lived: readonly Mutant[],
  files: ReadonlySet<string>,
): { readonly known: ReadonlySet<string>; readonly stale: readonly string[] } {
  const left = listed();
  const known = new Set<string>();
  for (const mutant of lived) {
    const times = left.get(keyOf(mutant)) ?? 0;
    if (times > 0) known.add(mutant.id);
    left.set(keyOf(mutant), times - 1);
  }
  const stale = [...left].flatMap(([key, times]) =>
    times > 0 && files.has(key.slice(0, key.indexOf(" "))) ? [key] : [],
  );
  return { known, stale };
}

export const told = ({ file, line, original, replacement }: Mutant): string =>
  `- \`${file}:${line}\` \`\` ${original} → ${replacement} \`\``;
