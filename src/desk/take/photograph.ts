/** Photographs: placed by the time at which they were taken, which is a hint that the builder confirms. */
import { extname } from "node:path";
import * as z from "zod";
import { pictureFault } from "../../record/heads.ts";
import { dateWords } from "../../words/dates.ts";
import { keep } from "../keep.ts";
import type { Answers, Question } from "../question.ts";
import type { Given } from "./given.ts";
import { type Desk, left, type Outcome } from "./outcome.ts";
import { standingAs } from "./standing.ts";
import { type TakenAt, takenAt } from "./taken-at.ts";

const NOT = "leave them out";
const UNKNOWN = "unknown";

interface Placed {
  readonly given: Given;
  readonly at: TakenAt | undefined;
}

/** What no entry that was given names; `of` says by day which entry they go with. */
export async function takePhotographs(given: readonly Given[], of: Answers, desk: Desk): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  const byDay = new Map<string, Placed[]>();
  for (const one of given) {
    const fault = pictureFault(one.bytes.subarray(0, 512), one.path);
    const there = standingAs(desk, "photos", one.bytes);
    if (fault) outcomes.push(left(one.path, [`${fault.message}: ${fault.mend}`]));
    else if (there !== undefined) outcomes.push({ from: one.path, became: "there", says: [there] });
    else {
      const at = await takenAt(one.bytes, desk.record.aircraft.timeZone);
      const day = at?.day ?? UNKNOWN;
      byDay.set(day, [...(byDay.get(day) ?? []), { given: one, at }]);
    }
  }
  if (byDay.size === 0) return outcomes;
  const questions = [...byDay].map(([day, placed]) => questionOf(day, placed, desk));
  const answers = await desk.ask(questions, of);
  for (const [day, placed] of byDay) outcomes.push(...(await placeOn(answers[day], placed, desk)));
  return outcomes;
}

/** Entries of that day come first, then the others from the last one back. */
function questionOf(day: string, placed: readonly Placed[], { record }: Desk): Question {
  const ids = [...record.entries].reverse().map(({ id, day: on }) => ({ id, on }));
  const ofDay = ids.filter(({ on }) => on === day);
  const choices = [...ofDay, ...ids.filter(({ on }) => on !== day)].map(({ id }) => id);
  return {
    key: day,
    flag: `--photos-of "${day}=<entry>"`,
    asks: `${hintOf(day, placed)}; they go with`,
    form: z.string(),
    example: choices[0] ?? "2026-03-14-first-glue",
    choices: ofDay.length > 0 ? [...choices, NOT] : [NOT, ...choices],
  };
}

function hintOf(day: string, placed: readonly Placed[]): string {
  const names = placed.map(({ given }) => given.name).join(", ");
  if (day === UNKNOWN) return `No camera says when these were taken: ${names}`;
  const times = placed.map(({ at }) => at?.time ?? "").sort();
  const span = times[0] === times.at(-1) ? `at ${times[0]}` : `from ${times[0]} to ${times.at(-1)}`;
  const whose = placed.some(({ at }) => at?.hasOffset === false)
    ? "by a clock taken for the workshop's"
    : "workshop's time";
  return `Taken on ${dateWords(day)} ${span}, ${whose}: ${names}`;
}

async function placeOn(entry: string | undefined, placed: readonly Placed[], desk: Desk): Promise<Outcome[]> {
  if (entry === undefined || entry === NOT) return placed.map(({ given }) => left(given.path, ["It was left out."]));
  const outcomes: Outcome[] = [];
  const taken = new Set(desk.files);
  for (const { given } of [...placed].sort((a, b) => ((a.at?.time ?? "") < (b.at?.time ?? "") ? -1 : 1))) {
    const there = standingAs({ content: desk.content, files: [...taken] }, "photos", given.bytes);
    if (there !== undefined) {
      outcomes.push({ from: given.path, became: "there", says: [there] });
      continue;
    }
    const path = freePath(entry, extname(given.name).toLowerCase(), taken);
    taken.add(path);
    await keep(desk.content, new Map([[path, given.bytes]]));
    outcomes.push({
      from: given.path,
      became: "taken",
      says: [path, `write under \`photos:\` of entries/${entry}.md:  - { file: ../${path}, alt: "" }`],
    });
  }
  return outcomes;
}

function freePath(entry: string, ending: string, taken: ReadonlySet<string>): string {
  const lower = new Set([...taken].map((path) => path.replace(/\.[^.]+$/u, "").toLowerCase()));
  for (let number = 1; ; number += 1) {
    const stem = `photos/${entry}-${number}`;
    if (!lower.has(stem.toLowerCase())) return `${stem}${ending}`;
  }
}
