import type { JSX } from "preact";
import type { Told } from "../src/pages/assembly.ts";
import { happenings } from "../src/pages/happened.ts";
import type { Site } from "../src/pages/shown.ts";
import { minutesOf } from "../src/pages/story.ts";
import { counted, monthShort } from "../src/pages/words.ts";
import { Log } from "./log.tsx";
import { Page } from "./page.tsx";

const PATH = "entries.html";

/** Every entry by month, the newest first, with a way to each month. */
export function EntriesPage({ site }: { readonly site: Site }): JSX.Element {
  const newestFirst = [...site.shown.record.entries].reverse();
  const told = newestFirst.map((entry): Told => ({ entry, minutes: minutesOf(entry), happenings: happenings(entry, site.shown) }));
  const years = new Map<string, Set<string>>();
  for (const { day } of newestFirst) years.set(day.slice(0, 4), (years.get(day.slice(0, 4)) ?? new Set()).add(day.slice(0, 7)));
  return (
    <Page site={site} path={PATH} kind="entries" title="Entries" description="Everything that was written down, by month.">
      <div class="title"><h1>Entries</h1><p class="title__lead">{counted(told.length, "entry", "entries")}, the newest first.</p></div>
      <nav class="months" aria-label="Months">
        <dl>
          {[...years].map(([year, months]) => (
            <div><dt>{year}</dt><dd>{[...months].reverse().map((month) => <a href={`#month-${month}`}>{monthShort(month)}<span class="unseen"> {year}</span></a>)}</dd></div>
          ))}
        </dl>
      </nav>
      <Log site={site} from={PATH} told={told} assembly photos heading="h2" />
    </Page>
  );
}
