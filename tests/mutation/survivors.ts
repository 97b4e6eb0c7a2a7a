/** The list of mutants that no test can kill, each with its reason: `survivors.md`. Lines move, so they are not compared. */
import { readFileSync } from "node:fs";
import type { Mutant } from "./journal.ts";

const ITEM = /^- `(?<file>[^`:]+)(?::\d+)?` ``(?<change>.+?)``/;

export const changeOf = ({ original, replacement }: Mutant): string => `${original} → ${replacement}`;

/** Whether a mutant is on the list. */
export function listed(): (mutant: Mutant) => boolean {
  const lines = readFileSync(new URL("survivors.md", import.meta.url), "utf8").split("\n");
  const known = new Set(lines.flatMap((line) => {
    const { file, change } = ITEM.exec(line)?.groups ?? {};
    return file !== undefined && change !== undefined ? [`${file} ${change.trim()}`] : [];
  }));
  return (mutant) => known.has(`${mutant.file} ${changeOf(mutant)}`);
}

export const told = (mutant: Mutant): string => `- \`${mutant.file}:${mutant.line}\` \`\` ${changeOf(mutant)} \`\``;
