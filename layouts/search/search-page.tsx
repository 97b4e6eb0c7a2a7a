import type { JSX } from "preact";
import { addressOf } from "../../src/pages/address.ts";
import { type EntryList, entryLists } from "../../src/pages/story/entry-lists.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Entry } from "../../src/facts/types.ts";
import { dayAndMonth } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { Page } from "../shell/page.tsx";

export const SEARCH = "search.html";

/** Without scripts a list of all entries by year, which stands below the search. */
export function SearchPage({ site }: { readonly site: Site }): JSX.Element {
  const lists = entryLists(site.shown.record);
  return (
    <Page
      site={site}
      path={SEARCH}
      kind="search"
      title="Search"
      description="Finds entries, joints, batches, lots and all else by words and ids."
      scripts={["search.js"]}
    >
      <div class="title">
        <h1>Search</h1>
      </div>
      <div class="search" data-search hidden>
        <label class="search__label" for="search">
          Words, or an id such as that of a joint or a batch
        </label>
        <input class="search__box" id="search" type="search" autocomplete="off" spellcheck={false} />
        <output class="search__state" for="search" />
        <div class="search__found" />
      </div>
      <section class="search__all" aria-labelledby="all-entries">
        <h2 id="all-entries">All entries, by year</h2>
        {lists.map((list) => (list.year === undefined ? <Years entries={list.entries} /> : <WholeYear list={list} />))}
      </section>
    </Page>
  );
}

function WholeYear({ list: { path, year, entries } }: { readonly list: EntryList }): JSX.Element {
  return (
    <p class="search__year">
      <a href={path}>{year}</a>, {counted(entries.length, "entry", "entries")}
    </p>
  );
}

function Years({ entries }: { readonly entries: readonly Entry[] }): JSX.Element {
  const years = new Map<string, Entry[]>();
  for (const entry of entries) {
    const year = entry.day.slice(0, 4);
    years.set(year, [...(years.get(year) ?? []), entry]);
  }
  return (
    <>
      {[...years].map(([year, ofYear]) => (
        <>
          <h3>{year}</h3>
          <ul class="search__list">
            {ofYear.map(({ id, day, title }) => (
              <li>
                <time dateTime={day}>{dayAndMonth(day)}</time> <a href={addressOf({ kind: "entry", id })}>{title}</a>
              </li>
            ))}
          </ul>
        </>
      ))}
    </>
  );
}
