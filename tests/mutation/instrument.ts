/** Puts all mutants into a copy of the source at once, each behind a switch, by Stryker's instrumenter. */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { COPIES, type Mutant } from "./journal.ts";

const ROOMS = ["src/reckoning", "src/evidence"];
const SILENT = { isDebugEnabled: () => false, debug: () => undefined, info: () => undefined } as never;
const LINE = 90;
/** Every switch looks now and then whether its test takes too long: a mutant may loop for ever. */
const SWITCH = "function isActive(id) {";
const STOP =
  "if (((ns.calls = (ns.calls | 0) + 1) & 255) === 0 && process.cpuUsage().user > ns.processorLimit) throw new Error('takes too long');";

/** Mutants of the files whose path begins with one of `within`; the copies lie under `COPIES`. */
export async function instrument(within: readonly string[]): Promise<Mutant[]> {
  const names = ROOMS.flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: "utf8" }).map((name) => join(room, name)),
  )
    .filter((name) => name.endsWith(".ts") && within.some((start) => name.startsWith(start)))
    .sort();
  const files = names.map((name) => ({ name, mutate: true, content: readFileSync(name, "utf8") }));
  const made = await new Instrumenter(SILENT).instrument(files, { plugins: null, excludedMutations: [], ignorers: [] });
  rmSync(COPIES, { recursive: true, force: true });
  for (const { name, content } of made.files) {
    mkdirSync(dirname(join(COPIES, name)), { recursive: true });
    writeFileSync(join(COPIES, name), content.replace(SWITCH, `${SWITCH} ${STOP}`));
  }
  const source = new Map(files.map(({ name, content }) => [name, content.split("\n")]));
  return made.mutants.map(({ id, fileName, location: { start, end }, replacement, mutatorName }) => {
    const original = cut(source.get(fileName) ?? [], start, end);
    return {
      id,
      file: fileName,
      line: start.line + 1,
      kind: mutatorName,
      original: short(original),
      replacement: short(replacement),
    };
  });
}

interface Point {
  readonly line: number;
  readonly column: number;
}

function cut(lines: readonly string[], start: Point, end: Point): string {
  if (start.line === end.line) return (lines[start.line] ?? "").slice(start.column, end.column);
  return [
    (lines[start.line] ?? "").slice(start.column),
    ...lines.slice(start.line + 1, end.line),
    (lines[end.line] ?? "").slice(0, end.column),
  ].join(" ");
}

const short = (text: string): string => {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length <= LINE ? line : `${line.slice(0, LINE - 1)}…`;
};
