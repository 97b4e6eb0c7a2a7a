/** The first page of an archive, for a reader who has nothing else and nobody to ask. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { eventsOf } from "../../src/pages/archive/events.ts";
import { glossaryOf } from "../../src/pages/archive/glossary.ts";
import { checksOf, judgedBy, MEANINGS, PAGES, questionsFor } from "../../src/pages/archive/guide.ts";
import { placesOf } from "../../src/pages/archive/places.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { ListTable, Section } from "../evidence/parts.tsx";
import { Page } from "../shell/page.tsx";
import { SealText } from "../shell/seal.tsx";

const PATH = PAGES.start;

interface SiteProps {
  readonly site: Site;
}

export function StartPage({ site }: SiteProps): JSX.Element {
  const { aircraft, day } = site.shown.record;
  return (
    <Page
      site={site}
      path={PATH}
      kind="archive"
      title="Start here"
      description={`What the archive of the building of ${aircraft.name} is, where things are in it, and how to check it.`}
    >
      <header class="title">
        <h1>Start here</h1>
        <p class="title__lead">
          The whole record of the building of {aircraft.name}, {aircraft.type}, as it was on {dateWords(day)}. It was
          kept from {dateWords(aircraft.start)} on. It needs no program but a browser, and no network.
        </p>
      </header>
      <Questions site={site} />
      <Places site={site} />
      <Checks site={site} />
      <Happened site={site} />
      <Meanings site={site} />
      <Glossary site={site} />
    </Page>
  );
}

function Questions({ site }: SiteProps): JSX.Element {
  return (
    <Section id="questions" title="What you may want to know">
      <ul class="lines bare">
        {questionsFor(site.shown).map(({ asks, page, answer }) => (
          <li>
            {asks} <a href={relative(PATH, page)}>{answer}</a>
          </li>
        ))}
      </ul>
      <p>
        Or read it as it went: <a href={relative(PATH, "home.html")}>the chronicle</a>, from its{" "}
        <a href={relative(PATH, "entries.html")}>first entry</a> on.
      </p>
    </Section>
  );
}

function Places({ site }: SiteProps): JSX.Element {
  return (
    <Section id="places" title="Where things are">
      <p class="measure">
        These pages are one folder of an archive, <code>site/</code>; the others lie beside it. All of them are plain
        files in open forms.
      </p>
      <ListTable caption="What is where" heads={["What", "Folder of the archive", "Page here"]}>
        {placesOf(site.shown, site.hasPapers === true).map(({ what, folders, page }) => (
          <tr>
            <th scope="row">{what}</th>
            <td>
              {folders.map((folder, at) => (
                <>
                  {at === 0 ? "" : ", "}
                  <code>{folder}</code>
                </>
              ))}
            </td>
            <td>{page === undefined ? "" : <a href={relative(PATH, page)}>{page}</a>}</td>
          </tr>
        ))}
      </ListTable>
    </Section>
  );
}

function Checks({ site }: SiteProps): JSX.Element {
  return (
    <Section id="check" title="How to check it">
      <p class="measure">
        With tools that any Linux has and that a Mac has or can get (there <code>shasum -a 256</code> is{" "}
        <code>sha256sum</code>). Nothing here rests on the program that wrote it.
      </p>
      {checksOf(site.shown).map(({ title, where, commands }) => (
        <section>
          <h3>{title}</h3>
          <p>In {where}:</p>
          <dl class="commands">
            {commands.map(({ line, says }) => (
              <>
                <dt>
                  <code>{line}</code>
                </dt>
                <dd>{says}</dd>
              </>
            ))}
          </dl>
        </section>
      ))}
      <p class="measure">
        A seal proves a day only as far as its digest is known from elsewhere: a letter, a print of these pages, a
        signature, a time stamp.
      </p>
      <SealText seal={site.shown.seal} />
    </Section>
  );
}

function Happened({ site }: SiteProps): JSX.Element {
  const events = eventsOf(site.shown);
  const kinds = [...new Set(events.map(({ kind }) => kind))];
  return (
    <Section id="happened" title="What happened">
      <p class="measure">
        <a href={relative(PATH, PAGES.events)}>The index of events</a> has {counted(events.length, "event")} by date
        {kinds.length === 0 ? "" : ":"}{" "}
        {kinds
          .map((each) => `${counted(events.filter(({ kind }) => kind === each).length, each.toLowerCase())}`)
          .join(", ")}
        .
      </p>
    </Section>
  );
}

function Meanings({ site }: SiteProps): JSX.Element {
  return (
    <Section id="verdicts" title="What each verdict means">
      <p class="measure">{judgedBy(site.version)}</p>
      <p class="measure">
        Every rule with its source stands in <a href={relative(PATH, "about.html#rules")}>About this record</a>, and in{" "}
        <code>rules.json</code>.
      </p>
      {MEANINGS.map(([of, means]) => (
        <section>
          <h3>{of}</h3>
          <Words words={Object.entries(means)} />
        </section>
      ))}
    </Section>
  );
}

function Words({ words }: { readonly words: readonly (readonly [word: string, means: string])[] }): JSX.Element {
  return (
    <dl class="facts">
      {words.map(([word, means]) => (
        <>
          <dt>{word}</dt>
          <dd>{means}</dd>
        </>
      ))}
    </dl>
  );
}

function Glossary({ site }: SiteProps): JSX.Element {
  return (
    <Section id="glossary" title="Glossary">
      <Words words={glossaryOf(site.shown).map(({ word, means }) => [word, means])} />
    </Section>
  );
}
