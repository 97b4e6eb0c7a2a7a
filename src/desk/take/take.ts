/** Files that were made elsewhere come into the record: each by itself, checked as a part of it before it is kept. */
import { readText } from "../../record/text/bytes.ts";
import type { Answers } from "../question.ts";
import { takeEntry } from "./entry.ts";
import type { Given } from "./given.ts";
import { loggerWays, takeLogger } from "./logger/take-logger.ts";
import { type Desk, left, type Outcome } from "./outcome.ts";
import { takePhotographs } from "./photograph.ts";
import { takeSheet } from "./sheet/take-sheet.ts";
import { standingAs } from "./standing.ts";

export interface Said {
  /** Of tables, and of loggers. */
  readonly tables: Answers;
  /** Which entry the photographs of a day go with. */
  readonly photographs: Answers;
}

/** `desk` reads the record anew: what was taken before is a part of it. */
export async function take(
  given: readonly Given[],
  said: Said,
  desk: () => Promise<Desk>,
  tell: (outcome: Outcome) => void,
): Promise<void> {
  const of = (kind: Given["kind"]): Given[] => given.filter((one) => one.kind === kind);
  const done = new Set<string>();
  const told = (outcomes: readonly Outcome[]): void => {
    for (const one of outcomes) {
      done.add(one.from);
      tell(one);
    }
  };
  for (const one of of("unknown")) told([left(one.path, ["Nothing is known of such a file."])]);
  for (const one of of("entry")) told(await takeEntry(one, of("photograph"), await desk()));
  const others = of("photograph").filter(({ path }) => !done.has(path));
  if (others.length > 0) told(await takePhotographs(others, said.photographs, await desk()));
  for (const one of of("table")) told([await takeTable(one, said.tables, await desk())]);
}

/** A table that reads as a logger's from end to end is one; any other is held to be hours. */
async function takeTable(given: Given, said: Answers, desk: Desk): Promise<Outcome> {
  const there = standingAs(desk, "climate", given.bytes) ?? standingAs(desk, "hours", given.bytes);
  if (there !== undefined) return { from: given.path, became: "there", says: [there] };
  const read = readText(given.path, given.bytes, { isTable: true });
  if ("problem" in read) return left(given.path, ["It is no text."], [read.problem]);
  const { text } = read.source;
  const { ways, problems } = loggerWays(text, desk);
  if (ways.length > 0) return takeLogger(given, text, { ways }, said, desk);
  if (isOfLogger(text)) return left(given.path, ["It looks like a logger's file, and cannot be read whole."], problems);
  return takeSheet(given, text, said, desk);
}

/** Many moments to the minute, as only instruments write them. */
function isOfLogger(text: string): boolean {
  const lines = text.split("\n", 200).filter((line) => line.trim() !== "");
  return (
    lines.filter((line) => /\d[-./]\d.*\d:\d\d|^"?\d{10}/u.test(line)).length > lines.length / 2 &&
    !/\d-\d\d? ?h/u.test(text)
  );
}
