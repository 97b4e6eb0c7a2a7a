/** What lines of hours are held against, those of entries and those of tables: the aircraft's tasks, and how many hours there are. */
import { DAY_MINUTES, DAY_MS } from "../../facts/quantity/conversions.ts";
import { nearest, someOf } from "../../facts/nearest.ts";
import { type Fault, meaning, onlyYouKnow } from "../../facts/reading.ts";
import { asHours } from "../../facts/time/hours.ts";
import type { Span } from "../../facts/time/span.ts";

export function taskFault(task: string, tasks: readonly string[] | undefined): Fault | undefined {
  if (tasks === undefined || tasks.includes(task)) return undefined;
  const meant = nearest(task, tasks);
  return {
    code: "unknown-task",
    message: "this task is not one of the aircraft's",
    expected: `one of ${someOf(tasks, 20)}`,
    found: task,
    ...(meant === undefined
      ? onlyYouKnow("use one of these words, or add this one to `tasks` in aircraft.md")
      : meaning(meant)),
  };
}

/** What one person worked in a span. */
interface Sum {
  minutes: number;
  readonly places: string[];
  told: boolean;
}

/** Each person's minutes, day by day and by months and years, over all entries and tables. */
export class Worked {
  readonly #sums = new Map<string, Sum>();
  readonly #days = new Map<string, Map<string, number>>();

  /** Tells where a day runs over, once; which line is wrong only the builder knows. `where` is the line's place as a message names it. */
  on(day: string, who: string, minutes: number, where: string, tell: (fault: Fault) => void): void {
    const days = this.#days.get(who) ?? new Map<string, number>();
    this.#days.set(who, days.set(day, (days.get(day) ?? 0) + minutes));
    const sum = this.#add(JSON.stringify([who, day]), 0, minutes, where);
    if (sum.places.length > 1) runsOver(sum, DAY_MINUTES, tell, `more than 24 hours on ${day}`, who);
  }

  /** As `on`, of a month or a year and the days in it: those must all have been added before. */
  within(span: Span, who: string, minutes: number, where: string, tell: (fault: Fault) => void): void {
    const sum = this.#add(JSON.stringify([who, span.typed]), this.#daysIn(span, who), minutes, where);
    const days = (Date.parse(span.to) - Date.parse(span.from)) / DAY_MS + 1;
    runsOver(sum, days * DAY_MINUTES, tell, `more hours than ${span.typed} has`, who);
  }

  #daysIn({ from, to }: Span, who: string): number {
    return [...(this.#days.get(who) ?? [])].reduce(
      (sum, [day, minutes]) => (day >= from && day <= to ? sum + minutes : sum),
      0,
    );
  }

  #add(key: string, before: number, minutes: number, where: string): Sum {
    const sum = this.#sums.get(key) ?? { minutes: before, places: [], told: false };
    this.#sums.set(key, sum);
    sum.minutes += minutes;
    sum.places.push(where);
    return sum;
  }
}

function runsOver(sum: Sum, most: number, tell: (fault: Fault) => void, words: string, who: string): void {
  if (sum.minutes <= most || sum.told) return;
  sum.told = true;
  const before = sum.places.slice(0, -1).slice(-3).join(", ");
  tell({
    code: "over-a-day",
    message: `${who} would have worked ${words}`,
    expected: `lines ${most === DAY_MINUTES ? "of one day " : ""}that add up to ${asHours(most)} or less for each person`,
    found: `${asHours(sum.minutes)} so far${before === "" ? "" : `, with ${before}`}`,
    mend: "correct the hours, or the date of the entry they belong to",
  });
}
