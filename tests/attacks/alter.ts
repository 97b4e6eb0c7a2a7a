/**
 * Changes of the attacks' record beside those of tests/record/change.ts:
 *
 *   @ rows 2025-03-05 00:00 to 2025-03-05 06:00     rows of the logger's file, both ends with them, of which each
 *   + 9.0;50                                        reads so; without such a line they are taken out
 *   @ entry 2025-03-21 spar A notice came           an entry of its own on that day, of that assembly, with that title
 *   + recalls: …
 *   @ amends 2025-03-03-caps                        an entry that amends that one; the first on 2025-03-26, the next a day later
 *   + seen_by: karl
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { change } from "../record/change.ts";

/** Throws where a text to be replaced does not stand in its file exactly once, or where no row lies between two moments. */
export function alter(folder: string, lines: readonly string[]): void {
  for (const [head = "", ...rest] of grouped(lines)) {
    const [, verb, what = ""] = /^@ (rows|entry|amends) (.+)$/.exec(head) ?? [];
    const text = rest.map((line) => line.slice(2));
    if (verb === "rows") rows(folder, what, text);
    else if (verb === "entry") entry(folder, what, text);
    else if (verb === "amends") amends(folder, what, text);
    else change(folder, [head, ...rest]);
  }
}

function grouped(lines: readonly string[]): string[][] {
  const groups: string[][] = [];
  for (const line of lines) {
    if (line.startsWith("@ ")) groups.push([line]);
    else groups.at(-1)?.push(line);
  }
  return groups;
}

function rows(folder: string, span: string, [values]: readonly string[]): void {
  const [from = "", to = ""] = span.split(" to ");
  const path = join(folder, "climate/shop.csv");
  let touched = 0;
  const kept = readFileSync(path, "utf8")
    .split("\n")
    .flatMap((row) => {
      const [stamp = ""] = row.split(";");
      if (!/^\d/.test(stamp) || stamp < from || stamp > to) return [row];
      touched += 1;
      return values === undefined ? [] : [`${stamp};${values}`];
    });
  if (touched === 0) throw new Error(`no row lies between ${from} and ${to}`);
  writeFileSync(path, kept.join("\n"));
}

function entry(folder: string, what: string, lines: readonly string[]): void {
  const [, day = "", assembly = "", title = ""] = /^(\S+) (\S+) (.+)$/.exec(what) ?? [];
  const words = title.toLowerCase().replaceAll(/[^a-z]+/g, "-");
  write(folder, `${day}-${words}`, [`date: ${day}`, `assembly: ${assembly}`, `title: ${title}`, ...lines]);
}

const FIRST_AMENDED = 26;

function amends(folder: string, id: string, lines: readonly string[]): void {
  let day = FIRST_AMENDED;
  while (existsSync(join(folder, `entries/2025-03-${day}-amends.md`))) day += 1;
  const own = lines.map((line) => `    ${line}`);
  const head = [`date: 2025-03-${day}`, "assembly: spar", "title: Written down wrong", "amends:"];
  write(folder, `2025-03-${day}-amends`, [...head, `  - entry: ${id}`, "    why: the slip says otherwise", ...own]);
}

function write(folder: string, id: string, lines: readonly string[]): void {
  const path = join(folder, `entries/${id}.md`);
  if (existsSync(path)) throw new Error(`${id} is there already`);
  mkdirSync(join(folder, "entries"), { recursive: true });
  writeFileSync(path, ["---", ...lines, "---", ""].join("\n"));
}
