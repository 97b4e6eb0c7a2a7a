/** What happened to an assembly, by rows on one line of time. */
import { defined } from "../../defined.ts";
import { addressOf } from "../address.ts";
import type { Ref } from "../../facts/types.ts";
import type { Event, TimelineInput } from "../../charts/timeline.ts";
import { dayAt } from "../forecast/chart.ts";
import { type Happening, ROWS, type Told } from "./day-events.ts";
import { dateShort, monthWords } from "../../words/dates.ts";
import { grouped } from "../../words/numbers.ts";

/** Marks in a row beyond which they would stand on each other's shoulders: things alike are then drawn once a month. */
export const MOST_IN_ROW = { wide: 22, narrow: 16 } as const;

interface Dated {
  readonly day: string;
  readonly entry: string;
  readonly happening: Happening;
}

/** `shows` tells what a mark may lead to. */
export function timelineOf(told: readonly Told[], most: number, shows: (ref: Ref) => boolean): TimelineInput {
  const days = told.map(({ entry }) => dayAt(entry.day));
  const from = days[0] ?? 0;
  const to = days[days.length - 1] ?? from;
  const all = told.flatMap(({ entry: { id, day }, dayEvents }) =>
    dayEvents.map((happening): Dated => ({ day, entry: id, happening })),
  );
  return {
    from,
    to: Math.max(to, from + 27),
    work: told.map(({ entry, minutes }) => ({ day: dayAt(entry.day), hours: minutes / 60 })),
    rows: ROWS.map((name) => ({
      name,
      events: eventsOf(
        all.filter(({ happening: { row } }) => row === name),
        most,
        shows,
      ),
    })),
  };
}

function eventsOf(row: readonly Dated[], most: number, shows: (ref: Ref) => boolean): Event[] {
  if (row.length > most) return byMonth(row);
  return row.map(({ day, happening: { mark, what, word, about } }) =>
    defined({
      day: dayAt(day),
      shape: mark,
      words: `${dateShort(day)}: ${what}, ${word}`,
      to: shows(about) ? addressOf(about) : undefined,
    }),
  );
}

/** On the first day of each month on which there was such a thing; it leads to that day. */
function byMonth(row: readonly Dated[]): Event[] {
  const groups = new Map<string, { readonly first: Dated; count: number }>();
  for (const one of row) {
    const key = `${one.day.slice(0, 7)} ${one.happening.mark} ${one.happening.word}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { first: one, count: 1 });
    else group.count += 1;
  }
  return [...groups.values()].map(
    ({
      first: {
        day,
        happening: { mark, what, word },
        entry,
      },
      count,
    }) => ({
      day: dayAt(day),
      to: addressOf({ kind: "entry", id: entry }),
      shape: mark,
      words:
        count === 1 ? `${dateShort(day)}: ${what}, ${word}` : `${monthWords(day)}: ${grouped(count)} times ${word}`,
    }),
  );
}
