/** What one person can have worked on one day, over all lines and entries of that day. */
import { DAY_MINUTES } from "../../facts/quantity/conversions.ts";
import { type CheckContext, type EntryFile, report, soundOf, whereIs } from "./context.ts";

/** A day of hours; those of the day on which clocks are put back are written as 24 too. */

interface SoFar {
  minutes: number;
  readonly places: string[];
  told: boolean;
}

export function checkDayHours(context: CheckContext): void {
  const worked = new Map<string, SoFar>();
  for (const filed of soundOf(context, "entry"))
    (filed.spec.hours ?? []).forEach(({ who, time }, index) => {
      const key = JSON.stringify([filed.spec.date, who]);
      const day = worked.get(key) ?? { minutes: 0, places: [], told: false };
      worked.set(key, day);
      day.minutes += time.minutes;
      day.places.push(whereIs(filed, ["hours", index]));
      if (day.minutes <= DAY_MINUTES || day.told || day.places.length < 2) return;
      day.told = true;
      tell(context, filed, index, who, day);
    });
}

/** Told once, where the day runs over; which line is wrong only the builder knows. */
function tell(context: CheckContext, filed: EntryFile, index: number, who: string, { minutes, places }: SoFar): void {
  const hours = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  report(context, filed, ["hours", index, "time"], {
    code: "over-a-day",
    message: `${who} would have worked more than 24 hours on ${filed.spec.date}`,
    expected: "lines of one day that add up to 24:00 or less for each person",
    found: `${hours} so far, with ${places.slice(0, -1).slice(-3).join(", ")}`,
    mend: "correct the hours, or the date of the entry they belong to",
  });
}
