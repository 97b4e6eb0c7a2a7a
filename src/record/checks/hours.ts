/** Lines of hours: who, at what, how long, and what one person can have worked on one day. */
import { DAY_MINUTES } from "../../facts/quantity/conversions.ts";
import { nearest, someOf } from "../../facts/nearest.ts";
import { meaning, onlyYouKnow } from "../../facts/reading.ts";
import { asHours } from "../../facts/time/hours.ts";
import { Zone } from "../../facts/time/zone.ts";
import { minutesBetween } from "../../facts/work/hours.ts";
import { checkClock, pastMidnight } from "./days.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

type Line = NonNullable<EntryFile["spec"]["hours"]>[number];

/** What one person worked on one day, over all lines and entries of that day. */
interface SoFar {
  minutes: number;
  readonly places: string[];
  told: boolean;
}

export function checkHours(context: CheckContext): void {
  const aircraft = soundOf(context, "aircraft")[0]?.spec;
  const zone = aircraft?.time_zone === undefined ? undefined : Zone.of(aircraft.time_zone);
  const worked = new Map<string, SoFar>();
  for (const filed of soundOf(context, "entry"))
    (filed.spec.hours ?? []).forEach((line, index) => {
      checkNames(context, filed, index, line);
      checkTask(context, filed, index, line, aircraft?.tasks);
      const minutes = checkTime(context, filed, index, line, zone);
      for (const who of new Set(line.who)) addUp(context, filed, index, who, minutes, worked);
    });
}

function checkNames(context: CheckContext, filed: EntryFile, index: number, { who, assembly }: Line): void {
  const path = ["hours", index, "who"];
  who.forEach((one, at) => {
    const here = who.length > 1 ? [...path, at] : path;
    expectId(context, filed, here, ["person"], one);
    if (who.indexOf(one) === at) return;
    report(context, filed, here, {
      code: "same-person-twice",
      message: "this person stands twice in one line",
      expected: "each person once",
      found: one,
      mend: "take one of the two away, or name the person who was meant",
    });
  });
  expectId(context, filed, ["hours", index, "assembly"], ["assembly"], assembly);
}

function checkTask(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { task }: Line,
  tasks: readonly string[] | undefined,
): void {
  if (tasks === undefined || tasks.includes(task)) return;
  const meant = nearest(task, tasks);
  report(context, filed, ["hours", index, "task"], {
    code: "unknown-task",
    message: "this task is not one of the aircraft's",
    expected: `one of ${someOf(tasks, 20)}`,
    found: task,
    ...(meant === undefined
      ? onlyYouKnow("use one of these words, or add this one to `tasks` in aircraft.md")
      : meaning(meant)),
  });
}

/** How many minutes the line is about; none where that is a problem. */
function checkTime(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { time, from, to }: Line,
  zone: Zone | undefined,
): number {
  const path = ["hours", index];
  const isTyped = (key: string): boolean => filed.typedAt([...path, key]) !== "";
  const [told, begun, ended] = [isTyped("time"), isTyped("from"), isTyped("to")];
  if (told ? begun || ended : !begun || !ended) {
    if (!told && !filed.whole) return 0;
    report(context, filed, path, {
      code: "how-long",
      message: told ? "how long it took is said in two ways" : "nothing says how long it took",
      expected: "either `time`, or `from` and `to`",
      mend: "say how long it took, as in `time: 2:45`, or from when to when",
    });
    return 0;
  }
  if (from === undefined || to === undefined) return time?.minutes ?? 0;
  checkClock(context, filed, [...path, "from"], from, zone);
  checkClock(context, filed, [...path, "to"], to, zone);
  if (to.minutes <= from.minutes) {
    report(context, filed, [...path, "to"], {
      code: "ended-before-begun",
      message: "it ended before it began",
      expected: `a time after ${from.typed}`,
      found: to.typed,
      mend: pastMidnight(from, to),
    });
    return 0;
  }
  return Math.max(0, minutesBetween(from, to, (clock) => zone?.moment(filed.spec.date, clock, "earlier")) ?? 0);
}

function addUp(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  who: string,
  minutes: number,
  worked: Map<string, SoFar>,
): void {
  const key = JSON.stringify([filed.spec.date, who]);
  const day = worked.get(key) ?? { minutes: 0, places: [], told: false };
  worked.set(key, day);
  day.minutes += minutes;
  day.places.push(whereIs(filed, ["hours", index]));
  if (day.minutes <= DAY_MINUTES || day.told || day.places.length < 2) return;
  day.told = true;
  tell(context, filed, index, who, day);
}

/** Told once, where the day runs over; which line is wrong only the builder knows. */
function tell(context: CheckContext, filed: EntryFile, index: number, who: string, { minutes, places }: SoFar): void {
  const said = filed.spec.hours?.[index]?.time === undefined ? "to" : "time";
  report(context, filed, ["hours", index, said], {
    code: "over-a-day",
    message: `${who} would have worked more than 24 hours on ${filed.spec.date}`,
    expected: "lines of one day that add up to 24:00 or less for each person",
    found: `${asHours(minutes)} so far, with ${places.slice(0, -1).slice(-3).join(", ")}`,
    mend: "correct the hours, or the date of the entry they belong to",
  });
}
