/**
 * Small changes to a record in a folder, as text that people read:
 *
 *   @ entries/2025-03-08-caps.md        a file in which
 *   - mass: 42.0 g                      this text, found there once,
 *   + mass: 42                          becomes this one
 *   @ new lots/R-2.md                   or a file of its own, or `@ delete FILE`
 *   + …
 *   @ link lots/R-2.md                  or a symbolic link to
 *   + ../elsewhere.md                   there
 */
import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Throws where a text to be replaced does not stand in its file exactly once. */
export function change(folder: string, lines: readonly string[]): void {
  for (const file of filesOf(lines)) apply(folder, file);
}

function filesOf(lines: readonly string[]): (readonly string[])[] {
  const files: string[][] = [];
  for (const line of lines) {
    if (line.startsWith("@ ")) files.push([line.slice(2)]);
    else files.at(-1)?.push(line);
  }
  return files;
}

function apply(folder: string, [head = "", ...lines]: readonly string[]): void {
  const [, verb, file = ""] = /^(new |delete |link )?(.+)$/.exec(head) ?? [];
  const path = join(folder, file);
  if (verb === "delete ") rmSync(path);
  else if (verb === "link ") symlinkSync(lines[0]?.slice(2) ?? "", path);
  else if (verb === "new ") {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, lines.map((line) => `${line.slice(2)}\n`).join(""));
  } else
    writeFileSync(
      path,
      replacements(lines).reduce(
        (text, [before, after]) => replacedOnce(text, before, after, file),
        readFileSync(path, "utf8"),
      ),
    );
}

function replacements(lines: readonly string[]): (readonly [string, string])[] {
  const pairs: [string[], string[]][] = [];
  for (const line of lines) {
    const added = line.startsWith("+");
    const last = pairs.at(-1);
    if (!last || (!added && last[1].length > 0)) pairs.push(added ? [[], [line.slice(2)]] : [[line.slice(2)], []]);
    else last[added ? 1 : 0].push(line.slice(2));
  }
  return pairs.map(([before, after]) => [before.join("\n"), after.join("\n")]);
}

function replacedOnce(text: string, before: string, after: string, file: string): string {
  const parts = text.split(before);
  if (parts.length !== 2) throw new Error(`${file} holds ${parts.length - 1} times: ${before}`);
  return parts.join(after);
}
