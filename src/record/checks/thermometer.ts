/** Readings of a thermometer of least and greatest, and joints that were heated. */
import { Zone } from "../../facts/time/zone.ts";
import type { Instant } from "../../facts/time/instant.ts";
import { checkClock, isBefore } from "./days.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf } from "./context.ts";

type Reading = NonNullable<EntryFile["spec"]["thermometer"]>[number];

export function checkThermometers(context: CheckContext): void {
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.thermometer ?? []).forEach((reading, index) => checkReading(context, filed, index, reading, zone));
    (filed.spec.post_cures ?? []).forEach((heated, index) => checkHeated(context, filed, index, heated, zone));
  }
}

type Heated = NonNullable<EntryFile["spec"]["post_cures"]>[number];

function checkHeated(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { joints, pieces, from, to }: Heated,
  zone: Zone | undefined,
): void {
  const path = ["post_cures", index];
  joints.forEach((joint, at) => expectId(context, filed, [...path, "joints", at], ["joint"], joint));
  (pieces ?? []).forEach((piece, at) => expectId(context, filed, [...path, "pieces", at], ["piece"], piece));
  checkClock(context, filed, [...path, "from"], from.clock, zone, from.day);
  checkClock(context, filed, [...path, "to"], to.clock, zone, to.day);
  const isBackwards = isNoSpan(from, to, zone);
  if (!isBackwards && to.day <= filed.spec.date) return;
  report(context, filed, [...path, "to"], {
    code: "heated-when",
    message: isBackwards ? "the heat was taken away before it was reached" : "it ended after the day of this entry",
    expected: isBackwards ? `a time after ${from.typed}` : `a time on ${filed.spec.date} or before`,
    found: to.typed,
    mend: isBackwards ? "correct one of the two times" : "note it in the entry of the day on which it ended",
  });
}

/** A time that no clock showed is told by itself. */
const isNoSpan = (from: Instant, to: Instant, zone: Zone | undefined): boolean =>
  isBefore(to, from, zone) ||
  (to.day === from.day && to.clock.minutes === from.clock.minutes && to.clock.offset === from.clock.offset);

function checkReading(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { from, to, least, greatest }: Reading,
  zone: Zone | undefined,
): void {
  const path = ["thermometer", index];
  for (const [key, at] of [
    ["from", from],
    ["to", to],
  ] as const)
    checkClock(context, filed, [...path, key], at.clock, zone, at.day);
  if (isNoSpan(from, to, zone))
    report(context, filed, [...path, "to"], {
      code: "read-before-set",
      message: "it was read before it was set",
      expected: `a time after ${from.typed}`,
      found: to.typed,
      mend: "correct one of the two times",
    });
  if (to.day > filed.spec.date)
    report(context, filed, [...path, "to"], {
      code: "read-after-day",
      message: "it was read after the day of this entry",
      expected: `a time on ${filed.spec.date} or before`,
      found: to.typed,
      mend: "note the reading in the entry of the day on which it was read",
    });
  if (least.value > greatest.value)
    report(context, filed, [...path, "greatest"], {
      code: "least-above-greatest",
      message: "the greatest is below the least",
      expected: `a temperature of ${least.typed} or more`,
      found: greatest.typed,
      mend: "correct one of the two",
    });
}
