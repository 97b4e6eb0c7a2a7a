import { defined } from "../../defined.ts";
import type { TimelineInput } from "../../charts/timeline.ts";
import type { AssemblyFile, HoldPointFile, JointFile } from "../../evidence/types.ts";
import { total } from "../../reckoning/hours/hours.ts";
import type { Assembly, Entry } from "../../facts/types.ts";
import type { Chart } from "../forecast/chart.ts";
import { dayAt, inHours, running, spansOf, weekly, weeksOf } from "../forecast/chart.ts";
import { spanned } from "../forecast/hours.ts";
import { dayEvents, type Told } from "./day-events.ts";
import { plannedWithin } from "./planned.ts";
import type { Shown } from "../../editions/shown.ts";
import { lineageOf, storyOf } from "./story.ts";
import { MOST_IN_ROW, timelineOf } from "./timeline.ts";
import { hoursWords } from "../../words/durations.ts";

export interface AssemblyView {
  readonly assembly: Assembly;
  readonly file: AssemblyFile;
  /** What it stands in, outermost first. */
  readonly above: readonly Assembly[];
  readonly children: readonly Assembly[];
  readonly minutes: number;
  readonly planned?: number;
  readonly joints: readonly JointFile[];
  readonly holdPoints: readonly HoldPointFile[];
  readonly next?: HoldPointFile;
  /** Days that tell of it or of what is within it, oldest first. */
  readonly told: readonly Told[];
  /**
   * Those to be listed on the page of its days: all, or where they are many only the days on the assembly itself; the
   * others stand on the pages of what is within it.
   */
  readonly listed: readonly Told[];
  /** Those of them that its own page lists: the last. */
  readonly lately: readonly Told[];
  readonly timeline?: { readonly wide: TimelineInput; readonly narrow: TimelineInput };
  readonly hours?: Chart;
}

/** A list of more days than that says more on several pages. */
const MOST_LISTED = 250;
/** So many that the page of an assembly comes fast however long it takes to build it. */
const MOST_LATELY = 8;
/** A page of its own for no more than two or three days would be one way too many. */
const WORTH_A_PAGE = 3;

export function assemblyView(shown: Shown, id: string): AssemblyView | undefined {
  const { record, evidence } = shown;
  const assembly = record.assemblies.get(id);
  const file = evidence.assemblies.get(id);
  if (assembly === undefined || file === undefined) return undefined;
  const story = storyOf(shown);
  const within = new Set(file.within);
  const told = (story.entriesOf.get(id) ?? []).map((entry) => ({
    entry,
    minutes: minutesHere(entry, within),
    dayEvents: dayEvents(entry, shown).filter(({ isOfTrial }) => isOfTrial !== true),
  }));
  const here = new Set(listedOn(shown, id));
  const listed = told.filter(({ entry }) => here.has(entry));
  const planned = plannedWithin(shown, id);
  const next = file.nextHoldPoint === undefined ? undefined : evidence.holdPoints.get(file.nextHoldPoint);
  return defined({
    assembly,
    file,
    told,
    listed,
    lately: hasDaysPage(shown, id) ? listed.slice(-MOST_LATELY) : listed,
    above: lineageOf(record, id).slice(1).reverse(),
    children: story.children.get(id) ?? [],
    minutes: total(story.workOf.get(id) ?? []),
    joints: assembly.joints.flatMap((joint) => evidence.joints.get(joint.id) ?? []),
    holdPoints: assembly.holdPoints.flatMap((point) => evidence.holdPoints.get(point.id) ?? []),
    planned,
    next,
    timeline:
      told.length === 0
        ? undefined
        : {
            wide: timelineOf(told, MOST_IN_ROW.wide, shown.shows),
            narrow: timelineOf(told, MOST_IN_ROW.narrow, shown.shows),
          },
    hours: told.length === 0 ? undefined : hoursOf(shown, assembly),
  });
}

function listedOn(shown: Shown, id: string): readonly Entry[] {
  const { entriesOf, homesOf } = storyOf(shown);
  const told = entriesOf.get(id) ?? [];
  return told.length <= MOST_LISTED ? told : told.filter((entry) => homesOf.get(entry.id)?.has(id) === true);
}

/** Whether the days of an assembly have a page of their own. */
export function hasDaysPage(shown: Shown, id: string): boolean {
  return listedOn(shown, id).length > MOST_LATELY + WORTH_A_PAGE;
}

function minutesHere(entry: Entry, within: ReadonlySet<string>): number {
  return entry.hours.reduce((sum, { assembly = "", minutes }) => (within.has(assembly) ? sum + minutes : sum), 0);
}

function hoursOf(shown: Shown, assembly: Assembly): Chart {
  const work = storyOf(shown).workOf.get(assembly.id) ?? [];
  const days = work.flatMap(({ day, through = day }) => [day, through < shown.record.day ? through : shown.record.day]);
  const first = days.reduce((least, day) => (day < least ? day : least), days[0] ?? shown.record.aircraft.start);
  const last = days.reduce((most, day) => (day > most ? day : most), first);
  const weeks = weeksOf(work, first, last);
  const sum = total(work);
  const planned = plannedWithin(shown, assembly.id);
  const ends = weeks.mondays.map((day) => Math.min(dayAt(day) + 6, dayAt(shown.record.day)));
  return defined({
    id: "assembly-hours",
    title: "Hours to date",
    form: "lines",
    filled: true,
    days: [dayAt(first) - 1, ...ends],
    says: `${hoursWords(sum)} worked so far${planned === undefined ? "; no hours were planned" : `, of ${hoursWords(planned)} planned`}.${spanned(work)}`,
    spans: spansOf(work),
    series: [{ name: "Worked", values: [0, ...running(weekly(work, weeks)).map(inHours)] }],
    against: planned === undefined ? undefined : { name: "Planned", values: [0, ...ends].map(() => inHours(planned)) },
  });
}
