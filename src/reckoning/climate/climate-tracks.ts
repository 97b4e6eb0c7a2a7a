/**
 * All logger files of a workshop as tracks of temperature (°C), relative humidity (share) and the moisture that wood
 * would settle at
 * (share of dry mass; see equilibrium-moisture.ts). A reading that stands in two files counts once. A reading whose
 * climate lies outside
 * the moisture equation makes gaps in the moisture alone.
 */
import { equilibriumMoisture } from "./equilibrium-moisture.ts";
import { filled, type Readings } from "./filled.ts";
import { trackOf, type Track } from "./track.ts";

/** The readings of one file. The arrays are of one length, times rise, and NaN stands for a reading that is missing. */
export interface LoggedReadings {
  readonly times: Float64Array;
  readonly temperatures: Float64Array;
  readonly humidities: Float64Array;
  /** The longest time between two readings that is no gap, s. */
  readonly gap: number;
}

export interface ClimateTracks {
  /** In a gap that a thermometer of least and greatest covers, its least. */
  readonly temperature: Track;
  /** The same with its greatest; undefined where there is no such thermometer. */
  readonly warmest?: Track;
  readonly humidity: Track;
  readonly moisture: Track;
}

/** A thermometer of least and greatest, °C, between two instants, s. */
export interface LeastAndGreatest {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  readonly greatest: number;
}

export function climateTracks(
  logs: readonly LoggedReadings[],
  thermometers: readonly LeastAndGreatest[] = [],
): ClimateTracks {
  const all = joined(logs);
  const isWarm = (i: number): boolean => !Number.isNaN(all.temperatures[i]);
  const isDamp = (i: number): boolean => !Number.isNaN(all.humidities[i]);
  const moistures = all.temperatures.map(
    (temperature, i) => equilibriumMoisture(temperature, all.humidities[i] ?? Number.NaN) ?? Number.NaN,
  );
  const warm = readingsOf(all, all.temperatures, isWarm);
  const filledWith = (end: "least" | "greatest", worse: (a: number, b: number) => number): Track => {
    const held = thermometers.map((one) => ({ from: one.from, to: one.to, value: one[end] }));
    return tracked(filled(warm, held, worse));
  };
  const temperature = filledWith("least", Math.min);
  return {
    temperature,
    ...(thermometers.length > 0 && { warmest: filledWith("greatest", Math.max) }),
    humidity: tracked(readingsOf(all, all.humidities, isDamp)),
    moisture: tracked(readingsOf(all, moistures, (i) => isWarm(i) && isDamp(i))),
  };
}

const tracked = ({ times, values, limits }: Readings): Track => trackOf(times, values, limits);

/** Those readings that are not missing. */
function readingsOf({ times, limits }: Joined, values: Float64Array, isThere: (i: number) => boolean): Readings {
  const places = Int32Array.from(times.keys()).filter(isThere);
  const pick = (array: Float64Array): Float64Array => Float64Array.from(places, (i) => array[i] ?? Number.NaN);
  return { times: pick(times), values: pick(values), limits: pick(limits) };
}

type Joined = { readonly [part in "times" | "temperatures" | "humidities" | "limits"]: Float64Array };

/** Files by their first reading follow one another or overlap. */
function joined(logs: readonly LoggedReadings[]): Joined {
  const length = logs.reduce((sum, log) => sum + log.times.length, 0);
  const end = {
    times: new Float64Array(length),
    temperatures: new Float64Array(length),
    humidities: new Float64Array(length),
    limits: new Float64Array(length),
  };
  let offset = 0;
  for (const log of logs) {
    end.times.set(log.times, offset);
    end.temperatures.set(log.temperatures, offset);
    end.humidities.set(log.humidities, offset);
    end.limits.fill(log.gap, offset, offset + log.times.length);
    offset += log.times.length;
  }
  return sorted(end);
}

/** By time; of those at the same time the first. */
function sorted(all: Joined): Joined {
  const order = Int32Array.from(all.times.keys()).sort((a, b) => (all.times[a] ?? 0) - (all.times[b] ?? 0));
  const once = order.filter((place, i) => i === 0 || all.times[place] !== all.times[order[i - 1] ?? 0]);
  const pick = (array: Float64Array): Float64Array => Float64Array.from(once, (place) => array[place] ?? Number.NaN);
  return {
    times: pick(all.times),
    temperatures: pick(all.temperatures),
    humidities: pick(all.humidities),
    limits: pick(all.limits),
  };
}
