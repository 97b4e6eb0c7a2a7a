/** The fan of a forecast, and how earlier ones would have done. */
import { addDays } from "../../reckoning/time/calendar.ts";
import { forecastBacktest } from "../../reckoning/hours/forecast-backtest.ts";
import { total } from "../../reckoning/hours/hours.ts";
import { workAhead } from "../../reckoning/hours/work-ahead.ts";
import type { Day } from "../../facts/types.ts";
import type { Ground } from "./forecast-ground.ts";

/** Minutes worked in all by the end of a week ahead: within `wide` with a chance of 95 %, within `narrow` of 80 %. */
export interface FanWeek {
  readonly day: Day;
  readonly wide: readonly [number, number];
  readonly narrow: readonly [number, number];
  readonly middle: number;
}

/** Forecasts of the work of so many weeks, made at the end of each past month from what was known then. */
export interface LookBackView {
  readonly ahead: number;
  readonly tried: readonly LookBackRow[];
  readonly held: number;
}

interface LookBackRow {
  /** The last day known. */
  readonly day: Day;
  readonly low: number;
  readonly high: number;
  readonly worked: number;
  readonly held: boolean;
}

/** Ten years: a fan beyond them cannot be drawn to any use. */
const MOST_DRAWN = 520;
const AHEAD = [4, 13, 26] as const;
const QUANTILES = [0.025, 0.1, 0.5, 0.9, 0.975] as const;

/** To the week by which the last share is done, the sums never above all that is planned. */
export function fanAhead({ shown, plan, work, weeks }: Ground, last: number | undefined): FanWeek[] {
  const so = total(work);
  const most = so + plan.left;
  const minutes = weeks.map((week) => week.minutes);
  const sums = workAhead(minutes, Math.min(Math.max(last ?? MOST_DRAWN, 1), MOST_DRAWN), QUANTILES) ?? [];
  return sums.map((quantiles, at) => {
    const [a = 0, b = 0, middle = 0, c = 0, d = 0] = quantiles.map((sum) => Math.min(most, so + sum));
    return { day: addDays(shown.record.day, 7 * (at + 1)) ?? "", wide: [a, d], narrow: [b, c], middle };
  });
}

export function lookBacks({ weeks }: Ground): LookBackView[] {
  const minutes = weeks.map((week) => week.minutes);
  const ends = weeks.map(({ day }) => addDays(day, 6) ?? "");
  const origins = monthEnds(ends);
  return AHEAD.map((ahead) => {
    const looks = forecastBacktest(minutes, origins, ahead) ?? [];
    const tried = looks.map(({ origin, ...look }) => ({ ...look, day: ends[origin - 1] ?? "" }));
    return { ahead, tried, held: tried.filter(({ held }) => held).length };
  });
}

/** How many weeks were known at the last Sunday of each month. */
function monthEnds(sundays: readonly Day[]): number[] {
  return sundays.flatMap((day, at) => ((addDays(day, 7) ?? "").slice(0, 7) === day.slice(0, 7) ? [] : [at + 1]));
}
