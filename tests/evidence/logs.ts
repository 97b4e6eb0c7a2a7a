/** Logger files made by hand: hourly from a day on, with what the shop was like at each hour. */
import type { ClimateLog } from "../../src/facts/types.ts";
import { epochOf } from "./quantities.ts";

export type Hourly = (hour: number) => { readonly temperature: number; readonly humidity?: number } | undefined;

/** Hours counted from the start of `day`; undefined leaves the reading out. */
export function log(id: string, day: string, hours: number, at: Hourly, change: Partial<ClimateLog> = {}): ClimateLog {
  const readings = Array.from({ length: hours + 1 }, (_, hour) => ({ hour, reading: at(hour) })).flatMap(
    ({ hour, reading }) => (reading ? [{ hour, ...reading }] : []),
  );
  return {
    id,
    place: { file: `climate/${id}.csv`, line: 1, column: 1 },
    file: `climate/${id}.csv`,
    audience: "public",
    title: id,
    gap: 7200,
    gapIsDefault: true,
    body: [],
    times: Float64Array.from(readings, ({ hour }) => epochOf(day) + hour * 3600),
    temperatures: Float64Array.from(readings, ({ temperature }) => temperature),
    humidities: Float64Array.from(readings, ({ humidity }) => humidity ?? 0.5),
    ...change,
  };
}
