/** What a forecast takes for granted, one sentence each: who does not believe these need not believe it. */
import type { Ground } from "./forecast-ground.ts";
import { hoursRounded } from "../../words/durations.ts";
import { counted, listed } from "../../words/lists.ts";
import { percent } from "../../words/numbers.ts";

export function assumptions(ground: Ground): string[] {
  return [
    planned(ground),
    unplanned(ground),
    corrected(ground),
    outrun(ground),
    weeks(ground),
    spread(),
    edition(ground),
  ].filter((words) => words !== undefined);
}

const titles = ({ shown }: Ground, ids: readonly string[]): string =>
  listed(ids.map((id) => shown.record.assemblies.get(id)?.title ?? id));

/** What the forecast knows nothing of, to be said before any date. */
export function leftOut({ shown: { record }, plan }: Ground): string {
  const planned = new Set(plan.parts.map(({ id }) => id));
  const titles = [...record.assemblies.values()].filter(({ id }) => !planned.has(id)).map(({ title }) => title);
  const beyond = "what is no part of this record yet, as covering, fitting out and the engine may be";
  if (titles.length === 0) return `Not in it: ${beyond}.`;
  const named = titles.length > 6 ? counted(titles.length, "part") : listed(titles);
  return `Not in it: ${named}, without planned hours; and ${beyond}.`;
}

function planned({ plan }: Ground): string {
  const open = plan.parts.filter(({ finished }) => !finished);
  return `The work is what is planned for ${counted(plan.parts.length, "part")}, of which ${open.length} ${open.length === 1 ? "is" : "are"} not finished, and nothing else.`;
}

function unplanned({ plan }: Ground): string | undefined {
  if (plan.unplanned === 0) return undefined;
  return `${hoursRounded(plan.unplanned)} were worked on parts without planned hours. They count neither as progress nor as pace, so that as much is taken to go elsewhere in the weeks ahead as went there so far.`;
}

function corrected({ plan }: Ground): string {
  if (!plan.corrected)
    return "No part with planned hours is finished, so that the plan is taken as it stands. Plans are seldom too long.";
  const done = plan.parts.filter(({ finished }) => finished);
  const sum = (of: "planned" | "worked"): string => hoursRounded(done.reduce((all, part) => all + part[of], 0));
  return `Finished parts took ${sum("worked")} where ${sum("planned")} were planned, ${percent(plan.factor)} of it; the other parts are taken to go the same way.`;
}

function outrun(ground: Ground): string | undefined {
  const ids = ground.plan.parts.filter(({ finished, left }) => !finished && left === 0).map(({ id }) => id);
  if (ids.length === 0) return undefined;
  return `${titles(ground, ids)} ${ids.length === 1 ? "has" : "have"} taken all that the corrected plan gives and ${ids.length === 1 ? "is" : "are"} not finished: nothing more is foreseen there, which is likely too little.`;
}

function weeks({ weeks: all }: Ground): string {
  const idle = all.filter(({ minutes }) => minutes === 0).length;
  return `The pace is the mean of the ${all.length} whole weeks from the start to the date of the record, ${idle} of them without work.`;
}

function spread(): string {
  return "How far the work may lie from that is taken from how forecasts made in the same way at earlier dates of this record did, with a doubt of this program’s own that fades as the record grows: seasons, pauses and a change of pace are in it as far as the record has had them.";
}

function edition({ shown }: Ground): string | undefined {
  return shown.edition === "archive" ? undefined : "Hours are those that this edition shows.";
}
