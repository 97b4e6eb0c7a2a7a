/** The climate of the workshop as logged, ready to be asked many times. */
import { type ClimateTracks, climateTracks, type LeastAndGreatest } from "../../reckoning/climate/climate-tracks.ts";
import type { CureLaw } from "../../reckoning/cure/cure-rate.ts";
import { cureClock, type CureClock } from "../../reckoning/cure/proven-age.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import { type SpansThatMeet, spansThatMeet } from "../../reckoning/climate/spans-that-meet.ts";
import type { ClimateLog, Ref, Thermometer } from "../../facts/types.ts";
import { distinct } from "../finding.ts";

export interface Warm {
  /** Whether all of the time is known. */
  readonly whole: boolean;
  /** s */
  readonly known: number;
  readonly least: number;
  readonly greatest: number;
}

export class Shop {
  readonly tracks: ClimateTracks;
  readonly isLogged: boolean;
  readonly #logs: readonly { readonly ref: Ref; readonly times: Float64Array }[];
  readonly #clocks = new Map<CureLaw, Map<number, CureClock>>();

  readonly #thermometers: SpansThatMeet<LeastAndGreatest & { readonly ref: Ref }>;

  constructor(logs: readonly ClimateLog[], thermometers: readonly Thermometer[]) {
    const spans = thermometers.map(({ entry, from, to, least, greatest }) => ({
      ref: { kind: "entry", id: entry } as const,
      from: from.epoch,
      to: to.epoch,
      least: least.value,
      greatest: greatest.value,
    }));
    this.#thermometers = spansThatMeet(spans);
    this.tracks = climateTracks(logs, spans);
    this.isLogged = logs.length + thermometers.length > 0;
    this.#logs = logs.map(({ id, times }) => ({ ref: { kind: "climate log", id }, times }));
  }

  /** Least and greatest between two instants by logger and thermometer, °C, the worse of both; undefined where nothing of it is known. */
  warmth(from: number, to: number): Warm | undefined {
    const { temperature, warmest } = this.tracks;
    const cold = spanOf(temperature, from, to);
    const warm = warmest === undefined ? cold : spanOf(warmest, from, to);
    if (!cold || !warm) return undefined;
    let [least, greatest] = [cold.least, warm.greatest];
    for (const held of this.#thermometers(from, to)) {
      if (held.from >= to || held.to <= from) continue;
      least = Math.min(least, held.least);
      greatest = Math.max(greatest, held.greatest);
    }
    return { whole: cold.whole, known: cold.known, least, greatest };
  }

  /** When the temperature was last read, s; undefined where it never was. */
  get lastRead(): number | undefined {
    return this.tracks.temperature.times.at(-1);
  }

  /** The same clock for the same law and reference, °C: it is made by one pass over all readings. */
  clock(law: CureLaw, reference: number): CureClock {
    const clocks = this.#clocks.get(law) ?? new Map<number, CureClock>();
    this.#clocks.set(law, clocks);
    const clock = clocks.get(reference) ?? cureClock(this.tracks.temperature, law, reference);
    clocks.set(reference, clock);
    return clock;
  }

  /**
   * What is known of the climate between two instants rests on these: logs that have readings then or on both sides, and entries in which
   * a thermometer was read that had been set by then.
   */
  restsOn(from: number, to: number): readonly Ref[] {
    const logs = this.#logs.filter(({ times }) => (times[0] ?? to) <= to && (times.at(-1) ?? from) >= from);
    return distinct([...logs, ...this.#thermometers(from, to)].map(({ ref }) => ref));
  }
}
