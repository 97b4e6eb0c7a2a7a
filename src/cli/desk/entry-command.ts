import { join } from "node:path";
import { defined } from "../../defined.ts";
import { type Now, nowOf } from "../../desk/entry/now.ts";
import { type Choices, type EntryAnswers, questions } from "../../desk/entry/questions.ts";
import { entryText, pathOf } from "../../desk/entry/text.ts";
import { added, keep, readWith, refuseStanding } from "../../desk/keep.ts";
import { editionOf } from "../../editions/edition.ts";
import { reckon } from "../../evidence/evidence.ts";
import type { Day, Record } from "../../facts/types.ts";
import { plainly } from "../../problem.ts";
import { type Read, readRecord } from "../../record/read.ts";
import { localDay } from "../../facts/time/local-day.ts";
import { recordFolder, type RecordNamed } from "../record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";
import { problemWords } from "../teller.ts";
import { answersTo } from "./answers.ts";

interface EntryOptions extends RecordNamed, EntryAnswers {
  /** The day that the entry is of; without it today. */
  readonly on?: Day;
}

/** Throws FolderRefused where the file is there, WrongUse where something is still to be said. */
export async function entryCommand(options: EntryOptions, surroundings: Surroundings): Promise<number> {
  const { on, content: named, record: typed, ...given } = options;
  const content = recordFolder(defined({ content: named, record: typed }), surroundings);
  const today = localDay(surroundings.now());
  const day = on ?? today;
  const before = await readFor(content, day, today);
  const moment = day === today ? surroundings.now().getTime() / 1000 : undefined;
  const known = "record" in before ? knownOf(before.record, day, moment) : undefined;
  if (known === undefined) tellProblems(before, surroundings);
  if (known === undefined && (given.joints ?? given.adhesive) !== undefined)
    throw new WrongUse(
      "Which ids are free cannot be told of a record with problems. Mend them first, or leave out --joints and --adhesive.",
    );
  const choices = known === undefined ? NOTHING : await choicesOf(known, content, day, today);
  const answers = await answersTo(questions(choices), given, surroundings);
  const path = pathOf(day, answers.title ?? "");
  const text = entryText(day, answers, known);
  refuseStanding(content, path);
  const files = new Map([[path, Buffer.from(text)]]);
  const problems = await added(content, files, today, before);
  if (problems.length > 0) {
    surroundings.err(
      `${problemWords(problems, surroundings.hasColours)}\nNothing was written: with ${path} the record would have these.\n`,
    );
    return EXIT.problems;
  }
  await keep(content, files);
  surroundings.out(`Wrote ${join(content, path)}\n\n${text.split("\n").map(plainly).join("\n")}`);
  return EXIT.fine;
}

interface Known {
  readonly record: Record;
  readonly now: Now;
  readonly joints: readonly string[];
}

/** As of that day, or of the last entry where that is later. */
export async function readFor(content: string, day: Day, today: Day): Promise<Read> {
  const read = await readRecord(content, { today, day });
  return "record" in read && isPast(read.record, day) ? readRecord(content, { today }) : read;
}

const isPast = ({ entries }: Record, day: Day): boolean => (entries.at(-1)?.day ?? day) > day;

export function knownOf(record: Record, day: Day, moment: number | undefined): Known {
  const evidence = reckon(record);
  const now = nowOf(editionOf(record, evidence, "archive"), moment);
  return {
    record,
    // What may be broken by the last entry may have been too young on an earlier day.
    now: isPast(record, day) ? { ...now, pieces: [] } : now,
    joints: [...evidence.joints.keys()],
  };
}

const NOTHING: Choices = { assemblies: [], joints: [], waiting: [], adhesives: [], usual: false };

async function choicesOf({ record, now, joints }: Known, content: string, day: Day, today: Day): Promise<Choices> {
  return defined({
    assemblies: [...record.assemblies.keys()],
    joints,
    waiting: now.joints,
    adhesives: [...record.adhesives.keys()],
    last: now.lastBatch?.adhesive,
    usual: await hasUsual(content, day, { record, now }, today),
  });
}

/** Whether a batch of this day has an adhesive by default: the reader is asked. */
async function hasUsual(content: string, day: Day, known: Pick<Known, "record" | "now">, today: Day): Promise<boolean> {
  const [joint] = known.now.joints;
  const [assembly] = known.record.assemblies.keys();
  if (joint === undefined || assembly === undefined) return false;
  const text = entryText(day, { title: "?", assembly, joints: joint }, known);
  const read = await readWith(content, new Map([[pathOf(day, "?"), Buffer.from(text)]]), today);
  return "record" in read;
}

function tellProblems(before: Read, { err, hasColours }: Surroundings): void {
  if ("problems" in before)
    err(
      `${problemWords(before.problems, hasColours)} What is free, in use and due cannot be told before they are mended.\n\n`,
    );
}
