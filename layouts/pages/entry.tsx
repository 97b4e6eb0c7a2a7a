import type { JSX } from "preact";
import { entryView } from "../../src/pages/story/entry.ts";
import type { EntryView } from "../../src/pages/story/entry.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import type { Entry } from "../../src/facts/types.ts";
import { AmendedNote, AmendsNote, Story } from "../parts/amended.tsx";
import { Clip } from "../parts/clip.tsx";
import { DaySheet } from "../day/day-sheet.tsx";
import { To } from "../shell/link.tsx";
import { Sealed } from "../parts/sealed.tsx";
import { Page } from "../shell/page.tsx";
import { GALLERY_SCRIPTS, Photo } from "../parts/picture.tsx";

const COLUMN = "(min-width: 60rem) 44rem, 100vw";

export function EntryPage({ site, entry }: { readonly site: Site; readonly entry: Entry }): JSX.Element {
  const from = `entry/${entry.id}.html`;
  const view = entryView(site.shown, entry);
  return (
    <Page
      site={site}
      path={from}
      kind="entry"
      entry={entry}
      title={entry.title}
      description={`${dateWords(entry.day)}: ${entry.title}`}
      scripts={view.lead === undefined && !hasPictures(entry) ? [] : GALLERY_SCRIPTS}
    >
      <article class="entry">
        <Head site={site} entry={entry} view={view} />
        <div class="entry__story">
          <AmendedNote site={site} from={from} entry={entry} />
          {view.lead === undefined ? null : (
            <Photo site={site} from={from} photo={view.lead} lazy={false} sizes={COLUMN} opens />
          )}
          <Story site={site} from={from} entry={entry} />
          <AmendsNote site={site} from={from} entry={entry} />
          {entry.clips.map((clip) => (
            <Clip site={site} from={from} clip={clip} />
          ))}
          {view.others.length === 0 ? null : (
            <div class="entry__photos">
              {view.others.map((photo) => (
                <Photo site={site} from={from} photo={photo} sizes="(min-width: 60rem) 22rem, 100vw" opens />
              ))}
            </div>
          )}
        </div>
        <aside class="entry__side" aria-label="The day’s facts">
          <DaySheet site={site} from={from} entry={entry} />
        </aside>
      </article>
      <Beside site={site} from={from} view={view} />
    </Page>
  );
}

/** Whether there may be a picture in its story. */
const hasPictures = ({ body }: Entry): boolean =>
  body.some(({ markdown, blocks }) => blocks !== undefined || markdown.includes("!["));

interface HeadProps {
  readonly site: Site;
  readonly entry: Entry;
  readonly view: EntryView;
}

function Head({ site, entry, view }: HeadProps): JSX.Element {
  const from = `entry/${entry.id}.html`;
  return (
    <header class="title entry__title">
      <p class="title__place">
        <time dateTime={entry.day}>{dateWords(entry.day)}</time>
        {view.place.length === 0 ? null : " · "}
        {view.place.map(({ id, title }, at) => (
          <>
            {at > 0 ? " / " : ""}
            <To site={site} from={from} to={{ kind: "assembly", id }}>
              {title}
            </To>
          </>
        ))}
      </p>
      <h1>{entry.title}</h1>
      <Sealed site={site} entries={[entry.id]} />
    </header>
  );
}

function Beside({
  site,
  from,
  view: { earlier, later },
}: {
  readonly site: Site;
  readonly from: string;
  readonly view: EntryView;
}): JSX.Element {
  return (
    <nav class="beside" aria-label="Entries before and after">
      {earlier === undefined ? (
        <span />
      ) : (
        <p>
          <span class="beside__way">Before, {dateShort(earlier.day)}</span>
          <To site={site} from={from} to={{ kind: "entry", id: earlier.id }}>
            {earlier.title}
          </To>
        </p>
      )}
      {later === undefined ? (
        <span />
      ) : (
        <p class="beside__later">
          <span class="beside__way">After, {dateShort(later.day)}</span>
          <To site={site} from={from} to={{ kind: "entry", id: later.id }}>
            {later.title}
          </To>
        </p>
      )}
    </nav>
  );
}
