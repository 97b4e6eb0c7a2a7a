import { defined } from "../../defined.ts";
import { byMonth, isOfDay, sumBy, total } from "../../reckoning/hours/hours.ts";
import type { Chart, Named, Weeks } from "./chart.ts";
import { dayAt, greatest, inHours, running, spansOf, weekly, weeksOf } from "./chart.ts";
import type { EarlierHours } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import type { WorkLine } from "../story/story.ts";
import { storyOf } from "../story/story.ts";
import { hoursRounded } from "../../words/durations.ts";

export interface Pace {
  /** Minutes a week over the last weeks, those without work counted. */
  readonly recent: number;
  readonly weeks: number;
  readonly target?: number;
}

export interface Cut {
  readonly id: string;
  readonly name: string;
  readonly minutes: number;
}

export interface EarlierView {
  readonly table: EarlierHours;
  readonly minutes: number;
  /** Minutes of which no day is known. */
  readonly spanned: number;
  /** As typed, in the order of time. */
  readonly first: string;
  readonly last: string;
}

export interface HoursView {
  readonly total: number;
  /** Minutes of which no day is known. */
  readonly spanned: number;
  /** Minutes on no assembly. */
  readonly ofNone: number;
  readonly since: string;
  readonly pace: Pace;
  readonly cumulative: Chart;
  readonly weekly: Chart;
  readonly byAssemblyChart: Chart;
  readonly byPersonChart: Chart;
  readonly byTaskChart: Chart;
  readonly people: readonly Cut[];
  readonly tasks: readonly Cut[];
  /** Tables of hours from before the record was kept. */
  readonly earlier: readonly EarlierView[];
  readonly months: readonly { readonly month: string; readonly minutes: number; readonly sum: number }[];
}

const PACE_WEEKS = 8;
const MOST_LINES = 7;

/** Hours a week lately, over whole weeks up to the record's day. */
export function paceOf(shown: Shown): Pace {
  const { aircraft, day } = shown.record;
  const minutes = weekly(storyOf(shown).work.filter(isOfDay), weeksOf([], aircraft.start, day)).slice(-PACE_WEEKS);
  const recent = minutes.reduce((sum, week) => sum + week, 0) / Math.max(1, minutes.length);
  const target = aircraft.targetPerWeek;
  return defined({ recent, weeks: minutes.length, target });
}

/** The day to which the sum of a week is drawn: its Sunday, or the record's day. */
function ends(weeks: Weeks, last: number): number[] {
  return weeks.mondays.map((day) => Math.min(dayAt(day) + 6, last));
}

function cumulated(
  id: string,
  title: string,
  says: string,
  groups: readonly Named<WorkLine>[],
  weeks: Weeks,
  last: number,
): Chart {
  const series = groups.map(({ name, lines }) => ({ name, values: running(weekly(lines, weeks)).map(inHours) }));
  const spans = spansOf(groups.flatMap(({ lines }) => lines));
  return defined({ id, title, says, form: "lines", days: ends(weeks, last), series, spans });
}

/** How much of a sum rests on no day, in a sentence after others. */
export function spanned(work: readonly WorkLine[]): string {
  const minutes = total(work.filter((line) => !isOfDay(line)));
  if (minutes === 0) return "";
  return ` Of ${hoursRounded(minutes)} only the month or the year is known: within the shaded time the line rises evenly, and says nothing of when.`;
}

function totalChart(shown: Shown, weeks: Weeks, last: number): Chart {
  const { work } = storyOf(shown);
  const target = shown.record.aircraft.targetPerWeek;
  const says = `Hours worked since the start, ${hoursRounded(total(work))} by now${target === undefined ? "" : `, against ${hoursRounded(target)} a week as planned`}.${spanned(work)}`;
  const chart = cumulated("hours-sum", "Hours to date", says, [{ name: "Worked", lines: work }], weeks, last);
  if (target === undefined) return { ...chart, filled: true };
  const first = dayAt(shown.record.aircraft.start);
  const values = chart.days.map((day) => inHours((Math.max(0, day - first + 1) / 7) * target));
  return { ...chart, filled: true, against: { name: "As planned", values } };
}

function weeklyChart(shown: Shown, people: readonly Named<WorkLine>[], weeks: Weeks): Chart {
  const target = shown.record.aircraft.targetPerWeek;
  const days = weeks.mondays.map(dayAt);
  return defined({
    id: "hours-weeks",
    title: "Hours in each week",
    form: "bars",
    days,
    says: `Hours worked in each week, one person standing on the other${people.some(({ lines }) => !lines.every(isOfDay)) ? "; those known by month or year alone are in no week" : ""}${target === undefined ? "" : `; the broken line is the ${hoursRounded(target)} a week planned`}.`,
    series: people.map(({ name, lines }) => ({ name, values: weekly(lines.filter(isOfDay), weeks).map(inHours) })),
    against: target === undefined ? undefined : { name: "Planned a week", values: days.map(() => inHours(target)) },
  });
}

function cuts(work: readonly WorkLine[], keyOf: (line: WorkLine) => string, nameOf: (key: string) => string): Cut[] {
  const sums = [...sumBy(work, keyOf)].map(([id, minutes]) => ({ id, name: nameOf(id), minutes }));
  return sums.sort((a, b) => b.minutes - a.minutes || (a.name < b.name ? -1 : 1));
}

function earlierView(table: EarlierHours): EarlierView {
  const lines = [...table.lines].sort((a, b) => (a.span.from < b.span.from ? -1 : a.span.from > b.span.from ? 1 : 0));
  return {
    table,
    minutes: lines.reduce((sum, { minutes }) => sum + minutes, 0),
    spanned: lines.reduce((sum, { minutes, span }) => (span.from === span.to ? sum : sum + minutes), 0),
    first: lines[0]?.span.typed ?? "",
    last: lines.at(-1)?.span.typed ?? "",
  };
}

export function hoursView(shown: Shown): HoursView {
  const { work } = storyOf(shown);
  const { aircraft, day, assemblies } = shown.record;
  const weeks = weeksOf(work, aircraft.start, day);
  const last = dayAt(day);
  const titleOf = (id: string): string => assemblies.get(id)?.title ?? "On no assembly";
  const itself = (word: string): string => word;
  const people = greatest(work, ({ who }) => who, shown.nameOf, MOST_LINES);
  const parts = greatest(work, ({ assembly }) => assembly ?? "", titleOf, MOST_LINES);
  const tasks = greatest(work, ({ task }) => task, itself, MOST_LINES);
  let sum = 0;
  return {
    total: total(work),
    spanned: total(work.filter((line) => !isOfDay(line))),
    ofNone: total(work.filter(({ assembly }) => assembly === undefined)),
    since: aircraft.start,
    pace: paceOf(shown),
    cumulative: totalChart(shown, weeks, last),
    weekly: weeklyChart(shown, people, weeks),
    byAssemblyChart: cumulated(
      "hours-assemblies",
      "By assembly",
      "Hours to date on each assembly, those within it not counted.",
      parts,
      weeks,
      last,
    ),
    byPersonChart: cumulated("hours-people", "By person", "Hours to date of each person.", people, weeks, last),
    byTaskChart: cumulated("hours-tasks", "By task", "Hours to date on each kind of work.", tasks, weeks, last),
    people: cuts(work, ({ who }) => who, shown.nameOf),
    tasks: cuts(work, ({ task }) => task, itself),
    earlier: shown.record.earlier.map(earlierView),
    months: [...byMonth(work)].map(([month, minutes]) => ({ month, minutes, sum: (sum += minutes) })),
  };
}
