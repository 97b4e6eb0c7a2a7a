/** When the work may be done, from what the builder planned and what this edition shows to have been worked. */
import { addDays } from "../../reckoning/time/calendar.ts";
import { finishWeeks } from "../../reckoning/hours/finish-week.ts";
import { LEAST_WEEKS } from "../../reckoning/hours/foretold.ts";
import { total, type Worked } from "../../reckoning/hours/hours.ts";
import type { Plan } from "../../reckoning/hours/plan.ts";
import type { Day } from "../../facts/types.ts";
import { fanAhead, lookBacks, type FanWeek, type LookBackView } from "./forecast-ahead.ts";
import { groundOf, type Ground } from "./forecast-ground.ts";
import { assumptions, leftOut } from "./forecast-words.ts";
import type { Shown } from "../../editions/shown.ts";
import { dateWords, monthWords } from "../../words/dates.ts";
import { counted } from "../../words/lists.ts";

export interface Finish {
  /** The chance that the work is done by then. */
  readonly share: number;
  /** Undefined where that is more than twenty years ahead. */
  readonly day?: Day;
  /** The day in words, the month alone beyond a quarter of a year. */
  readonly words: string;
}

export interface Forecast {
  readonly plan: Plan;
  readonly finish: readonly Finish[];
  readonly ahead: readonly FanWeek[];
  readonly work: readonly Worked[];
  readonly assumptions: readonly string[];
  /** What it knows nothing of, in a sentence. */
  readonly leftOut: string;
}

export interface ForecastView {
  /** Why there is no forecast, if there is none. */
  readonly silent?: string;
  readonly forecast?: Forecast;
  readonly lookBacks: readonly LookBackView[];
}

const SHARES = [0.5, 0.8, 0.95] as const;
/** Weeks within which a day may be named. */
const QUARTER = 13;

export const forecastView = (shown: Shown): ForecastView => shown.memo.once(shown, viewOf);

function viewOf(shown: Shown): ForecastView {
  const ground = groundOf(shown);
  const silent = silentWhy(ground);
  return silent === undefined
    ? { forecast: forecastOf(ground), lookBacks: lookBacks(ground) }
    : { silent, lookBacks: lookBacks(ground) };
}

function silentWhy({ plan, weeks }: Ground): string | undefined {
  if (plan.parts.length === 0) return "No assembly has planned hours, so that there is nothing to reckon with.";
  if (weeks.length < LEAST_WEEKS)
    return `The record spans ${counted(weeks.length, "whole week")}. Below ${LEAST_WEEKS} there is no forecast: so few say too little of how weeks differ.`;
  if (plan.left === 0) return "By the plan no work is left.";
  if (total(weeks) === 0) return "In no whole week has work been noted on a part that has planned hours.";
  return undefined;
}

function forecastOf(ground: Ground): Forecast {
  const { shown, plan, weeks, work } = ground;
  const minutes = weeks.map((week) => week.minutes);
  const until = finishWeeks(minutes, plan.left, SHARES) ?? [];
  const finish = SHARES.map((share, at): Finish => {
    const week = until[at];
    const day = week === undefined ? undefined : addDays(shown.record.day, 7 * week);
    if (week === undefined || day === undefined) return { share, words: "only more than twenty years ahead" };
    return { share, day, words: week > QUARTER ? monthWords(day) : dateWords(day) };
  });
  const last = until.findLast((week) => week !== undefined);
  return {
    plan,
    finish,
    work,
    ahead: fanAhead(ground, last),
    assumptions: assumptions(ground),
    leftOut: leftOut(ground),
  };
}

/** The forecast in a sentence, or why there is none. */
export function forecastWords({ silent, forecast }: ForecastView): string {
  if (forecast === undefined) return `There is no forecast. ${silent ?? ""}`;
  const [half, most] = forecast.finish;
  const by = (finish: Finish | undefined): string =>
    finish?.day === undefined ? "only more than twenty years ahead" : `by ${finish.words}`;
  return `${forecast.leftOut} At the pace so far, and as earlier forecasts did, the work that is planned is done ${by(half)} as likely as not, and ${by(most)} with a chance of four in five.`;
}
