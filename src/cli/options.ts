import { InvalidArgumentError, Option } from "commander";

export const EXIT_CODES = `
Exit codes:
  0   all is well
  1   there are problems in the record, or faults in what was verified
  2   the command was used in a way it cannot be
  70  a mistake in the program itself
  74  the disk or the system refused
`;

export const content = (): Option =>
  new Option("--content <dir>", "the record's folder, as it may be named after the command too");
/** Of commands that are about a record: its folder may be named after the command. */
export const RECORD = [
  "[record]",
  "the record's folder; without it the one you are in, or the nearest above that holds a record",
] as const;
export const plain = (): Option =>
  new Option(
    "--plain",
    "leave out pages/, layouts/ and style.css, which are code: for a record of someone whom you do not trust to run any here",
  );
export const notPlain = (): Option =>
  new Option(
    "--no-plain",
    "run them, though the record came in a bag: for one of someone whom you trust as you do this program",
  );
export const date = (): Option =>
  new Option("--date <YYYY-MM-DD>", "the date of the record; without it that of its last entry").argParser(day);

export function day(text: string): string {
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.startsWith(text) === true;
  if (!isDay) throw new InvalidArgumentError("A date is written as 2025-06-30.");
  return text;
}
