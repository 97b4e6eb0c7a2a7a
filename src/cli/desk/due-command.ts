import { dueOf } from "../../desk/due/due.ts";
import { dueText } from "../../desk/due/told.ts";
import { editionOf } from "../../editions/edition.ts";
import { reckon } from "../../evidence/evidence.ts";
import type { Day } from "../../facts/types.ts";
import { readRecord } from "../../record/read.ts";
import { localDay } from "../../facts/time/local-day.ts";
import { recordFolder, type RecordNamed } from "../record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";
import { problemWords } from "../teller.ts";

interface DueOptions extends RecordNamed {
  /** The day that is asked about; without it today. */
  readonly on?: Day;
}

/** Tells the builder, and nobody else, what the record waits for. */
export async function dueCommand({ on, ...named }: DueOptions, surroundings: Surroundings): Promise<number> {
  const today = localDay(surroundings.now());
  const read = await readRecord(recordFolder(named, surroundings), { today, day: on ?? today });
  if ("problems" in read) {
    surroundings.err(
      `${problemWords(read.problems, surroundings.hasColours)}\nWhat is due cannot be told of a record with problems.\n`,
    );
    return EXIT.problems;
  }
  const { record } = read;
  const last = record.entries.at(-1)?.day ?? record.aircraft.start;
  if (record.day < last)
    throw new WrongUse(
      `The record goes up to ${last}, and what it has since would tell on ${record.day}. Give that day or a later one: --on ${last}`,
    );
  const shown = editionOf(record, reckon(record), "archive");
  surroundings.out(dueText(shown, dueOf(shown)));
  return EXIT.fine;
}
