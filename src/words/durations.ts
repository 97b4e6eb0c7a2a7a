/** Lengths of time, as they are worked, passed and played. */
import { DAY_MINUTES } from "../facts/quantity/conversions.ts";
import { grouped } from "./numbers.ts";

const LESS = "less than a minute";

/** Minutes that were worked → `2 h 45 min`, `45 min`, `1,204 h`; `no hours` for none. */
export function hoursWords(minutes: number): string {
  if (minutes === 0) return "no hours";
  const whole = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (whole === 0) return `${rest} min`;
  return rest === 0 ? `${grouped(whole)} h` : `${grouped(whole)} h ${rest} min`;
}

/** Minutes → hours with one decimal, such as `2.8 h`, for sums where the minute does not matter. */
export function hoursRounded(minutes: number): string {
  return `${grouped(minutes / 60, minutes >= 6000 || minutes % 60 === 0 ? 0 : 1)} h`;
}

/** Seconds → `35 min`, `3 h 20 min`, `4 d 6 h`; `less than a minute` for what rounds to none. */
export function durationWords(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (minutes === 0) return LESS;
  if (minutes < 2 * DAY_MINUTES) return hoursWords(minutes);
  const hours = Math.round(minutes / 60);
  const rest = hours % 24;
  return rest === 0 ? `${Math.floor(hours / 24)} d` : `${Math.floor(hours / 24)} d ${rest} h`;
}

/**
 * A length of time in whole days and hours, or hours and minutes, rounded down: what is shown is never more than what
 * there was.
 * 259,140 s → `2 d 23 h`; 3,900 s → `1 h 5 min`; 0 → `less than a minute`.
 */
export function span(seconds: number): string {
  const minutes = Math.floor(seconds / 60 + 1e-9);
  const hours = Math.floor(minutes / 60);
  if (hours >= 24) return twoParts(Math.floor(hours / 24), "d", hours % 24, "h");
  if (hours >= 1) return twoParts(hours, "h", minutes % 60, "min");
  return minutes === 0 ? LESS : `${minutes} min`;
}

/** The same of what was reached of a time that is asked: `nothing` below a minute. */
export const reached = (seconds: number): string => (seconds < 60 ? "nothing" : span(seconds));

function twoParts(large: number, unit: string, small: number, smallUnit: string): string {
  return small === 0 ? `${large} ${unit}` : `${large} ${unit} ${small} ${smallUnit}`;
}

/** Seconds → `23 h 59 min`, `3 d 1 min`: to the minute, however long, so that what is just beyond a limit does not read as the limit. */
export function toTheMinute(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const parts = [
    [Math.floor(minutes / DAY_MINUTES), "d"],
    [Math.floor((minutes % DAY_MINUTES) / 60), "h"],
    [minutes % 60, "min"],
  ] as const;
  const told = parts.filter(([count]) => count > 0).map(([count, unit]) => `${count} ${unit}`);
  return told.length === 0 ? LESS : told.join(" ");
}

/** How long a clip runs, begun seconds counted: `7 s`, `2 min 5 s`. */
export function playedWords(seconds: number): string {
  const whole = Math.max(1, Math.ceil(seconds - 0.05));
  const [minutes, rest] = [Math.floor(whole / 60), whole % 60];
  return [...(minutes > 0 ? [`${minutes} min`] : []), ...(rest > 0 || minutes === 0 ? [`${rest} s`] : [])].join(" ");
}
