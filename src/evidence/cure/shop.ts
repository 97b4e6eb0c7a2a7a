/** The climate of the workshop as logged, ready to be asked many times. */
import { climateTracks, type ClimateTracks } from "../../reckoning/climate/climate-tracks.ts";
import type { CureLaw } from "../../reckoning/cure/cure-rate.ts";
import { cureClock, type CureClock } from "../../reckoning/cure/proven-age.ts";
import type { ClimateLog, Ref } from "../../facts/types.ts";

export class Shop {
  readonly tracks: ClimateTracks;
  readonly isLogged: boolean;
  readonly #logs: readonly ClimateLog[];
  readonly #clocks = new Map<string, CureClock>();

  constructor(logs: readonly ClimateLog[]) {
    this.tracks = climateTracks(logs);
    this.isLogged = logs.length > 0;
    this.#logs = logs;
  }

  /** The same clock for the same law and reference, °C: it is made by one pass over all readings. */
  clock(law: CureLaw, reference: number): CureClock {
    const key = `${law.energy ?? "doubling"} ${reference}`;
    const clock = this.#clocks.get(key) ?? cureClock(this.tracks.temperature, law, reference);
    this.#clocks.set(key, clock);
    return clock;
  }

  /** The logs that have readings between two instants or on both sides of them. */
  logs(from: number, to: number): Ref[] {
    return this.#logs
      .filter(({ times }) => (times[0] ?? to) <= to && (times.at(-1) ?? from) >= from)
      .map(({ id }) => ({ kind: "climate log", id }));
  }
}
