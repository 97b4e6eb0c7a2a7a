/** Lines of hours: who, at what, how long, and what one person can have worked on one day. */
import type { Fault } from "../../facts/reading.ts";
import { Zone } from "../../facts/time/zone.ts";
import { minutesBetween } from "../../facts/work/hours.ts";
import { checkEarlier } from "../earlier/check.ts";
import { taskFault, Worked } from "../earlier/worked.ts";
import { checkClock, isBefore, pastMidnight } from "./days.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

type Line = NonNullable<EntryFile["spec"]["hours"]>[number];

export function checkHours(context: CheckContext): void {
  const aircraft = soundOf(context, "aircraft")[0]?.spec;
  const zone = aircraft?.time_zone === undefined ? undefined : Zone.of(aircraft.time_zone);
  const worked = new Worked();
  for (const filed of soundOf(context, "entry"))
    (filed.spec.hours ?? []).forEach((line, index) => {
      checkNames(context, filed, index, line);
      checkTask(context, filed, index, line, aircraft?.tasks);
      const minutes = checkTime(context, filed, index, line, zone);
      const said = ["hours", index, line.time === undefined ? "to" : "time"];
      const tell = (fault: Fault): void => report(context, filed, said, fault);
      for (const who of new Set(line.who))
        worked.on(filed.spec.date, who, minutes, whereIs(filed, ["hours", index]), tell);
    });
  checkEarlier(context, worked);
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
  const fault = taskFault(task, tasks);
  if (fault) report(context, filed, ["hours", index, "task"], fault);
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
  const { date: day } = filed.spec;
  if (to.minutes === from.minutes || isBefore({ day, clock: to }, { day, clock: from }, zone)) {
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
