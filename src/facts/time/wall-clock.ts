/** From what a clock on a wall shows to the moment that it is, in one time zone. Seconds throughout. */
import { HOUR_SECONDS } from "../quantity/conversions.ts";
import { Temporal } from "temporal-polyfill";

/**
 * The moments at which a clock shows a time: one; none in the hour that is left out in spring; two, earlier first, in
 * the hour that comes twice in autumn. What the clock shows is given as if it were UTC.
 */
export type WallClock = (wall: number) => readonly number[];

const OFFSET = /^(?:utc|gmt)? ?([+\-−])(\d{1,2})(?::?(\d{2}))?$/iu;

/** Seconds east of Greenwich of `Z`, `UTC`, `GMT+1`, `-05:00`; undefined for anything else. */
export function offsetOf(typed: string): number | undefined {
  if (/^(?:z|utc|gmt)$/iu.test(typed)) return 0;
  const [, sign, hours = "", minutes = "0"] = OFFSET.exec(typed) ?? [];
  if (sign === undefined || Number(hours) > 14 || Number(minutes) > 59) return undefined;
  return (sign === "+" ? 1 : -1) * (Number(hours) * HOUR_SECONDS + Number(minutes) * 60);
}

/** Whether the name is one of a time zone that this program knows. */
export function isZone(name: string): boolean {
  try {
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name).timeZoneId !== "";
  } catch {
    return false;
  }
}

export const fixedClock =
  (offset: number): WallClock =>
  (wall) => [wall - offset];

/** The clock of a zone between two wall times; outside them it is not to be asked. Its changes are looked up once. */
export function zoneClock(zone: string, from: number, to: number): WallClock {
  const spells = spellsOf(zone, from - 48 * HOUR_SECONDS, to + 48 * HOUR_SECONDS);
  let last = 0;
  const within = (at: number, wall: number): boolean => {
    const spell = spells[at];
    return spell !== undefined && wall - spell.offset >= spell.from && wall - spell.offset < spell.to;
  };
  return (wall) => {
    while (last > 0 && wall < spellStart(spells, last)) last -= 1;
    while (last + 1 < spells.length && wall >= spellStart(spells, last + 1)) last += 1;
    return [last - 1, last, last + 1].filter((at) => within(at, wall)).map((at) => wall - (spells[at]?.offset ?? 0));
  };
}

interface Spell {
  readonly from: number;
  readonly to: number;
  readonly offset: number;
}

const spellStart = (spells: readonly Spell[], at: number): number =>
  (spells[at]?.from ?? 0) + (spells[at]?.offset ?? 0);

/** Stretches of one offset each, from one moment to another. */
function spellsOf(zone: string, from: number, to: number): readonly Spell[] {
  const spells: Spell[] = [];
  let at = Temporal.Instant.fromEpochMilliseconds(from * 1000).toZonedDateTimeISO(zone);
  for (;;) {
    const next = at.getTimeZoneTransition("next");
    const end = next === null ? Number.POSITIVE_INFINITY : next.epochMilliseconds / 1000;
    spells.push({ from: at.epochMilliseconds / 1000, to: end, offset: at.offsetNanoseconds / 1e9 });
    if (next === null || end > to) return spells;
    at = next;
  }
}
