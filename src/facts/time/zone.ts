/** Days and times of day of the aircraft's time zone as seconds since 1970-01-01T00:00Z. */
import { DAY_MINUTES, DAY_SECONDS } from "../quantity/conversions.ts";
import { Temporal } from "temporal-polyfill";
import { nearest } from "../nearest.ts";
import { meaning, onlyYouKnow, type Reading, shown } from "../reading.ts";
import type { Day, Moment } from "../values.ts";
import type { Clock } from "./clock.ts";
import { nextDay } from "./day.ts";

export function readZone(typed: string): Reading<string> {
  try {
    if (!/^[A-Za-z]+(?:[/_+-][A-Za-z0-9_+-]+)*$/.test(typed)) throw new RangeError(typed);
    Temporal.PlainDate.from("2000-01-01").toZonedDateTime(typed);
    return { value: typed };
  } catch {
    const meant = meantZone(typed);
    const mending =
      meant === undefined
        ? onlyYouKnow("give continent and city of the time zone database, as in America/Chicago")
        : meaning(meant);
    return {
      fault: {
        code: "no-time-zone",
        message: "there is no such time zone",
        expected: "a time zone by its place, such as Europe/Lisbon",
        found: shown(typed),
        ...mending,
      },
    };
  }
}

/** A zone of nearly the typed name, or of a city of nearly that name. */
function meantZone(typed: string): string | undefined {
  const zones = Intl.supportedValuesOf("timeZone");
  const cities = new Map(zones.map((zone) => [zone.slice(zone.lastIndexOf("/") + 1), zone]));
  const city = nearest(typed.slice(typed.lastIndexOf("/") + 1), cities.keys());
  return nearest(typed, zones) ?? (city === undefined ? undefined : cities.get(city));
}

/** Clocks of one time zone, with the days it has already reckoned. */
export class Zone {
  readonly #name: string;
  readonly #starts = new Map<Day, number>();
  static readonly #known = new Map<string, Zone>();

  private constructor(name: string) {
    this.#name = name;
  }

  /** The same for all who ask, since days are slow to reckon. */
  static of(name: string): Zone {
    const zone = Zone.#known.get(name) ?? new Zone(name);
    Zone.#known.set(name, zone);
    return zone;
  }

  /** The first second of a day. */
  start(day: Day): number {
    let start = this.#starts.get(day);
    if (start === undefined) {
      start = Temporal.PlainDate.from(day).toZonedDateTime(this.#name).epochMilliseconds / 1000;
      this.#starts.set(day, start);
    }
    return start;
  }

  /** The last second of a day. */
  end(day: Day): number {
    return this.start(nextDay(day)) - 1;
  }

  /**
   * The moment of a clock time counted from the start of a day. Where clocks were put back and a time came twice,
   * `twice` says which is meant, unless the clock time has its offset; undefined where clocks were put forward over it, or never showed it with that offset.
   */
  moment(day: Day, clock: Clock, twice: "earlier" | "later"): Moment | undefined {
    const past = clock.minutes >= DAY_MINUTES;
    const date = past ? nextDay(day) : day;
    const minutes = past ? clock.minutes - DAY_MINUTES : clock.minutes;
    const seconds = Math.round(minutes * 60);
    if (clock.offset !== undefined) return this.#withOffset(date, seconds, clock, clock.offset);
    if (this.start(nextDay(date)) - this.start(date) === DAY_SECONDS)
      return { typed: clock.typed, epoch: this.start(date) + seconds };
    const local = Temporal.PlainDate.from(date).toPlainDateTime().add({ seconds });
    const zoned = local.toZonedDateTime(this.#name, { disambiguation: twice });
    return zoned.toPlainDateTime().equals(local)
      ? { typed: clock.typed, epoch: zoned.epochMilliseconds / 1000 }
      : undefined;
  }

  #withOffset(date: Day, seconds: number, { typed }: Clock, offset: number): Moment | undefined {
    const epoch = Date.parse(`${date}T00:00:00Z`) / 1000 + seconds - offset;
    const zoned = Temporal.Instant.fromEpochMilliseconds(epoch * 1000).toZonedDateTimeISO(this.#name);
    return zoned.offsetNanoseconds === offset * 1e9 ? { typed, epoch } : undefined;
  }
}
