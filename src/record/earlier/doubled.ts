/** Hours that may stand in the record twice: a person's in a table, and in entries of the same days. */
import type { Note } from "../../problem.ts";
import { type CheckContext, soundOf } from "../checks/context.ts";
import type { EarlierRow } from "./read.ts";

/** Whose hours an entry has, and of which day. */
interface Had {
  readonly who: string;
  readonly day: string;
  readonly file: string;
}

/** One note for each table, at its first such line. Whether it is the same work only the builder knows: all of it is counted. */
export function doubledNotes(context: CheckContext): Note[] {
  const had = soundOf(context, "entry").flatMap(({ file, spec: { date, hours = [] } }) =>
    [...new Set(hours.flatMap(({ who }) => who))].map((who): Had => ({ who, day: date, file })),
  );
  return context.earlier.flatMap(({ rows }) => {
    const [first, ...others] = rows.flatMap((row) => doubled(row, had) ?? []);
    if (first === undefined) return [];
    const lines = `${others.length} more ${others.length === 1 ? "line" : "lines"}`;
    const so = others.length === 0 ? "" : ` (so it is with ${lines} of this table)`;
    return [{ ...first, message: first.message + so }];
  });
}

function doubled({ row, span, who }: EarlierRow, had: readonly Had[]): Note | undefined {
  if (span === undefined) return undefined;
  const both = had.filter((one) => who.includes(one.who) && one.day >= span.from && one.day <= span.to);
  const [first, ...others] = both;
  if (first === undefined) return undefined;
  const files = new Set(others.map(({ file }) => file).filter((file) => file !== first.file));
  const also = files.size === 0 ? "" : ` and ${files.size} more`;
  return {
    ...row.place("span"),
    message: `${first.who} has hours of ${span.typed} in this line, and in ${first.file}${also}: all are counted, so take one away where it is the same work`,
  };
}
