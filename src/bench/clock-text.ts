/** An instant as it is written in an entry: what the clock of the aircraft's time zone showed, counted from one day. */
import { Temporal } from "temporal-polyfill";
import { clockText } from "../facts/time/clock.ts";
import type { Day } from "../facts/types.ts";

const zoned = (instant: number, zone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.fromEpochMilliseconds(instant * 1000).toZonedDateTimeISO(zone);

/** `instant` in s since 1970-01-01T00:00Z. */
export const dayOf = (instant: number, zone: string): Day => zoned(instant, zone).toPlainDate().toString();

/**
 * `14:20`, `14:20:30`, after midnight `24:20`; with its offset, `1:05+00:00`, where the clock shows that time twice.
 * Undefined before the day, and from noon of the next on.
 */
export function clockOf(instant: number, day: Day, zone: string): string | undefined {
  const local = zoned(instant, zone);
  const days = Temporal.PlainDate.from(day).until(local.toPlainDate()).days;
  if (days < 0 || days > 1 || (days === 1 && local.hour >= 12)) return undefined;
  const minutes = (days * 24 + local.hour) * 60 + local.minute + local.second / 60;
  const text = clockText(minutes).padStart(5, "0");
  return isTwice(local, zone) ? `${text}${local.offset}` : text;
}

function isTwice(local: Temporal.ZonedDateTime, zone: string): boolean {
  const plain = local.toPlainDateTime();
  const [earlier, later] = (["earlier", "later"] as const).map((disambiguation) =>
    plain.toZonedDateTime(zone, { disambiguation }),
  );
  return (
    earlier !== undefined &&
    later !== undefined &&
    earlier.epochMilliseconds !== later.epochMilliseconds &&
    earlier.toPlainDateTime().equals(plain)
  );
}
