/** What the aircraft is, and where its build stands: the first that visitors read. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { HomeView } from "../../src/pages/story/home.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import { hoursRounded } from "../../src/words/durations.ts";
import { counted } from "../../src/words/lists.ts";
import { Photo } from "../parts/picture.tsx";
import { To } from "../shell/link.tsx";
import { Prose } from "../shell/page.tsx";

const PATH = "index.html";

interface PartProps {
  readonly site: Site;
  readonly view: HomeView;
}

/** The introduction, its first paragraph, and whether there is more of it. */
function introduction({ shown, prose }: Site) {
  const { body } = shown.record.aircraft;
  const [passage] = body;
  const first = passage === undefined ? "" : prose(passage, PATH, "first paragraph");
  const whole = body.map((one) => prose(one, PATH));
  return { first, whole, hasMore: whole.join("").trim() !== first.trim() };
}

export function Introduction({ site }: { readonly site: Site }): JSX.Element | null {
  const { whole, hasMore } = introduction(site);
  if (!hasMore) return null;
  return (
    <section class="section" id="introduction">
      <h2>About {site.shown.record.aircraft.name}</h2>
      {whole.map((html) => (
        <Prose site={site} html={html} />
      ))}
    </section>
  );
}

export function Opening({ site, view: { lead } }: PartProps): JSX.Element {
  const { aircraft } = site.shown.record;
  const { first, hasMore } = introduction(site);
  return (
    <div class="opening">
      <div class="opening__words">
        <h1>{aircraft.name}</h1>
        <p class="opening__type">{aircraft.type}</p>
        {first === "" ? null : <Prose site={site} html={first} />}
        {hasMore ? (
          <p class="onward">
            <a href="#introduction">More about it</a>
          </p>
        ) : null}
      </div>
      {lead === undefined ? null : (
        <div class="opening__photo">
          <Photo site={site} from={PATH} photo={lead.photo} lazy={false} sizes="(min-width: 60rem) 40rem, 100vw" />
          {lead.entry === undefined ? null : (
            <p class="small quiet">
              From{" "}
              <To site={site} from={PATH} to={{ kind: "entry", id: lead.entry.id }}>
                {lead.entry.title}
              </To>
              , {dateWords(lead.entry.day)}
            </p>
          )}
        </div>
      )}
    </div>
  );
}

function Share({ plan }: Pick<HomeView, "plan">): JSX.Element | null {
  if (plan === undefined) return null;
  return (
    <div>
      <dt>How far</dt>
      <dd>
        <b>{Math.round((100 * plan.worked) / plan.planned)} %</b>{" "}
        <span>
          {hoursRounded(plan.worked)} of the {hoursRounded(plan.planned)} planned
        </span>
      </dd>
    </div>
  );
}

export function Standing({ site, view: { total, pace, plan, passed, points } }: PartProps): JSX.Element {
  const { aircraft, day, entries } = site.shown.record;
  return (
    <section class="standing" aria-label="Where the build stands">
      <dl>
        <Share {...(plan === undefined ? {} : { plan })} />
        <div>
          <dt>Worked so far</dt>
          <dd>
            <b>{hoursRounded(total)}</b>{" "}
            <span>
              since {dateWords(aircraft.start)}
              {aircraft.firstFlight === undefined ? "" : `; first flown on ${dateWords(aircraft.firstFlight)}`}
            </span>
          </dd>
        </div>
        <div>
          <dt>A week, lately</dt>
          <dd>
            <b>{hoursRounded(pace.recent)}</b>{" "}
            <span>
              over the last {pace.weeks} weeks
              {pace.target === undefined ? "" : `; ${hoursRounded(pace.target)} planned`}
            </span>
          </dd>
        </div>
        <div>
          <dt>Written down</dt>
          <dd>
            <b>{counted(entries.length, "entry", "entries")}</b> <span>the last on {dateWords(day)}</span>
          </dd>
        </div>
        {points === 0 ? null : (
          <div>
            <dt>Hold points passed</dt>
            <dd>
              <b>{`${passed} of ${points}`}</b>{" "}
              <span>
                <a href={relative(PATH, "hold-points.html")}>the whole list</a>
              </span>
            </dd>
          </div>
        )}
      </dl>
    </section>
  );
}
