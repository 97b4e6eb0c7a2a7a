/** What a forecast takes for granted, one sentence each: who does not believe these need not believe it. */
import { FUTURES, type Ground } from "./forecast-ground.ts";
import { counted, hoursRounded, listed, percent } from "../../words/words.ts";

export function assumptions(ground: Ground): string[] {
  return [
    planned(ground),
    unplanned(ground),
    corrected(ground),
    outrun(ground),
    weeks(ground),
    drawn(ground),
    edition(ground),
  ].filter((words) => words !== undefined);
}

const titles = ({ shown }: Ground, ids: readonly string[]): string =>
  listed(ids.map((id) => shown.record.assemblies.get(id)?.title ?? id));

function planned({ plan }: Ground): string {
  const open = plan.parts.filter(({ finished }) => !finished);
  return `The work is what is planned for ${counted(plan.parts.length, "part")}, of which ${open.length} ${open.length === 1 ? "is" : "are"} not finished, and nothing else: what is not planned, such as covering, fitting out or a part without planned hours, is not in it.`;
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
  return `Each week ahead is like one of the ${all.length} whole weeks from the start to the date of the record, ${idle} of them without work, any as likely as any other and none depending on the one before: seasons, holidays and a lasting change of pace are not in it.`;
}

function drawn({ seed }: Ground): string {
  return `${counted(FUTURES, "future")} are drawn by a generator whose seed, ${seed}, is made of the record's own figures: the same record gives the same forecast.`;
}

function edition({ shown }: Ground): string | undefined {
  return shown.edition === "archive" ? undefined : "Hours are those that this edition shows.";
}
