/** What the page on the workshop's climate says. */
import { figureRead } from "../../facts/quantity/ends.ts";
import { DAY_SECONDS, toFahrenheit } from "../../facts/quantity/conversions.ts";
import { defined } from "../../defined.ts";
import type { ClimateInput, DayRange } from "../../charts/climate.ts";
import { climateTracks } from "../../reckoning/climate/climate-tracks.ts";
import { LocalTime } from "../../reckoning/time/local-time.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import type { Track } from "../../reckoning/climate/track.ts";
import type { Batch, ClimateLog } from "../../facts/types.ts";
import { dayAt } from "../forecast/chart.ts";
import type { Shown } from "../../editions/shown.ts";
import { dateShort, hourWords } from "../../words/dates.ts";
import { durationWords } from "../../words/durations.ts";
import { grouped } from "../../words/numbers.ts";
import { inUnits } from "../../words/quantities.ts";

export interface ClimatePage {
  readonly logs: readonly LogRow[];
  readonly months: readonly MonthRow[];
  readonly gaps: readonly GapRow[];
  /** undefined where there are no readings of it. */
  readonly temperature?: ClimateInput;
  readonly humidity?: ClimateInput;
}

interface LogRow {
  readonly log: ClimateLog;
  readonly from: string;
  readonly to: string;
  readonly readings: string;
  readonly gap: string;
}

/** Least, mean and greatest in words; empty where nothing is known. */
export type Three = readonly [least: string, mean: string, greatest: string];

interface MonthRow {
  /** `2025-03` */
  readonly month: string;
  readonly temperature: Three;
  readonly humidity: Three;
  readonly without: string;
  readonly batches: number;
}

interface GapRow {
  readonly from: string;
  readonly to: string;
  readonly lasted: string;
}

export function climatePage(shown: Shown): ClimatePage {
  const { climate, aircraft, entries } = shown.record;
  const clock = new LocalTime(aircraft.timeZone);
  const tracks = climateTracks(climate);
  const batches = entries.flatMap((entry) => entry.batches);
  const gaps = gapsOf(tracks.temperature.times.length > 0 ? tracks.temperature : tracks.humidity);
  const metric = aircraft.units === "metric";
  const temperature = inputOf(tracks.temperature, clock, batches, {
    unit: metric ? "°C" : "°F",
    of: (celsius) => (metric ? celsius : toFahrenheit(celsius)),
    noted: ({ temperature }) => figureRead(temperature),
  });
  const humidity = inputOf(tracks.humidity, clock, batches, {
    unit: "%",
    of: (share) => share * 100,
    noted: ({ humidity }) => figureRead(humidity),
  });
  return defined({
    logs: climate.map((log) => logRow(log, clock)),
    months: monthRows(shown, tracks.temperature, tracks.humidity, clock, batches),
    gaps: gaps.map(({ from, to }) => ({
      from: hourWords(clock.minute(from)),
      to: hourWords(clock.minute(to)),
      lasted: durationWords(to - from),
    })),
    temperature,
    humidity,
  });
}

function logRow(log: ClimateLog, clock: LocalTime): LogRow {
  const { times, gap, gapIsDefault } = log;
  return {
    log,
    from: dateShort(clock.day(times[0] ?? 0)),
    to: dateShort(clock.day(times.at(-1) ?? 0)),
    readings: grouped(times.length),
    gap: `${durationWords(gap)}${gapIsDefault ? ", this program’s default" : ""}`,
  };
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function gapsOf({ times, gaps }: Track): Span[] {
  return Array.from(gaps, (i) => ({ from: times[i] ?? 0, to: times[i + 1] ?? 0 }));
}

interface Scale {
  readonly unit: string;
  readonly of: (value: number) => number;
  readonly noted: (batch: Batch) => number | undefined;
}

function inputOf(
  track: Track,
  clock: LocalTime,
  batches: readonly Batch[],
  { unit, of, noted }: Scale,
): ClimateInput | undefined {
  const days = daysOf(track, clock).map(({ day, least, greatest }) => ({
    day,
    least: of(least),
    greatest: of(greatest),
  }));
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const within = batches
    .map((batch) => ({ batch, at: dayAt(batch.day) }))
    .filter(({ at }) => at >= first.day && at <= last.day);
  const marks = within.map(({ batch, at }) => {
    const value = noted(batch);
    return defined({
      day: at + 0.5,
      words: `${batch.id}, ${dateShort(batch.day)}`,
      value: value === undefined ? undefined : of(value),
    });
  });
  return {
    days,
    marks,
    unit,
    from: first.day,
    to: last.day + 1,
    gaps: gapsOf(track).map(({ from, to }) => ({ from: from / DAY_SECONDS, to: to / DAY_SECONDS })),
  };
}

/** The least and the greatest reading of each day of the workshop's calendar. */
function daysOf({ times, values }: Track, clock: LocalTime): DayRange[] {
  const days: DayRange[] = [];
  for (let i = 0; i < times.length; i += 1) {
    const day = clock.dayNumber(times[i] ?? 0);
    const value = values[i] ?? Number.NaN;
    const last = days.at(-1);
    if (last?.day === day)
      days[days.length - 1] = { day, least: Math.min(last.least, value), greatest: Math.max(last.greatest, value) };
    else days.push({ day, least: value, greatest: value });
  }
  return days;
}

function monthRows(
  shown: Shown,
  temperature: Track,
  humidity: Track,
  clock: LocalTime,
  batches: readonly Batch[],
): MonthRow[] {
  const { units } = shown.record.aircraft;
  const starts = monthStarts([temperature, humidity], clock);
  return starts.map(({ month, from, to }) => {
    const [warm, damp] = [spanOf(temperature, from, to), spanOf(humidity, from, to)];
    const known = Math.max(warm?.known ?? 0, damp?.known ?? 0);
    return {
      month,
      temperature: three(warm, (celsius) => inUnits(celsius, "°C", units)),
      humidity: three(damp, (share) => `${grouped(share * 100)} %`),
      without: to - from - known < 60 ? "" : durationWords(to - from - known),
      batches: batches.filter(({ day }) => day.startsWith(month)).length,
    };
  });
}

function three(span: ReturnType<typeof spanOf>, words: (value: number) => string): Three {
  return span === undefined ? ["", "", ""] : [words(span.least), words(span.mean), words(span.greatest)];
}

/** The months from the first reading to the last, the first and the last of them cut there. */
function monthStarts(
  tracks: readonly Track[],
  clock: LocalTime,
): { readonly month: string; readonly from: number; readonly to: number }[] {
  const some = tracks.filter(({ times }) => times.length > 0);
  if (some.length === 0) return [];
  const first = Math.min(...some.map(({ times }) => times[0] ?? 0));
  const last = Math.max(...some.map(({ times }) => times.at(-1) ?? 0));
  const months = [];
  for (let from = first, month = clock.day(first).slice(0, 7); from < last; ) {
    const next = nextMonth(month);
    const to = Math.min(last, clock.midnight(dayAt(`${next}-01`)));
    months.push({ month, from, to });
    [from, month] = [to, next];
  }
  return months;
}

function nextMonth(month: string): string {
  const [year, of] = [Number(month.slice(0, 4)), Number(month.slice(5, 7))];
  return of === 12 ? `${year + 1}-01` : `${year}-${String(of + 1).padStart(2, "0")}`;
}
