/** What calendar and clock show in one time zone, by its IANA name. Instants in s since 1970-01-01T00:00Z. */
import { DAY_SECONDS, HOUR_SECONDS } from "../../facts/quantity/conversions.ts";
import { Temporal } from "temporal-polyfill";

interface Spell {
  readonly from: number;
  readonly to: number;
  readonly offset: number;
}

export class LocalTime {
  readonly #zone: string;
  /**
   * The stretch of one offset that was asked for last: most questions come in order, and the zone's own answer is
   * slow.
   */
  #spell: Spell = { from: 0, to: 0, offset: 0 };

  constructor(zone: string) {
    this.#zone = zone;
  }

  /**
   * `2025-03-12 15:00`: the first full hour of the clock that is not before an instant, so that what is reached by
   * the instant is by then.
   */
  hourBy(instant: number): string {
    const shown = Math.ceil(instant) + this.#offset(instant);
    const wall = Math.ceil(shown / HOUR_SECONDS) * HOUR_SECONDS;
    return new Date(wall * 1000).toISOString().slice(0, 16).replace("T", " ");
  }

  /** `2025-03-12`: the day that it is at an instant. */
  day(instant: number): string {
    return this.#shown(instant).slice(0, 10);
  }

  /** `2025-03-12 14:20`: what the clock shows at an instant, cut to the minute. */
  minute(instant: number): string {
    return this.#shown(instant).slice(0, 16).replace("T", " ");
  }

  /**
   * The instant at which a day begins, given by its days since 1970-01-01; an hour off where clocks change at
   * midnight.
   */
  midnight(dayNumber: number): number {
    return dayNumber * DAY_SECONDS - this.#offset(dayNumber * DAY_SECONDS - this.#offset(dayNumber * DAY_SECONDS));
  }

  /** Days since 1970-01-01 of the day that it is at an instant. */
  dayNumber(instant: number): number {
    return Math.floor((instant + this.#offset(instant)) / DAY_SECONDS);
  }

  #shown(instant: number): string {
    return new Date((instant + this.#offset(instant)) * 1000).toISOString();
  }

  #offset(instant: number): number {
    if (!(instant >= this.#spell.from && instant < this.#spell.to)) this.#spell = spellAt(instant, this.#zone);
    return this.#spell.offset;
  }
}

function spellAt(instant: number, zone: string): Spell {
  const local = Temporal.Instant.fromEpochMilliseconds(Math.floor(instant * 1000)).toZonedDateTimeISO(zone);
  const next = local.getTimeZoneTransition("next");
  return {
    from: local.epochMilliseconds / 1000,
    to: next === null ? Number.POSITIVE_INFINITY : next.epochMilliseconds / 1000,
    offset: local.offsetNanoseconds / 1e9,
  };
}
