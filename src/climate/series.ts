/** Readings in order, one for each moment. */
import type { Fault } from "../facts/reading.ts";
import type { Readings } from "./readings.ts";
import type { Report } from "../record/table/report.ts";

export interface Series {
  readonly times: Float64Array;
  readonly temperatures: Float64Array;
  readonly humidities: Float64Array;
  readonly rows: Int32Array;
}

/**
 * Sorts, and joins what stands twice. Two readings of one moment that differ are a problem; a missing one differs
 * from nothing.
 */
export function seriesOf(readings: Readings, moments: Float64Array, report: Report): Series {
  const order = orderOf(moments);
  const series = {
    times: new Float64Array(order.length),
    temperatures: new Float64Array(order.length),
    humidities: new Float64Array(order.length),
    rows: new Int32Array(order.length),
  };
  let last = -1;
  for (const i of order) {
    const [time, temperature, humidity] = [
      moments[i] ?? 0,
      readings.temperatures[i] ?? Number.NaN,
      readings.humidities[i] ?? Number.NaN,
    ];
    if (Number.isNaN(temperature) && Number.isNaN(humidity)) continue;
    if (last >= 0 && series.times[last] === time) {
      if (differ(series.temperatures[last], temperature) || differ(series.humidities[last], humidity))
        report.say(readings.rows[i] ?? 0, 0, TWICE);
      if (!Number.isNaN(temperature)) series.temperatures[last] = temperature;
      if (!Number.isNaN(humidity)) series.humidities[last] = humidity;
      continue;
    }
    last += 1;
    series.times[last] = time;
    series.temperatures[last] = temperature;
    series.humidities[last] = humidity;
    series.rows[last] = readings.rows[i] ?? 0;
  }
  const end = last + 1;
  return {
    times: series.times.slice(0, end),
    temperatures: series.temperatures.slice(0, end),
    humidities: series.humidities.slice(0, end),
    rows: series.rows.slice(0, end),
  };
}

const TWICE: Fault = {
  code: "climate-twice",
  message: "the file holds another reading of the same moment that differs",
  mend: "take out the line that is wrong; if the logger's clock was set back in between, part the file there and say the zone of each",
};

const differ = (a: number | undefined, b: number): boolean =>
  a !== undefined && !Number.isNaN(a) && !Number.isNaN(b) && a !== b;

/**
 * Places of the moments that are known, by moment and then by row. Most files are in order already, or wholly in
 * reverse.
 */
function orderOf(moments: Float64Array): Int32Array {
  const known = new Int32Array(moments.length);
  let count = 0;
  for (let i = 0; i < moments.length; i += 1) if (!Number.isNaN(moments[i])) known[count++] = i;
  const order = known.subarray(0, count);
  let sorted = true;
  for (let i = 1; i < count && sorted; i += 1)
    sorted = (moments[order[i - 1] ?? 0] ?? 0) <= (moments[order[i] ?? 0] ?? 0);
  return sorted ? order : order.sort((a, b) => (moments[a] ?? 0) - (moments[b] ?? 0) || a - b);
}
