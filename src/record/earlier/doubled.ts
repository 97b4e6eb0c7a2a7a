/** Hours that may stand in the record twice: a person's in a table, and in entries of the same days. */
import type { Span } from "../../facts/time/span.ts";
import type { Note } from "../../problem.ts";
import { type CheckContext, soundOf } from "../checks/context.ts";
import type { EarlierRow } from "./read.ts";

/** Entries with hours of a person, by that person and day, month and year. */
type Had = ReadonlyMap<string, readonly string[]>;

/** One note for each table, at its first such line. Whether it is the same work only the builder knows: all of it is counted. */
export function doubledNotes(context: CheckContext): Note[] {
  const had = hadIn(context);
  return context.earlier.flatMap(({ rows }) => {
    const [first, ...others] = rows.flatMap((row) => doubled(row, had) ?? []);
    if (first === undefined) return [];
    const lines = `${others.length} more ${others.length === 1 ? "line" : "lines"}`;
    const so = others.length === 0 ? "" : ` (so it is with ${lines} of this table)`;
    return [{ ...first, message: first.message + so }];
  });
}

function hadIn(context: CheckContext): Had {
  const had = new Map<string, string[]>();
  for (const { file, spec } of soundOf(context, "entry"))
    for (const who of new Set((spec.hours ?? []).flatMap((line) => line.who)))
      for (const time of [spec.date, monthOf(spec.date), yearOf(spec.date)]) {
        const key = keyOf(who, time);
        const files = had.get(key);
        if (files === undefined) had.set(key, [file]);
        else files.push(file);
      }
  return had;
}

function doubled({ row, span, who }: EarlierRow, had: Had): Note | undefined {
  if (span === undefined) return undefined;
  const person = who.find((one) => had.has(keyOf(one, timeOf(span))));
  if (person === undefined) return undefined;
  const [first, ...others] = had.get(keyOf(person, timeOf(span))) ?? [];
  const also = others.length === 0 ? "" : ` and ${others.length} more`;
  return {
    ...row.place("span"),
    message: `${person} has hours of ${span.typed} in this line, and in ${first}${also}: all are counted, so take one away where it is the same work`,
  };
}

const keyOf = (who: string, time: string): string => `${who} ${time}`;
const monthOf = (day: string): string => day.slice(0, "2025-03".length);
const yearOf = (day: string): string => day.slice(0, "2025".length);

/** A span is a day, a month or a year. */
function timeOf({ from, to }: Span): string {
  if (from === to) return from;
  return monthOf(from) === monthOf(to) ? monthOf(from) : yearOf(from);
}
