/** Hours from before the record was kept, a line of a table each (`hours/NAME.csv`), and what its builder says of that table (`hours/NAME.md`). */
import type { Place } from "../../problem.ts";
import { type Decisions, each, person, prose, show } from "../decisions.ts";
import { audience, block, list, words } from "../field.ts";
import type { Span } from "../time/span.ts";
import type { Audience, FilePath, Passage, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

const column = (what: string, example: string) => words(`Header of the column ${what}.`, example).optional();

export const earlierHoursSchema = block({
  title: words("What the table is.", "Hours from the old notebook").optional(),
  source: words(
    "Where its lines come from, but for those that say so themselves.",
    "Notebook 1, pages 3 to 40",
  ).optional(),
  columns: block({
    span: column("with the day, month or year", "Datum"),
    who: column("with the people", "Wer"),
    task: column("with the task", "Arbeit"),
    time: column("with how long it took", "Stunden"),
    assembly: column("with the assembly", "Baugruppe"),
    source: column("that says where the line comes from", "Seite"),
  })
    .meta({ description: "What the columns of the table are called, where they have other headings." })
    .optional(),
  unread: list(
    words("The header of a column that holds nothing of these.", "Weather"),
    "Columns that are passed over.",
  ).optional(),
  for: audience().optional(),
});

/** Of one person: a line of several people is one of these for each. */
export interface EarlierLine {
  readonly place: Place;
  readonly span: Span;
  readonly who: string;
  readonly task: string;
  readonly minutes: number;
  readonly typed: string;
  readonly assembly?: string;
  /** Where the line comes from. */
  readonly source: string;
}

export interface EarlierHours extends Placed {
  readonly file: FilePath;
  readonly audience: Audience;
  readonly title: string;
  readonly lines: readonly EarlierLine[];
  readonly body: readonly Passage[];
}

const lineShown: Decisions<EarlierLine> = {
  place: show,
  span: show,
  who: person,
  task: show,
  minutes: show,
  typed: show,
  assembly: show,
  source: show,
};

export const earlierHoursShown: Decisions<EarlierHours> = {
  id: show,
  place: show,
  file: show,
  audience: show,
  title: show,
  lines: each(lineShown),
  body: prose("hours"),
};

export const areEarlierShown = ({ id }: EarlierHours, seer: Visibility): boolean => seer.earlier.has(id);
