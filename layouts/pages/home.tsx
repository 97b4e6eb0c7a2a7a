import type { JSX } from "preact";
import { amendmentsTo } from "../../src/pages/story/amended.ts";
import { homeView } from "../../src/pages/story/home.ts";
import type { HomeView } from "../../src/pages/story/home.ts";
import { dayEvents } from "../../src/pages/story/day-events.ts";
import { homeOf, relative } from "../../src/pages/address.ts";
import { Introduction, Opening, Standing } from "./home-opening.tsx";
import { pictureOf } from "../../src/pages/story/pictured.ts";
import type { Site } from "../../src/editions/shown.ts";
import { minutesOf } from "../../src/pages/story/story.ts";
import { dateWords } from "../../src/words/dates.ts";
import { hoursWords } from "../../src/words/durations.ts";
import type { Entry } from "../../src/facts/types.ts";
import { addressOfSite } from "../../src/pages/story/followed.ts";
import { ATOM } from "../feeds/atom.tsx";
import { JSON_FEED } from "../feeds/json-feed.ts";
import { Glances } from "../parts/glances.tsx";
import { To } from "../shell/link.tsx";
import { Happenings, LogLine } from "../parts/log.tsx";
import { Mark } from "../parts/mark.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { Photo } from "../parts/picture.tsx";
import { Strip } from "../parts/strip.tsx";

const PATH = "index.html";

interface PartProps {
  readonly site: Site;
  readonly view: HomeView;
}

export function HomePage({ site }: { readonly site: Site }): JSX.Element {
  const view = homeView(site.shown);
  const { aircraft } = site.shown.record;
  return (
    <Page
      site={site}
      path={homeOf(site.shown.edition)}
      kind="home"
      title={aircraft.name}
      description={`${aircraft.name}, ${aircraft.type}: the record of its building.`}
    >
      <Opening site={site} view={view} />
      <Standing site={site} view={view} />
      <div class="home__two">
        <div class="home__beside">
          <Visit site={site} />
          <Follow site={site} />
          <Next site={site} view={view} />
        </div>
        <Newest site={site} view={view} />
        <Before site={site} view={view} />
      </div>
      {view.pictures.length < 2 ? null : (
        <section class="section">
          <h2>The newest pictures</h2>
          <Strip site={site} from={PATH} pictures={view.pictures} />
        </section>
      )}
      <section class="section">
        <h2>Assemblies</h2>
        <Glances site={site} from={PATH} glances={view.glance} />
      </section>
      <Introduction site={site} />
    </Page>
  );
}

function Newest({ site, view: { newest } }: PartProps): JSX.Element {
  const [first] = newest;
  return (
    <section class="newest">
      <h2>Lately</h2>
      {first === undefined ? <p>Nothing has been written yet.</p> : <NewestEntry site={site} entry={first} />}
    </section>
  );
}

/** The entries before the newest. */
function Before({ site, view: { newest } }: PartProps): JSX.Element | null {
  const rest = newest.slice(1);
  if (rest.length === 0) return null;
  const [first] = site.shown.record.entries;
  return (
    <section class="home__before" aria-label="Before that">
      <ol class="bare log">
        {rest.map((entry) => {
          const photo = pictureOf(entry);
          return (
            <LogLine
              site={site}
              from={PATH}
              entry={entry}
              minutes={minutesOf(entry)}
              all={dayEvents(entry, site.shown)}
              assembly
              {...(photo === undefined ? {} : { photo })}
            />
          );
        })}
      </ol>
      <p class="onward">
        <a href={relative(PATH, "entries.html")}>All entries by month</a>
        {first === undefined ? null : (
          <>
            , or{" "}
            <To site={site} from={PATH} to={{ kind: "entry", id: first.id }}>
              begin at the beginning
            </To>
            , {dateWords(first.day)}
          </>
        )}
      </p>
    </section>
  );
}

function NewestEntry({ site, entry }: { readonly site: Site; readonly entry: Entry }): JSX.Element {
  const photo = pictureOf(entry);
  const isStruck = amendmentsTo(site.shown, entry.id).some(({ prose }) => prose);
  const [passage] = isStruck ? [] : entry.body;
  const first = passage === undefined ? "" : site.prose(passage, PATH, "first paragraph");
  return (
    <article class="latest">
      {photo === undefined ? null : (
        <Photo site={site} from={PATH} photo={photo} sizes="(min-width: 60rem) 42rem, 100vw" caption={false} />
      )}
      <p class="latest__day">
        <time dateTime={entry.day}>{dateWords(entry.day)}</time>{" "}
        {minutesOf(entry) === 0 ? null : <span>{hoursWords(minutesOf(entry))}</span>}
      </p>
      <h3>
        <To site={site} from={PATH} to={{ kind: "entry", id: entry.id }}>
          {entry.title}
        </To>
      </h3>
      {first === "" ? null : <Prose site={site} html={first} />}
      <Happenings site={site} from={PATH} all={dayEvents(entry, site.shown)} />
    </article>
  );
}

/** Where the proof stands, in a line that leads on. */
function Next({ site, view: { next } }: PartProps): JSX.Element | null {
  if (next === undefined) return null;
  return (
    <section>
      <h2>What must be looked at next</h2>
      <p>
        <To site={site} from={PATH} to={{ kind: "hold point", id: next.holdPoint.id }}>
          {next.holdPoint.title}
        </To>{" "}
        <Mark of={next.state} />
      </p>
      <p class="onward">
        <a href={relative(PATH, "evidence.html")}>What the record shows, joint by joint</a>
      </p>
    </section>
  );
}

function Follow({ site }: { readonly site: Site }): JSX.Element | null {
  if (addressOfSite(site.shown) === undefined) return null;
  return (
    <section>
      <h2>Follow the build</h2>
      <p>
        Put the address of <a href={relative(PATH, ATOM)}>the feed</a> into a feed reader, and it tells you of each new
        entry. The same stands in a <a href={relative(PATH, JSON_FEED)}>JSON feed</a>.
      </p>
    </section>
  );
}

function Visit({ site }: { readonly site: Site }): JSX.Element | null {
  const { visit } = site.shown.record.aircraft;
  return visit === undefined ? null : (
    <section class="visit">
      <h2>Come and see it</h2>
      {visit.split(/\n\s*\n/).map((words) => (
        <p>{words}</p>
      ))}
    </section>
  );
}
