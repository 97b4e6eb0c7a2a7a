import type { JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import type { Told } from "../../src/pages/story/day-events.ts";
import { pictureOf } from "../../src/pages/story/pictured.ts";
import type { EntryPicture } from "../../src/pages/story/pictured.ts";
import type { Happening } from "../../src/pages/story/day-events.ts";
import { dayAndMonth, monthWords } from "../../src/words/dates.ts";
import { hoursWords } from "../../src/words/durations.ts";
import type { Entry } from "../../src/facts/types.ts";
import { To } from "../shell/link.tsx";
import { Mark } from "./mark.tsx";
import { Image } from "./picture.tsx";

interface PlaceProps {
  readonly site: Site;
  readonly from: string;
}

/** What happened, as marks that lead to it. */
export function Happenings({
  site,
  from,
  all,
}: PlaceProps & { readonly all: readonly Happening[] }): JSX.Element | null {
  if (all.length === 0) return null;
  return (
    <ul class="happened">
      {all.map(({ mark, word, what, about }) => (
        <li>
          <To site={site} from={from} to={about}>
            {what}
          </To>{" "}
          <Mark of={mark} word={word} />
        </li>
      ))}
    </ul>
  );
}

interface LineProps extends PlaceProps {
  readonly entry: Entry;
  readonly minutes: number;
  readonly all?: readonly Happening[];
  readonly photo?: EntryPicture;
  /** The assembly, where lists run over several. */
  readonly assembly?: boolean;
}

/** One line of the log: the day in the margin, the entry beside it. */
export function LogLine({ site, from, entry, minutes, all = [], photo, assembly = false }: LineProps): JSX.Element {
  const part = assembly ? entry.assembly : undefined;
  return (
    <li class={photo === undefined ? "log__line" : "log__line log__line--photo"}>
      <p class="log__margin">
        <time dateTime={entry.day}>{dayAndMonth(entry.day)}</time>
        <span class="log__hours">{minutes === 0 ? "" : hoursWords(minutes)}</span>
      </p>
      <div class="log__body">
        <p class="log__title">
          <To site={site} from={from} to={{ kind: "entry", id: entry.id }}>
            {entry.title}
          </To>
        </p>
        {part === undefined ? null : (
          <p class="log__place">
            <To site={site} from={from} to={{ kind: "assembly", id: part }}>
              {site.shown.record.assemblies.get(part)?.title ?? part}
            </To>
          </p>
        )}
        <Happenings site={site} from={from} all={all} />
      </div>
      {photo === undefined ? null : (
        <div class="log__photo">
          <Image site={site} from={from} photo={photo} sizes="9rem" widest={480} />
        </div>
      )}
    </li>
  );
}

function byMonth<T extends { readonly entry: Entry }>(told: readonly T[]): [string, T[]][] {
  const months = new Map<string, T[]>();
  for (const one of told) {
    const month = one.entry.day.slice(0, 7);
    const group = months.get(month);
    if (group === undefined) months.set(month, [one]);
    else group.push(one);
  }
  return [...months];
}

interface LogProps extends PlaceProps {
  readonly told: readonly Told[];
  readonly assembly?: boolean;
  readonly photos?: boolean;
  readonly heading?: "h2" | "h3";
}

/** Entries under the months they were written in, in the order given. */
export function Log({
  site,
  from,
  told,
  assembly = false,
  photos = false,
  heading: Heading = "h3",
}: LogProps): JSX.Element {
  return (
    <div class="log">
      {byMonth(told).map(([month, lines]) => (
        <section class="log__month" id={`month-${month}`}>
          <Heading>{monthWords(month)}</Heading>
          <ol class="bare">
            {lines.map(({ entry, minutes, dayEvents }) => {
              const photo = photos ? pictureOf(entry) : undefined;
              return (
                <LogLine
                  site={site}
                  from={from}
                  entry={entry}
                  minutes={minutes}
                  all={dayEvents}
                  assembly={assembly}
                  {...(photo === undefined ? {} : { photo })}
                />
              );
            })}
          </ol>
        </section>
      ))}
    </div>
  );
}
