/** Hours from before the record was kept, a line of a table each (`hours/NAME.csv`), and what its builder says of that table (`hours/NAME.md`). */
import type { Place } from "../../problem.ts";
import { type Decisions, each, person, prose, show } from "../decisions.ts";
import { audience, block, choice, count, field, list, words } from "../field.ts";
import { idOf, idsOf } from "../id.ts";
import { type Reading, shown } from "../reading.ts";
import { dayReader } from "../time/day-form.ts";
import type { Span } from "../time/span.ts";
import type { Audience, FilePath, Passage, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

const column = (what: string, example: string) => words(`Header of the column ${what}.`, example).optional();

function readDayForm(typed: string): Reading<string> {
  if (dayReader(typed) !== undefined) return { value: typed };
  return {
    fault: {
      code: "no-date",
      message: "this form leaves the day open",
      expected: "year and month once each and the day at most once, such as D.M.YYYY or MM/DD/YY",
      found: shown(typed),
      mend: "use YYYY or YY, MM or M, DD or D",
    },
  };
}

const typed = (example: string) => words("What stands in the table.", example);

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
  header_line: count("The line of the header, where others stand above it.", "3", "lines").optional(),
  days: list(
    field(readDayForm, "a form of days", "A form in which the table writes days.", ["D.M.YYYY", "MM/DD/YY"]),
    "The forms in which the table writes days, beside those with the year first; without a D, months.",
  ).optional(),
  decimal: choice([",", "."], "The decimal mark of its hours.").optional(),
  numbers: choice(["hours", "minutes"], "What a time without a unit is; without it hours.").optional(),
  rounding: choice(
    ["nearest minute"],
    "That hours such as 0.33 stand for the minute nearest to them; without it they cannot be read.",
  ).optional(),
  several: choice(
    ["each", "divided"],
    "Whether the time of a line with several people is each one's, or what they worked together, in equal parts; without it each one's.",
  ).optional(),
  below: list(
    choice(["span", "who", "task", "assembly", "source"], "A column."),
    "Columns in which an empty cell says what the one above it says, as cells that were merged.",
  ).optional(),
  every_line: block({
    who: idsOf("person", "Who worked.", "karl").optional(),
    task: words("The task.", "gluing").optional(),
    assembly: idOf("assembly", "The assembly.", "rudder").optional(),
  })
    .meta({ description: "What holds of each line, where the table has no column for it." })
    .optional(),
  people: list(
    block({ typed: typed("Karl and I"), is: idsOf("person", "Who is meant.", "karl") }),
    "What the table calls people.",
  ).optional(),
  tasks: list(
    block({ typed: typed("Glueing"), is: words("The aircraft's word for it.", "gluing") }),
    "What the table calls tasks.",
  ).optional(),
  assemblies: list(
    block({ typed: typed("Tail"), is: idOf("assembly", "Which is meant.", "rudder") }),
    "What the table calls assemblies.",
  ).optional(),
  no_assembly: list(typed("Workshop"), "What stands in the column of assemblies where none is meant.").optional(),
  set_aside: list(
    block({
      line: count("Its number in the file.", "37", "lines"),
      typed: words("How it begins, as it stands there.", "Sum 2021;;;345,5"),
      why: words("Why it is set aside.", "A sum"),
    }),
    "Lines that are in no sum, since they hold no hours or cannot be read.",
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
  /** How many lines of the file are in no sum, since they were set aside. */
  readonly setAside: number;
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
  setAside: show,
  body: prose("hours"),
};

export const areEarlierShown = ({ id }: EarlierHours, seer: Visibility): boolean => seer.earlier.has(id);
