import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { Told } from "../../src/pages/story/day-events.ts";
import { entryLists } from "../../src/pages/story/entry-lists.ts";
import type { EntryList } from "../../src/pages/story/entry-lists.ts";
import { dayEvents } from "../../src/pages/story/day-events.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import { minutesOf } from "../../src/pages/story/story.ts";
import { monthShort } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { Log } from "../parts/log.tsx";
import { storyPage } from "../own/laid-out.tsx";
import { Page } from "../shell/page.tsx";

/** Every entry by month, the newest first, on one page or, where they are many, on one for each year. */
export function entriesPages(site: Site): PageFile[] {
  const lists = entryLists(site.shown.record);
  return lists.map((list) => storyPage(site, list.path, "entries", () => EntriesPage({ site, list, lists })));
}

interface EntriesProps {
  readonly site: Site;
  readonly list: EntryList;
  readonly lists: readonly EntryList[];
}

function EntriesPage({ site, list, lists }: EntriesProps): JSX.Element {
  const { path, year, entries } = list;
  const told = entries.map(
    (entry): Told => ({ entry, minutes: minutesOf(entry), dayEvents: dayEvents(entry, site.shown) }),
  );
  const title = year === undefined || path === lists[0]?.path ? "Entries" : `Entries of ${year}`;
  const all = counted(site.shown.record.entries.length, "entry", "entries");
  return (
    <Page
      site={site}
      path={path}
      kind="entries"
      title={title}
      description="Everything that was written down, by month."
    >
      <div class="title">
        <h1>{title}</h1>
        <p class="title__lead">
          {year === undefined
            ? `${all}, the newest first.`
            : `${counted(told.length, "entry", "entries")} of ${year}, the newest first, of ${all} in all.`}
        </p>
      </div>
      <Months path={path} lists={lists} />
      <Log site={site} from={path} told={told} assembly photos heading="h2" />
    </Page>
  );
}

/** A way to each month, whichever page it is on. */
function Months({ path, lists }: { readonly path: string; readonly lists: readonly EntryList[] }): JSX.Element {
  const years = new Map<string, Map<string, string>>();
  for (const { path: to, entries } of lists) {
    for (const { day } of entries) {
      const months = years.get(day.slice(0, 4)) ?? new Map<string, string>();
      years.set(day.slice(0, 4), months.set(day.slice(0, 7), to === path ? "" : relative(path, to)));
    }
  }
  return (
    <nav class="months" aria-label="Months">
      <dl>
        {[...years].map(([year, months]) => (
          <div>
            <dt>{year}</dt>
            <dd>
              {[...months].reverse().map(([month, page]) => (
                <a href={`${page}#month-${month}`}>
                  {monthShort(month)}
                  <span class="unseen"> {year}</span>
                </a>
              ))}
            </dd>
          </div>
        ))}
      </dl>
    </nav>
  );
}
